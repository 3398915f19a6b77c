import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { wholeNumber } from "../../quantity/wholeNumber.ts";
import { checkedProject, workable } from "./checkedProject.ts";
import { Decoder } from "./decoder.ts";
import type { Plan, PlanBudget, Project } from "./project.ts";

/** What an activity that never fits costs as if it ended two weeks on. */
const NEVER_MS = 14 * 24 * 3_600_000;
/** Beside tardiness every end counts a little, so that plans that are late alike end soon. */
const FLOW_SHARE = 1e-3;

function uniformOf(seed: number): () => number {
  const source = xoroshiro128plus(seed | 0);
  return () => ((source.next() >>> 0) + 0.5) / 4294967296;
}

/** The longest way from the start of each activity to the end of the project. */
function tails(project: Project, after: readonly (readonly number[])[]): Float64Array {
  const tail = new Float64Array(project.activities.length);
  for (const at of workable(project.activities.map(({ before }) => before)).toReversed()) {
    tail[at] = project.activities[at]!.durationMs + (after[at] ?? []).reduce((longest, next) => Math.max(longest, tail[next]!), 0);
  }
  return tail;
}

/** No schedule ends sooner: the longest chain, and the work of each resource at its capacity. */
function lowerBoundMs({ activities, capacities }: Project, tail: Float64Array): number {
  const heads = new Float64Array(activities.length);
  for (const at of workable(activities.map(({ before }) => before))) {
    const { before, releaseMs } = activities[at]!;
    heads[at] = before.reduce((latest, one) => Math.max(latest, heads[one]! + activities[one]!.durationMs), releaseMs);
  }
  const chain = activities.reduce((longest, _, at) => Math.max(longest, heads[at]! + tail[at]!), 0);
  const work = capacities.map((capacity, resource) =>
    capacity === 0 ? 0 : activities.reduce((sum, { durationMs, demands }) => sum + durationMs * demands[resource]!, 0) / capacity,
  );
  return Math.max(chain, ...work.map(Math.ceil));
}

/** One search: the best schedule so far, the list it came from, and the budget used. */
class Search {
  readonly best: Float64Array;
  bestValue = Number.POSITIVE_INFINITY;
  used = 0;
  readonly keys: Float64Array;
  private readonly starts: Float64Array;
  private readonly mirrored: Float64Array;
  private readonly scratch: Float64Array;

  private readonly project: Project;
  private readonly budget: PlanBudget;
  private readonly decoder: Decoder;
  private readonly justifies: boolean;

  constructor(project: Project, budget: PlanBudget, decoder: Decoder) {
    this.project = project;
    this.budget = budget;
    this.decoder = decoder;
    this.justifies = budget.goal === "makespan" && project.open === null && project.activities.every(({ releaseMs }) => releaseMs === 0);
    const size = decoder.size;
    this.best = new Float64Array(size);
    this.keys = new Float64Array(size);
    this.starts = new Float64Array(size);
    this.mirrored = new Float64Array(size);
    this.scratch = new Float64Array(size);
  }

  get left(): number {
    return this.budget.schedules - this.used;
  }

  private valueOf(starts: Float64Array, makespan: number): number {
    const { activities } = this.project;
    if (this.budget.goal === "makespan") return starts.every(Number.isFinite) ? makespan : makespan + NEVER_MS;
    let value = 0;
    activities.forEach(({ durationMs, due }, at) => {
      if (due === null) return;
      const endMs = Math.min(starts[at]! + durationMs, NEVER_MS);
      value += due.weight * (Math.max(0, endMs - due.dueMs) + FLOW_SHARE * endMs);
    });
    return value;
  }

  private keep(value: number): void {
    if (value < this.bestValue) {
      this.bestValue = value;
      this.best.set(this.starts);
    }
  }

  /**
   * Decodes `keys`; for a makespan the schedule is then pushed right and left again (double justification). `keys` ends as the starts
   * of the schedule, so that the list and the schedule agree.
   */
  decode(): number {
    const makespan = this.decoder.forward(this.keys, this.starts);
    this.used += 1;
    let value = this.valueOf(this.starts, makespan);
    this.keep(value);
    if (this.justifies && this.left >= 2) value = this.justify(value);
    this.keys.set(this.starts);
    return value;
  }

