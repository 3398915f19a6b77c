import type { Quantity } from "../kinds.ts";
import { inRange } from "./inRange.ts";

export type Grams = Quantity<"g">;
export type Millimetres = Quantity<"mm">;
export type Degrees = Quantity<"deg">;
/** Swing weight on the 14-inch scale in points, D0 = 0. */
export type SwingWeightPoints = Quantity<"point">;
export type KilogramSquareCentimetres = Quantity<"kg·cm²">;
/** A moment on a swing-weight scale. */
export type InchOunces = Quantity<"in-oz">;
export type CyclesPerMinute = Quantity<"cpm">;
/** Bending stiffness EI. */
export type NewtonSquareMetres = Quantity<"N·m²">;
export type Seconds = Quantity<"s">;

/* These name the unit of a number and look at nothing: whatever takes a quantity refuses what it cannot be. */
export const grams = (n: number): Grams => n as Grams;
export const millimetres = (n: number): Millimetres => n as Millimetres;
export const degrees = (n: number): Degrees => n as Degrees;
export const swingWeightPoints = (n: number): SwingWeightPoints => n as SwingWeightPoints;
export const kilogramSquareCentimetres = (n: number): KilogramSquareCentimetres => n as KilogramSquareCentimetres;
export const inchOunces = (n: number): InchOunces => n as InchOunces;
export const cyclesPerMinute = (n: number): CyclesPerMinute => n as CyclesPerMinute;
export const newtonSquareMetres = (n: number): NewtonSquareMetres => n as NewtonSquareMetres;
export const seconds = (n: number): Seconds => n as Seconds;

/** Exact by definition (international inch). */
export const MM_PER_INCH = 25.4;
/** Exact by definition (avoirdupois ounce). */
export const GRAMS_PER_OUNCE = 28.349523125;

/** Exact. @throws {DomainError} `quantity-out-of-range` when it is not finite */
export const inchesFromMm = (mm: number): number => inRange(mm, { field: "length", unit: "mm" }) / MM_PER_INCH;
/** Exact. @throws {DomainError} `quantity-out-of-range` when it is not finite */
export const mmFromInches = (inches: number): Millimetres => millimetres(inRange(inches, { field: "length", unit: "in" }) * MM_PER_INCH);
