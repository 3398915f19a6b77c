import { type BenchSnapshot, type BenchStep, type StepRef, skills } from "../benchTypes.ts";
import { openHours } from "../openHours.ts";
import { predecessorPlaces } from "../stepOrder.ts";
import { planInSlices } from "./planProject.ts";
import type { Activity, Plan, Project } from "./project.ts";

const MS_PER_MIN = 60_000;
const DAY_MS = 24 * 60 * MS_PER_MIN;

const isFinished = ({ state }: BenchStep): boolean => state === "done" || state === "skipped";

/** What is left of a step at its median; of a wait no less than its floor. At least a second. */
function leftMs(step: BenchStep, now: number): number {
  const { medianMin, floorMin, unattended } = step.route;
  const wholeMs = Math.max(medianMin, unattended ? floorMin : 0) * MS_PER_MIN;
  const spentMs = step.workedMs + (step.state === "running" && step.startedAt !== null ? Math.max(0, now - step.startedAt) : 0);
  return Math.max(1000, Math.round(wholeMs - spentMs));
}

/** The work left on a bench as a project at medians, with the step each activity is; held jobs are left out. */
export function benchProject(snapshot: BenchSnapshot): { readonly project: Project; readonly refs: readonly StepRef[] } {
  const { now, technicians } = snapshot;
  const rollOutMs = snapshot.rollOutAt === null ? Number.POSITIVE_INFINITY : snapshot.rollOutAt - now;
  const stations = Object.keys(snapshot.stations) as readonly (keyof BenchSnapshot["stations"])[];
  const capacities = [
    ...stations.map((name) => snapshot.stations[name]),
    technicians.length,
    ...skills.map((skill) => technicians.filter((one) => one.skills.includes(skill)).length),
  ];
  const refs: StepRef[] = [];
  const activities: Activity[] = [];
  snapshot.jobs.forEach((job, group) => {
    if (job.held) return;
    const placeOf = new Map<number, number>();
    const before = predecessorPlaces(job.steps.map(({ route }) => route));
    const open = job.steps.flatMap((step, place) => (isFinished(step) ? [] : [place]));
    for (const [at, place] of open.entries()) placeOf.set(place, activities.length + at);
    const dueMs = Math.round((job.dueAt ?? snapshot.rollOutAt ?? now + DAY_MS) - now);
    for (const place of open) {
      const step = job.steps[place];
      if (step === undefined) continue;
      const { route } = step;
      const takes = (named: boolean): number => Number(named && !route.unattended);
      const demands = [...stations.map((name) => takes(name === route.station)), takes(true), ...skills.map((skill) => takes(route.skill === skill))];
      refs.push({ order: job.order, job: job.job, place });
      activities.push({
        durationMs: leftMs(step, now),
        demands: demands.map((demand, resource) => Math.min(demand, capacities[resource] ?? 0)),
        before: (before[place] ?? []).flatMap((earlier) => placeOf.get(earlier) ?? []),
        releaseMs: step.state === "running" ? 0 : Math.max(0, Math.round((job.releaseAt ?? now) - now)),
        due: place === open.at(-1) ? { dueMs, weight: job.weight } : null,
        byHand: !route.unattended,
        group,
      });
    }
  });
  return { project: { activities, capacities, open: openHours(snapshot, rollOutMs) }, refs };
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
 * Medians only: a plan on fixed minutes is one candidate among the rules, no promise. A technician's absence is not planned for.
 *
 * @param budget - schedules to try, and a whole seed
 * @returns yields the schedules so far; returns the steps from first to last
 */
export function* planOrderInSlices(
  snapshot: BenchSnapshot,
  budget: { readonly schedules: number; readonly seed: number },
): Generator<number, readonly StepRef[], void> {
  const { project, refs } = benchProject(snapshot);
  const plan = yield* planInSlices(project, { ...budget, goal: "weightedTardiness" }, Math.max(1, Math.ceil(400 / (refs.length + 1))));
  return inOrder(plan, refs);
}
