import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planInSlices, planProject } from "../../../../core/bench/plan/planProject.ts";
import type { Activity, PlanBudget, Project } from "../../../../core/bench/plan/project.ts";
import { DomainError } from "../../../../core/errors.ts";
import published from "../../../../fixtures/published/jobShopFt06.json" with { type: "json" };
import { readJobShop } from "../../../bench/schedule/readSets.ts";
import { byLaw, byTable } from "../../../support/checkOf.ts";
import { faultsOf } from "./faultsOf.ts";
import { anyProject, freeProject } from "./randomProject.ts";

const WEEKS_MS = 14 * 24 * 3_600_000;
const makespan: PlanBudget = { schedules: 40, seed: 1, goal: "makespan" };
const tardiness: PlanBudget = { ...makespan, goal: "weightedTardiness" };
const budgets = fc.constantFrom(makespan, tardiness);

const task = (durationMs: number, extra: Partial<Activity> = {}): Activity => ({
  durationMs,
  demands: [1],
  before: [],
  releaseMs: 0,
  due: null,
  byHand: true,
  underWay: false,
  group: 0,
  ...extra,
});
const shop = (activities: readonly Activity[], extra: Partial<Project> = {}): Project => ({ activities, capacities: [1], open: null, ...extra });

const small = shop([task(5, { due: { dueMs: 9, weight: 2 } }), task(6, { before: [0] })], { open: [{ fromMs: 0, toMs: 90 }] });
const withBad: readonly ((bad: number) => Project)[] = [
  (bad) => shop([task(bad)]),
  (bad) => shop([task(1, { releaseMs: bad })]),
  (bad) => shop([task(1, { demands: [bad] })]),
  (bad) => shop([task(1, { before: [bad] })]),
  (bad) => shop([task(1, { due: { dueMs: bad, weight: 1 } })]),
  (bad) => shop([task(1, { due: { dueMs: 1, weight: bad } })]),
  (bad) => shop([task(1, { group: bad })]),
  (bad) => shop([task(1)], { capacities: [bad] }),
  (bad) => shop([task(1)], { open: [{ fromMs: bad, toMs: 1 }] }),
  (bad) => shop([task(1)], { open: [{ fromMs: 0, toMs: bad }] }),
];

/** The longest chain from release to end. */
function criticalPathMs({ activities }: Project): number {
  const endMs = (at: number): number => {
    const { before, releaseMs, durationMs, underWay } = activities[at] ?? task(0);
    return durationMs + (underWay ? 0 : Math.max(releaseMs, ...before.map(endMs)));
  };
  return Math.max(...activities.map((_, at) => endMs(at)));
}

describe(byTable(planProject, "jobShopFt06", published), () => {
  const project = readJobShop([published.jobs.length, published.machines, ...published.jobs.flat()]);

  it.each(published.rows)("ends after $makespan with seed $seed", ({ seed, makespan: expected }) => {
    const plan = planProject(project, { schedules: 5000, seed, goal: "makespan" });
    expect(plan.value).toBe(expected);
    expect(faultsOf(project, plan.startsMs)).toEqual([]);
  });
});

describe(byLaw(planProject, "precedence, capacity, release times and opening hours are kept; nothing could start sooner"), () => {
  it("breaks nothing", () => {
    fc.assert(
      fc.property(anyProject, budgets, (project, budget) => {
        expect(faultsOf(project, planProject(project, budget).startsMs)).toEqual([]);
      }),
    );
  });

  it("leaves no activity that could start a millisecond sooner", () => {
    fc.assert(
      fc.property(anyProject, budgets, (project, budget) => {
        const { startsMs } = planProject(project, budget);
        startsMs.forEach((startMs, at) => {
          if (startMs === null || project.activities[at]?.underWay) return;
          const sooner = startsMs.map((one, other) => (other === at ? startMs - 1 : one));
          expect(faultsOf(project, sooner)).not.toEqual([]);
        });
      }),
    );
  });

  it("starts everything when it is always open", () => {
    fc.assert(
      fc.property(freeProject, budgets, (project, budget) => {
        expect(planProject(project, budget).startsMs).not.toContain(null);
      }),
    );
  });
});

