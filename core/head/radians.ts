import { type Degrees, degrees } from "../quantity/units.ts";

/** An angle as the formulas take it. */
export const radians = (deg: number): number => (deg * Math.PI) / 180;

/** An angle as people read it. */
export const inDegrees = (rad: number): Degrees => degrees((rad * 180) / Math.PI);
