import type { BenchJob, BenchSnapshot, BenchStep, Skill, Station, StepKind } from "./benchTypes.ts";
import { checkedBench } from "./checkedBench.ts";
import { type ModelTechnician, modelTechnicians } from "./modelTechnicians.ts";
import type { Stage } from "./pace.ts";
import { stagesOf } from "./stageOf.ts";
import { predecessorPlaces, workableOrder } from "./stepOrder.ts";

/** A station as the simulation counts it. Times throughout the model are ms after the snapshot's now. */
interface ModelStation {
  readonly capacity: number;
  free: number;
}

/** A step that is not finished yet. The fields that change hold one sample. */
export interface ModelStep {
  readonly job: ModelJob;
  readonly place: number;
  readonly kind: StepKind;
  readonly station: ModelStation;
  readonly unattended: boolean;
  readonly skill: Skill | null;
  /** Press to press; null for a wait. */
  readonly stage: Stage | null;
  readonly medianMs: number;
  readonly floorMs: number;
  /** Share of the time that setting up takes, saved in a series of like steps. */
  readonly setUpShare: number;
  /** Time already spent: on the hands-on work, or waiting. */
  readonly elapsedMs: number;
  readonly running: boolean;
  /** Who is at it already. */
  readonly startedBy: ModelTechnician | null;
  readonly predecessorCount: number;
  readonly successors: readonly ModelStep[];
  /** Medians along the longest way from here to the end of the job, this step included. */
  readonly tailMs: number;
  /** When it must start at the latest: the job's due time less the longest way. */
  readonly latestMs: number;
  durationMs: number;
  waitingFor: number;
  startMs: number;
  endMs: number;
  /** Who does it in this sample. */
  technician: ModelTechnician | null;
}

/** A job with work left. `steps` keeps the places of finished steps as null. */
export interface ModelJob {
  readonly source: BenchJob;
  /** Place in the queue, first come first. */
  readonly arrival: number;
  readonly steps: readonly (ModelStep | null)[];
  readonly open: readonly ModelStep[];
  readonly releaseMs: number;
  readonly dueMs: number;
  readonly logWeight: number;
  readonly handsOnMs: number;
  /** Hands-on median not yet started in this sample. */
  handsOnLeftMs: number;
  /** Logarithm of the weight over what is left: how much the job presses when it is late. */
  logPressure: number;
}

