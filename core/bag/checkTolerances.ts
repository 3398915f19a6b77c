/** The quantities a finished club is checked in. */
export const checkedQuantities = [
  "squaredLoftDeg",
  "soledFaceDeg",
  "seatedLieDeg",
  "bounceDeg",
  "lengthMm",
  "swingWeightPoints",
  "totalMassG",
  "headMassG",
  "wraps",
  "gripAt2InMm",
  "gripAt6InMm",
] as const;

export type CheckedQuantity = (typeof checkedQuantities)[number];

/** The quantities two twins are compared in, as far as both have them on record. */
export const comparedQuantities = [...checkedQuantities, "balancePointMm", "inertiaKgCm2", "frequencyCpm", "offsetMm"] as const;

export type ComparedQuantity = (typeof comparedQuantities)[number];

interface CheckTolerance {
  readonly tolerance: number;
  /** Past it a difference is flagged however it is accepted; null when there is no such second limit. */
  readonly flag: number | null;
  /** Feel and look are the player's to accept; conformity and safety only the lead's. */
  readonly concerns: "feel" | "conformity";
}

export type CheckTolerances = Readonly<Record<ComparedQuantity, CheckTolerance>>;

/** Common practice, no source. Shop data: a setting may replace it. Length is 1/16 in, a grip's diameter 0.010 in. */
export const defaultCheckTolerances: CheckTolerances = {
  squaredLoftDeg: { tolerance: 0.25, flag: 0.5, concerns: "conformity" },
  soledFaceDeg: { tolerance: 0.5, flag: null, concerns: "conformity" },
  seatedLieDeg: { tolerance: 0.25, flag: 0.5, concerns: "conformity" },
  bounceDeg: { tolerance: 1, flag: null, concerns: "conformity" },
  lengthMm: { tolerance: 25.4 / 16, flag: null, concerns: "feel" },
  swingWeightPoints: { tolerance: 0.5, flag: 1, concerns: "feel" },
  totalMassG: { tolerance: 2, flag: null, concerns: "feel" },
  headMassG: { tolerance: 0.5, flag: null, concerns: "feel" },
  wraps: { tolerance: 0, flag: null, concerns: "feel" },
  balancePointMm: { tolerance: 2, flag: null, concerns: "feel" },
  inertiaKgCm2: { tolerance: 20, flag: null, concerns: "feel" },
  frequencyCpm: { tolerance: 2, flag: 3, concerns: "feel" },
  gripAt2InMm: { tolerance: 0.01 * 25.4, flag: null, concerns: "feel" },
  gripAt6InMm: { tolerance: 0.01 * 25.4, flag: null, concerns: "feel" },
  offsetMm: { tolerance: 0.5, flag: null, concerns: "feel" },
};
