import type { Id, Instant } from "../kinds.ts";
import type { ScheduledStep } from "./benchSimulation.ts";
import type { BenchJob, BenchSnapshot, OpenInterval, StepKind, StepRef, Technician } from "./benchTypes.ts";
import { medianDay } from "./medianDay.ts";
import { defaultPace, type Pace } from "./pace.ts";
import type { Policy } from "./policy.ts";

/** Why somebody does this now, or why there is nothing for them. */
export type NextWhy =
  | { readonly kind: "underWay" | "onlyWork" | "urgent" | "noRush" | "idle" | "noWork" }
  | { readonly kind: "due"; readonly dueAt: Instant; readonly spareMin: number }
  | { readonly kind: "late"; readonly dueAt: Instant; readonly lateMin: number }
  | { readonly kind: "waiting"; readonly till: Instant; readonly order: Id<"order"> }
  | { readonly kind: "closed" | "away"; readonly till: Instant | null };

export interface TimedStep {
  readonly step: StepRef;
  readonly kind: StepKind;
  readonly startAt: Instant;
  readonly endAt: Instant;
}

/** What one technician should do now, and what fits into the wait that runs or that this begins. */
export interface NextWork {
  readonly person: Id<"person">;
  readonly now: TimedStep | null;
  readonly underWay: boolean;
  readonly why: NextWhy;
  readonly waitEndsAt: Instant | null;
  readonly meanwhile: readonly TimedStep[];
}

const MS_PER_MIN = 60_000;

function timed({ order, job, place, route, startAt, endAt }: ScheduledStep): readonly TimedStep[] {
  return startAt === null || endAt === null ? [] : [{ step: { order, job, place }, kind: route.kind, startAt, endAt }];
}

const within = (intervals: readonly OpenInterval[], now: Instant): OpenInterval | undefined =>
  intervals.find(({ from, to }) => from <= now && now < to);

/** When a job is in hand on the median day; null when it is not before the truck leaves. */
function endOf(day: readonly ScheduledStep[], { order, job }: Pick<BenchJob, "order" | "job">): Instant | null {
  const ends = day.filter((step) => step.order === order && step.job === job).map(({ endAt }) => endAt);
  return ends.some((at) => at === null)
    ? null
    : ends.reduce<Instant | null>((latest, at) => (latest === null || (at ?? 0) > latest ? at : latest), null);
}

function whyWork(snapshot: BenchSnapshot, day: readonly ScheduledStep[], step: StepRef): NextWhy {
  const open = snapshot.jobs.filter(({ held, order }) => !held && day.some((one) => one.order === order));
  const job = open.find((one) => one.order === step.order && one.job === step.job);
  if (job === undefined || new Set(open.map(({ order }) => order)).size < 2) return { kind: "onlyWork" };
  const inHandAt = endOf(day, job);
  const { dueAt } = job;
  if (dueAt !== null && inHandAt !== null) {
    const spareMin = (dueAt - inHandAt) / MS_PER_MIN;
    return spareMin < 0 ? { kind: "late", dueAt, lateMin: -spareMin } : { kind: "due", dueAt, spareMin };
  }
  return open.every(({ weight, order }) => order === job.order || weight < job.weight) ? { kind: "urgent" } : { kind: "noRush" };
}

function whyNothing(snapshot: BenchSnapshot, day: readonly ScheduledStep[], technician: Technician, policy: Policy): NextWhy {
  const { now } = snapshot;
  const away = within(technician.away, now);
  if (away !== undefined) return { kind: "away", till: Number.isSafeInteger(away.to) && away.to < Number.MAX_SAFE_INTEGER ? away.to : null };
  if (within(snapshot.open, now) === undefined) {
    const opens = snapshot.open.filter(({ from }) => from > now).map(({ from }) => from);
    return { kind: "closed", till: opens.reduce<Instant | null>((first, at) => (first === null || at < first ? at : first), null) };
  }
  if (policy.idle === technician.person) return { kind: "idle" };
  const next = day.filter(({ person, startAt }) => person === technician.person && startAt !== null && startAt > now).toSorted(byStart)[0];
  return next?.startAt == null ? { kind: "noWork" } : { kind: "waiting", till: next.startAt, order: next.order };
}

const byStart = (a: ScheduledStep, b: ScheduledStep): number => (a.startAt ?? 0) - (b.startAt ?? 0);

/** The longest wait of the order in hand that runs on when this step is over; without a step, of any order. */
function waitAfter(day: readonly ScheduledStep[], current: TimedStep | null, now: Instant): Instant | null {
  const from = current?.endAt ?? now;
  const waits = day.filter(
    ({ order, route, startAt, endAt }) =>
      route.unattended &&
      route.kind !== "walk" &&
      (current === null || order === current.step.order) &&
      startAt !== null &&
      endAt !== null &&
      startAt <= from &&
      endAt > from,
  );
  return waits.reduce<Instant | null>((latest, { endAt }) => (latest === null || (endAt ?? 0) > latest ? endAt : latest), null);
}

/**
 * What every technician should do now and why, and what fits into the wait: one day at medians under the policy.
 *
 * @param question - the bench, the policy in force, and the pace (the route's own minutes when left out)
 * @returns one answer a technician, in the order of the snapshot
 * @throws {DomainError} as `simulateOnce`
 */
export function nextWork(question: { readonly snapshot: BenchSnapshot; readonly policy: Policy; readonly pace?: Pace }): readonly NextWork[] {
  const { snapshot, policy } = question;
  const { now } = snapshot;
  const day = medianDay({ snapshot, policy, pace: question.pace ?? defaultPace });
  return snapshot.technicians.map((technician): NextWork => {
    const { person } = technician;
    const own = day.filter((step) => step.person === person && step.startAt !== null).toSorted(byStart);
    const atHand = own.findLast(({ underWay }) => underWay) ?? own.find(({ startAt }) => startAt !== null && startAt <= now);
    const current = atHand === undefined ? null : (timed(atHand)[0] ?? null);
    const waitEndsAt = waitAfter(day, current, now);
    const from = current?.endAt ?? now;
    const fits = ({ startAt, endAt }: ScheduledStep): boolean =>
      startAt !== null && endAt !== null && startAt >= from && waitEndsAt !== null && startAt < waitEndsAt && endAt <= waitEndsAt;
    const why: NextWhy =
      atHand === undefined || current === null
        ? whyNothing(snapshot, day, technician, policy)
        : atHand.underWay
          ? { kind: "underWay" }
          : whyWork(snapshot, day, current.step);
    return {
      person,
      now: current,
      underWay: atHand?.underWay ?? false,
      why,
      waitEndsAt,
      meanwhile: own.filter((step) => step !== atHand && fits(step)).flatMap(timed),
    };
  });
}
