import { inRange } from "../quantity/inRange.ts";
import { cyclesPerMinute, type Grams, type Millimetres, type NewtonSquareMetres } from "../quantity/units.ts";
import { CPM_PER_RADIAN_A_SECOND } from "./freeShaft.ts";
import { checkedSetUp, type FrequencyReading, type FrequencySetUp } from "./frequencySetUp.ts";
import { linearDensity } from "./linearDensity.ts";
import { lowestFrequency } from "./lowestFrequency.ts";

/** A shaft whose stiffness and mass per length change evenly from tip to butt. */
export interface TaperedShaft {
  /** Bare, tip to butt. */
  readonly lengthMm: Millimetres;
  readonly massG: Grams;
  /** In the middle when the mass per length is one throughout. */
  readonly balanceFromTipMm: Millimetres;
  readonly tipStiffnessNm2: NewtonSquareMetres;
  readonly buttStiffnessNm2: NewtonSquareMetres;
}

const LEAST_FREE_MM = 1;

const stiffnessInRange = (value: number, field: string) => inRange(value, { field, unit: "N·m²", min: 1e-3, max: 1e5 });

/**
 * First bending frequency of a tapered shaft, clamped at the butt, with a rigid head on its tip.
 *
 *     (EI(u)·w″)″ = ω²·λ(u)·w,   EI and λ even from tip to butt;   f = 60·ω/(2π)
 *
 * Euler–Bernoulli finite elements, held against the exact root of a uniform beam to 1e-8. The head is rigid, its centre past
 * the tip by so much along the shaft, its own inertia counted when it is given; the grip's give in the clamp is not. Effects
 * of a change are good to 1 cpm for shafts of even taper; the frequency itself is as good as the stiffness.
 *
 * @param shaft - length and balance in mm, mass in g, EI at tip and butt in N·m²
 * @param setUp - clamp and centre of the tip mass in mm, tip mass in g, its inertia in kg·cm²
 * @returns f in cycles per minute, with the set-up
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @throws {DomainError} `balance-outside-model` when the balance is not in the middle third of the shaft
 * @see fixtures/published/taperedBeam.json
 */
export function taperedBeamFrequency(shaft: TaperedShaft, setUp: FrequencySetUp): FrequencyReading {
  const { clampMm, tipMassG, tipMassBeyondTipMm = 0, tipMassInertiaKgCm2 = 0 } = checkedSetUp(setUp);
  const { lengthMm } = shaft;
  const tipStiffness = stiffnessInRange(shaft.tipStiffnessNm2, "tipStiffnessNm2");
  const buttStiffness = stiffnessInRange(shaft.buttStiffnessNm2, "buttStiffnessNm2");
  const { a, b } = linearDensity({ rawLengthMm: lengthMm, rawMassG: shaft.massG, balanceFromTipMm: shaft.balanceFromTipMm });
  const freeMm = inRange(lengthMm - clampMm, { field: "freeLengthMm", unit: "mm", min: LEAST_FREE_MM });
  const omega = lowestFrequency({
    lengthM: freeMm / 1000,
    stiffness: { near: tipStiffness + ((buttStiffness - tipStiffness) * freeMm) / lengthMm, far: tipStiffness },
    density: { near: a + b * freeMm, far: a },
    tipMassKg: tipMassG / 1000,
    tipMassBeyondTipM: tipMassBeyondTipMm / 1000,
    tipMassInertiaKgM2: tipMassInertiaKgCm2 / 1e4,
  });
  return { cpm: cyclesPerMinute(CPM_PER_RADIAN_A_SECOND * omega), setUp };
}
