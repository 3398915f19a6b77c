import type { FrequencySetUp } from "../../../core/club/frequencySetUp.ts";
import { cyclesPerMinute, degrees, grams, kilogramSquareCentimetres, millimetres } from "../../../core/quantity/units.ts";
import { expectBounds } from "./refusals.ts";

export const someSetUp = (given: Partial<FrequencySetUp> = {}): FrequencySetUp => ({
  clampMm: millimetres(127),
  tipMassG: grams(200),
  gripOn: false,
  ...given,
});

export const someReading = (cpm: number, given: Partial<FrequencySetUp> = {}) => ({ cpm: cyclesPerMinute(cpm), setUp: someSetUp(given) });

/** A clamp, a tip mass and its details just possible, and refused a step beyond. */
export function expectSetUpBounds(call: (setUp: FrequencySetUp) => unknown) {
  expectBounds((mm) => call(someSetUp({ clampMm: millimetres(mm) })), { lowest: 0, highest: 500, step: 0.1 });
  expectBounds((g) => call(someSetUp({ tipMassG: grams(g) })), { lowest: 0, highest: 2000, step: 0.1 });
  expectBounds((deg) => call(someSetUp({ planeDeg: degrees(deg) })), { lowest: 0, highest: 180, step: 0.1 });
  expectBounds((mm) => call(someSetUp({ tipMassBeyondTipMm: millimetres(mm) })), { lowest: -200, highest: 200, step: 0.1 });
  expectBounds((inertia) => call(someSetUp({ tipMassInertiaKgCm2: kilogramSquareCentimetres(inertia) })), { lowest: 0, highest: 100, step: 0.1 });
}

/** The same for a reading, its cycles a minute beside. */
export function expectReadingBounds(call: (reading: ReturnType<typeof someReading>) => unknown) {
  expectBounds((cpm) => call(someReading(cpm)), { lowest: 1, highest: 5000, step: 0.1 });
  expectSetUpBounds((setUp) => call({ cpm: cyclesPerMinute(250), setUp }));
}
