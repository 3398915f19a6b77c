import type { Id } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { type BenchModel, benchModel, type ModelJob } from "./benchModel.ts";
import { BenchRun } from "./benchRun.ts";
import type { BenchSnapshot } from "./benchTypes.ts";
import { checkedDraw } from "./checkedBench.ts";
import { drawDurations } from "./drawDurations.ts";
import type { Pace } from "./pace.ts";
import { planOrderInSlices } from "./plan/benchProject.ts";
import { type DispatchRule, defaultPolicy, type Policy } from "./policy.ts";

export interface PolicyQuestion {
  readonly snapshot: BenchSnapshot;
  readonly pace: Pace;
  /** Whole number: the same seed gives the same choice. */
  readonly seed: number;
  /** Shared random days each candidate plays; 30 when left out. */
  readonly scenarios?: number;
  /** How many schedules the optimiser may try; 200 when left out. */
  readonly schedules?: number;
  /** The policy in force, or null. */
  readonly incumbent: Policy | null;
  /** How much of the incumbent's cost another must save to take its place; 5 % when left out. */
  readonly marginShare?: number;
}

/** What a candidate costs on the shared days. */
export interface PolicyTrial {
  readonly policy: Policy;
  /** Expected sum of weight · minutes late. */
  readonly tardinessMin: number;
  /** Expected sum of weight · minutes to in hand: it decides where nothing is late. */
  readonly flowMin: number;
}

export interface PolicyChoice {
  readonly policy: Policy;
  readonly trials: readonly PolicyTrial[];
  /** The incumbent stayed although another was a little better. */
  readonly kept: boolean;
}

const MS_PER_MIN = 60_000;
const DAY_MS = 24 * 60 * MS_PER_MIN;
/** The days of the choice are others than those of the ready times. */
const FIRST_SAMPLE = 1_000_000;
const CANDIDATES: readonly DispatchRule[] = ["due", "slack", "cost"];
/** Less than this many weighted minutes is no reason to move a promise. */
const LEAST_SAVING_MIN = 1;
const MARGIN_SHARE = 0.05;
/** Steps simulated between two yields: 4 ms or so. */
const SLICE_STEPS = 4000;

/** A job that is not ready before the truck leaves counts as ready a day after it had to be, and not before two days from now. */
function inHandMs(job: ModelJob, rollOutMs: number): number {
  const last = job.open.reduce((latest, step) => Math.max(latest, step.endMs), 0);
  return last <= rollOutMs ? last : Math.max(2 * DAY_MS, job.dueMs + DAY_MS, Number.isFinite(rollOutMs) ? rollOutMs + DAY_MS : 0);
}

interface Sums {
  readonly policy: Policy;
  readonly day: BenchRun;
  tardinessMs: number;
  flowMs: number;
}

function add(sums: Sums, model: BenchModel): void {
  sums.day.run();
  for (const job of model.jobs) {
    const endMs = inHandMs(job, model.rollOutMs);
    const { weight, dueAt } = job.source;
    if (dueAt !== null || Number.isFinite(model.rollOutMs)) sums.tardinessMs += weight * Math.max(0, endMs - job.dueMs);
    sums.flowMs += weight * endMs;
  }
}

/** Plays the same days under each of some policies. */
function* trialsOf(model: BenchModel, policies: readonly Policy[], question: PolicyQuestion, sliceRuns: number) {
  const { pace, seed, scenarios = 30 } = question;
  const sums = policies.map((policy): Sums => ({ policy, day: new BenchRun(model, policy), tardinessMs: 0, flowMs: 0 }));
  let runs = 0;
  for (let at = 0; at < scenarios; at++) {
    drawDurations(model, pace, seed, FIRST_SAMPLE + at);
    for (const one of sums) {
      add(one, model);
      runs += 1;
      if (runs % sliceRuns === 0) yield runs;
    }
  }
  const meanMin = (ms: number): number => ms / MS_PER_MIN / scenarios;
  return sums.map(({ policy, tardinessMs, flowMs }): PolicyTrial => ({ policy, tardinessMin: meanMin(tardinessMs), flowMin: meanMin(flowMs) }));
}

/** Late comes first; a hundredth of the flow decides between policies that are late alike. */
const costOf = ({ tardinessMin, flowMin }: PolicyTrial): number => tardinessMin + flowMin / 100;

const cheapest = (trials: readonly PolicyTrial[]): PolicyTrial | undefined =>
  trials.reduce<PolicyTrial | undefined>((best, one) => (best === undefined || costOf(one) < costOf(best) ? one : best), undefined);

