import { type BenchModel, benchModel } from "../../../core/bench/benchModel.ts";
import { BenchRun } from "../../../core/bench/benchRun.ts";
import type { BenchJob, BenchSnapshot, BenchStep } from "../../../core/bench/benchTypes.ts";
import { choosePolicy } from "../../../core/bench/choosePolicy.ts";
import { drawDurations } from "../../../core/bench/drawDurations.ts";
import { jobStream } from "../../../core/bench/jobStream.ts";
import { defaultPace } from "../../../core/bench/pace.ts";
import { planOrderInSlices } from "../../../core/bench/plan/benchProject.ts";
import { type DispatchRule, defaultPolicy, dispatchRules, type Policy } from "../../../core/bench/policy.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { type Instant, instant } from "../../../core/kinds.ts";
import { benchJob, benchWith, hands, inMinutes, MIN } from "../../core/bench/benchBuilders.ts";

const SCENARIOS = 200;
const SCHEDULES = 50;
const Z95 = 1.96;

/** A shop of the day: drivers, irons, regrips and turns, due so that some are late. */
function shopOf(jobs: number, technicians: number, seed: number): BenchSnapshot {
  const random = jobStream({ seed, sample: 0, order: 0, job: 0 });
  const kinds = [
    { kind: "build", family: "driver", adjustable: true },
    { kind: "build", family: "iron", adjustable: false },
    { kind: "regrip", family: "iron", adjustable: false },
    { kind: "turn", family: "driver", adjustable: true },
  ] as const;
  const perHand = jobs / technicians;
  return benchWith(
    Array.from({ length: jobs }, (_, at) => {
      const question = kinds[Math.floor(random() ** 1.5 * kinds.length)] ?? kinds[0];
      const dueAt = inMinutes(20 + Math.round(random() * perHand * 14));
      return benchJob(at + 1, routeFor(question, defaultFloors), {
        dueAt,
        weight: [1, 2, 2, 4][Math.floor(random() * 4)] ?? 1,
        work: `${question.kind} ${question.family}`,
      });
    }),
    { technicians: hands(technicians), stations: { bench: 2, cutter: 1, bonding: 2, gripping: 1, loftLie: 1, scale: 1, marking: 1, walk: 9 } },
  );
}

type Truth = ReadonlyMap<string, number>;
const nameOf = (order: number, job: number, place: number): string => `${order}/${job}/${place}`;

/** How long each step really takes: drawn once, hidden from every policy. */
function truthOf(snapshot: BenchSnapshot, seed: number, scenario: number): Truth {
  const model = benchModel(snapshot);
  drawDurations(model, defaultPace, seed, scenario);
  return new Map(model.steps.map((step) => [nameOf(step.job.source.order, step.job.source.job, step.place), step.durationMs]));
}

function play(snapshot: BenchSnapshot, policy: Policy, truth: Truth): BenchModel {
  const model = benchModel(snapshot);
  for (const step of model.steps)
    step.durationMs = Math.max(truth.get(nameOf(step.job.source.order, step.job.source.job, step.place)) ?? 0, step.elapsedMs);
  new BenchRun(model, policy).run();
  return model;
}

/** The bench as it stands some time on: what is over, what runs and in whose hands. */
function later(snapshot: BenchSnapshot, model: BenchModel, at: Instant): BenchSnapshot {
  const jobs = snapshot.jobs.map((job): BenchJob => {
    const own = model.jobs.find(({ source }) => source === job);
    const steps = job.steps.map((step, place): BenchStep => {
      const played = own?.steps[place] ?? null;
      if (played === null) return step;
      const [startAt, endAt] = [snapshot.now + played.startMs, snapshot.now + played.endMs];
      if (endAt <= at) return { ...step, state: "done", startedAt: instant(startAt), finishedAt: instant(endAt) };
      return startAt <= at
        ? { ...step, state: "running", startedAt: instant(startAt), workedMs: 0, person: played.technician?.person ?? null }
        : step;
    });
    return { ...job, steps };
  });
  return { ...snapshot, now: at, jobs };
}

const isOver = ({ jobs }: BenchSnapshot): boolean => jobs.every(({ steps }) => steps.every(({ state }) => state === "done"));

function tardinessMin({ jobs }: BenchSnapshot): number {
  return jobs.reduce((sum, { steps, dueAt, weight }) => {
    const end = Math.max(...steps.map(({ finishedAt }) => finishedAt ?? 0));
    return sum + (dueAt === null ? 0 : (weight * Math.max(0, end - dueAt)) / MIN);
  }, 0);
}

/** One true day, the policy chosen anew every so many minutes on what is known then. */
function playChosen(start: BenchSnapshot, truth: Truth, seed: number, everyMin: number): number {
  let snapshot = start;
  let incumbent: Policy | null = null;
  for (let turn = 1; !isOver(snapshot) && turn < 500; turn++) {
    const { policy } = choosePolicy({ snapshot, pace: defaultPace, seed: seed + turn, schedules: SCHEDULES, incumbent });
    incumbent = policy;
    snapshot = later(snapshot, play(snapshot, policy, truth), instant(start.now + turn * everyMin * MIN));
  }
  return tardinessMin(snapshot);
}

function playRule(start: BenchSnapshot, truth: Truth, rule: DispatchRule): number {
  const plan = planOrderInSlices(start, { schedules: 4 * SCHEDULES, seed: 1 });
  let slice = plan.next();
  while (rule === "plan" && !slice.done) slice = plan.next();
  const policy: Policy = { ...defaultPolicy, rule, planOrder: slice.done === true ? slice.value : [] };
  return tardinessMin(later(start, play(start, policy, truth), instant(start.now + 10_000 * MIN)));
}

const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
const half = (values: readonly number[]): number => {
  const m = mean(values);
  return (Z95 * Math.sqrt(mean(values.map((one) => (one - m) ** 2)))) / Math.sqrt(values.length);
};
const shown = (values: readonly number[]): string => `${mean(values).toFixed(1)} ± ${half(values).toFixed(1)}`;

/** Prints what each way of running a bench costs: expected weighted minutes late over fresh days, with 95 % intervals, the same days for all. */
export function printPolicySeason(): void {
  console.log(
    `\nexpected weighted tardiness in minutes, ${SCENARIOS} fresh days each, 95 % intervals; difference to the chosen policy on the same days`,
  );
  for (const { jobs, technicians, everyMin } of [
    { jobs: 10, technicians: 1, everyMin: 10 },
    { jobs: 20, technicians: 2, everyMin: 10 },
    { jobs: 40, technicians: 2, everyMin: 20 },
  ]) {
    const days = Array.from({ length: SCENARIOS }, (_, at) => {
      const shop = shopOf(jobs, technicians, 1000 * jobs + at);
      return { shop, truth: truthOf(shop, 99_000 + jobs, at), seed: 7000 + at };
    });
    const chosen = days.map(({ shop, truth, seed }) => playChosen(shop, truth, seed, everyMin));
    console.log(`${jobs} orders, ${technicians} technician(s), chosen anew every ${everyMin} min by 30 days: ${shown(chosen)}`);
    for (const rule of dispatchRules) {
      const costs = days.map(({ shop, truth }) => playRule(shop, truth, rule));
      console.log(`  ${rule}: ${shown(costs)}; ${shown(costs.map((cost, at) => cost - (chosen[at] ?? 0)))} more`);
    }
  }
}
