/** A direction in the frame of the soled head: x to the target, y to the player, z up. In either hand. */
export type Vector = readonly [toTarget: number, toPlayer: number, up: number];

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const cross = (a: Vector, b: Vector): Vector => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** The vector a·v + b·w + …, from pairs of a factor and a vector. */
export const combined = (...terms: readonly (readonly [number, Vector])[]): Vector => {
  const sum = (part: 0 | 1 | 2) => terms.reduce((total, [factor, vector]) => total + factor * vector[part], 0);
  return [sum(0), sum(1), sum(2)];
};

/** A vector turned about a unit axis by the right-hand rule, in radians (Rodrigues). */
export function turnedAbout(axis: Vector, vector: Vector, angleRad: number): Vector {
  const along = dot(axis, vector) * (1 - Math.cos(angleRad));
  return combined([Math.cos(angleRad), vector], [Math.sin(angleRad), cross(axis, vector)], [along, axis]);
}
