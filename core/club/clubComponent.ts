import type { Grams, KilogramSquareCentimetres, Millimetres } from "../quantity/units.ts";

/** One part of a club as a mass at a place along the shaft. */
export interface ClubComponent {
  readonly name: string;
  readonly massG: Grams;
  /** Its centre of mass along the shaft from the end of the grip cap. */
  readonly fromCapMm: Millimetres;
  /** How far its centre lies off the shaft axis, as a head's does; left out it is on it. */
  readonly fromAxisMm?: Millimetres;
  /** Inertia about its own centre, crosswise to the shaft; left out it is a point. */
  readonly ownInertiaKgCm2?: KilogramSquareCentimetres;
}
