import type { Decoder } from "./decoder.ts";
import type { PlanBudget, Project } from "./project.ts";

/** What an activity that never fits costs: as if it ended two weeks on. */
const NEVER_MS = 14 * 24 * 3_600_000;
/** Beside tardiness every end counts a little, so that plans that are late alike end soon. */
const FLOW_SHARE = 1e-3;

/** One search for a plan: the list at hand, the best schedule so far, and how much of the budget it took. */
export class PlanSearch {
  readonly best: Float64Array;
  bestValue = Number.POSITIVE_INFINITY;
  used = 0;
  /** Priorities, lowest first: what `decode` reads, and then the starts it gave. */
  readonly keys: Float64Array;
  private readonly startsMs: Float64Array;
  private readonly mirrored: Float64Array;
  private readonly scratch: Float64Array;
  private readonly project: Project;
  private readonly budget: PlanBudget;
  private readonly decoder: Decoder;
  private readonly justifies: boolean;
  /** No value can be below it. */
  private readonly bound: number;

  constructor(project: Project, budget: PlanBudget, decoder: Decoder, bound: number) {
    this.bound = bound;
    this.project = project;
    this.budget = budget;
    this.decoder = decoder;
    const isFree = project.open === null && project.activities.every(({ releaseMs, underWay }) => releaseMs === 0 && !underWay);
    this.justifies = budget.goal === "makespan" && isFree;
    const { size } = decoder;
    this.best = new Float64Array(size);
    this.keys = new Float64Array(size);
    this.startsMs = new Float64Array(size);
    this.mirrored = new Float64Array(size);
    this.scratch = new Float64Array(size);
  }

  /** Whether the budget is used up, or the best schedule cannot be better. */
  get isOver(): boolean {
    return this.used >= this.budget.schedules || this.bestValue <= this.bound;
  }

  /**
   * The schedule of `keys`; for a makespan it is then pushed right and left again (double justification). `keys` ends as the starts,
   * so that the list and the schedule agree.
   *
   * @returns the value of the schedule
   */
  decode(): number {
    const value = this.place(this.keys);
    const isWorth = this.justifies && !this.isOver && this.used + 2 <= this.budget.schedules;
    const justified = isWorth ? this.justify() : value;
    this.keys.set(this.startsMs);
    return justified;
  }

  /** Some activities are given other places in the list: alone, or with all of their group. */
  disturb(uniform: () => number): void {
    const { keys } = this;
    const { activities } = this.project;
    const { size } = this.decoder;
    const ranked = Array.from(keys, (_, at) => at).sort((a, b) => keys[a]! - keys[b]! || a - b);
    ranked.forEach((at, rank) => {
      keys[at] = rank;
    });
    const moves = 1 + Math.floor(uniform() * Math.max(3, Math.min(6, size / 6)));
    const window = Math.max(3, size * (uniform() < 0.5 ? 0.25 : 1));
    for (let move = 0; move < moves; move++) {
      const chosen = Math.floor(uniform() * size);
      const shift = (uniform() - 0.5) * 2 * window;
      const { group } = activities[chosen]!;
      const whole = uniform() < 0.5;
      for (let at = 0; at < size; at++) {
        if (at === chosen || (whole && activities[at]!.group === group)) keys[at]! += shift;
      }
    }
  }

  /** Places all activities by their keys, and keeps the schedule when it is the best. */
  private place(keys: Float64Array): number {
    const value = this.valueOf(this.decoder.forward(keys, this.startsMs));
    this.used += 1;
    if (value < this.bestValue) {
      this.bestValue = value;
      this.best.set(this.startsMs);
    }
    return value;
  }

  private justify(): number {
    const { startsMs, mirrored, scratch } = this;
    const { activities } = this.project;
    for (let at = 0; at < scratch.length; at++) scratch[at] = -(startsMs[at]! + activities[at]!.durationMs);
    const lengthMs = this.decoder.backward(scratch, mirrored);
    this.used += 1;
    for (let at = 0; at < scratch.length; at++) scratch[at] = lengthMs - mirrored[at]! - activities[at]!.durationMs;
    return this.place(scratch);
  }

  private valueOf(makespanMs: number): number {
    const { activities } = this.project;
    const { startsMs } = this;
    if (this.budget.goal === "makespan") return startsMs.every(Number.isFinite) ? makespanMs : makespanMs + NEVER_MS;
    let value = 0;
    activities.forEach(({ durationMs, due }, at) => {
      if (due === null) return;
      const startMs = startsMs[at]!;
      const endMs = Number.isFinite(startMs) ? startMs + durationMs : NEVER_MS;
      value += due.weight * (Math.max(0, endMs - due.dueMs) + FLOW_SHARE * endMs);
    });
    return value;
  }
}
