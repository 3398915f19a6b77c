import type { ComparedQuantity } from "./checkTolerances.ts";

/** The numbers a club of a bag is known by. */
export type NumberOfClub = ComparedQuantity | "stampedLoftDeg" | "tipTrimMm" | "measuredAt";

interface Bounds {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

const angle = (min: number, max: number): Bounds => ({ unit: "deg", min, max });

/** Wide enough for every club there is, an outside one too. */
export const clubBounds: Readonly<Record<NumberOfClub, Bounds>> = {
  stampedLoftDeg: angle(-15, 75),
  squaredLoftDeg: angle(-15, 75),
  soledFaceDeg: angle(-20, 20),
  seatedLieDeg: angle(40, 85),
  bounceDeg: angle(-10, 30),
  lengthMm: { unit: "mm", min: 200, max: 2000 },
  tipTrimMm: { unit: "mm", min: 0, max: 500 },
  swingWeightPoints: { unit: "points", min: -100, max: 100 },
  totalMassG: { unit: "g", min: 50, max: 2000 },
  headMassG: { unit: "g", min: 20, max: 1000 },
  wraps: { unit: "", min: 0, max: 50 },
  balancePointMm: { unit: "mm", min: 0, max: 2000 },
  inertiaKgCm2: { unit: "kg·cm²", min: 100, max: 20_000 },
  frequencyCpm: { unit: "cpm", min: 50, max: 1000 },
  gripAt2InMm: { unit: "mm", min: 5, max: 60 },
  gripAt6InMm: { unit: "mm", min: 5, max: 60 },
  offsetMm: { unit: "mm", min: -50, max: 50 },
  measuredAt: { unit: "epoch-ms", min: 0, max: 8.64e15 },
};
