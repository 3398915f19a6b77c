import type { ComparedQuantity } from "./checkTolerances.ts";

/** How far one reading may be from the next of the same club, and who says so. */
interface GaugeError {
  readonly error: number;
  readonly source: string;
}

export type GaugeErrors = Readonly<Record<ComparedQuantity, GaugeError>>;

const PRACTICE = "common practice, no source";
const BENCH = "agreement of a real bench";
const TRAINED = "repeatability of a trained gauge: 'A Technical Discussion and Report on Adjustable Hosel/Adjustable Sole Piece Drivers'";

/**
 * Of one reading on one gauge, in the quantity's own unit. Shop data: a setting may replace it. No standard calibrates
 * loft and lie gauges against each other, where 0.25° is a good agreement: the figures hold for one and the same gauge.
 */
export const defaultGaugeErrors: GaugeErrors = {
  squaredLoftDeg: { error: 0.125, source: TRAINED },
  soledFaceDeg: { error: 0.25, source: BENCH },
  seatedLieDeg: { error: 0.125, source: TRAINED },
  bounceDeg: { error: 0.5, source: PRACTICE },
  lengthMm: { error: 25.4 / 32, source: PRACTICE },
  swingWeightPoints: { error: 0.3, source: BENCH },
  totalMassG: { error: 0.2, source: BENCH },
  headMassG: { error: 0.2, source: BENCH },
  wraps: { error: 0, source: "counted" },
  balancePointMm: { error: 1, source: BENCH },
  inertiaKgCm2: { error: 10, source: "worked from 2·ΔT/T: a period of 1.87 s timed to 0.0035 s; two benches agree to 1.5 % only" },
  frequencyCpm: { error: 1, source: `${PRACTICE}, on one machine and clamp; two benches agree to 2 cpm only` },
  gripAt2InMm: { error: 0.005 * 25.4, source: BENCH },
  gripAt6InMm: { error: 0.005 * 25.4, source: BENCH },
  offsetMm: { error: 0.25, source: PRACTICE },
};
