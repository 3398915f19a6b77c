import { inRange } from "../../quantity/inRange.ts";
import { listOf } from "../../quantity/listOf.ts";
import { oneOf } from "../../quantity/oneOf.ts";
import { wholeNumber } from "../../quantity/wholeNumber.ts";
import type { Spreads } from "../benchTypes.ts";
import { type Pace, type StagePace, stages as stageNames } from "../pace.ts";
import { type LearnedJob, type LearnedStage, learningModel, type Row } from "./learningModel.ts";
import type { StageSeen } from "./presses.ts";

/** The fixed spread of a job counts as so many jobs seen. */
const PRIOR_JOBS = 10;
/** Jobs, paces and the spread of jobs are estimated in turn until no variance moves by more than this, or so many times. */
const STILL = 1e-7;
const MOST_ROUNDS = 100;

function checked(seen: readonly StageSeen[], spreads: Spreads): void {
  inRange(spreads.step, { field: "spreads.step", unit: "", min: 0.01, max: 3 });
  inRange(spreads.job, { field: "spreads.job", unit: "", min: 0, max: 3 });
  inRange(spreads.wait, { field: "spreads.wait", unit: "", min: 0, max: 3 });
  listOf(seen, { field: "seen", min: 0, max: 1_000_000 });
  for (const { order, stage, logPace, spreadShare } of seen) {
    wholeNumber(order, { field: "order", min: 0, max: Number.MAX_SAFE_INTEGER });
    oneOf(stage, stageNames, "stage");
    inRange(logPace, { field: "logPace", unit: "", min: -5, max: 5 });
    inRange(spreadShare, { field: "spreadShare", unit: "", min: 0.01, max: 10 });
  }
}

const stepVariance = ({ beta, alpha }: StagePace): number => beta / alpha;

/** The mean of several steps lies above their median: freed of half the variance that their sum has lost. */
const freed = ({ logPace, share }: Row, pace: StagePace): number => logPace - (stepVariance(pace) * (1 - share)) / 2;

/** The posterior of a job's factor, around 1 with the variance τ² of its logarithm. */
function updateJob(job: LearnedJob, jobVariance: number): void {
  let precision = 0;
  let pull = 0;
  for (const row of job.rows) {
    const { pace } = row.stage;
    const weight = 1 / (row.share * stepVariance(pace));
    precision += weight;
    pull += weight * (freed(row, pace) - pace.mean);
  }
  job.factorVariance = jobVariance / (1 + jobVariance * precision);
  job.factorMean = job.factorVariance * pull;
}

/** @returns how far the variance of a step has moved */
function updateStage(stage: LearnedStage, jobVariance: number): number {
  const { prior, rows, pace } = stage;
  let kappa = prior.kappa;
  let sum = prior.kappa * prior.mean;
  for (const row of rows) {
    const weight = 1 / (row.share + jobVariance / stepVariance(pace));
    kappa += weight;
    sum += weight * freed(row, pace);
  }
  const mean = sum / kappa;
  let beta = prior.beta + (prior.kappa * (mean - prior.mean) ** 2) / 2;
  for (const row of rows) {
    const left = freed(row, pace) - mean - row.job.factorMean;
    beta += (left ** 2 + row.job.factorVariance) / (2 * row.share);
  }
  stage.pace = { ...prior, mean, kappa, alpha: prior.alpha + rows.length / 2, beta };
  return Math.abs(stepVariance(stage.pace) - stepVariance(pace));
}

/** The variance of the factors of all jobs, leaning on that of the fixed spread. */
function varianceOfJobs(jobs: readonly LearnedJob[], fixed: number): number {
  const squares = jobs.reduce((sum, { factorMean, factorVariance }) => sum + factorMean ** 2 + factorVariance, 0);
  return (PRIOR_JOBS * fixed + squares) / (PRIOR_JOBS + jobs.length);
}

/**
 * What the stages seen teach of the pace of work: a normal-inverse-gamma for each stage of each kind of work, and how far jobs differ as a whole.
 *
 *     y = μ + J + ε,   ε ~ N(0, c²σ²),   J ~ N(0, τ²);   v = 1/(c² + τ²/σ²)
 *     κ = κ₀ + Σv;   mean = Σv·y/κ;   α = α₀ + n/2;   β = β₀ + ½κ₀·mean² + ½Σ((y − mean − EJ)² + Var J)/c²
 *     Var J = 1/(1/τ² + Σ1/(c²σ²));   EJ = Var J·Σ(y − mean)/(c²σ²);   τ² = (n₀τ₀² + Σ(EJ² + Var J))/(n₀ + jobs)
 *
 * y is the log pace less σ²(1 − c²)/2, by which the mean of several steps lies above their median; c the spread share; σ² = β/α so far. The lines are
 * worked in turn until they no longer move (expectation and maximisation). Prior: the route's own minutes with the weight κ₀ of 4 steps; σ² with 8
 * degrees of freedom, so that one step is forecast with the variance of the fixed spread; τ₀ the fixed spread of a job, counted as n₀ = 10 jobs.
 * Waits are never learned. On made seasons promises are kept about 9 times in 10: `npm run bench:promise` prints how often.
 *
 * @param seen - stages as `stagesSeen` gives them, in any order
 * @param spreads - the fixed spreads, standard deviations of natural logarithms; that of a step at least 0.01
 * @returns the pace for estimates, stages in the order of their names; the fixed spreads alone when nothing was seen
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be; `quantity-unreadable` when a stage is not known
 * @see Gneiting, Balabdaoui & Raftery, Journal of the Royal Statistical Society B 69 (2007), on forecasts that keep what they say
 */
export function learnPace(seen: readonly StageSeen[], spreads: Spreads): Pace {
  checked(seen, spreads);
  if (seen.length === 0) return { spreads, learned: [] };
  const { stages, jobs } = learningModel(seen, spreads);
  let jobVariance = spreads.job ** 2;
  for (let round = 0, moved = Number.POSITIVE_INFINITY; round < MOST_ROUNDS && moved > STILL; round++) {
    const before = jobVariance;
    for (const job of jobs) updateJob(job, before);
    const steps = stages.map((stage) => updateStage(stage, before));
    jobVariance = varianceOfJobs(jobs, spreads.job ** 2);
    moved = steps.reduce((most, one) => Math.max(most, one), Math.abs(jobVariance - before));
  }
  return { spreads: { ...spreads, job: Math.sqrt(jobVariance) }, learned: stages.map(({ pace }) => pace) };
}
