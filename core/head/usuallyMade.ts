import type { ClubFamily } from "../kinds.ts";
import type { HeadConstruction, HeadMaterial } from "./bendLimits.ts";

/** What decides how far a head may be bent. */
interface Made {
  readonly material: HeadMaterial;
  readonly construction: HeadConstruction;
}

const softHead: Made = { material: "other", construction: "cast" };

/** Of what heads are usually made, when nobody says. Common practice, no source. */
export const usuallyMade: Readonly<Record<ClubFamily, Made>> = {
  driver: { material: "titanium", construction: "hollow" },
  fairway: { material: "other", construction: "bonded fairway" },
  hybrid: { material: "other", construction: "hollow" },
  iron: softHead,
  wedge: softHead,
  putter: softHead,
};
