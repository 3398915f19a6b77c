import type { SpecClub } from "../bag/specClub.ts";
import { degrees, grams, millimetres, swingWeightPoints } from "../quantity/units.ts";
import type { PredictedClub } from "./servicePlan.ts";

/** A number of the record in its unit; null where the record is silent. */
export const knownAs = <T>(value: number | null | undefined, unit: (known: number) => T): T | null =>
  value === null || value === undefined ? null : unit(value);

/** The club as it stands on record, with what the work changes in its place. */
export function predictedClub(reference: SpecClub | null, changed: Partial<PredictedClub> = {}): PredictedClub {
  return {
    squaredLoftDeg: knownAs(reference?.squaredLoftDeg, degrees),
    soledFaceDeg: knownAs(reference?.soledFaceDeg, degrees),
    seatedLieDeg: knownAs(reference?.seatedLieDeg, degrees),
    bounceDeg: knownAs(reference?.bounceDeg, degrees),
    lengthMm: knownAs(reference?.lengthMm, millimetres),
    swingWeightPoints: knownAs(reference?.swingWeightPoints, swingWeightPoints),
    totalMassG: knownAs(reference?.totalMassG, grams),
    headMassG: knownAs(reference?.headMassG, grams),
    wraps: reference?.wraps ?? null,
    gripAt2InMm: knownAs(reference?.gripAt2InMm, millimetres),
    gripAt6InMm: knownAs(reference?.gripAt6InMm, millimetres),
    ...changed,
  };
}
