import { inRange } from "../../quantity/inRange.ts";
import { listOf } from "../../quantity/listOf.ts";
import { oneOf } from "../../quantity/oneOf.ts";
import { wholeNumber } from "../../quantity/wholeNumber.ts";
import type { Spreads } from "../benchTypes.ts";
import { type Pace, type StagePace, stages } from "../pace.ts";
import type { StageSeen } from "./presses.ts";
import { freedOfMean, type JobFactor, priorPace, stageUpdate, stepVariance } from "./stageUpdate.ts";

/** The fixed spread of a job counts as so many jobs seen. */
const PRIOR_JOBS = 10;
/** Estimates of means, spreads and jobs take turns; they no longer move after so many. */
const ROUNDS = 40;
const NO_FACTOR: JobFactor = { mean: 0, variance: 0 };

function checked(seen: readonly StageSeen[], spreads: Spreads): void {
  inRange(spreads.step, { field: "spreads.step", unit: "", min: 0.01, max: 3 });
  inRange(spreads.job, { field: "spreads.job", unit: "", min: 0, max: 3 });
  inRange(spreads.wait, { field: "spreads.wait", unit: "", min: 0, max: 3 });
  listOf(seen, { field: "seen", min: 0, max: 1_000_000 });
  for (const { order, stage, logPace, spreadShare } of seen) {
    wholeNumber(order, { field: "order", min: 0, max: Number.MAX_SAFE_INTEGER });
    oneOf(stage, stages, "stage");
    inRange(logPace, { field: "logPace", unit: "", min: -5, max: 5 });
    inRange(spreadShare, { field: "spreadShare", unit: "", min: 0.01, max: 10 });
  }
}

function grouped<T, K>(rows: readonly T[], keyOf: (row: T) => K): ReadonlyMap<K, readonly T[]> {
  const groups = new Map<K, T[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group === undefined) groups.set(keyOf(row), [row]);
    else group.push(row);
  }
  return groups;
}

const stageKey = ({ work, stage }: Pick<StageSeen, "work" | "stage">): string => `${work}/${stage}`;

/** What the stages of one job say of its factor, around 1 with the variance τ². */
function jobFactor(rows: readonly StageSeen[], paceOf: (row: StageSeen) => StagePace, jobVariance: number): JobFactor {
  let precision = 0;
  let pull = 0;
  for (const row of rows) {
    const pace = paceOf(row);
    const weight = 1 / (row.spreadShare ** 2 * stepVariance(pace));
    precision += weight;
    pull += weight * (freedOfMean(row, pace) - pace.mean);
  }
  const variance = jobVariance / (1 + jobVariance * precision);
  return { mean: variance * pull, variance };
}

/**
 * What the stages seen teach of the pace of work: a normal-inverse-gamma for each stage of each kind of work, and how far jobs differ as a whole.
 *
 *     y = μ_stage + J_job + ε,   ε ~ N(0, (c·σ_stage)²),   J ~ N(0, τ²)
 *
 * y is the log pace less what the mean of several steps lies above their median, c the row's spread share. Prior: μ around 0, the route's own
 * minutes, with the weight of 4 steps; σ² with 8 degrees of freedom, so that one step is forecast with the fixed spread's variance; τ² the
 * fixed spread of a job, counted as 10 jobs. τ², the posterior of each J and the normal-inverse-gammas are estimated in turn (expectation
 * and maximisation); κ counts a row by all of its variance, its job's included. Waits are never learned. On simulated seasons of
 * 130 jobs a promise holds 9 times in 10 within 3 points (`npm run bench:promise`).
 *
 * @param seen - stages as `stagesSeen` gives them, in any order
 * @param spreads - the fixed spreads, standard deviations of natural logarithms; that of a step at least 0.01
 * @returns the pace for estimates, stages in the order of their names; the fixed spreads alone when nothing was seen
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be; `quantity-unreadable` when a stage is not known
 * @see Gneiting, Balabdaoui & Raftery, Journal of the Royal Statistical Society B 69 (2007), on forecasts that keep what they say
 */
export function learnPace(seen: readonly StageSeen[], spreads: Spreads): Pace {
  checked(seen, spreads);
  const byStage = grouped(seen, stageKey);
  const jobs = grouped(seen, ({ order }) => order);
  const priors = [...byStage.values()].flatMap(([first]) => (first === undefined ? [] : [priorPace(first, spreads.step)]));
  let jobVariance = spreads.job ** 2;
  let paces = new Map(priors.map((pace) => [stageKey(pace), pace]));
  for (let round = 0; round < ROUNDS; round++) {
    const before = paces;
    const paceOf = (row: StageSeen): StagePace => before.get(stageKey(row)) ?? priorPace(row, spreads.step);
    const factors = new Map([...jobs].map(([order, rows]) => [order, jobFactor(rows, paceOf, jobVariance)]));
    const factorOf = ({ order }: StageSeen): JobFactor => factors.get(order) ?? NO_FACTOR;
    const variance = jobVariance;
    paces = new Map(
      priors.map((prior) => {
        const key = stageKey(prior);
        return [key, stageUpdate(byStage.get(key) ?? [], { prior, now: before.get(key) ?? prior, jobVariance: variance }, factorOf)];
      }),
    );
    const squares = [...factors.values()].reduce((sum, { mean, variance: own }) => sum + mean ** 2 + own, 0);
    jobVariance = (PRIOR_JOBS * spreads.job ** 2 + squares) / (PRIOR_JOBS + factors.size);
  }
  const learned = [...paces.values()].sort((one, other) => (stageKey(one) < stageKey(other) ? -1 : 1));
  return { spreads: { ...spreads, job: Math.sqrt(jobVariance) }, learned };
}
