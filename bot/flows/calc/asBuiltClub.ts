import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import type { BuiltClub } from "../../../core/club/clubParts.ts";
import { FULCRUM_MM } from "../../../core/quantity/swingWeightScale.ts";
import type { Millimetres } from "../../../core/quantity/units.ts";

export interface ClubLengths {
  readonly shaftLengthMm: Millimetres;
  readonly capMm: Millimetres;
}

/** Components as a club whose head or length may change, or null when it lacks head, shaft or grip; small parts by the side of the fulcrum they lie on. */
export function asBuiltClub<C extends ClubComponent>(components: readonly C[], lengths: ClubLengths): BuiltClub<C> | null {
  const named = (name: string): C | undefined => components.find((part) => part.name === name);
  const [head, shaft, grip] = ["head", "shaft", "grip"].map(named);
  if (head === undefined || shaft === undefined || grip === undefined) return null;
  const small = components.filter((part) => part !== head && part !== shaft && part !== grip);
  return {
    ...lengths,
    head,
    shaft,
    grip,
    headEnd: small.filter(({ fromCapMm }) => fromCapMm >= FULCRUM_MM),
    buttEnd: small.filter(({ fromCapMm }) => fromCapMm < FULCRUM_MM),
  };
}
