import { GRAMS_PER_OUNCE, MM_PER_INCH } from "../../../core/quantity/units.ts";

/** What a written number may measure. A row a unit: its sign as shown, and what one of it is in the unit values are kept in. */
export const measures = {
  mass: { g: 1, oz: GRAMS_PER_OUNCE, kg: 1000 },
  length: { mm: 1, in: MM_PER_INCH, cm: 10 },
  angle: { "°": 1 },
  /** Differences of swing weight; a reading such as `d3` is a `swing`. */
  points: { points: 1 },
  swing: {},
  inertia: { "kg·cm²": 1, "g·cm²": 0.001 },
  frequency: { cpm: 1 },
  stiffness: { "N·m²": 1 },
  time: { s: 1, ms: 0.001 },
  /** On the course, kept in metres. */
  distance: { m: 1, yd: 0.9144, ft: 0.3048 },
  /** Pieces, wraps, marks, layers, and numbers without any unit. */
  count: {},
} as const satisfies Readonly<Record<string, Readonly<Record<string, number>>>>;

export type Measure = keyof typeof measures;

/** What is meant where no unit is written. */
export const usualUnit: Readonly<Record<Measure, string | null>> = {
  mass: "g",
  length: "in",
  angle: "°",
  points: "points",
  swing: null,
  inertia: "kg·cm²",
  frequency: "cpm",
  stiffness: "N·m²",
  time: "s",
  distance: "yd",
  count: null,
};

/** How people write the units. */
export const unitWords: Readonly<Record<string, string>> = {
  g: "g",
  oz: "oz",
  ozs: "oz",
  ounce: "oz",
  ounces: "oz",
  kg: "kg",
  mm: "mm",
  in: "in",
  cm: "cm",
  deg: "°",
  point: "points",
  points: "points",
  pts: "points",
  kgcmsq: "kg·cm²",
  gcmsq: "g·cm²",
  cpm: "cpm",
  nmsq: "N·m²",
  s: "s",
  sec: "s",
  secs: "s",
  second: "s",
  seconds: "s",
  ms: "ms",
  m: "m",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  yd: "yd",
  yds: "yd",
  yard: "yd",
  yards: "yd",
  ft: "ft",
  foot: "ft",
  feet: "ft",
  mark: "",
  marks: "",
  wrap: "",
  wraps: "",
  layer: "",
  layers: "",
};

/** @returns what one of a unit is in the unit the measure is kept in, or null when it does not measure that */
export function perUnit(measure: Measure, unit: string): number | null {
  const units: Readonly<Record<string, number>> = measures[measure];
  return Object.hasOwn(units, unit) ? (units[unit] ?? null) : null;
}
