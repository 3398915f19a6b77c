import { inRange } from "../quantity/inRange.ts";
import { type Grams, type KilogramSquareCentimetres, kilogramSquareCentimetres, type Millimetres, type Seconds, seconds } from "../quantity/units.ts";

/** Standard acceleration of free fall in m/s², exact by convention; on the ground it differs by 0.3 % at most. */
const STANDARD_GRAVITY = 9.80665;
const KG_SQUARE_CM_PER_KG_SQUARE_M = 1e4;
const ROUNDING = 1e-9;

/** M·g·BP, the moment that brings a hanging club back, in N·m a radian. */
function restoringMoment(totalMass: Grams, balancePoint: Millimetres): number {
  const massKg = inRange(totalMass, { field: "totalMassG", unit: "g", min: 1, max: 5000 }) / 1000;
  const balanceM = inRange(balancePoint, { field: "balancePointMm", unit: "mm", min: 1, max: 2000 }) / 1000;
  return massKg * STANDARD_GRAVITY * balanceM;
}

/** No body has less inertia about an axis than all of its mass at its balance point: I ≥ M·BP² (parallel axes). */
function atLeastAsPoint(inertiaKgCm2: number, totalMass: Grams, balancePoint: Millimetres): number {
  const pointKgCm2 = (totalMass / 1000) * (balancePoint / 10) ** 2;
  return inRange(inertiaKgCm2, { field: "inertiaKgCm2", unit: "kg·cm²", min: pointKgCm2 * (1 - ROUNDING) });
}

/**
 * Inertia of a club about the end of its cap from how it swings as a pendulum hung there.
 *
 *     I = M·g·BP·T² / (4π²)
 *
 * Small swings without friction: reads 0.4 % high at 10° to each side. 1 ms of T is 0.1 % of I, 1 mm of BP 0.14 %, local gravity up to
 * 0.3 %: time ten swings.
 *
 * @param period - T of one swing there and back in s, 0.1 to 10
 * @param totalMass - M in g, 1 to 5000
 * @param balancePoint - BP in mm from the end of the cap, 1 to 2000
 * @returns kg·cm²
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible, or the inertia less than M·BP²
 * @see fixtures/published/clubPendulum.json
 */
export function inertiaFromPendulum(period: Seconds, totalMass: Grams, balancePoint: Millimetres): KilogramSquareCentimetres {
  const periodS = inRange(period, { field: "periodS", unit: "s", min: 0.1, max: 10 });
  const inertiaKgM2 = restoringMoment(totalMass, balancePoint) * (periodS / (2 * Math.PI)) ** 2;
  return kilogramSquareCentimetres(atLeastAsPoint(inertiaKgM2 * KG_SQUARE_CM_PER_KG_SQUARE_M, totalMass, balancePoint));
}

/**
 * How long a club hung at the end of its cap takes to swing there and back.
 *
 *     T = 2π·√( I / (M·g·BP) )
 *
 * Small swings without friction: 0.2 % longer at 10° to each side.
 *
 * @param inertia - I about the end of the cap in kg·cm², 1 to 20000
 * @param totalMass - M in g, 1 to 5000
 * @param balancePoint - BP in mm from the end of the cap, 1 to 2000
 * @returns s
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible, or the inertia less than M·BP²
 * @see fixtures/published/clubPendulum.json
 */
export function pendulumPeriod(inertia: KilogramSquareCentimetres, totalMass: Grams, balancePoint: Millimetres): Seconds {
  const inertiaKgCm2 = inRange(inertia, { field: "inertiaKgCm2", unit: "kg·cm²", min: 1, max: 20_000 });
  const moment = restoringMoment(totalMass, balancePoint);
  const inertiaKgM2 = atLeastAsPoint(inertiaKgCm2, totalMass, balancePoint) / KG_SQUARE_CM_PER_KG_SQUARE_M;
  return seconds(2 * Math.PI * Math.sqrt(inertiaKgM2 / moment));
}
