/**
 * A head on the gauge, by turning arrows about one another: x to the target, y across, z up. A left-handed head stands
 * on the other side of the ball, its sleeve is the same piece as a right-handed one's.
 */

export interface Reading {
  readonly loftDeg: number;
  readonly faceDeg: number;
  readonly lieDeg: number;
  readonly bounceDeg: number | null;
}

type Arrow = readonly [x: number, y: number, z: number];

const RAD = Math.PI / 180;
const TARGET: Arrow = [1, 0, 0];
const UP: Arrow = [0, 0, 1];

const scaled = ([x, y, z]: Arrow, by: number): Arrow => [x * by, y * by, z * by];
const sum = (...arrows: readonly Arrow[]): Arrow => arrows.reduce<Arrow>(([x, y, z], [a, b, c]) => [x + a, y + b, z + c], [0, 0, 0]);
const across = ([a, b, c]: Arrow, [x, y, z]: Arrow): Arrow => [b * z - c * y, c * x - a * z, a * y - b * x];
const along = ([a, b, c]: Arrow, [x, y, z]: Arrow): number => a * x + b * y + c * z;

/** An arrow turned about an axis of length 1. */
const turned = (arrow: Arrow, axis: Arrow, by: number): Arrow =>
  sum(scaled(arrow, Math.cos(by)), scaled(across(axis, arrow), Math.sin(by)), scaled(axis, along(axis, arrow) * (1 - Math.cos(by))));

/** The roll about the shaft at which the face looks neither left nor right, by halving. */
function squared(face: Arrow, shaft: Arrow): Arrow {
  let [low, high] = [-Math.PI / 6, Math.PI / 6];
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    [low, high] = turned(face, shaft, middle)[1] < 0 ? [middle, high] : [low, middle];
  }
  return turned(face, shaft, (low + high) / 2);
}

/** Squared loft, soled face (open positive) and seated lie of a head whose sleeve leans the shaft by a tilt towards a printed mark. */
export function sleeved(head: Readonly<Record<string, string>>, tiltDeg: number, clockDeg: number): Reading {
  const [loft, open, lie, tilt, clock] = [head.soled_loft_deg, head.soled_face_deg, head.design_lie_deg, tiltDeg, clockDeg].map(
    (degrees) => Number(degrees) * RAD,
  ) as [number, number, number, number, number];
  const player = head.hand === "left" ? -1 : 1;
  const bore: Arrow = [0, player * Math.cos(lie), Math.sin(lie)];
  const soled: Arrow = [Math.cos(loft) * Math.cos(open), -player * Math.cos(loft) * Math.sin(open), Math.sin(loft)];
  const towards = sum(scaled(TARGET, Math.cos(clock)), scaled(across(TARGET, bore), Math.sin(clock)));
  const leaning = sum(scaled(bore, Math.cos(tilt)), scaled(towards, Math.sin(tilt)));
  /** The head stays flat on its sole and is turned until the shaft leans to neither side. */
  const yaw = Math.atan(leaning[0] / leaning[1]);
  const [face, shaft] = [turned(soled, UP, yaw), turned(leaning, UP, yaw)];
  return {
    loftDeg: Math.asin(squared(face, shaft)[2]) / RAD,
    faceDeg: Math.atan2(-player * face[1], face[0]) / RAD,
    lieDeg: Math.asin(shaft[2]) / RAD,
    bounceDeg: head.bounce_deg ? Number(head.bounce_deg) : null,
  };
}

/** The same of a head whose shaft goes straight into the hosel. */
export const bonded = (head: Readonly<Record<string, string>>): Reading => sleeved(head, 0, 0);
