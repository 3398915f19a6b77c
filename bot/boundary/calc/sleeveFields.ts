import { handField } from "./handField.ts";

/** The head and its sleeve; the head as measured bare, at no tilt. */
export const sleeveFields = {
  "soled loft": { kind: "number", measure: "angle", min: 0, max: 40, usual: 10, turns: "squaredLoftDeg", also: ["loft"] },
  "soled face": { kind: "number", measure: "angle", min: -8, max: 8, usual: 0, turns: "soledFaceDeg", also: ["face"] },
  "design lie": { kind: "number", measure: "angle", min: 48, max: 72, usual: 58, turns: "seatedLieDeg", also: ["lie"] },
  tilt: { kind: "number", measure: "angle", min: 0, max: 5, usual: 1.5, also: ["sleeve tilt"] },
  rated: { kind: "number", measure: "angle", min: 0, max: 4, usual: 1.5, also: ["rating", "sleeve rated"] },
  ring: { kind: "number", measure: "angle", min: 0, max: 5, usual: 1, also: ["ring tilt"] },
  clock: { kind: "number", measure: "angle", min: -360, max: 360, usual: 90 },
  standard: { kind: "word", words: ["flat", "upright", "stronger", "weaker"] },
  hand: handField,
  logo: { kind: "word", words: ["up", "down"], also: ["graphics"] },
  rib: { kind: "word", words: ["up", "down", "none"], spelled: { no: "none", round: "none", yes: "down" } },
} as const;

/** What the club should read; `by` is how much more than now. */
export const sleeveWishFields = {
  "squared loft": { kind: "number", measure: "angle", min: -4, max: 44, usual: 10, bare: true, also: ["loft"] },
  "soled face": { kind: "number", measure: "angle", min: -10, max: 10, usual: 0, also: ["face"] },
  "face by": { kind: "number", measure: "angle", min: -8, max: 8, usual: 1 },
  lie: { kind: "number", measure: "angle", min: -4, max: 76, usual: 58, also: ["seated lie"] },
} as const;