describe(byLaw(planProject, "no plan ends before the longest chain or before the work is done; more schedules are never worse"), () => {
  const lastEndMs = ({ activities }: Project, startsMs: readonly (number | null)[]): number =>
    Math.max(...startsMs.map((startMs, at) => (startMs ?? WEEKS_MS) + (activities[at]?.durationMs ?? 0)));

  it("ends no sooner than the longest chain", () => {
    fc.assert(
      fc.property(freeProject, (project) => {
        const { value, startsMs } = planProject(project, makespan);
        expect(value).toBeGreaterThanOrEqual(criticalPathMs(project));
        expect(value).toBe(lastEndMs(project, startsMs));
      }),
    );
  });

  it("ends with the longest chain when there is enough of everything", () => {
    fc.assert(
      fc.property(anyProject, ({ activities }) => {
        const project = { activities, capacities: [99, 99, 99], open: null };
        expect(planProject(project, makespan)).toMatchObject({ value: criticalPathMs(project), schedules: 1 });
      }),
    );
  });

  it("adds up what one pair of hands does", () => {
    const durations = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(durations, (all) => {
        expect(planProject(shop(all.map((one) => task(one))), makespan).value).toBe(all.reduce((sum, one) => sum + one, 0));
      }),
    );
  });

  it("is never worse with more schedules", () => {
    fc.assert(
      fc.property(anyProject, budgets, fc.integer({ min: 1, max: 40 }), (project, budget, fewer) => {
        const few = planProject(project, { ...budget, schedules: fewer });
        const many = planProject(project, { ...budget, schedules: fewer + 25 });
        expect(many.value).toBeLessThanOrEqual(few.value);
        expect(few.schedules).toBeLessThanOrEqual(fewer);
      }),
    );
  });

  it("is as many times longer as its durations", () => {
    fc.assert(
      fc.property(freeProject, fc.integer({ min: 2, max: 60_000 }), (project, factor) => {
        const longer = { ...project, activities: project.activities.map((one) => ({ ...one, durationMs: one.durationMs * factor })) };
        const { startsMs } = planProject(project, makespan);
        expect(planProject(longer, makespan).startsMs).toEqual(startsMs.map((startMs) => (startMs ?? 0) * factor));
      }),
    );
  });
});

const ratio = (job: { readonly durationMs: number; readonly weight: number } | undefined): number => (job ? job.weight / job.durationMs : 0);

describe(byLaw(planProject, "late jobs on one machine go by weight over length (Smith's rule)"), () => {
  it("leaves no heavier or shorter job behind", () => {
    const jobs = fc.uniqueArray(fc.record({ durationMs: fc.integer({ min: 1, max: 30 }), weight: fc.integer({ min: 1, max: 9 }) }), {
      minLength: 2,
      maxLength: 5,
      selector: ({ durationMs, weight }) => weight / durationMs,
    });
    fc.assert(
      fc.property(jobs, (all) => {
        const project = shop(all.map(({ durationMs, weight }, group) => task(durationMs, { due: { dueMs: 0, weight }, group })));
        const { startsMs } = planProject(project, { ...tardiness, schedules: 2000 });
        const byRatio = all.map((_, at) => at).sort((a, b) => ratio(all[b]) - ratio(all[a]));
        expect(startsMs.map((_, at) => at).sort((a, b) => (startsMs[a] ?? 0) - (startsMs[b] ?? 0))).toEqual(byRatio);
      }),
      { numRuns: 40 },
    );
  });
});

