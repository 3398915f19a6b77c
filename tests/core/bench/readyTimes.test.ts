import { describe, expect, it } from "vitest";
import { simulateOnce } from "../../../core/bench/benchSimulation.ts";
import type { BenchJob, BenchSnapshot, ReadyEstimate, Route, WaitFloors } from "../../../core/bench/benchTypes.ts";
import { inSeries } from "../../../core/bench/inSeries.ts";
import { defaultPace, defaultSpreads } from "../../../core/bench/pace.ts";
import { defaultPolicy } from "../../../core/bench/policy.ts";
import { estimateInSlices, readyTimes } from "../../../core/bench/readyTimes.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { DomainError } from "../../../core/errors.ts";
import { instant } from "../../../core/kinds.ts";
import { byLaw } from "../../support/checkOf.ts";
import { benchJob, benchStep, benchWith, hands, inMinutes, MIN, minutesFromNow, now, routeOfSteps, work } from "./benchBuilders.ts";

const noSpreads = { step: 0, job: 0, wait: 0 };
const SAMPLES = 4000;

const estimates = (snapshot: BenchSnapshot, spreads = defaultSpreads, samples = SAMPLES): readonly ReadyEstimate[] =>
  readyTimes({ snapshot, pace: { spreads, learned: [] }, seed: 11, samples });

function only(snapshot: BenchSnapshot, spreads = defaultSpreads): ReadyEstimate {
  const [estimate] = estimates(snapshot, spreads);
  if (estimate === undefined) throw new Error("no estimate");
  return estimate;
}

const driver = (floors: WaitFloors = defaultFloors): Route => routeFor({ kind: "build", family: "driver", adjustable: true }, floors);

const quoted = (route: Route): { readonly likelyMin: number; readonly promiseMin: number } => {
  const estimate = only(benchWith([benchJob(1, route)]));
  return { likelyMin: minutesFromNow(estimate.likelyAt), promiseMin: minutesFromNow(estimate.promiseAt) };
};

/** Within a minute of a figure that is told as "about". */
function expectAbout(minutes: number, told: number): void {
  expect(Math.abs(minutes - told)).toBeLessThanOrEqual(1);
}

describe("readyTimes of one adjustable driver, empty bench, one technician (common practice, no source)", () => {
  it("is likely in hand after about 21 minutes and promised for 23 to 25", () => {
    const { likelyMin, promiseMin } = quoted(driver());
    expectAbout(likelyMin, 21);
    expect(promiseMin).toBeGreaterThanOrEqual(23);
    expect(promiseMin).toBeLessThanOrEqual(25);
  });

  it("takes about 28 minutes and is promised for about 31 when nothing is done during the waits", () => {
    const { likelyMin, promiseMin } = quoted(inSeries(driver()));
    expectAbout(likelyMin, 28);
    expectAbout(promiseMin, 31);
  });

  it("is promised for about 28 minutes when the adhesive asks for 10", () => {
    expectAbout(quoted(driver({ ...defaultFloors, adhesiveHandleMin: 10 })).promiseMin, 28);
  });

  it("takes the 21 minutes of the table when nothing varies, and is playable 15 after gripping at 14.5", () => {
    const estimate = only(benchWith([benchJob(1, driver())]), noSpreads);
    expect(minutesFromNow(estimate.likelyAt)).toBe(21);
    expect(minutesFromNow(estimate.promiseAt)).toBe(21);
    expect(minutesFromNow(estimate.playableAt)).toBe(30);
  });
});

describe(byLaw(readyTimes, "one step alone is ready at the quantiles of its log-normal distribution"), () => {
  // Standard normal quantiles from memory of printed tables: 90 % 1.2816, 80 % 0.8416, 95 % 1.6449.
  const spread = Math.hypot(defaultSpreads.step, defaultSpreads.job);
  const quantileMin = (z: number): number => 60 * Math.exp(spread * z);
  const hour = benchJob(1, routeOfSteps(work("cut", 60)));
  /** 4 standard errors of a sample quantile q of N: √(p(1−p)/N)/density, in minutes; 1 for the rounding. */
  const tolerance = (z: number, p: number): number => {
    const density = Math.exp(-z * z * 0.5) / Math.sqrt(2 * Math.PI);
    return (4 * Math.sqrt((p * (1 - p)) / SAMPLES) * spread * quantileMin(z)) / density + 1;
  };

  it("meets the median and the 90th percentile of one step", () => {
    const estimate = only(benchWith([hour]));
    expect(Math.abs(minutesFromNow(estimate.likelyAt) - 60)).toBeLessThan(tolerance(0, 0.5));
    expect(Math.abs(minutesFromNow(estimate.promiseAt) - quantileMin(1.2816))).toBeLessThan(tolerance(1.2816, 0.9));
  });

  it("gives the chance by the due time as the share of the distribution before it", () => {
    const chance = only(benchWith([{ ...hour, dueAt: inMinutes(quantileMin(0.8416)) }])).chanceByDue;
    expect(Math.abs((chance ?? 0) - 0.8)).toBeLessThan(4 * Math.sqrt((0.8 * 0.2) / SAMPLES));
  });

  it.each([
    ["95 %", 1.6449, true, true],
    ["80 %", 0.8416, true, false],
    ["20 %", -0.8416, false, false],
  ])("with a roll-out that %s of the days reach in time", (_, z, likely, promised) => {
    const estimate = only(benchWith([hour], { rollOutAt: inMinutes(quantileMin(z)) }));
    expect(estimate.likelyAt !== null).toBe(likely);
    expect(estimate.promiseAt !== null).toBe(promised);
    expect(estimate.playableAt !== null).toBe(promised);
  });

  it("promises nothing past roll-out", () => {
    const rollOutAt = instant(now + 10.5 * MIN);
    const tenAndAQuarter = benchJob(1, routeOfSteps(work("cut", 10.25)));
    expect(only(benchWith([tenAndAQuarter], { rollOutAt }), noSpreads).promiseAt).toBe(rollOutAt);
  });
});

