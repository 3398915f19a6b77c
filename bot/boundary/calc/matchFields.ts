import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import type { Fields } from "./fields.ts";

/** Two clubs typed pair by pair: `loft 9.2 9.4, swing d3 d2`. Named after the quantities they are compared in. */
export const matchFields = {
  loft: { kind: "numbers", measure: "angle", min: -15, max: 70, also: ["lofts", "squared loft", "true loft", "true"] },
  face: { kind: "numbers", measure: "angle", min: -10, max: 10, also: ["soled face", "faces"] },
  lie: { kind: "numbers", measure: "angle", min: 45, max: 82, also: ["lies", "seated lie"] },
  bounce: { kind: "numbers", measure: "angle", min: -5, max: 25 },
  length: { kind: "numbers", measure: "length", min: 18 * MM_PER_INCH, max: 60 * MM_PER_INCH, usual: 40 * MM_PER_INCH, also: ["len", "lengths"] },
  swing: { kind: "numbers", measure: "swing", min: -30, max: 40, also: ["swing weight", "swingweight", "sw"] },
  total: { kind: "numbers", measure: "mass", min: 200, max: 700, usual: 350, also: ["total weight"] },
  head: { kind: "numbers", measure: "mass", min: 100, max: 600, usual: 220, also: ["head weight", "headweight", "hd"] },
  wraps: { kind: "numbers", measure: "count", min: 0, max: 20 },
  balance: { kind: "numbers", measure: "length", min: 10 * MM_PER_INCH, max: 50 * MM_PER_INCH, also: ["balance point", "bp"] },
  inertia: { kind: "numbers", measure: "inertia", min: 1000, max: 5000, also: ["moi"] },
  frequency: { kind: "numbers", measure: "frequency", min: 100, max: 500, also: ["freq", "cpm"] },
  grip: { kind: "numbers", measure: "length", min: 15, max: 50, also: ["grip size", "upper grip", "grip at 2"] },
  "lower grip": { kind: "numbers", measure: "length", min: 15, max: 50, also: ["grip at 6"] },
  offset: { kind: "numbers", measure: "length", min: -20, max: 30, unit: "mm" },
} as const satisfies Fields;

/** What a whole set may be brought to. */
export const setFields = {
  swing: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight", "swingweight", "sw"] },
  inertia: { kind: "number", measure: "inertia", min: 1000, max: 5000, bare: true, also: ["moi"] },
} as const satisfies Fields;
