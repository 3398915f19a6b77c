import { type NewtonSquareMetres, newtonSquareMetres } from "../quantity/units.ts";
import { cantileverRoot } from "./cantileverRoot.ts";
import { CPM_PER_RADIAN_A_SECOND, type EvenShaft, freeShaft } from "./freeShaft.ts";
import { checkedReading, type FrequencyReading } from "./frequencySetUp.ts";

/**
 * Bending stiffness of the uniform shaft that would give a reading: the way back from `exactShaftFrequency`.
 *
 *     EI = (2π·f/60)² · m·L³ / β⁴,   β = `cantileverRoot`(M/m)
 *
 * L from the clamp's edge to the centre of the tip mass, m of the shaft past the clamp. Exact for a uniform shaft. Of a
 * tapered one it is the mean that matters to this one mode and set-up, and no property of a place on it.
 *
 * @param reading - f in cpm with its set-up
 * @param shaft - length in mm, mass in g
 * @returns EI in N·m²
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @see fixtures/published/cantileverTipMass.json
 */
export function stiffnessFromFrequency(reading: FrequencyReading, shaft: EvenShaft): NewtonSquareMetres {
  const { cpm, setUp } = checkedReading(reading);
  const free = freeShaft(shaft, setUp);
  const root = cantileverRoot(free.tipMassKg / free.massKg);
  return newtonSquareMetres(((cpm / CPM_PER_RADIAN_A_SECOND) ** 2 * free.massKg * free.lengthM ** 3) / root ** 4);
}
