import { performance } from "node:perf_hooks";
import type { BenchSnapshot } from "../../core/bench/benchTypes.ts";
import { defaultPace } from "../../core/bench/pace.ts";
import { readyTimes } from "../../core/bench/readyTimes.ts";
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
