import type { Spreads } from "../benchTypes.ts";
import type { StagePace } from "../pace.ts";
import type { StageSeen } from "./presses.ts";

/** One stage seen, joined to what it tells of: its stage of a kind of work, and its job. */
export interface Row {
  readonly logPace: number;
  /** c²: how much of a step's variance it has. */
  readonly share: number;
  readonly stage: LearnedStage;
  readonly job: LearnedJob;
}

/** A stage of a kind of work with its rows. `pace` is the estimate so far. */
export interface LearnedStage {
  readonly prior: StagePace;
  readonly rows: Row[];
  pace: StagePace;
}

/** A job with its rows. Mean and variance of the logarithm of its factor as estimated so far. */
export interface LearnedJob {
  readonly rows: Row[];
  factorMean: number;
  factorVariance: number;
}

/** Before anything is seen the route's own minutes count as so many steps seen, the fixed spread as so many degrees of freedom. */
const PRIOR_STEPS = 4;
const PRIOR_FREEDOM = 8;

/** The pace of a stage of which nothing is seen: about the route's own minutes, one step forecast with the variance of the fixed spread. */
function priorPace({ work, stage }: StageSeen, { step }: Spreads): StagePace {
  const alpha = PRIOR_FREEDOM / 2;
  const meanVariance = (step ** 2 * PRIOR_STEPS) / (PRIOR_STEPS + 1);
  return { work, stage, mean: 0, kappa: PRIOR_STEPS, alpha, beta: (alpha - 1) * meanVariance };
}

/** All rows joined; stages in the order of their names. */
export function learningModel(
  seen: readonly StageSeen[],
  spreads: Spreads,
): { readonly stages: readonly LearnedStage[]; readonly jobs: readonly LearnedJob[] } {
  const stages = new Map<string, LearnedStage>();
  const jobs = new Map<number, LearnedJob>();
  for (const one of seen) {
    const key = `${one.work}/${one.stage}`;
    const prior = priorPace(one, spreads);
    const stage = stages.get(key) ?? { prior, rows: [], pace: prior };
    const job = jobs.get(one.order) ?? { rows: [], factorMean: 0, factorVariance: 0 };
    const row: Row = { logPace: one.logPace, share: one.spreadShare ** 2, stage, job };
    stage.rows.push(row);
    job.rows.push(row);
    stages.set(key, stage);
    jobs.set(one.order, job);
  }
  const named = [...stages].sort(([one], [other]) => (one < other ? -1 : 1));
  return { stages: named.map(([, stage]) => stage), jobs: [...jobs.values()] };
}
