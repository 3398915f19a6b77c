import { type Id, type Instant, instant } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import type { BenchJob, BenchStep, OpenInterval } from "./benchTypes.ts";
import type { Stage } from "./pace.ts";
import { stagesOf } from "./stageOf.ts";
import { predecessorPlaces, workableOrder } from "./stepOrder.ts";

const MS_PER_MIN = 60_000;

/** One step of the order as the walk goes on. */
interface Walked {
  readonly job: number;
  readonly place: number;
  readonly stage: Stage | null;
  readonly before: readonly Walked[];
  step: BenchStep;
}

const isFinished = ({ state }: BenchStep): boolean => state === "done" || state === "skipped";
const hasBegun = ({ state }: BenchStep): boolean => state !== "todo" && state !== "skipped";

/** All steps of an order, station by station: a step of every club before the next step of any. */
function walkOf(jobs: readonly BenchJob[]): readonly Walked[] {
  const rows = jobs.map(({ steps }, job) => {
    const routes = steps.map(({ route }) => route);
    const stages = stagesOf(routes);
    const before: Walked[][] = steps.map(() => []);
    const row = steps.map((step, place): Walked => ({ job, place, stage: stages[place] ?? null, before: before[place] ?? [], step }));
    predecessorPlaces(routes).forEach((places, place) => {
      before[place]?.push(...places.flatMap((earlier) => row[earlier] ?? []));
    });
    return workableOrder(routes).flatMap((place) => row[place] ?? []);
  });
  const longest = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: longest }, (_, at) => rows.flatMap((row) => row[at] ?? [])).flat();
}

/** The stage that the next press will end: until the glue is on nothing after it is assumed. */
function stageUnderWay(walk: readonly Walked[]): Stage | null {
  const isOpen = (stage: Stage): boolean => walk.some((one) => one.stage === stage && !isFinished(one.step));
  const unglued = walk.some(({ step }) => step.route.kind === "bondSet" && step.state === "todo");
  if (unglued && isOpen("toGlue")) return "toGlue";
  return isOpen("toDone") ? "toDone" : isOpen("check") ? "check" : null;
}

/** When a step is over, as far as it is known: a wait by its planned length, hands-on work when it is done. */
function endOf({ step }: Walked): number {
  const { route, startedAt, finishedAt } = step;
  if (step.state === "skipped") return Number.NEGATIVE_INFINITY;
  if (step.state === "done") return finishedAt ?? Number.NEGATIVE_INFINITY;
  if (!route.unattended || step.state === "todo" || startedAt === null) return Number.POSITIVE_INFINITY;
  return startedAt + Math.max(route.medianMin, route.floorMin) * MS_PER_MIN - step.workedMs;
}

/** Attended time as it is used up. */
class Attention {
  private readonly left: { from: number; readonly to: number }[];
  constructor(attended: readonly OpenInterval[], now: Instant) {
    this.left = attended.map(({ from, to }) => ({ from, to: Math.min(to, now) })).filter(({ from, to }) => from < to);
  }

  /** The moment at hand; infinite when there is no time left. */
  at(): number {
    return this.left[0]?.from ?? Number.POSITIVE_INFINITY;
  }

  skipTo(moment: number): void {
    while (this.left[0] !== undefined && this.left[0].to <= moment) this.left.shift();
    const [first] = this.left;
    if (first !== undefined) first.from = Math.max(first.from, moment);
  }

  /** @returns the time there was of the time asked, and when it ended */
  spend(ms: number): { readonly spentMs: number; readonly endedAt: number } {
    let spentMs = 0;
    let endedAt = this.at();
    while (spentMs < ms && this.left[0] !== undefined) {
      const part = Math.min(ms - spentMs, this.left[0].to - this.left[0].from);
      spentMs += part;
      endedAt = this.left[0].from + part;
      this.skipTo(endedAt);
    }
    return { spentMs, endedAt };
  }
}

/** How long a step takes at its median, set up already when the one before was of its kind. */
function medianMs({ route }: BenchStep, before: Walked | null): number {
  const isSetUp = before !== null && before.step.route.kind === route.kind;
  return (route.medianMin - (isSetUp ? (route.setUpMin ?? 0) : 0)) * MS_PER_MIN;
}

