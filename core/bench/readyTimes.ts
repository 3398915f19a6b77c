import { type Instant, instant } from "../kinds.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { benchModel, isFinished, type ModelJob } from "./benchModel.ts";
import { BenchRun } from "./benchRun.ts";
import type { BenchJob, BenchSnapshot, ReadyEstimate, StepKind } from "./benchTypes.ts";
import { checkedDraw } from "./checkedBench.ts";
import { drawDurations } from "./drawDurations.ts";
import type { Pace } from "./pace.ts";
import { defaultPolicy, type Policy } from "./policy.ts";

export interface ReadyQuestion {
  readonly snapshot: BenchSnapshot;
  /** How the bench is run; left out, by the apparent cost of being late. */
  readonly policy?: Policy;
  readonly pace: Pace;
  /** 32-bit integer: the same seed gives the same answer. */
  readonly seed: number;
  readonly samples: number;
}

const MOST_SAMPLES = 100_000;
const MS_PER_MIN = 60_000;
const NEVER = Number.NEGATIVE_INFINITY;

/** When the last step of a kind ends in the sample at hand, in ms after now; −∞ when the job has none. */
function lastEndMs(job: ModelJob, kind: StepKind, now: Instant): number {
  return job.source.steps.reduce((last, step, place) => {
    if (step.route.kind !== kind || step.state === "skipped") return last;
    const open = job.steps[place];
    return Math.max(last, open ? open.endMs : (step.finishedAt ?? now) - now);
  }, NEVER);
}

/** Infinite when the truck has left by then, a step under way included. */
function inHandMs(job: ModelJob, rollOutMs: number): number {
  const last = job.open.reduce((latest, step) => Math.max(latest, step.endMs), NEVER);
  return last <= rollOutMs ? last : Number.POSITIVE_INFINITY;
}

function playableMs(job: ModelJob, inHand: number, now: Instant): number {
  const bonded = lastEndMs(job, "bond", now) + job.source.playableAfterBondMin * MS_PER_MIN;
  const gripped = lastEndMs(job, "grip", now) + job.source.playableAfterGripMin * MS_PER_MIN;
  return Math.max(inHand, bonded, gripped);
}

/** The smallest sample that `tenths` of all samples do not exceed; null when it is never. */
function quantileMs(sorted: Float64Array, tenths: number): number | null {
  const value = sorted[Math.ceil((tenths * sorted.length) / 10) - 1];
  return value !== undefined && Number.isFinite(value) ? value : null;
}

const wholeMinute = (at: number): number => Math.round(at / MS_PER_MIN) * MS_PER_MIN;
const wholeMinuteUp = (at: number): number => Math.ceil(at / MS_PER_MIN) * MS_PER_MIN;

function summarise(job: BenchJob, snapshot: BenchSnapshot, inHand: Float64Array, playable: Float64Array): ReadyEstimate {
  const { now } = snapshot;
  const wall = snapshot.rollOutAt ?? Number.POSITIVE_INFINITY;
  inHand.sort();
  playable.sort();
  const likelyMs = quantileMs(inHand, 5);
  const promiseMs = quantileMs(inHand, 9);
  const playMs = quantileMs(playable, 9);
  const due = job.dueAt;
  return {
    order: job.order,
    job: job.job,
    likelyAt: likelyMs === null ? null : instant(Math.min(wall, Math.max(now, wholeMinute(now + likelyMs)))),
    promiseAt: promiseMs === null ? null : instant(Math.min(wall, wholeMinuteUp(now + promiseMs))),
    playableAt: promiseMs === null || playMs === null ? null : instant(wholeMinuteUp(now + playMs)),
    chanceByDue: due === null ? null : inHand.filter((ms) => now + ms <= due).length / inHand.length,
  };
}

/** A job no sample runs: held (not before it is let go), or finished (when its last step was). */
function settled(job: BenchJob, now: Instant): ReadyEstimate {
  const known = { order: job.order, job: job.job };
  if (!job.steps.every(isFinished)) {
    return { ...known, likelyAt: null, promiseAt: null, playableAt: null, chanceByDue: job.dueAt === null ? null : 0 };
  }
  const end = (kind: StepKind | null): number =>
    job.steps.reduce((last, step) => (kind !== null && step.route.kind !== kind ? last : Math.max(last, step.finishedAt ?? NEVER)), NEVER);
  const done = Number.isFinite(end(null)) ? end(null) : now;
  const play = Math.max(done, end("bond") + job.playableAfterBondMin * MS_PER_MIN, end("grip") + job.playableAfterGripMin * MS_PER_MIN);
  const chanceByDue = job.dueAt === null ? null : Number(done <= job.dueAt);
  return { ...known, likelyAt: instant(done), promiseAt: instant(done), playableAt: instant(play), chanceByDue };
}

/**
 * `readyTimes` in slices, so that other work can be done between two of them.
 *
 * @param sliceSamples - how many samples between two yields
 * @returns yields the number of samples run so far; returns the estimates
 * @throws {DomainError} as `readyTimes`
 */
export function* estimateInSlices(question: ReadyQuestion, sliceSamples = 10): Generator<number, readonly ReadyEstimate[], void> {
  const { snapshot, pace, seed, samples } = question;
  checkedDraw(pace, seed, 0);
  wholeNumber(samples, { field: "samples", min: 1, max: MOST_SAMPLES });
  wholeNumber(sliceSamples, { field: "sliceSamples", min: 1, max: MOST_SAMPLES });
  const model = benchModel(snapshot);
  const times = new Map(model.jobs.map((job) => [job.source, { inHand: new Float64Array(samples), playable: new Float64Array(samples) }]));
  const day = new BenchRun(model, question.policy ?? defaultPolicy);
  for (let sample = 0; sample < samples; sample++) {
    drawDurations(model, pace, seed, sample);
    day.run();
    for (const job of model.jobs) {
      const inHand = inHandMs(job, model.rollOutMs);
      const row = times.get(job.source);
      if (row === undefined) continue;
      row.inHand[sample] = inHand;
      row.playable[sample] = playableMs(job, inHand, snapshot.now);
    }
    if ((sample + 1) % sliceSamples === 0 && sample + 1 < samples) yield sample + 1;
  }
  return snapshot.jobs.map((job) => {
    const row = times.get(job);
    return row === undefined ? settled(job, snapshot.now) : summarise(job, snapshot, row.inHand, row.playable);
  });
}

/**
 * When each club of the bench is in the player's hand and when it may take full swings, by simulating the rest of the day.
 *
 * likely is the median of the samples, promise the 90th percentile rounded up to the next whole minute (roll-out when that comes first), playable the 90th
 * percentile of max(in hand, bonded + floor, gripped + floor): never before the promise. A job that misses roll-out in
 * more than 10 % of the samples has no promise, in more than half no likely time; a held one has neither.
 * The standard error of the promise is about 1.71·σ/√samples.
 *
 * @param question - the bench, its policy, the pace, seed; samples from 1 to 100,000
 * @returns the times of each job in epoch ms, in the order of the snapshot
 * @throws {DomainError} `quantity-out-of-range` when the number of samples is not such or a number cannot be; `route-has-a-cycle`
 * @see Gneiting, Balabdaoui & Raftery, Journal of the Royal Statistical Society B 69 (2007), on honest forecasts
 */
export function readyTimes(question: ReadyQuestion): readonly ReadyEstimate[] {
  const slices = estimateInSlices(question, question.samples);
  for (;;) {
    const slice = slices.next();
    if (slice.done) return slice.value;
  }
}
