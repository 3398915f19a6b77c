import { inRange } from "../../quantity/inRange.ts";
import type { Spreads } from "../benchTypes.ts";
import type { Pace, StagePace } from "../pace.ts";
import type { StageSeen } from "./presses.ts";

/** The route's own minutes count as so many jobs seen, and the fixed spread as so many degrees of freedom. */
const PRIOR_JOBS = 3;
const PRIOR_FREEDOM = 8;
/** The fixed spread of a job counts as so many pairs of stages seen. */
const PRIOR_PAIRS = 12;

const keyOf = ({ work, stage }: Pick<StageSeen, "work" | "stage">): string => `${work}/${stage}`;

function grouped<T>(rows: readonly T[], keyOfRow: (row: T) => string | number): readonly (readonly T[])[] {
  const groups = new Map<string | number, T[]>();
  for (const row of rows) {
    const key = keyOfRow(row);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()];
}

/** Mean of a stage's log pace, leaning on the route's own minutes. A row counts 1/c²: it varies by c times one step's spread. */
function leaningMean(rows: readonly StageSeen[], free: ReadonlyMap<StageSeen, number>): { readonly mean: number; readonly kappa: number } {
  const weights = rows.map(({ spreadShare }) => 1 / spreadShare ** 2);
  const kappa = PRIOR_JOBS + weights.reduce((sum, one) => sum + one, 0);
  const sum = rows.reduce((total, row, at) => total + (weights[at] ?? 0) * (free.get(row) ?? row.logPace), 0);
  return { mean: sum / kappa, kappa };
}

/** The variance that the stages of one job share, from products of their residuals, leaning on the fixed spread. */
function jobVariance(rows: readonly StageSeen[], residual: ReadonlyMap<StageSeen, number>, spread: number): number {
  let sum = PRIOR_PAIRS * spread ** 2;
  let pairs = PRIOR_PAIRS;
  for (const job of grouped(rows, ({ order }) => order)) {
    job.forEach((one, at) => {
      for (const other of job.slice(at + 1)) {
        sum += (residual.get(one) ?? 0) * (residual.get(other) ?? 0);
        pairs += 1;
      }
    });
  }
  return Math.max(0, sum / pairs);
}

/** Each job's own part of its residuals: their mean, drawn to zero by how little a job says of itself. */
function jobParts(
  rows: readonly StageSeen[],
  residual: ReadonlyMap<StageSeen, number>,
  variance: number,
  step: number,
): ReadonlyMap<StageSeen, number> {
  const parts = new Map<StageSeen, number>();
  for (const job of grouped(rows, ({ order }) => order)) {
    const weights = job.map(({ spreadShare }) => 1 / (spreadShare * step) ** 2);
    const weight = weights.reduce((sum, one) => sum + one, 0);
    const mean = job.reduce((sum, row, at) => sum + (weights[at] ?? 0) * (residual.get(row) ?? 0), 0) / weight;
    const drawn = variance === 0 ? 0 : (mean * weight) / (weight + 1 / variance);
    for (const row of job) parts.set(row, drawn);
  }
  return parts;
}

function posterior(rows: readonly StageSeen[], free: ReadonlyMap<StageSeen, number>, step: number): readonly StagePace[] {
  const [first] = rows;
  if (first === undefined) return [];
  const { mean, kappa } = leaningMean(rows, free);
  const scatter = rows.reduce((sum, row) => sum + ((free.get(row) ?? row.logPace) - mean) ** 2 / row.spreadShare ** 2, PRIOR_JOBS * mean ** 2);
  const alpha = (PRIOR_FREEDOM + rows.length) / 2;
  const beta = (PRIOR_FREEDOM * step ** 2 + scatter) / 2;
  return [{ work: first.work, stage: first.stage, mean, kappa, alpha, beta }];
}

/**
 * What the stages seen teach of the pace of work: a normal-inverse-gamma a stage and kind of work around the route's own minutes, and
 * the spread that all stages of one job share.
 *
 *     ln pace = μ_stage + J_job + ε,   ε ~ N(0, (σ_stage·c)²),   J ~ N(0, τ²)
 *
 * c is the row's spread share. The prior is μ = 0 with the weight of 3 jobs and σ² around the fixed spread with 8 degrees of freedom. τ² is the
 * mean product of residuals of two stages of one job, the fixed spread counted as 12 such pairs; then each job's part is taken out of its
 * rows (its posterior mean) before the update, in two passes. Waits are never learned: their spread stays.
 *
 * @param seen - stages as `stagesSeen` gives them
 * @param spreads - the fixed spreads, standard deviations of logarithms
 * @returns the pace for estimates; that of the fixed spreads when nothing was seen
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @see Gelman et al., Bayesian Data Analysis, 3rd edition, section 3.3, on the conjugate update
 */
export function learnPace(seen: readonly StageSeen[], spreads: Spreads): Pace {
  for (const [name, spread] of Object.entries(spreads)) inRange(spread, { field: `spreads.${name}`, unit: "", min: 0, max: 3 });
  for (const { logPace, spreadShare } of seen) {
    inRange(logPace, { field: "logPace", unit: "", min: -5, max: 5 });
    inRange(spreadShare, { field: "spreadShare", unit: "", min: 1e-3, max: 1 });
  }
  if (seen.length === 0) return { spreads, learned: [] };
  const step = Math.max(spreads.step, 1e-3);
  const stages = grouped(seen, keyOf);
  let free: ReadonlyMap<StageSeen, number> = new Map();
  let variance = spreads.job ** 2;
  for (let pass = 0; pass < 2; pass++) {
    const means = new Map(stages.flatMap((rows) => rows.map((row) => [row, leaningMean(rows, free).mean] as const)));
    const residual = new Map(seen.map((row) => [row, row.logPace - (means.get(row) ?? 0)] as const));
    variance = jobVariance(seen, residual, spreads.job);
    const parts = jobParts(seen, residual, variance, step);
    free = new Map(seen.map((row) => [row, row.logPace - (parts.get(row) ?? 0)] as const));
  }
  return { spreads: { ...spreads, job: Math.sqrt(variance) }, learned: stages.flatMap((rows) => posterior(rows, free, step)) };
}