  private justify(before: number): number {
    const { activities } = this.project;
    for (let at = 0; at < this.keys.length; at++) this.scratch[at] = -(this.starts[at]! + activities[at]!.durationMs);
    const length = this.decoder.backward(this.scratch, this.mirrored);
    for (let at = 0; at < this.keys.length; at++) this.scratch[at] = length - this.mirrored[at]! - activities[at]!.durationMs;
    const makespan = this.decoder.forward(this.scratch, this.starts);
    this.used += 2;
    const value = this.valueOf(this.starts, makespan);
    this.keep(value);
    return Math.min(value, before);
  }
}

/** Some activities are given other places in the list: alone, or with all of their group. */
function disturb(keys: Float64Array, project: Project, uniform: () => number): void {
  const size = keys.length;
  const ranks = Array.from({ length: size }, (_, at) => at).sort((a, b) => keys[a]! - keys[b]! || a - b);
  ranks.forEach((at, rank) => {
    keys[at] = rank;
  });
  const moves = 1 + Math.floor(uniform() * Math.max(1, Math.min(6, size / 6)));
  const window = Math.max(3, size * (uniform() < 0.5 ? 0.25 : 1));
  for (let move = 0; move < moves; move++) {
    const chosen = Math.floor(uniform() * size);
    const shift = (uniform() - 0.5) * 2 * window;
    const { group } = project.activities[chosen]!;
    const whole = uniform() < 0.5;
    for (let at = 0; at < size; at++) {
      if (at === chosen || (whole && project.activities[at]!.group === group)) keys[at]! += shift;
    }
  }
}

function firstKeys(project: Project, goal: PlanBudget["goal"], tail: Float64Array): Float64Array {
  return Float64Array.from(project.activities, ({ group }, at) => {
    if (goal === "makespan") return -tail[at]!;
    const dues = project.activities.flatMap((one) => (one.group === group && one.due !== null ? [one.due.dueMs] : []));
    return Math.min(Number.MAX_SAFE_INTEGER, ...dues) - tail[at]!;
  });
}

/**
 * `planProject` in slices, so that other work can be done between two of them.
 *
 * @param sliceSchedules - how many schedules between two yields
 * @throws {DomainError} as `planProject`
 */
export function* planInSlices(project: Project, budget: PlanBudget, sliceSchedules = 20): Generator<number, Plan, void> {
  checkedProject(project, budget);
  wholeNumber(sliceSchedules, { field: "sliceSchedules", min: 1, max: 10_000_000 });
  const decoder = new Decoder(project);
  const search = new Search(project, budget, decoder);
  const uniform = uniformOf(budget.seed);
  const tail = tails(project, decoder.after);
  const enough = budget.goal === "makespan" ? lowerBoundMs(project, tail) : 0;
  search.keys.set(firstKeys(project, budget.goal, tail));
  let current = search.decode();
  const list = Float64Array.from(search.keys);
  let yieldedAt = 0;
  while (search.left > 0 && search.bestValue > enough && decoder.size > 1) {
    search.keys.set(list);
    disturb(search.keys, project, uniform);
    const value = search.decode();
    if (value <= current || uniform() < 0.01) {
      current = value;
      list.set(search.keys);
    }
    if (search.used - yieldedAt >= sliceSchedules) {
      yieldedAt = search.used;
      yield search.used;
    }
  }
  const startsMs = Array.from(search.best, (start) => (Number.isFinite(start) ? start : null));
  return { startsMs, value: decoder.size === 0 ? 0 : search.bestValue, schedules: search.used };
}

/**
 * A schedule of activities under precedence, resources of limited capacity, release times and opening hours.
 *
 * Serial schedule generation from a priority list, double justification where the makespan is wanted without release times and
 * opening hours (elsewhere pushing right would break them), and iterated greedy: some activities get other places in the list, the
 * result is kept when it is no worse. Stops early at a lower bound of the makespan.
 *
 * @param project - activities in whole ms
 * @param budget - schedules, seed, and the goal: the makespan, or Σ w·max(0, end − due) with a thousandth of Σ w·end beside it
 * @returns starts in ms, the goal's value and how many schedules were generated
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be; `route-has-a-cycle`
 * @see Valls, Ballestín & Quintanilla, Justification and RCPSP, European Journal of Operational Research 165 (2005)
 * @see Ruiz & Stützle, A simple and effective iterated greedy algorithm, European Journal of Operational Research 177 (2007)
 */
export function planProject(project: Project, budget: PlanBudget): Plan {
  const slices = planInSlices(project, budget, budget.schedules);
  for (;;) {
    const slice = slices.next();
    if (slice.done) return slice.value;
  }
}
