import type { BenchModel, ModelJob, ModelStep } from "./benchModel.ts";
import { type ModelTechnician, nextHoursMs, worksUntilMs } from "./modelTechnicians.ts";
import type { Policy } from "./policy.ts";
import { type Priority, priorityOf } from "./priorities.ts";

function countHandsOn(job: ModelJob, leftMs: number): void {
  job.handsOnLeftMs = leftMs;
  job.logPressure = job.logWeight - Math.log(Math.max(1000, leftMs));
}

/** Runs of a bench under one policy, each through one sample of durations: an event is a step's end, a release, or somebody's hours. */
export class BenchRun {
  private readonly model: BenchModel;
  private readonly priority: Priority;
  private readonly atWork: readonly ModelTechnician[];
  private nowMs = 0;
  private active: ModelStep[] = [];
  private ready: ModelStep[] = [];
  private toCome: ModelJob[] = [];

  constructor(model: BenchModel, policy: Policy) {
    this.model = model;
    this.priority = priorityOf(policy, model);
    this.atWork = model.technicians.filter(({ person }) => person !== policy.idle);
  }

  /** Plays the durations that the model's steps hold; their starts, ends and technicians are the result. */
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
    this.nowMs = 0;
    this.active = [];
    this.ready = [];
    this.toCome = this.model.jobs.filter((job) => job.releaseMs > 0);
    for (const station of this.model.stations) station.free = station.capacity;
    for (const technician of this.model.technicians) {
      technician.busy = 0;
      technician.interval = 0;
      technician.lastKind = null;
      technician.lastOrder = null;
    }
    for (const job of this.model.jobs) countHandsOn(job, job.handsOnMs);
    for (const step of this.model.steps) {
      step.waitingFor = step.predecessorCount;
      step.startMs = Number.POSITIVE_INFINITY;
      step.endMs = Number.POSITIVE_INFINITY;
      step.technician = null;
    }
  }

  /** A step under way has its technician and place already, even when more are at work than there should be. */
  private resume(step: ModelStep): void {
    const technician = step.unattended ? null : (step.startedBy ?? this.model.technicians.find(({ busy }) => busy === 0) ?? null);
    this.begin(step, technician, -step.elapsedMs, step.durationMs - step.elapsedMs);
  }

  private begin(step: ModelStep, technician: ModelTechnician | null, startMs: number, endMs: number): void {
    step.startMs = startMs;
    step.endMs = endMs;
    step.technician = technician;
    this.active.push(step);
    if (step.unattended) return;
    if (technician !== null) {
      technician.busy += 1;
      technician.lastKind = step.kind;
      technician.lastOrder = step.job.source.order;
    }
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
    if (endMs <= this.model.rollOutMs) this.begin(step, null, this.nowMs, endMs);
  }

  private finishSteps(): void {
    const before = this.active;
    if (!before.some(({ endMs }) => endMs <= this.nowMs)) return;
    this.active = before.filter(({ endMs }) => endMs > this.nowMs);
    for (const step of before) if (step.endMs <= this.nowMs) this.finish(step);
  }

  private finish(step: ModelStep): void {
    if (!step.unattended) {
      if (step.technician !== null) step.technician.busy -= 1;
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

  private startWork(): void {
    while (this.ready.length > 0 && this.atWork.some(({ busy }) => busy === 0)) {
      const urgent = this.mostUrgent();
      if (urgent === null) return;
      const { step, technician } = this.inSeries(urgent);
      this.ready.splice(this.ready.indexOf(step), 1);
      this.begin(step, technician, this.nowMs, this.nowMs + this.leftMs(step, technician));
    }
  }

  /** What is left of a step in somebody's hands: without setting up when they come from the same step of the same order. */
  private leftMs(step: ModelStep, technician: ModelTechnician): number {
    const isSetUp = step.setUpShare > 0 && technician.lastKind === step.kind && technician.lastOrder === step.job.source.order;
    return Math.ceil((isSetUp ? step.durationMs * (1 - step.setUpShare) : step.durationMs) - Math.min(step.elapsedMs, step.durationMs));
  }

  private canDo(step: ModelStep, technician: ModelTechnician): boolean {
    if (technician.busy > 0 || (step.skill !== null && !technician.skills.has(step.skill))) return false;
    return this.nowMs + this.leftMs(step, technician) <= worksUntilMs(technician, this.nowMs);
  }

  /** Who does a step: whoever comes from the same order, else the first who can; null when nobody can now. */
  private technicianFor(step: ModelStep): ModelTechnician | null {
    let first: ModelTechnician | null = null;
    for (const technician of this.atWork) {
      if (!this.canDo(step, technician)) continue;
      if (technician.lastOrder === step.job.source.order) return technician;
      first ??= technician;
    }
    return first;
  }

  /** The most urgent step that can be done now, and by whom. */
  private mostUrgent(): { readonly step: ModelStep; readonly technician: ModelTechnician } | null {
    let best: { readonly step: ModelStep; readonly technician: ModelTechnician } | null = null;
    let highest = Number.NEGATIVE_INFINITY;
    for (const step of this.ready) {
      if (step.station.free < 1) continue;
      const index = this.priority(step, this.nowMs);
      if (best !== null && (index < highest || (index === highest && step.tailMs <= best.step.tailMs))) continue;
      const technician = this.technicianFor(step);
      if (technician === null) continue;
      best = { step, technician };
      highest = index;
    }
    return best;
  }

  /** Within an order a series of like steps is finished before the next kind: the station is set up for it. */
  private inSeries(urgent: { readonly step: ModelStep; readonly technician: ModelTechnician }) {
    const { technician } = urgent;
    const { order } = urgent.step.job.source;
    if (technician.lastOrder !== order || technician.lastKind === urgent.step.kind) return urgent;
    const like = this.ready.find(
      (step) =>
        step.setUpShare > 0 &&
        step.kind === technician.lastKind &&
        step.job.source.order === order &&
        step.station.free > 0 &&
        this.canDo(step, technician),
    );
    return like === undefined ? urgent : { step: like, technician };
  }

  private nextEventMs(): number {
    let next = Number.POSITIVE_INFINITY;
    for (const step of this.active) if (step.endMs < next) next = step.endMs;
    for (const job of this.toCome) if (job.releaseMs < next) next = job.releaseMs;
    if (this.ready.length === 0) return next;
    for (const technician of this.atWork) next = Math.min(next, nextHoursMs(technician, this.nowMs));
    return next;
  }
}