/** Technicians with nothing in hand: one of them may be left without work. */
function spareHands({ jobs, technicians }: BenchSnapshot): readonly Id<"person">[] {
  const steps = jobs.flatMap((job) => job.steps);
  const busy = new Set(steps.flatMap(({ state, person }) => (state === "running" && person !== null ? [person] : [])));
  return technicians.length < 2 ? [] : technicians.map(({ person }) => person).filter((person) => !busy.has(person));
}

/** The policy in force, less a technician left without work who has taken some up or has gone. */
function inForce({ incumbent, snapshot }: PolicyQuestion): Policy | null {
  return incumbent === null || incumbent.idle === null || spareHands(snapshot).includes(incumbent.idle) ? incumbent : { ...incumbent, idle: null };
}

/** Whether another policy saves more than the margin. */
const isWorth = (now: PolicyTrial, other: PolicyTrial, { marginShare = MARGIN_SHARE }: PolicyQuestion): boolean =>
  costOf(now) - costOf(other) > Math.max(LEAST_SAVING_MIN, marginShare * costOf(now));

const sameRule = (a: Policy, b: Policy): boolean => a.rule === b.rule && a.idle === b.idle;

function settle(trials: readonly PolicyTrial[], incumbent: Policy | null, question: PolicyQuestion): PolicyChoice {
  const best = cheapest(trials);
  if (best === undefined) return { policy: incumbent ?? defaultPolicy, trials, kept: incumbent !== null };
  const now = incumbent === null ? undefined : cheapest(trials.filter(({ policy }) => sameRule(policy, incumbent)));
  if (now === undefined || now === best) return { policy: best.policy, trials, kept: false };
  return isWorth(now, best, question) ? { policy: best.policy, trials, kept: false } : { policy: now.policy, trials, kept: true };
}

/**
 * `choosePolicy` in slices, so that other work can be done between two of them.
 *
 * @param sliceRuns - how many simulated days between two yields; left out, as many as take some milliseconds
 * @throws {DomainError} as `choosePolicy`
 */
export function* choosePolicyInSlices(question: PolicyQuestion, sliceRuns?: number): Generator<number, PolicyChoice, void> {
  const { snapshot, pace, seed } = question;
  checkedDraw(pace, seed, 0);
  wholeNumber(question.scenarios ?? 30, { field: "scenarios", min: 1, max: 10_000 });
  const schedules = wholeNumber(question.schedules ?? 200, { field: "schedules", min: 1, max: 1_000_000 });
  inRange(question.marginShare ?? MARGIN_SHARE, { field: "marginShare", unit: "", min: 0, max: 1 });
  const model = benchModel(snapshot);
  const slice = wholeNumber(sliceRuns ?? Math.ceil(SLICE_STEPS / (model.steps.length + 1)), { field: "sliceRuns", min: 1, max: 10_000 });
  const incumbent = inForce(question);
  if (model.jobs.length === 0) return settle([], incumbent, question);
  const planOrder = yield* planOrderInSlices(snapshot, { schedules, seed });
  const policies: Policy[] = CANDIDATES.map((rule) => ({ rule, planOrder: [], idle: null }));
  policies.push({ rule: "plan", planOrder, idle: null });
  if (incumbent !== null && (incumbent.rule === "plan" || incumbent.idle !== null)) policies.push(incumbent);
  const trials = yield* trialsOf(model, policies, question, slice);
  const best = cheapest(trials);
  if (best === undefined || best.policy.idle !== null) return settle(trials, incumbent, question);
  const others = spareHands(snapshot).map((idle): Policy => ({ ...best.policy, idle }));
  const without = yield* trialsOf(model, others, question, slice);
  return settle([...trials, ...without.filter((one) => isWorth(best, one, question))], incumbent, question);
}

/**
 * How the bench is best run now: every rule and the optimised plan play the same random days, and the one with the least expected
 * weighted tardiness is followed.
 *
 *     cost = E[ Σ w · max(0, in hand − due) ] + E[ Σ w · in hand ] / 100
 *
 * A job without a due time is due at roll-out; one not in hand by then counts as a day late, and as two days from now at least.
 * Candidates are the earliest due time, the least slack, the apparent tardiness cost and the order of the plan; the best of them is
 * tried again with each technician who has nothing in hand left without work, as another pair of hands can make a bench slower.
 * The policy in force stays unless another saves more than the margin, so that promises do not flap.
 *
 * @param question - the bench, pace, seed, budgets, and the policy in force
 * @returns the policy, what each candidate costs, and whether the one in force stayed by the margin
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be; `route-has-a-cycle`
 * @see Graham, Bounds on multiprocessing timing anomalies, SIAM Journal on Applied Mathematics 17 (1969), on hands that make it slower
 */
export function choosePolicy(question: PolicyQuestion): PolicyChoice {
  const slices = choosePolicyInSlices(question, 10_000);
  for (;;) {
    const slice = slices.next();
    if (slice.done) return slice.value;
  }
}
