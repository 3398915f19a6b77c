import { builtClub, type ClubParts, componentsOf } from "./builtClub.ts";
import type { StagedComponent } from "./clubParts.ts";

/**
 * The components of a whole club from its parts, ready to be summed.
 *
 *     head: I_cg + m·d²     shaft: as trimmed, or m·L²/12     grip: m·(3 in)²     small parts: points
 *
 * The parts' own inertia is 2.5 to 3.1 % of the club's. Masses as weighed: a label may be off by 2 g at the head, 1.2 points.
 *
 * @param parts - lengths and places in mm, masses in g, inertia in kg·cm²
 * @returns components, places in mm from the end of the cap, with the time each comes on
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible, a part lies past the length, or shaft, bore and cap miss it by over 60 mm
 * @throws {DomainError} `quantity-unreadable` when a small part or its place is unknown
 * @see fixtures/published/workedSet.json
 */
export function clubComponents(parts: ClubParts): readonly StagedComponent[] {
  return componentsOf(builtClub(parts));
}
