import type { ClubComponent } from "./clubComponent.ts";
import type { BareHeadMass, BuiltClub, PartsAroundHead, StagedComponent } from "./clubParts.ts";
import { componentsAroundHead } from "./componentsAroundHead.ts";
import { headComponent } from "./headComponent.ts";

/** All a club is made of, measured and weighed. */
export type ClubParts = PartsAroundHead & { readonly head: BareHeadMass };

/** Every component of a built club but its head. */
export function withoutHead<C extends ClubComponent>({ headEnd, shaft, grip, buttEnd }: Omit<BuiltClub<C>, "head">): readonly C[] {
  return [shaft, ...headEnd, ...buttEnd, grip];
}

/** Every component of a built club. */
export function componentsOf<C extends ClubComponent>(club: BuiltClub<C>): readonly C[] {
  return [...withoutHead(club), club.head];
}

/**
 * A whole club from its parts, as it is needed for a change of its length or of its head.
 *
 *     head: x = L − s, own inertia I_cg, d off the axis     shaft: x = cap + balance from the butt     small parts: at their places
 *
 * Masses on one axis but for the head. Against a worked set of a driver and six irons within 0.1 g, 0.01 in of balance,
 * 0.02 points and 1 kg·cm².
 *
 * @param parts - lengths and places in mm, masses in g, inertia in kg·cm²
 * @returns the components by the end of the club they belong to, each with the time it comes on
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible, a part lies past the length, or shaft, bore and cap miss it by over 60 mm
 * @throws {DomainError} `quantity-unreadable` when a small part or its place is unknown
 * @see fixtures/published/workedSet.json
 */
export function builtClub(parts: ClubParts): BuiltClub<StagedComponent> {
  return { ...componentsAroundHead(parts), head: headComponent(parts.head, parts.playingLengthMm, parts.headCentre) };
}
