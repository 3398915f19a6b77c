import type { StageSeen } from "../../../core/bench/learning/presses.ts";
import type { Pace } from "../../../core/bench/pace.ts";
import { defaultSpreads } from "../../../core/bench/pace.ts";

/** So many pseudo-observations that a number counts as known. */
const KNOWN = 1e9;

/**
 * The estimate to beat: plain mean and standard deviation of the log paces of each stage, put in as if they were known, no factor of a job. A stage seen
 * once keeps the fixed spread.
 */
export function plugInPace(seen: readonly StageSeen[]): Pace {
  const stages = new Map<string, StageSeen[]>();
  for (const one of seen) {
    const key = `${one.work}/${one.stage}`;
    stages.set(key, [...(stages.get(key) ?? []), one]);
  }
  const learned = [...stages.values()].flatMap((rows) => {
    const [first] = rows;
    if (first === undefined || rows.length < 2) return [];
    const mean = rows.reduce((sum, { logPace }) => sum + logPace, 0) / rows.length;
    const squares = rows.reduce((sum, { logPace, spreadShare }) => sum + ((logPace - mean) / spreadShare) ** 2, 0);
    const variance = squares / (rows.length - 1);
    return [{ work: first.work, stage: first.stage, mean, kappa: KNOWN, alpha: KNOWN, beta: KNOWN * variance }];
  });
  return { spreads: { ...defaultSpreads, job: 0 }, learned };
}
