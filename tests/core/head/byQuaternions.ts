import { glMatrix, quat, vec3 } from "gl-matrix";
import type { BareHead } from "../../../core/head/attitudeOf.ts";
import type { SleeveTilt } from "../../../core/head/sleeveTilt.ts";
import type { Hand } from "../../../core/kinds.ts";

/** Double precision: the library works in single precision otherwise. */
glMatrix.setMatrixArrayType(Array);

const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;
const vertical = vec3.fromValues(0, 0, 1);

/** The other side of the ball: a left-handed player stands where y is negative. */
const side = (hand: Hand) => (hand === "right" ? 1 : -1);

export const rotated = (vector: vec3, axis: vec3, angleRad: number): vec3 =>
  vec3.transformQuat(vec3.create(), vector, quat.setAxisAngle(quat.create(), axis, angleRad));

/** The axis of the hosel of a real club in the world, from the head to the grip. */
const hoselAxis = (lieDeg: number, hand: Hand) => rotated(vec3.fromValues(0, side(hand), 0), vec3.fromValues(side(hand), 0, 0), rad(lieDeg));

/** A direction across the hosel so far clockwise from the target, seen from the butt. */
const acrossHosel = (lieDeg: number, hand: Hand, clockwiseDeg: number) =>
  rotated(vec3.fromValues(1, 0, 0), vec3.negate(vec3.create(), hoselAxis(lieDeg, hand)), rad(clockwiseDeg));

/** The shaft: the hosel's axis turned towards the printed clock, about what is square to both. */
export function shaftInWorld(lieDeg: number, { tiltDeg, clockDeg }: SleeveTilt, hand: Hand): vec3 {
  const bore = hoselAxis(lieDeg, hand);
  const lean = acrossHosel(lieDeg, hand, clockDeg);
  return rotated(bore, vec3.cross(vec3.create(), bore, lean), rad(tiltDeg));
}

/** Where the face looks: the target, lifted by the loft, swung open by the face. */
export function normalInWorld(loftDeg: number, faceDeg: number, hand: Hand): vec3 {
  const lifted = rotated(vec3.fromValues(1, 0, 0), vec3.fromValues(0, 1, 0), rad(-loftDeg));
  return rotated(lifted, vertical, rad(-faceDeg) * side(hand));
}

/** A head in the world as loft and face (open positive). */
export const loftAndFace = (normal: vec3, hand: Hand) => ({
  loftDeg: deg(Math.asin(normal[2] ?? 0)),
  faceDeg: deg(Math.atan2(-(normal[1] ?? 0) * side(hand), normal[0] ?? 0)),
});

/** The squared loft found by rolling the posed head about its shaft until the face looks at the target. */
function loftAfterRolling(normal: vec3, shaft: vec3): number {
  const sideways = (roll: number) => rotated(normal, shaft, roll)[1] ?? 0;
  const step = (low: number, high: number, left: number): number => {
    const middle = (low + high) / 2;
    if (left === 0) {
      return middle;
    }
    return sideways(low) * sideways(middle) <= 0 ? step(low, middle, left - 1) : step(middle, high, left - 1);
  };
  return deg(Math.asin(rotated(normal, shaft, step(-0.6, 0.6, 60))[2] ?? 0));
}

/** The head with its shaft taken straight back to the hosel's axis; the library's own shortest rotation is single precision inside. */
export function returnedByQuaternions(head: BareHead, tilt: SleeveTilt): vec3 {
  const shaft = shaftInWorld(head.designLieDeg, tilt, head.hand);
  const hosel = hoselAxis(head.designLieDeg, head.hand);
  const across = vec3.cross(vec3.create(), shaft, hosel);
  const angleRad = Math.atan2(vec3.length(across), vec3.dot(shaft, hosel));
  return rotated(normalInWorld(head.soledLoftDeg, head.soledFaceDeg, head.hand), vec3.normalize(across, across), angleRad);
}

/** Every reading by quaternions: lean the bore, yaw the soled head, roll it square; at the design lie, take the shaft back and roll. */
export function attitudeByQuaternions(head: BareHead, tilt: SleeveTilt) {
  const shaft = shaftInWorld(head.designLieDeg, tilt, head.hand);
  const yaw = Math.atan2((shaft[0] ?? 0) * side(head.hand), (shaft[1] ?? 0) * side(head.hand));
  const standing = rotated(shaft, vertical, yaw);
  const facing = rotated(normalInWorld(head.soledLoftDeg, head.soledFaceDeg, head.hand), vertical, yaw);
  return {
    squaredLoftDeg: loftAfterRolling(facing, standing),
    squaredLoftAtDesignLieDeg: loftAfterRolling(returnedByQuaternions(head, tilt), hoselAxis(head.designLieDeg, head.hand)),
    soledFaceDeg: loftAndFace(facing, head.hand).faceDeg,
    seatedLieDeg: deg(Math.asin(standing[2] ?? 0)),
  };
}

/** Where a marking on the shaft ends on the clock of the hand, 0 to the target and 90 up, after a turn clockwise from the butt. */
export function clockAfterTurn(clockOfHandDeg: number, clockwiseDeg: number, lieDeg: number, hand: Hand): number {
  const inWorld = acrossHosel(lieDeg, hand, clockOfHandDeg * side(hand));
  const ended = rotated(inWorld, vec3.negate(vec3.create(), hoselAxis(lieDeg, hand)), rad(clockwiseDeg));
  const up = acrossHosel(lieDeg, hand, 90 * side(hand));
  return deg(Math.atan2(vec3.dot(ended, up), ended[0] ?? 0));
}

/** Direction of a shaft in the bore of several pieces, by one product of quaternions, straight being z. */
export function composedByQuaternions(tilts: readonly SleeveTilt[]): vec3 {
  const product = tilts.reduce((outer, { tiltDeg, clockDeg }) => {
    const axis = vec3.fromValues(-Math.sin(rad(clockDeg)), Math.cos(rad(clockDeg)), 0);
    return quat.multiply(quat.create(), outer, quat.setAxisAngle(quat.create(), axis, rad(tiltDeg)));
  }, quat.create());
  return vec3.transformQuat(vec3.create(), vertical, product);
}
