import type { Quantity } from "../kinds.ts";

export type CubicCentimetres = Quantity<"cm³">;
export type SquareMillimetres = Quantity<"mm²">;
/** How long a pendulum's ball stays on a face. */
export type Microseconds = Quantity<"µs">;
/** Hardness by the durometer's scale A, for putter faces. */
export type ShoreA = Quantity<"Shore A">;
/** Hardness by the durometer's scale D, for the faces of woods and irons. */
export type ShoreD = Quantity<"Shore D">;

export const cubicCentimetres = (n: number): CubicCentimetres => n as CubicCentimetres;
export const squareMillimetres = (n: number): SquareMillimetres => n as SquareMillimetres;
export const microseconds = (n: number): Microseconds => n as Microseconds;
export const shoreA = (n: number): ShoreA => n as ShoreA;
export const shoreD = (n: number): ShoreD => n as ShoreD;
