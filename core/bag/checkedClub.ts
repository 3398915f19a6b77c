import { inRange } from "../quantity/inRange.ts";
import { comparedQuantities } from "./checkTolerances.ts";
import { clubBounds, type NumberOfClub } from "./clubBounds.ts";
import type { SpecClub } from "./specClub.ts";

const numbers: readonly NumberOfClub[] = [...comparedQuantities, "stampedLoftDeg", "tipTrimMm", "measuredAt"];

/**
 * A club of a bag all of whose numbers, where they are known, can be a club's.
 *
 * @param club - as it came
 * @returns the same club
 * @throws {DomainError} `quantity-out-of-range` when one of its numbers is not finite or no club's
 */
export function checkedClub(club: SpecClub): SpecClub {
  for (const field of numbers) {
    const value = club[field] ?? null;
    if (value !== null) {
      inRange(value, { field, ...clubBounds[field] });
    }
  }
  return club;
}
