import { cyclesPerMinute } from "../quantity/units.ts";
import { cantileverRoot } from "./cantileverRoot.ts";
import { checkedStiffness, type UniformShaft } from "./clampedShaftFrequency.ts";
import { CPM_PER_RADIAN_A_SECOND, freeShaft } from "./freeShaft.ts";
import type { FrequencyReading, FrequencySetUp } from "./frequencySetUp.ts";

/**
 * First bending frequency of a uniform shaft with a mass at the tip, by the exact root.
 *
 *     f = 60/(2π) · √( β⁴·EI / (m·L³) ),   β = `cantileverRoot`(M/m)
 *
 * L from the clamp's edge to the centre of the tip mass, m of the shaft past the clamp. Euler–Bernoulli beam, point tip
 * mass, no rotary inertia; exact in this model. A real shaft tapers: `taperedBeamFrequency` is nearer to one that is cut.
 *
 * @param shaft - EI in N·m², length in mm, mass in g
 * @param setUp - clamp in mm, M in g, and what else the reading belongs to
 * @returns f in cycles per minute, with the set-up
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @see fixtures/published/cantileverTipMass.json
 */
export function exactShaftFrequency(shaft: UniformShaft, setUp: FrequencySetUp): FrequencyReading {
  const free = freeShaft(shaft, setUp);
  const root = cantileverRoot(free.tipMassKg / free.massKg);
  const radiansASecond = Math.sqrt((root ** 4 * checkedStiffness(shaft.bendingStiffnessNm2)) / (free.massKg * free.lengthM ** 3));
  return { cpm: cyclesPerMinute(CPM_PER_RADIAN_A_SECOND * radiansASecond), setUp };
}
