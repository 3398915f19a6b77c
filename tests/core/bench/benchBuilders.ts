import {
  type BenchJob,
  type BenchSnapshot,
  type BenchStep,
  type Route,
  type RouteStep,
  type Station,
  skills,
  type Technician,
} from "../../../core/bench/benchTypes.ts";
import { type Instant, id, instant } from "../../../core/kinds.ts";

export const MIN = 60_000;
/** A whole minute; nothing rests on which. */
export const now = instant(30_000_000 * MIN);
export const inMinutes = (minutes: number): Instant => instant(now + minutes * MIN);
export const minutesFromNow = (at: number | null): number => (at === null ? Number.POSITIVE_INFINITY : (at - now) / MIN);

const stations: Readonly<Record<Station, number>> = { bench: 2, cutter: 1, bonding: 1, gripping: 1, loftLie: 1, scale: 1, marking: 1, walk: 9 };

export const benchStep = (route: RouteStep, extra: Partial<BenchStep> = {}): BenchStep => ({
  route,
  state: "todo",
  startedAt: null,
  finishedAt: null,
  workedMs: 0,
  person: null,
  ...extra,
});

export const benchJob = (order: number, route: Route, extra: Partial<BenchJob> = {}): BenchJob => ({
  order: id<"order">(order),
  job: 1,
  work: "build driver",
  steps: route.steps.map((step) => benchStep(step)),
  playableAfterBondMin: route.playableAfterBondMin,
  playableAfterGripMin: route.playableAfterGripMin,
  releaseAt: null,
  dueAt: null,
  weight: 1,
  held: false,
  ...extra,
});

/** Technicians who may do everything and are never away. */
export const hands = (count: number): readonly Technician[] =>
  Array.from({ length: count }, (_, at) => ({ person: id<"person">(at + 1), skills, away: [] }));

/** One technician, one of every station, open for a day. */
export const benchWith = (jobs: readonly BenchJob[], extra: Partial<BenchSnapshot> = {}): BenchSnapshot => ({
  version: 1,
  now,
  technicians: hands(1),
  stations,
  open: [{ from: now, to: inMinutes(1440) }],
  rollOutAt: null,
  jobs,
  ...extra,
});

export const work = (kind: RouteStep["kind"], medianMin: number, extra: Partial<RouteStep> = {}): RouteStep => ({
  kind,
  medianMin,
  unattended: false,
  floorMin: 0,
  station: "bench",
  after: [],
  ...extra,
});

export const routeOfSteps = (...steps: readonly RouteStep[]): Route => ({ steps, playableAfterBondMin: 0, playableAfterGripMin: 0 });