/** The first step of the stage that can be worked at a moment, or when the first wait before one is over. */
function nextOf(open: readonly Walked[], at: number): { readonly step: Walked | null; readonly waitEndsAt: number } {
  let waitEndsAt = Number.POSITIVE_INFINITY;
  for (const one of open) {
    const from = one.before.reduce((latest, earlier) => Math.max(latest, endOf(earlier)), Number.NEGATIVE_INFINITY);
    if (from <= at) return { step: one, waitEndsAt };
    waitEndsAt = Math.min(waitEndsAt, from);
  }
  return { step: null, waitEndsAt };
}

function workThrough(
  walk: readonly Walked[],
  stage: Stage,
  attention: Attention,
  at: { readonly person: Id<"person"> | null; readonly now: Instant; readonly here: boolean },
): void {
  const work = walk.filter((one) => one.stage === stage && !isFinished(one.step) && !one.step.route.unattended);
  for (const one of work) {
    if (one.step.state === "running") one.step = { ...one.step, state: "paused", startedAt: one.step.startedAt };
  }
  let before: Walked | null = null;
  while (Number.isFinite(attention.at())) {
    const open = work.filter(({ step }) => !isFinished(step));
    const { step: next, waitEndsAt } = nextOf(open, attention.at());
    if (next === null) {
      if (!Number.isFinite(waitEndsAt)) break;
      attention.skipTo(waitEndsAt);
      continue;
    }
    const isLast = open.length === 1;
    const startAt = attention.at();
    const leftMs = isLast ? Number.POSITIVE_INFINITY : Math.max(0, medianMs(next.step, before) - next.step.workedMs);
    const { spentMs, endedAt } = attention.spend(leftMs);
    if (spentMs >= leftMs) {
      next.step = { ...next.step, state: "done", startedAt: instant(startAt), finishedAt: instant(endedAt) };
    } else {
      const workedMs = next.step.workedMs + spentMs;
      next.step = at.here
        ? { ...next.step, state: "running", startedAt: instant(at.now - workedMs), workedMs: 0, person: at.person }
        : { ...next.step, state: workedMs > 0 ? "paused" : "todo", workedMs };
    }
    before = next;
  }
  takeUpNext(work, at);
}

/** Whoever is there has something in hand: at the very moment a step is over the next one begins. */
function takeUpNext(work: readonly Walked[], at: { readonly person: Id<"person"> | null; readonly now: Instant; readonly here: boolean }): void {
  if (!at.here || work.some(({ step }) => step.state === "running")) return;
  const { step: next } = nextOf(
    work.filter(({ step }) => !isFinished(step)),
    at.now,
  );
  if (next !== null) next.step = { ...next.step, state: "running", startedAt: instant(at.now - next.step.workedMs), workedMs: 0, person: at.person };
}

/**
 * How far an order under way probably is, between two presses.
 *
 * A technician presses Start, Glue on and Done, not every step. The steps of the stage under way are walked at their medians
 * through the time somebody was at the order since its last press, station by station, a step behind a wait when the wait may be
 * over. What was passed counts as done, the step at hand as running, or as paused when its technician is elsewhere now. The last
 * step of the stage is never assumed done: the press has not come. Waits and what was pressed stay as they are.
 *
 * @param jobs - the clubs of one order, as pressed
 * @param attended - when its technician was at the order since its last press, in order
 * @param person - who is at it
 * @param now - the moment
 * @returns the same clubs as they probably are; as they were when nothing has begun
 * @throws {DomainError} `quantity-out-of-range` when a number is not finite
 */
export function assumedProgress(
  jobs: readonly BenchJob[],
  attended: readonly OpenInterval[],
  person: Id<"person"> | null,
  now: Instant,
): readonly BenchJob[] {
  finiteNumbers({ jobs, attended, now }, "jobs");
  if (!jobs.some(({ steps }) => steps.some(hasBegun))) return jobs;
  const walk = walkOf(jobs);
  const stage = stageUnderWay(walk);
  if (stage === null) return jobs;
  const here = (attended.at(-1)?.to ?? Number.NEGATIVE_INFINITY) >= now;
  workThrough(walk, stage, new Attention(attended, now), { person, now, here });
  return jobs.map((job, at) => ({
    ...job,
    steps: job.steps.map((step, place) => walk.find((one) => one.job === at && one.place === place)?.step ?? step),
  }));
}