describe("readyTimes of a step under way", () => {
  const route = routeOfSteps(work("soleWork", 100), work("measure", 100, { after: ["soleWork"] }));
  const underWay = (spentMin: number): BenchJob =>
    benchJob(1, route, {
      steps: route.steps.map((step, place) => benchStep(step, place === 0 ? { state: "running", startedAt: inMinutes(-spentMin) } : {})),
    });

  /** Minutes left on every whole day on which the first step took longer than the time spent, in order. */
  function daysLeft(spentMin: number): readonly number[] {
    const whole = benchWith([benchJob(1, route)]);
    const left: number[] = [];
    for (let sample = 0; sample < 60_000; sample++) {
      const [first, second] = simulateOnce({ snapshot: whole, policy: defaultPolicy, pace: defaultPace, seed: 5, sample });
      if (minutesFromNow(first?.endAt ?? null) > spentMin) left.push(minutesFromNow(second?.endAt ?? null) - spentMin);
    }
    return left.sort((a, b) => a - b);
  }

  it.each([60, 110, 150])("agrees with all whole days on which the step took longer than the %d minutes spent", (spentMin) => {
    const left = daysLeft(spentMin);
    const expected = (p: number): number => left[Math.floor(p * left.length)] ?? Number.NaN;
    const mean = left.reduce((sum, value) => sum + value, 0) / left.length;
    const deviation = Math.sqrt(left.reduce((sum, value) => sum + (value - mean) ** 2, 0) / left.length);
    const fourErrors = 4 * deviation * Math.sqrt(1 / left.length + 1 / 10_000);
    const [estimate] = estimates(benchWith([underWay(spentMin)]), defaultSpreads, 10_000);
    expect(left.length).toBeGreaterThan(3000);
    // 1.25 and 1.71 deviations a root: the standard errors of a normal's median and 90th percentile; 1 for the rounding.
    expect(Math.abs(minutesFromNow(estimate?.likelyAt ?? null) - expected(0.5))).toBeLessThan(1.25 * fourErrors + 0.5);
    expect(Math.abs(minutesFromNow(estimate?.promiseAt ?? null) - expected(0.9))).toBeLessThan(1.71 * fourErrors + 1);
  });

  it("learns nothing from a wait that has not reached its floor: half of the days it ends there", () => {
    const wait = work("bondSet", 100, { unattended: true, floorMin: 100 });
    const job = benchJob(1, routeOfSteps(wait), { steps: [benchStep(wait, { state: "running", startedAt: inMinutes(-99) })], dueAt: inMinutes(1) });
    expect(Math.abs((only(benchWith([job])).chanceByDue ?? 0) - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / SAMPLES));
  });

  it("is never in hand before now, however long ago it began", () => {
    const estimate = only(benchWith([underWay(3000)]));
    expect(minutesFromNow(estimate.likelyAt)).toBeGreaterThanOrEqual(10);
    expect(minutesFromNow(estimate.promiseAt)).toBeGreaterThanOrEqual(minutesFromNow(estimate.likelyAt));
  });
});

const queue = [1, 2, 3, 4].map((order) => benchJob(order, driver(), { dueAt: inMinutes(30 * order) }));

describe(byLaw(estimateInSlices, "where the work is cut into slices changes nothing"), () => {
  it("gives in slices what it gives at once", () => {
    const question = { snapshot: benchWith(queue), pace: defaultPace, seed: 3, samples: 90 };
    const slices = estimateInSlices(question, 25);
    const progress = [slices.next().value, slices.next().value, slices.next().value];
    expect(progress).toEqual([25, 50, 75]);
    expect(slices.next()).toEqual({ done: true, value: readyTimes(question) });
  });
});

