import type { BenchModel, ModelJob, ModelStep } from "./benchModel.ts";
import { urgency } from "./urgency.ts";

function countHandsOn(job: ModelJob, leftMs: number): void {
  job.handsOnLeftMs = leftMs;
  job.logHandsOnLeft = Math.log(Math.max(1000, leftMs));
}

/** One run of the bench through one sample of durations: an event is a step's end, a release, or an opening. */
export class BenchRun {
  private readonly model: BenchModel;
  private nowMs = 0;
  private technicians: number;
  private interval = 0;
  private active: ModelStep[] = [];
  private readonly ready: ModelStep[] = [];
  private toCome: ModelJob[];

  constructor(model: BenchModel) {
    this.model = model;
    this.technicians = model.technicians;
    this.toCome = model.jobs.filter((job) => job.releaseMs > 0);
  }

  run(): void {
    this.reset();
    for (const step of this.model.steps) if (step.running) this.resume(step);
    for (const step of this.model.steps) if (step.waitingFor === 0 && !step.running) this.offer(step);
    let next = 0;
    while (next !== Number.POSITIVE_INFINITY) {
      this.nowMs = next;
      this.finishSteps();
      this.releaseJobs();
      this.startWork();
      next = this.nextEventMs();
    }
  }

  private reset(): void {
    for (const station of this.model.stations) station.free = station.capacity;
    for (const job of this.model.jobs) countHandsOn(job, job.handsOnMs);
    for (const step of this.model.steps) {
      step.waitingFor = step.predecessorCount;
      step.startMs = Number.POSITIVE_INFINITY;
      step.endMs = Number.POSITIVE_INFINITY;
    }
  }

  /** A step under way has its technician and place already, even when more are at work than there should be. */
  private resume(step: ModelStep): void {
    this.begin(step, -step.elapsedMs, step.durationMs - step.elapsedMs);
  }

  private begin(step: ModelStep, startMs: number, endMs: number): void {
    step.startMs = startMs;
    step.endMs = endMs;
    this.active.push(step);
    if (step.unattended) return;
    this.technicians -= 1;
    step.station.free -= 1;
    countHandsOn(step.job, step.job.handsOnLeftMs - step.medianMs);
  }

  /** A step whose forerunners are done: a wait begins by itself, hands-on work queues for a technician. */
  private offer(step: ModelStep): void {
    if (step.job.releaseMs > this.nowMs) return;
    if (!step.unattended) {
      this.ready.push(step);
      return;
    }
    const endMs = this.nowMs + step.durationMs - step.elapsedMs;
    if (endMs <= this.model.rollOutMs) this.begin(step, this.nowMs, endMs);
  }

  private finishSteps(): void {
    const finished = this.active.filter((step) => step.endMs <= this.nowMs);
    if (finished.length === 0) return;
    this.active = this.active.filter((step) => step.endMs > this.nowMs);
    for (const step of finished) this.finish(step);
  }

  private finish(step: ModelStep): void {
    if (!step.unattended) {
      this.technicians += 1;
      step.station.free += 1;
    }
    for (const next of step.successors) {
      next.waitingFor -= 1;
      if (next.waitingFor === 0 && !next.running) this.offer(next);
    }
  }

  private releaseJobs(): void {
    const released = this.toCome.filter((job) => job.releaseMs <= this.nowMs);
    if (released.length === 0) return;
    this.toCome = this.toCome.filter((job) => job.releaseMs > this.nowMs);
    for (const job of released) {
      for (const step of job.open) if (step.waitingFor === 0 && !step.running) this.offer(step);
    }
  }

  private closesMs(): number {
    const { open } = this.model;
    while ((open[this.interval]?.toMs ?? Number.POSITIVE_INFINITY) <= this.nowMs) this.interval += 1;
    const current = open[this.interval];
    return current !== undefined && current.fromMs <= this.nowMs ? current.toMs : Number.NEGATIVE_INFINITY;
  }

  private startWork(): void {
    const closesMs = this.closesMs();
    while (this.technicians > 0) {
      const at = this.mostUrgent(closesMs);
      const step = this.ready[at];
      if (step === undefined) return;
      this.ready.splice(at, 1);
      this.begin(step, this.nowMs, this.nowMs + step.durationMs - step.elapsedMs);
    }
  }

  /** @returns the place in `ready` of the most urgent step that can be done now; -1 for none */
  private mostUrgent(closesMs: number): number {
    let best = -1;
    let highest = Number.NEGATIVE_INFINITY;
    let longestTailMs = 0;
    this.ready.forEach((step, at) => {
      if (step.station.free < 1 || this.nowMs + step.durationMs - step.elapsedMs > closesMs) return;
      const index = urgency(step, this.nowMs, this.model.meanHandsOnMs);
      if (index < highest || (index === highest && step.tailMs <= longestTailMs)) return;
      best = at;
      highest = index;
      longestTailMs = step.tailMs;
    });
    return best;
  }

  private nextEventMs(): number {
    let next = Number.POSITIVE_INFINITY;
    for (const step of this.active) if (step.endMs < next) next = step.endMs;
    for (const job of this.toCome) if (job.releaseMs < next) next = job.releaseMs;
    if (this.ready.length === 0) return next;
    for (let at = this.interval; at < this.model.open.length; at++) {
      const fromMs = this.model.open[at]?.fromMs ?? Number.POSITIVE_INFINITY;
      if (fromMs > this.nowMs) return Math.min(next, fromMs);
    }
    return next;
  }
}