describe("planProject", () => {
  it("gives the same plan for the same seed", () => {
    fc.assert(
      fc.property(anyProject, budgets, fc.integer(), (project, budget, seed) => {
        expect(planProject(project, { ...budget, seed })).toEqual(planProject(project, { ...budget, seed }));
      }),
    );
  });

  it("counts a ms late by its weight, and every end a thousandth", () => {
    const project = shop([task(50, { due: { dueMs: 20, weight: 3 } })]);
    expect(planProject(project, tardiness).value).toBeCloseTo(3 * (30 + 0.05), 12);
    expect(planProject(shop([task(50, { due: { dueMs: 60, weight: 3 } })]), tardiness).value).toBeCloseTo(0.15, 12);
  });

  it("starts at the opening what would not be finished by the close", () => {
    const open = [
      { fromMs: 0, toMs: 9 },
      { fromMs: 20, toMs: 30 },
    ];
    expect(planProject(shop([task(10)], { open }), makespan).startsMs).toEqual([20]);
    expect(planProject(shop([task(9)], { open }), makespan).startsMs).toEqual([0]);
    expect(planProject(shop([task(10, { byHand: false })], { open }), makespan).startsMs).toEqual([0]);
  });

  it("never starts what no opening is long enough for, nor what waits for it, and counts two weeks", () => {
    const open = [{ fromMs: 0, toMs: 9 }];
    const project = shop([task(10), task(1, { before: [0], byHand: false, due: { dueMs: 5, weight: 2 } }), task(3)], { open });
    expect(planProject(project, tardiness)).toMatchObject({ startsMs: [null, null, 0], value: 2 * (WEEKS_MS - 5 + WEEKS_MS / 1000) });
    expect(planProject(project, makespan).value).toBe(WEEKS_MS + 3);
  });

  it("never starts what needs more than there is, and goes on with the rest", () => {
    const project = shop([task(4, { demands: [2] }), task(6)]);
    expect(planProject(project, makespan).startsMs).toEqual([null, 0]);
  });

  it("lets what is under way go on first, outside opening hours and beside what it should have waited for", () => {
    const project = shop([task(5), task(7, { underWay: true, before: [0] }), task(1, { before: [1] })], { open: [{ fromMs: 6, toMs: 99 }] });
    const { startsMs } = planProject(project, makespan);
    expect(startsMs[1]).toBe(0);
    expect([startsMs[0], startsMs[2]]).toEqual([7, 12]);
  });

  it("waits until both are over when two are under way in one place", () => {
    const project = shop([task(5, { underWay: true }), task(8, { underWay: true }), task(1)]);
    expect(planProject(project, makespan)).toMatchObject({ startsMs: [0, 0, 8], value: 9 });
  });

  it("plans nothing when there is nothing", () => {
    expect(planProject(shop([]), makespan)).toEqual({ startsMs: [], value: 0, schedules: 1 });
  });

  it("stops at a plan that cannot be better", () => {
    expect(planProject(shop([task(5), task(6)]), { ...makespan, schedules: 1000 }).schedules).toBe(1);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d anywhere", (bad) => {
    for (const broken of withBad) expect(() => planProject(broken(bad), makespan)).toThrow(DomainError);
    expect(() => planProject(small, { ...makespan, schedules: bad })).toThrow(DomainError);
    expect(() => planProject(small, { ...makespan, seed: bad })).toThrow(DomainError);
  });

  it.each([
    ["a length below 0", shop([task(-1)])],
    ["a length that is not whole", shop([task(1.5)])],
    ["a release that is not whole", shop([task(1, { releaseMs: 0.5 })])],
    ["a demand below 0", shop([task(1, { demands: [-1] })])],
    ["a demand that is missing", shop([task(1, { demands: [] })])],
    ["a demand too many", shop([task(1, { demands: [1, 1] })])],
    ["a weight below 0", shop([task(1, { due: { dueMs: 1, weight: -1 } })])],
    ["a forerunner that there is not", shop([task(1, { before: [1] })])],
    ["a capacity below 0", shop([task(1)], { capacities: [-1] })],
  ])("refuses %s", (_, broken) => {
    expect(() => planProject(broken, makespan)).toThrow(DomainError);
  });

  it("refuses activities that wait for each other, and names them", () => {
    const circle = shop([task(1), task(1, { before: [2] }), task(1, { before: [1] })]);
    expect(() => planProject(circle, makespan)).toThrow(
      expect.objectContaining({ code: "route-has-a-cycle", facts: { steps: ["activity 1", "activity 2"] } }),
    );
  });

  it.each([{ schedules: 0 }, { schedules: 1.5 }, { seed: 0.5 }, { goal: "haste" as never }])("refuses the budget %o", (part) => {
    expect(() => planProject(small, { ...makespan, ...part })).toThrow(DomainError);
  });
});

describe("planInSlices", () => {
  const project = readJobShop([published.jobs.length, published.machines, ...published.jobs.flat()]);

  it("counts up between yields and ends with the plan of one go", () => {
    const slices = planInSlices(project, { ...makespan, schedules: 100 }, 10);
    const counts: number[] = [];
    let slice = slices.next();
    for (; !slice.done; slice = slices.next()) counts.push(slice.value);
    expect(slice.value).toEqual(planProject(project, { ...makespan, schedules: 100 }));
    expect(counts.length).toBeGreaterThanOrEqual(7);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(counts.at(-1)).toBeLessThanOrEqual(100);
  });

  it.each([0, 1.5, Number.NaN])("refuses slices of %d", (size) => {
    expect(() => planInSlices(project, makespan, size).next()).toThrow(DomainError);
  });
});
