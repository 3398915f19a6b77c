import { inRange } from "../quantity/inRange.ts";
import { cyclesPerMinute, type NewtonSquareMetres } from "../quantity/units.ts";
import { CPM_PER_RADIAN_A_SECOND, EFFECTIVE_BEAM_MASS, type EvenShaft, freeShaft } from "./freeShaft.ts";
import type { FrequencyReading, FrequencySetUp } from "./frequencySetUp.ts";

/** A shaft of one stiffness and one mass per length. */
export interface UniformShaft extends EvenShaft {
  readonly bendingStiffnessNm2: NewtonSquareMetres;
}

export const checkedStiffness = (bendingStiffnessNm2: NewtonSquareMetres): number =>
  inRange(bendingStiffnessNm2, { field: "bendingStiffnessNm2", unit: "N·m²", min: 1e-3, max: 1e5 });

/**
 * First bending frequency of a uniform shaft, clamped at the butt, with a mass at the tip.
 *
 *     f = 60/(2π) · √( 3·EI / (L³ · (M + 33/140 · m)) )
 *
 * L from the clamp's edge to the centre of the tip mass, m of the shaft past the clamp. Euler–Bernoulli beam after Rayleigh,
 * point tip mass, no rotary inertia. Reads high: 0.01 % at M = 3 m, 0.05 % at M = m, 1.5 % at M = 0.
 *
 * @param shaft - EI in N·m², length in mm, mass in g
 * @param setUp - clamp in mm, M in g, and what else the reading belongs to
 * @returns f in cycles per minute, with the set-up
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @see fixtures/published/cantileverTipMass.json
 */
export function clampedShaftFrequency(shaft: UniformShaft, setUp: FrequencySetUp): FrequencyReading {
  const free = freeShaft(shaft, setUp);
  const stiffness = (3 * checkedStiffness(shaft.bendingStiffnessNm2)) / free.lengthM ** 3;
  const movingMassKg = free.tipMassKg + EFFECTIVE_BEAM_MASS * free.massKg;
  return { cpm: cyclesPerMinute(CPM_PER_RADIAN_A_SECOND * Math.sqrt(stiffness / movingMassKg)), setUp };
}
