import type { BenchJob, BenchSnapshot, BenchStep, Station } from "./benchTypes.ts";
import { checkedBench } from "./checkedBench.ts";
import { type OpenHours, openHours } from "./openHours.ts";
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
  readonly station: ModelStation;
  readonly unattended: boolean;
  readonly medianMs: number;
  readonly floorMs: number;
  /** Time already spent: on the hands-on work, or waiting. */
  readonly elapsedMs: number;
  readonly running: boolean;
  readonly predecessorCount: number;
  readonly successors: readonly ModelStep[];
  /** Medians along the longest way from here to the end of the job, this step included. */
  readonly tailMs: number;
  durationMs: number;
  waitingFor: number;
  startMs: number;
  endMs: number;
}

/** A job with work left. `steps` keeps the places of finished steps as null. */
export interface ModelJob {
  readonly source: BenchJob;
  readonly steps: readonly (ModelStep | null)[];
  readonly open: readonly ModelStep[];
  readonly releaseMs: number;
  readonly dueMs: number;
  readonly logWeight: number;
  readonly handsOnMs: number;
  /** Hands-on median not yet started in this sample. */
  handsOnLeftMs: number;
  logHandsOnLeft: number;
}

export interface BenchModel {
  readonly jobs: readonly ModelJob[];
  readonly steps: readonly ModelStep[];
  readonly stations: readonly ModelStation[];
  readonly technicians: number;
  /** Opening hours from now to roll-out, apart and in order. */
  readonly open: OpenHours;
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

function modelStep(step: BenchStep, job: ModelJob, place: number, station: ModelStation, now: number): Mutable<ModelStep> {
  const { route } = step;
  const floorMs = route.unattended ? Math.max(0, route.floorMin) * MS_PER_MIN : 0;
  const medianMs = Math.max(floorMs, route.medianMin * MS_PER_MIN);
  return {
    job,
    place,
    station,
    unattended: route.unattended,
    medianMs,
    floorMs,
    elapsedMs: elapsedMs(step, now),
    running: step.state === "running",
    predecessorCount: 0,
    successors: [],
    tailMs: medianMs,
    durationMs: 0,
    waitingFor: 0,
    startMs: Number.POSITIVE_INFINITY,
    endMs: Number.POSITIVE_INFINITY,
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
    for (const one of earlier) one.successors = [...one.successors, step];
  }
}

function modelJob(source: BenchJob, snapshot: BenchSnapshot, stationOf: (station: Station) => ModelStation): ModelJob {
  const after = (at: number | null): number | null => (at === null ? null : at - snapshot.now);
  const job: Mutable<ModelJob> = {
    source,
    steps: [],
    open: [],
    releaseMs: Math.max(0, after(source.releaseAt) ?? 0),
    dueMs: after(source.dueAt) ?? after(snapshot.rollOutAt) ?? DAY_MS,
    logWeight: Math.log(Math.max(1e-6, source.weight)),
    handsOnMs: 0,
    handsOnLeftMs: 0,
    logHandsOnLeft: 0,
  };
  const steps = source.steps.map((step, place) =>
    isFinished(step) ? null : modelStep(step, job, place, stationOf(step.route.station), snapshot.now),
  );
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
  const jobs = snapshot.jobs.filter((job) => !job.held && !job.steps.every(isFinished)).map((job) => modelJob(job, snapshot, stationOf));
  const rollOutMs = snapshot.rollOutAt === null ? Number.POSITIVE_INFINITY : snapshot.rollOutAt - snapshot.now;
  const handsOnMs = jobs.reduce((sum, job) => sum + job.handsOnMs, 0);
  return {
    jobs,
    steps: jobs.flatMap((job) => job.open),
    stations: [...stations.values()],
    technicians: snapshot.technicians,
    open: openHours(snapshot, rollOutMs),
    rollOutMs,
    meanHandsOnMs: Math.max(MS_PER_MIN, handsOnMs / Math.max(1, jobs.length)),
  };
}
