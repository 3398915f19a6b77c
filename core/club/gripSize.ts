import { oneOf } from "../quantity/oneOf.ts";
import { type Millimetres, mmFromInches } from "../quantity/units.ts";

/** Standard outer diameters in inches, 2 in below the cap, on a shaft as thick as the core. */
const standardIn = { mens: 0.9, ladies: 0.85 } as const;

/** Sixty-fourths of an inch over standard. Charts round them: 0.915, 0.930, 0.945, 0.960, 1.025. */
const sixtyFourths = {
  "-1/64": -1,
  standard: 0,
  "+1/64": 1,
  "+1/32": 2,
  "+3/64": 3,
  "+1/16": 4,
  "+1/8": 8,
} as const;

export type GripStandard = keyof typeof standardIn;
export type GripSizeName = keyof typeof sixtyFourths;

const standards = Object.keys(standardIn) as readonly GripStandard[];
export const gripSizeNames = Object.keys(sixtyFourths) as readonly GripSizeName[];

/**
 * Outer diameter of a named grip size, 2 in below the cap.
 *
 *     D = standard + n/64 in
 *
 * Exact fractions; printed charts use rounded decimals up to 0.0025 in smaller.
 *
 * @param size - over standard, such as `+1/32`
 * @param standard - `mens` 0.900 in or `ladies` 0.850 in
 * @returns mm
 * @throws {DomainError} `quantity-unreadable` for a size or standard that is not known
 * @see fixtures/published/gripSizes.json
 */
export function gripSize(size: GripSizeName, standard: GripStandard = "mens"): Millimetres {
  return mmFromInches(standardIn[oneOf(standard, standards, "standard")] + sixtyFourths[oneOf(size, gripSizeNames, "size")] / 64);
}
