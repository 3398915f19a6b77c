import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import { clubFields } from "./clubFields.ts";

const LONGEST_CHANGE_MM = 3 * MM_PER_INCH;

export const headmassFields = {
  ...clubFields,
  head: { ...clubFields.head, massMayBeMissing: true },
  swing: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight", "swingweight", "sw"] },
  inertia: { kind: "number", measure: "inertia", min: 1000, max: 5000, bare: true, also: ["moi"] },
  length: { kind: "number", measure: "length", min: -LONGEST_CHANGE_MM, max: LONGEST_CHANGE_MM, also: ["len"] },
  newhead: { kind: "number", measure: "mass", min: 50, max: 600, also: ["new head"] },
} as const;
