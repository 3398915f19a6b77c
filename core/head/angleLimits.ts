import { inRange } from "../quantity/inRange.ts";

/** What an angle of a head or a sleeve can be, in degrees; wide enough for a putter and a lob wedge. */
const angleLimits = {
  loft: { min: -15, max: 75 },
  face: { min: -20, max: 20 },
  lie: { min: 40, max: 85 },
  tilt: { min: 0, max: 5 },
  clock: { min: -360, max: 360 },
} as const;

/**
 * An angle that such a thing can have.
 *
 * @param value - in degrees
 * @param kind - what it is an angle of
 * @param field - its name
 * @returns the same angle
 * @throws {DomainError} `quantity-out-of-range` when it is not finite or outside the limits of its kind
 */
export const angleInRange = (value: number, kind: keyof typeof angleLimits, field: string): number =>
  inRange(value, { field, unit: "deg", ...angleLimits[kind] });
