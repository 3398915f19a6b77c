import { inRange } from "../quantity/inRange.ts";
import type { CyclesPerMinute, Degrees, Grams, KilogramSquareCentimetres, Millimetres } from "../quantity/units.ts";

/** What a frequency depends on beside the shaft. A reading without it says nothing: no standard exists. */
export interface FrequencySetUp {
  /** How much of the butt is held in the clamp. */
  readonly clampMm: Millimetres;
  /** The head, or the test mass in its stead. */
  readonly tipMassG: Grams;
  readonly gripOn: boolean;
  /** The plane of swing about the shaft, from the logo, 0 to 180; left out when it was not noted. */
  readonly planeDeg?: Degrees;
  /** How far past the tip the centre of the tip mass lies, along the shaft; left out it is at the tip. */
  readonly tipMassBeyondTipMm?: Millimetres;
  /** Inertia of the tip mass about its own centre, in the plane of swing; left out it is a point. */
  readonly tipMassInertiaKgCm2?: KilogramSquareCentimetres;
}

/** A frequency, read or predicted, with the set-up it belongs to. */
export interface FrequencyReading {
  readonly cpm: CyclesPerMinute;
  readonly setUp: FrequencySetUp;
}

/** A set-up that can be: every number finite and within what a bench knows. */
export function checkedSetUp(setUp: FrequencySetUp): FrequencySetUp {
  inRange(setUp.clampMm, { field: "clampMm", unit: "mm", min: 0, max: 500 });
  inRange(setUp.tipMassG, { field: "tipMassG", unit: "g", min: 0, max: 2000 });
  inRange(setUp.planeDeg ?? 0, { field: "planeDeg", unit: "deg", min: 0, max: 180 });
  inRange(setUp.tipMassBeyondTipMm ?? 0, { field: "tipMassBeyondTipMm", unit: "mm", min: -200, max: 200 });
  inRange(setUp.tipMassInertiaKgCm2 ?? 0, { field: "tipMassInertiaKgCm2", unit: "kg·cm²", min: 0, max: 100 });
  return setUp;
}

/** A reading that can be. */
export function checkedReading(reading: FrequencyReading): FrequencyReading {
  inRange(reading.cpm, { field: "cpm", unit: "cpm", min: 1, max: 5000 });
  checkedSetUp(reading.setUp);
  return reading;
}
