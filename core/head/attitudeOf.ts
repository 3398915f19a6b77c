import type { Attitude } from "../buildSheet/plan.ts";
import type { Hand } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";

/** A head measured bare, at zero sleeve tilt. */
export interface BareHead {
  readonly soledLoftDeg: number;
  readonly soledFaceDeg: number;
  readonly designLieDeg: number;
  readonly hand: Hand;
}

/** A sleeve's bore tilted against its axis, the clock as printed for a right-handed head. */
interface SleeveTilt {
  readonly tiltDeg: number;
  readonly clockDeg: number;
}

const radians = (deg: number) => (deg * Math.PI) / 180;
const inDegrees = (rad: number) => (rad * 180) / Math.PI;

function checked(head: BareHead, tilt: SleeveTilt): void {
  inRange(head.soledLoftDeg, { field: "soledLoftDeg", unit: "deg", min: -15, max: 75 });
  inRange(head.soledFaceDeg, { field: "soledFaceDeg", unit: "deg", min: -20, max: 20 });
  inRange(head.designLieDeg, { field: "designLieDeg", unit: "deg", min: 40, max: 85 });
  inRange(tilt.tiltDeg, { field: "tiltDeg", unit: "deg", min: 0, max: 5 });
  inRange(tilt.clockDeg, { field: "clockDeg", unit: "deg", min: -360, max: 360 });
}

/** The shaft's direction in the frame of the soled head: x to the target, y to the player, z up. */
function shaftDirection(head: BareHead, tilt: SleeveTilt): readonly [number, number, number] {
  const lie = radians(head.designLieDeg);
  const lean = Math.sin(radians(tilt.tiltDeg));
  const clock = radians(head.hand === "right" ? tilt.clockDeg : -tilt.clockDeg);
  const along = Math.cos(radians(tilt.tiltDeg));
  return [
    lean * Math.cos(clock),
    along * Math.cos(lie) - lean * Math.sin(clock) * Math.sin(lie),
    along * Math.sin(lie) + lean * Math.sin(clock) * Math.cos(lie),
  ];
}

/**
 * Lie, soled face and squared loft of a head whose sleeve leans the shaft.
 *
 *     n = (cos l·cos f, −cos l·sin f, sin l),   s = the shaft's direction
 *     seated lie = asin s_z     soled face = f − atan2(s_x, s_y)     squared loft = asin( n·s / sin(seated lie) )
 *
 * Soled: the head flat on its design sole, yawed until the shaft leans to neither side; its loft stays l. Squared:
 * rolled about the shaft at seated lie until the face looks at the target. Exact for a rigid head on a flat sole; a
 * cambered sole, sleeve seating and bonding move a real club by ±0.2°. A left-handed head is the mirror image: the
 * same mark leans the other way round the clock, so what is upright in one hand is flat in the other.
 *
 * @param head - soled loft l, soled face f (open positive) and design lie in degrees, at zero tilt
 * @param tilt - tilt of the bore and its place on the clock in degrees: 0 to the target, 90 upright
 * @returns squared loft, soled face (open positive) and seated lie in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible or the face cannot be squared
 * @see fixtures/published/sleeveGeometry.json
 */
export function attitudeOf(head: BareHead, tilt: SleeveTilt): Attitude {
  checked(head, tilt);
  const loft = radians(head.soledLoftDeg);
  const face = radians(head.soledFaceDeg);
  const [toTarget, toPlayer, up] = shaftDirection(head, tilt);
  const normalAlongShaft = -Math.cos(loft) * Math.sin(face) * toPlayer + Math.cos(loft) * Math.cos(face) * toTarget + Math.sin(loft) * up;
  const sineOfSquaredLoft = inRange(normalAlongShaft / up, { field: "squaredLoftSine", unit: "", min: -1, max: 1 });
  return {
    squaredLoftDeg: inDegrees(Math.asin(sineOfSquaredLoft)),
    soledFaceDeg: head.soledFaceDeg - inDegrees(Math.atan2(toTarget, toPlayer)),
    seatedLieDeg: inDegrees(Math.asin(up)),
  };
}

/**
 * The three readings of a head whose shaft is bonded straight into the hosel, or sits in a sleeve without tilt.
 *
 * @param head - measured bare, in degrees
 * @returns squared loft, soled face (open positive) and seated lie in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 */
export function bondedAttitude(head: BareHead): Attitude {
  return attitudeOf(head, { tiltDeg: 0, clockDeg: 0 });
}
