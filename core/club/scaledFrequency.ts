import { inRange } from "../quantity/inRange.ts";
import { cyclesPerMinute, type Grams, type Millimetres } from "../quantity/units.ts";
import { EFFECTIVE_BEAM_MASS, type EvenShaft, freeShaft } from "./freeShaft.ts";
import { checkedReading, type FrequencyReading } from "./frequencySetUp.ts";

/**
 * A reading carried over to another length and another tip mass by the law of the uniform shaft.
 *
 *     f₂ = f₁ · (L₁/L₂)^1.5 · √( (M₁ + 33/140·m) / (M₂ + 33/140·m) )
 *
 * L from the clamp's edge to the centre of the tip mass; m, the mass of the free shaft as it was read, is kept, which
 * costs 0.1 cpm at ½ in. Good for the mass; for the length it asks too much of a tapered shaft cut at the butt, where
 * `frequencyAfterTrim` says +4.1 and this law +5.1 cpm for ½ in off a driver.
 *
 * @param reading - f₁ in cpm with its set-up, M₁ in g
 * @param shaft - as it was read: length in mm, mass in g
 * @param to - length of the shaft in mm and M₂ in g, in the same clamp
 * @returns f₂ in cpm, with its set-up
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @see fixtures/published/taperedBeam.json
 */
export function scaledFrequency(
  reading: FrequencyReading,
  shaft: EvenShaft,
  to: { readonly lengthMm: Millimetres; readonly tipMassG: Grams },
): FrequencyReading {
  const { cpm, setUp } = checkedReading(reading);
  const before = freeShaft(shaft, setUp);
  inRange(to.lengthMm, { field: "to lengthMm", unit: "mm", min: 1, max: 2000 });
  const nextSetUp = { ...setUp, tipMassG: to.tipMassG };
  const after = freeShaft({ ...shaft, lengthMm: to.lengthMm }, nextSetUp);
  const ownMassKg = EFFECTIVE_BEAM_MASS * before.massKg;
  const ofLength = (before.lengthM / after.lengthM) ** 1.5;
  const ofMass = Math.sqrt((before.tipMassKg + ownMassKg) / (after.tipMassKg + ownMassKg));
  return { cpm: cyclesPerMinute(cpm * ofLength * ofMass), setUp: nextSetUp };
}