export interface BenchModel {
  readonly jobs: readonly ModelJob[];
  readonly steps: readonly ModelStep[];
  readonly stations: readonly ModelStation[];
  readonly technicians: readonly ModelTechnician[];
  readonly rollOutMs: number;
  /** Mean hands-on work of a job, the yardstick of slack. */
  readonly meanHandsOnMs: number;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const MS_PER_MIN = 60_000;
const DAY_MS = 24 * 60 * MS_PER_MIN;

export const isFinished = (step: BenchStep): boolean => step.state === "done" || step.state === "skipped";

function elapsedMs(step: BenchStep, now: number): number {
  if (step.state === "todo") return 0;
  const runningMs = step.state === "running" && step.startedAt !== null ? Math.max(0, now - step.startedAt) : 0;
  return Math.max(0, step.workedMs) + runningMs;
}

interface Bench {
  readonly snapshot: BenchSnapshot;
  readonly technicians: readonly ModelTechnician[];
  readonly stationOf: (station: Station) => ModelStation;
}

function modelStep(step: BenchStep, job: ModelJob, at: { readonly place: number; readonly stage: Stage | null }, bench: Bench): Mutable<ModelStep> {
  const { route } = step;
  const floorMs = route.unattended ? Math.max(0, route.floorMin) * MS_PER_MIN : 0;
  const medianMs = Math.max(floorMs, route.medianMin * MS_PER_MIN);
  return {
    job,
    kind: route.kind,
    ...at,
    station: bench.stationOf(route.station),
    unattended: route.unattended,
    skill: route.skill ?? null,
    medianMs,
    floorMs,
    setUpShare: route.setUpMin === undefined || route.medianMin <= 0 ? 0 : Math.min(1, route.setUpMin / route.medianMin),
    elapsedMs: elapsedMs(step, bench.snapshot.now),
    running: step.state === "running",
    startedBy: bench.technicians.find(({ person }) => person === step.person) ?? null,
    predecessorCount: 0,
    successors: [],
    tailMs: medianMs,
    latestMs: job.dueMs - medianMs,
    durationMs: 0,
    waitingFor: 0,
    startMs: Number.POSITIVE_INFINITY,
    endMs: Number.POSITIVE_INFINITY,
    technician: null,
  };
}

function link(source: BenchJob, steps: readonly (Mutable<ModelStep> | null)[]): void {
  const routes = source.steps.map((step) => step.route);
  const before = predecessorPlaces(routes).map((places) => places.flatMap((place) => steps[place] ?? []));
  for (const place of workableOrder(routes).toReversed()) {
    const step = steps[place];
    const earlier = before[place];
    if (!step || !earlier) continue;
    step.predecessorCount = earlier.length;
    step.tailMs = step.medianMs + step.successors.reduce((longest, next) => Math.max(longest, next.tailMs), 0);
    step.latestMs = step.job.dueMs - step.tailMs;
    for (const one of earlier) one.successors = [...one.successors, step];
  }
}

function modelJob(source: BenchJob, arrival: number, bench: Bench): ModelJob {
  const { now, rollOutAt } = bench.snapshot;
  const after = (at: number | null): number | null => (at === null ? null : at - now);
  const job: Mutable<ModelJob> = {
    source,
    arrival,
    steps: [],
    open: [],
    releaseMs: Math.max(0, after(source.releaseAt) ?? 0),
    dueMs: after(source.dueAt) ?? after(rollOutAt) ?? DAY_MS,
    logWeight: Math.log(Math.max(1e-6, source.weight)),
    handsOnMs: 0,
    handsOnLeftMs: 0,
    logPressure: 0,
  };
  const stageAt = stagesOf(source.steps.map(({ route }) => route));
  const steps = source.steps.map((step, place) => (isFinished(step) ? null : modelStep(step, job, { place, stage: stageAt[place] ?? null }, bench)));
  link(source, steps);
  job.steps = steps;
  job.open = steps.filter((step) => step !== null);
  job.handsOnMs = job.open.reduce((sum, step) => sum + (step.unattended ? 0 : step.medianMs), 0);
  return job;
}

/**
 * The work left on a bench in the form the simulation runs on: linked steps, ms after the snapshot's now.
 *
 * Held jobs, and a running step of one, are left out: they take neither bench time nor a technician.
 *
 * @throws {DomainError} `route-has-a-cycle` when steps of a job wait for each other
 * @throws {DomainError} `quantity-out-of-range` when a number of the snapshot cannot be
 */
export function benchModel(snapshot: BenchSnapshot): BenchModel {
  checkedBench(snapshot);
  const stations = new Map<Station, ModelStation>();
  const stationOf = (name: Station): ModelStation => {
    const station = stations.get(name) ?? { capacity: snapshot.stations[name], free: 0 };
    stations.set(name, station);
    return station;
  };
  const rollOutMs = snapshot.rollOutAt === null ? Number.POSITIVE_INFINITY : snapshot.rollOutAt - snapshot.now;
  const technicians = modelTechnicians(snapshot, rollOutMs);
  const waiting = snapshot.jobs.filter((job) => !job.held && !job.steps.every(isFinished));
  const jobs = waiting.map((job, arrival) => modelJob(job, arrival, { snapshot, technicians, stationOf }));
  const handsOnMs = jobs.reduce((sum, job) => sum + job.handsOnMs, 0);
  return {
    jobs,
    steps: jobs.flatMap((job) => job.open),
    stations: [...stations.values()],
    technicians,
    rollOutMs,
    meanHandsOnMs: Math.max(MS_PER_MIN, handsOnMs / Math.max(1, jobs.length)),
  };
}
