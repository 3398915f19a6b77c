import type { Hand } from "../kinds.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { attitudeOf, type BareHead } from "./attitudeOf.ts";
import type { SleeveTilt } from "./sleeveTilt.ts";

/** What the gauge reads of a head with its sleeve set. */
interface Readings {
  readonly squaredLoftDeg: Degrees;
  readonly soledFaceDeg: Degrees;
  readonly seatedLieDeg: Degrees;
}

/** Each round leaves a tenth of what was off: a reading follows its own angle almost one for one. */
const ROUNDS = 25;

/**
 * The bare head that reads so with its shaft leaned by a sleeve.
 *
 *     angle' = angle + (read − attitude of the angles), until nothing is off
 *
 * The inverse of `attitudeOf`, to its last digits: the angles are moved by what is off, round after round. What the gauge
 * misread goes into the bare head with it.
 *
 * @param reads - squared loft at the seated lie, soled face (open positive), seated lie in degrees
 * @param tilt - tilt of the bore and its place on the clock in degrees
 * @param hand - whose head it is
 * @returns soled loft, soled face and design lie in degrees at zero tilt
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the hand is none
 * @see fixtures/published/sleeveGeometry.json
 */
export function bareHeadOf(reads: Readings, tilt: SleeveTilt, hand: Hand): BareHead {
  angleInRange(reads.squaredLoftDeg, "loft", "squaredLoftDeg");
  angleInRange(reads.soledFaceDeg, "face", "soledFaceDeg");
  angleInRange(reads.seatedLieDeg, "lie", "seatedLieDeg");
  const first: BareHead = { soledLoftDeg: reads.squaredLoftDeg, soledFaceDeg: reads.soledFaceDeg, designLieDeg: reads.seatedLieDeg, hand };
  return Array.from({ length: ROUNDS }).reduce<BareHead>((head) => {
    const got = attitudeOf(head, tilt);
    return {
      soledLoftDeg: degrees(head.soledLoftDeg + reads.squaredLoftDeg - got.squaredLoftDeg),
      soledFaceDeg: degrees(head.soledFaceDeg + reads.soledFaceDeg - got.soledFaceDeg),
      designLieDeg: degrees(head.designLieDeg + reads.seatedLieDeg - got.seatedLieDeg),
      hand,
    };
  }, first);
}
