import { type BenchJob, type BenchSnapshot, type BenchStep, type Station, type StepRef, skills } from "../benchTypes.ts";
import { openHours } from "../openHours.ts";
import { predecessorPlaces, workableOrder } from "../stepOrder.ts";
import { planInSlices } from "./planProject.ts";
import type { Activity, Plan, Project } from "./project.ts";

/** The work left on a bench, and the step each activity is. */
interface BenchProject {
  readonly project: Project;
  readonly refs: readonly StepRef[];
}

const MS_PER_MIN = 60_000;
const DAY_MS = 24 * 60 * MS_PER_MIN;
const LEAST_LEFT_MS = 1000;
/** Activities placed between two yields: 4 ms or so. */
const SLICE_ACTIVITIES = 4000;

/** What is left of a step at its median; of a wait no less than its floor. */
function leftMs(step: BenchStep, now: number): number {
  const { medianMin, floorMin, unattended } = step.route;
  const wholeMs = Math.max(medianMin, unattended ? floorMin : 0) * MS_PER_MIN;
  const runningMs = step.state === "running" && step.startedAt !== null ? Math.max(0, now - step.startedAt) : 0;
  return Math.max(LEAST_LEFT_MS, Math.round(wholeMs - step.workedMs - runningMs));
}

/** How much of each resource a step takes: its station, a technician, a skill; a wait takes nothing. */
function demandsOf({ station, skill, unattended }: BenchStep["route"], stations: readonly Station[]): readonly number[] {
  const takes = [...stations.map((name) => name === station), true, ...skills.map((one) => one === skill)];
  return takes.map((taken) => Number(taken && !unattended));
}

/** The open steps of a job with their places; the first of them is to be activity `first`. */
function jobActivities(job: BenchJob, at: { readonly first: number; readonly group: number }, snapshot: BenchSnapshot) {
  const { now, rollOutAt } = snapshot;
  const stations = stationsOf(snapshot);
  const routes = job.steps.map(({ route }) => route);
  const before = predecessorPlaces(routes);
  const isOpen = (place: number): boolean => !["done", "skipped"].includes(job.steps[place]?.state ?? "done");
  const open = routes.flatMap((_, place) => (isOpen(place) ? [place] : []));
  const last = workableOrder(routes).findLast(isOpen);
  const due = { dueMs: (job.dueAt ?? rollOutAt ?? now + DAY_MS) - now, weight: job.weight };
  return open.flatMap((place) => {
    const step = job.steps[place];
    if (step === undefined) return [];
    const activity: Activity = {
      durationMs: leftMs(step, now),
      demands: demandsOf(step.route, stations),
      before: (before[place] ?? []).filter(isOpen).map((earlier) => at.first + open.indexOf(earlier)),
      releaseMs: Math.max(0, Math.round((job.releaseAt ?? now) - now)),
      due: place === last ? due : null,
      byHand: !step.route.unattended,
      underWay: step.state === "running",
      group: at.group,
    };
    return [{ activity, ref: { order: job.order, job: job.job, place } }];
  });
}

const stationsOf = (snapshot: BenchSnapshot): readonly Station[] => Object.keys(snapshot.stations) as Station[];

/**
 * The work left on a bench as a project: what is left of each step at its median, of jobs that are not held.
 *
 * Resources are the stations, the technicians, and those who have each skill; a step that nobody there can do never starts. A job without
 * a due time is due at roll-out, or a day from now. Setting up is not saved, and nobody's absence is known.
 *
 * @param snapshot - the bench
 * @returns the project in ms after the snapshot's now, and the step that each activity is
 * @throws {DomainError} `route-has-a-cycle` when steps of a job wait for each other
 */
export function benchProject(snapshot: BenchSnapshot): BenchProject {
  const { now, technicians, rollOutAt } = snapshot;
  const rows: { readonly activity: Activity; readonly ref: StepRef }[] = [];
  snapshot.jobs.forEach((job, group) => {
    if (!job.held) rows.push(...jobActivities(job, { first: rows.length, group }, snapshot));
  });
  const able = skills.map((skill) => technicians.filter((one) => one.skills.includes(skill)).length);
  const capacities = [...stationsOf(snapshot).map((name) => snapshot.stations[name]), technicians.length, ...able];
  const open = openHours(snapshot, rollOutAt === null ? Number.POSITIVE_INFINITY : rollOutAt - now);
  return { project: { activities: rows.map(({ activity }) => activity), capacities, open }, refs: rows.map(({ ref }) => ref) };
}

/** Steps by their planned starts; those that never fit come last. */
function inOrder(plan: Plan, refs: readonly StepRef[]): readonly StepRef[] {
  const startOf = (at: number): number => plan.startsMs[at] ?? Number.MAX_SAFE_INTEGER;
  return refs
    .map((_, at) => at)
    .sort((a, b) => startOf(a) - startOf(b) || a - b)
    .flatMap((at) => refs[at] ?? []);
}

/**
 * The order in which an optimised plan of the bench starts its steps: what the rule `plan` follows.
 *
 * A plan on medians is one candidate among the rules, no promise.
 *
 * @param snapshot - the bench
 * @param budget - schedules to try, and a whole seed
 * @returns yields the schedules so far; returns the steps from first to last
 * @throws {DomainError} as `planProject`
 */
export function* planOrderInSlices(
  snapshot: BenchSnapshot,
  budget: { readonly schedules: number; readonly seed: number },
): Generator<number, readonly StepRef[], void> {
  const { project, refs } = benchProject(snapshot);
  const slice = Math.ceil(SLICE_ACTIVITIES / (refs.length + 1));
  const plan = yield* planInSlices(project, { ...budget, goal: "weightedTardiness" }, slice);
  return inOrder(plan, refs);
}
