import type { Project } from "./project.ts";
import { Timeline } from "./timeline.ts";

/** Turns priorities into schedules: serial schedule generation, and the same backwards. */
export class Decoder {
  readonly size: number;
  readonly after: readonly (readonly number[])[];
  private readonly before: readonly (readonly number[])[];
  private readonly underWay: readonly number[];
  private readonly project: Project;
  private readonly timeline: Timeline;
  private readonly waiting: Int32Array;
  private readonly eligible: Int32Array;

  constructor(project: Project) {
    this.project = project;
    this.size = project.activities.length;
    this.timeline = new Timeline(project.capacities, this.size);
    this.waiting = new Int32Array(this.size);
    this.eligible = new Int32Array(this.size);
    const after: number[][] = project.activities.map(() => []);
    this.before = project.activities.map(({ before, underWay }) => (underWay ? [] : [...new Set(before)]));
    this.underWay = project.activities.flatMap(({ underWay }, at) => (underWay ? [at] : []));
    this.before.forEach((earlier, at) => {
      for (const one of earlier) after[one]?.push(at);
    });
    this.after = after;
  }

  /** The earliest start that fits resources and opening hours; infinite when there is none. */
  private fit(at: number, fromMs: number): number {
    const { durationMs, demands, byHand } = this.project.activities[at]!;
    const { open } = this.project;
    let startMs = this.timeline.earliest(fromMs, durationMs, demands);
    if (!byHand || open === null) return startMs;
    for (const { fromMs: opensMs, toMs } of open) {
      if (startMs + durationMs > toMs) continue;
      startMs = this.timeline.earliest(Math.max(startMs, opensMs), durationMs, demands);
      if (startMs + durationMs <= toMs) return startMs;
    }
    return Number.POSITIVE_INFINITY;
  }

  /**
   * Each activity, the eligible one with the lowest key first, as early as it fits.
   *
   * @param keys - lowest first
   * @param startsMs - takes the starts; infinite where an activity never fits
   * @returns the end of the last
   */
  forward(keys: Float64Array, startsMs: Float64Array): number {
    return this.generate(keys, startsMs, false);
  }

  /**
   * The same from the end: each activity as late as it fits, counted backwards from the end of the project. Without release times,
   * opening hours and activities under way only.
   */
  backward(keys: Float64Array, endsBeforeMs: Float64Array): number {
    return this.generate(keys, endsBeforeMs, true);
  }

  private generate(keys: Float64Array, startsMs: Float64Array, reversed: boolean): number {
    const { activities } = this.project;
    const { waiting, eligible } = this;
    const earlierOf = reversed ? this.after : this.before;
    const laterOf = reversed ? this.before : this.after;
    this.timeline.clear();
    let lastMs = 0;
    for (let at = 0; at < this.size; at++) waiting[at] = earlierOf[at]!.length;
    for (const at of this.underWay) {
      const { durationMs, demands } = activities[at]!;
      startsMs[at] = 0;
      this.timeline.take(0, durationMs, demands);
      lastMs = Math.max(lastMs, durationMs);
      for (const next of laterOf[at]!) waiting[next]! -= 1;
    }
    let count = 0;
    for (let at = 0; at < this.size; at++) if (waiting[at] === 0 && !activities[at]!.underWay) eligible[count++] = at;
    while (count > 0) {
      let best = 0;
      for (let i = 1; i < count; i++) {
        const [one, other] = [eligible[i]!, eligible[best]!];
        if (keys[one]! < keys[other]! || (keys[one]! === keys[other]! && one < other)) best = i;
      }
      const at = eligible[best]!;
      eligible[best] = eligible[--count]!;
      const { durationMs, demands, releaseMs } = activities[at]!;
      let fromMs = reversed ? 0 : releaseMs;
      for (const earlier of earlierOf[at]!) fromMs = Math.max(fromMs, startsMs[earlier]! + activities[earlier]!.durationMs);
      const startMs = Number.isFinite(fromMs) ? this.fit(at, fromMs) : fromMs;
      startsMs[at] = startMs;
      if (Number.isFinite(startMs)) {
        this.timeline.take(startMs, durationMs, demands);
        lastMs = Math.max(lastMs, startMs + durationMs);
      }
      for (const next of laterOf[at]!) {
        waiting[next]! -= 1;
        if (waiting[next] === 0) eligible[count++] = next;
      }
    }
    return lastMs;
  }
}
