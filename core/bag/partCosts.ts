/** The parts and settings two twins may differ in. */
export const namedQuantities = [
  "headModel",
  "stampedLoftDeg",
  "grind",
  "sleeveModel",
  "sleeveMark",
  "shaftModel",
  "tipTrimMm",
  "logo",
  "gripModel",
  "rib",
  "stamp",
] as const;

export type NamedQuantity = (typeof namedQuantities)[number];

/**
 * What a part that differs costs, in squared tolerances: a head of another model as much as a reading eight tolerances
 * off, another shaft six, another grip two. Common practice, no source: the head counts most, then the shaft, then what
 * can be changed in minutes. Shop data: a setting may replace it.
 */
export const defaultPartCosts: Readonly<Record<NamedQuantity, number>> = {
  headModel: 64,
  grind: 36,
  shaftModel: 36,
  stampedLoftDeg: 16,
  tipTrimMm: 9,
  sleeveModel: 4,
  sleeveMark: 4,
  gripModel: 4,
  rib: 4,
  logo: 1,
  stamp: 0.25,
};
