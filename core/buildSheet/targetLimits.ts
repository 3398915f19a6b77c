/** The quantities an order may write as an amount; the same name in a clause, a target and a measured club. */
export const amountNames = [
  "squaredLoftDeg",
  "seatedLieDeg",
  "soledFaceDeg",
  "bounceDeg",
  "lengthMm",
  "swingWeightPoints",
  "totalMassG",
  "headMassG",
  "tipTrimMm",
  "wraps",
] as const;

export type AmountName = (typeof amountNames)[number];

/**
 * What any club at all can be: a relative wish that leads past these was mistyped. Lengths from the 18 in every club
 * needs to past the 48 in no club but a putter may exceed; the others are common practice, no source.
 */
export const targetLimits: Readonly<Record<AmountName, { readonly min: number; readonly max: number }>> = {
  squaredLoftDeg: { min: -15, max: 72 },
  seatedLieDeg: { min: 45, max: 80 },
  soledFaceDeg: { min: -10, max: 10 },
  bounceDeg: { min: -5, max: 25 },
  lengthMm: { min: 457.2, max: 1320.8 },
  swingWeightPoints: { min: -30, max: 40 },
  totalMassG: { min: 200, max: 900 },
  headMassG: { min: 100, max: 600 },
  tipTrimMm: { min: 0, max: 200 },
  wraps: { min: 0, max: 20 },
};