describe(byLaw(inSeries, "the time of a series is the sum of its steps"), () => {
  it("adds up every step when nothing varies", () => {
    const series = inSeries(driver());
    const sumMin = series.steps.reduce((total, { medianMin }) => total + medianMin, 0);
    const estimate = only(benchWith([benchJob(1, series)]), noSpreads);
    expect(Math.abs(minutesFromNow(estimate.likelyAt) - sumMin)).toBeLessThanOrEqual(0.5);
    expect(minutesFromNow(only(benchWith([benchJob(1, driver())]), noSpreads).likelyAt)).toBeLessThan(sumMin - 5);
  });
});

describe("readyTimes", () => {
  it("repeats itself for the same seed and moves with another", () => {
    const snapshot = benchWith([benchJob(1, routeOfSteps(work("soleWork", 600)))]);
    const ask = (seed: number): readonly ReadyEstimate[] => readyTimes({ snapshot, pace: defaultPace, seed, samples: 50 });
    expect(ask(3)).toEqual(ask(3));
    expect(ask(3)).not.toEqual(ask(4));
  });

  it("keeps a job's times when another joins that does not touch it", () => {
    const roomy = { technicians: hands(9), stations: { bench: 9, cutter: 9, bonding: 9, gripping: 9, loftLie: 9, scale: 9, marking: 9, walk: 9 } };
    expect(estimates(benchWith(queue, roomy)).slice(0, 2)).toEqual(estimates(benchWith(queue.slice(0, 2), roomy)));
  });

  it("never has a club playable before its promise, nor promised before it is likely", () => {
    for (const estimate of estimates(benchWith(queue))) {
      expect(minutesFromNow(estimate.promiseAt)).toBeGreaterThanOrEqual(minutesFromNow(estimate.likelyAt));
      expect(minutesFromNow(estimate.playableAt)).toBeGreaterThanOrEqual(minutesFromNow(estimate.promiseAt));
    }
  });

  it("serves a queue of four drivers sooner with two technicians than with one", () => {
    const lastMin = (technicians: number): number =>
      Math.max(...estimates(benchWith(queue, { technicians: hands(technicians) })).map((estimate) => minutesFromNow(estimate.promiseAt)));
    expect(lastMin(2)).toBeLessThan(lastMin(1));
  });

  it("gives a held job no times and no chance", () => {
    const held = benchJob(1, driver(), { held: true, dueAt: inMinutes(600) });
    expect(only(benchWith([held]))).toMatchObject({ likelyAt: null, promiseAt: null, playableAt: null, chanceByDue: 0 });
  });

  it("gives a finished job the time it was finished and the floors after it", () => {
    const steps = driver().steps.map((step, place) => benchStep(step, { state: "done", finishedAt: inMinutes(place - 40) }));
    const gripAt = driver().steps.findIndex((step) => step.kind === "grip") - 40;
    const estimate = only(benchWith([benchJob(1, driver(), { steps })]));
    expect(estimate).toMatchObject({ likelyAt: inMinutes(-25), promiseAt: inMinutes(-25), playableAt: inMinutes(gripAt + 15) });
  });

  it("counts the playable floor from the gripping already done", () => {
    const steps = [benchStep(work("grip", 1), { state: "done", finishedAt: inMinutes(-4) }), benchStep(work("sign", 1))];
    const job = benchJob(1, routeOfSteps(), { steps, playableAfterGripMin: 60 });
    expect(only(benchWith([job]), noSpreads)).toMatchObject({ promiseAt: inMinutes(1), playableAt: inMinutes(56) });
  });

  it("rounds a promise up to the next whole minute", () => {
    const job = benchJob(1, routeOfSteps(work("sign", 1)));
    const snapshot = { ...benchWith([job]), now: instant(now + 1000) };
    expect(only(snapshot, noSpreads).promiseAt).toBe(inMinutes(2));
  });

  it.each([2, -1])("promises nothing for a step under way that outlasts a roll-out %d minutes from now", (rollOut) => {
    const job = benchJob(1, routeOfSteps(), { steps: [benchStep(work("sign", 10), { state: "running", startedAt: inMinutes(-1) })] });
    const bench = benchWith([job], { rollOutAt: inMinutes(rollOut) });
    expect(only(bench, noSpreads)).toMatchObject({ likelyAt: null, promiseAt: null, playableAt: null });
  });

  it.each([0, -1, 2.5, Number.NaN, 1_000_000])("refuses %d samples", (samples) => {
    expect(() => estimates(benchWith(queue), defaultSpreads, samples)).toThrow(DomainError);
  });
});
