import { performance } from "node:perf_hooks";
import type { BenchSnapshot } from "../../core/bench/benchTypes.ts";
import { choosePolicyInSlices } from "../../core/bench/choosePolicy.ts";
import { defaultPace } from "../../core/bench/pace.ts";
import { estimateInSlices, readyTimes } from "../../core/bench/readyTimes.ts";
import { defaultFloors, routeFor } from "../../core/bench/routes.ts";
import { benchJob, benchWith, hands, inMinutes } from "../core/bench/benchBuilders.ts";

const RUNS = 5;
const SAMPLES = 500;

function bench(clubs: number, technicians: number): BenchSnapshot {
  const jobs = Array.from({ length: clubs }, (_, at) => {
    const family = at % 3 === 0 ? "iron" : "driver";
    return benchJob(at + 1, routeFor({ kind: "build", family, adjustable: true }, defaultFloors), {
      dueAt: inMinutes(60 + 15 * at),
    });
  });
  return benchWith(jobs, { technicians: hands(technicians) });
}

/** Prints what an estimate of the whole bench costs, the median of five after one to warm up. */
for (const [clubs, technicians] of [
  [1, 1],
  [10, 1],
  [40, 2],
] as const) {
  const question = { snapshot: bench(clubs, technicians), pace: defaultPace, seed: 1, samples: SAMPLES };
  readyTimes(question);
  const times = Array.from({ length: RUNS }, () => {
    const from = performance.now();
    readyTimes(question);
    return performance.now() - from;
  }).sort((a, b) => a - b);
  console.log(`ready times, ${clubs} clubs, ${technicians} technicians, ${SAMPLES} samples: ${times[Math.floor(RUNS / 2)]?.toFixed(1)} ms`);
}

/** Drives work in slices as the bot does, and keeps the longest time other work has to wait. */
async function inTurns<T>(work: Generator<number, T, void>, pause: { longestMs: number }): Promise<T> {
  for (;;) {
    const from = performance.now();
    const slice = work.next();
    pause.longestMs = Math.max(pause.longestMs, performance.now() - from);
    if (slice.done === true) return slice.value;
    await new Promise((resolve) => setImmediate(resolve));
  }
}

/** Prints what a re-estimate of a full bench costs: the choice of the policy, then the times of all orders under it. */
for (let run = 0; run < 2; run++) {
  const snapshot = bench(40, 2);
  const pause = { longestMs: 0 };
  const from = performance.now();
  const { policy } = await inTurns(choosePolicyInSlices({ snapshot, pace: defaultPace, seed: 1, incumbent: null }), pause);
  const chosenMs = performance.now() - from;
  await inTurns(estimateInSlices({ snapshot, policy, pace: defaultPace, seed: 1, samples: SAMPLES }), pause);
  const steps = snapshot.jobs.reduce((sum, job) => sum + job.steps.length, 0);
  console.log(
    `re-estimate of 40 orders, ${steps} steps, ${SAMPLES} samples${run === 0 ? " (cold)" : ""}: ${(performance.now() - from).toFixed(0)} ms, of it choosing ${chosenMs.toFixed(0)} ms; longest pause ${pause.longestMs.toFixed(1)} ms`,
  );
}
