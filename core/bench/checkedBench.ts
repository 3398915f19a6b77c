import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import type { BenchSnapshot, Route } from "./benchTypes.ts";
import type { Pace } from "./pace.ts";

const LONGEST_STEP_MIN = 14 * 24 * 60;
const MOST_PLACES = 1000;

const minutes = (value: number, field: string) => inRange(value, { field, unit: "min", min: 0, max: LONGEST_STEP_MIN });

/**
 * A route whose minutes can be.
 *
 * @throws {DomainError} `quantity-out-of-range` when one is below 0, past two weeks or not finite
 */
export function checkedRoute<R extends Route>(route: R): R {
  finiteNumbers(route, "route");
  minutes(route.playableAfterBondMin, "playableAfterBondMin");
  minutes(route.playableAfterGripMin, "playableAfterGripMin");
  for (const { kind, medianMin, floorMin, setUpMin } of route.steps) {
    minutes(medianMin, `${kind} medianMin`);
    minutes(floorMin, `${kind} floorMin`);
    if (setUpMin !== undefined) minutes(setUpMin, `${kind} setUpMin`);
  }
  return route;
}

/**
 * A bench that can be: whole technicians and places, no time below 0.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number of it cannot be
 */
export function checkedBench(snapshot: BenchSnapshot): BenchSnapshot {
  finiteNumbers(snapshot, "snapshot");
  listOf(snapshot.technicians, { field: "technicians", min: 0, max: MOST_PLACES });
  for (const [station, places] of Object.entries(snapshot.stations)) {
    wholeNumber(places, { field: `stations.${station}`, min: 0, max: MOST_PLACES });
  }
  for (const job of snapshot.jobs) {
    checkedRoute({ ...job, steps: job.steps.map(({ route }) => route) });
    inRange(job.weight, { field: "weight", unit: "", min: 0 });
    job.steps.forEach(({ workedMs }) => {
      inRange(workedMs, { field: "workedMs", unit: "ms", min: 0 });
    });
  }
  return snapshot;
}

/**
 * How durations are drawn: spreads as standard deviations of the logarithm, what was learned, a seed, the number of a sample.
 *
 * @throws {DomainError} `quantity-out-of-range` when a spread is below 0 or above 3, a learned number cannot be, or a seed or sample is not whole
 */
export function checkedDraw({ spreads, learned }: Pace, seed: number, sample: number): void {
  for (const [name, spread] of Object.entries(spreads)) {
    inRange(spread, { field: `spreads.${name}`, unit: "", min: 0, max: 3 });
  }
  for (const { mean, kappa, alpha, beta } of learned) {
    inRange(mean, { field: "mean", unit: "", min: -5, max: 5 });
    inRange(kappa, { field: "kappa", unit: "", min: 1e-6 });
    inRange(alpha, { field: "alpha", unit: "", min: 1 });
    inRange(beta, { field: "beta", unit: "", min: 0 });
  }
  wholeNumber(seed, { field: "seed", min: Number.MIN_SAFE_INTEGER, max: Number.MAX_SAFE_INTEGER });
  wholeNumber(sample, { field: "sample", min: 0, max: Number.MAX_SAFE_INTEGER });
}
