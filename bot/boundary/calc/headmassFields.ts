import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import { clubFields } from "./clubFields.ts";

/** The sums hold that far. */
export const LONGEST_CHANGE_MM = 3 * MM_PER_INCH;
const SHORTEST_CLUB_MM = 18 * MM_PER_INCH;
const LONGEST_CLUB_MM = 55 * MM_PER_INCH;

export const headmassFields = {
  ...clubFields,
  head: { ...clubFields.head, massMayBeMissing: true },
  swing: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight", "swingweight", "sw"] },
  length: {
    kind: "number",
    measure: "length",
    min: SHORTEST_CLUB_MM,
    max: LONGEST_CLUB_MM,
    mostChange: LONGEST_CHANGE_MM,
    bare: true,
    also: ["len"],
  },
  inertia: { kind: "number", measure: "inertia", min: 1000, max: 5000, bare: true, also: ["moi"] },
  "new head": { kind: "number", measure: "mass", min: 50, max: 600, also: ["newhead"] },
} as const;
