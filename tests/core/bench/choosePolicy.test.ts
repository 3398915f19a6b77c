import { describe, expect, it } from "vitest";
import type { BenchSnapshot } from "../../../core/bench/benchTypes.ts";
import { choosePolicy, choosePolicyInSlices, type PolicyTrial } from "../../../core/bench/choosePolicy.ts";
import { defaultPace } from "../../../core/bench/pace.ts";
import { defaultPolicy, type Policy } from "../../../core/bench/policy.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { id } from "../../../core/kinds.ts";
import { byLaw } from "../../support/checkOf.ts";
import { benchJob, benchWith, hands, inMinutes, routeOfSteps, work } from "./benchBuilders.ts";

const fixed = { spreads: { step: 0, job: 0, wait: 0 }, learned: [] };
const driver = routeFor({ kind: "build", family: "driver", adjustable: true }, defaultFloors);

const queue = (jobs: number, technicians: number): BenchSnapshot =>
  benchWith(
    Array.from({ length: jobs }, (_, at) => benchJob(at + 1, driver, { dueAt: inMinutes(30 + 9 * ((at * 5) % jobs)), weight: 1 + (at % 4) })),
    { technicians: hands(technicians) },
  );
const cost = ({ tardinessMin, flowMin }: PolicyTrial): number => tardinessMin + flowMin / 100;
const choose = (snapshot: BenchSnapshot, incumbent: Policy | null = null, seed = 3) =>
  choosePolicy({ snapshot, pace: defaultPace, seed, scenarios: 10, schedules: 20, incumbent });

describe(byLaw(choosePolicy, "with no policy in force it costs no more than any candidate on the days they all play"), () => {
  it.each([
    [4, 1],
    [8, 2],
    [12, 2],
  ])("holds for %d orders and %d technicians", (jobs, technicians) => {
    const { policy, trials } = choose(queue(jobs, technicians));
    const chosen = trials.find((trial) => trial.policy === policy) ?? expect.fail("a policy nobody tried");
    expect(trials.map(({ policy: { rule } }) => rule)).toEqual(expect.arrayContaining(["due", "slack", "cost", "plan"]));
    expect(Math.min(...trials.map(cost))).toBe(cost(chosen));
  });
});

describe("choosePolicy", () => {
  it("chooses the same again for the same seed", () => expect(choose(queue(8, 2))).toEqual(choose(queue(8, 2))));

  it("keeps the default on an empty bench, and the one in force", () => {
    const inForce: Policy = { rule: "slack", planOrder: [], idle: null };
    expect(choose(benchWith([])).policy).toBe(defaultPolicy);
    expect(choose(benchWith([]), inForce).policy).toBe(inForce);
  });

  it("keeps the one in force while another saves less than the margin", () => {
    const snapshot = benchWith([benchJob(1, driver, { dueAt: inMinutes(60) })]);
    expect(choose(snapshot, { rule: "slack", planOrder: [], idle: null })).toMatchObject({ policy: { rule: "slack" } });
  });

  it("leaves the one in force for one that saves much: the short job that is due goes first", () => {
    const long = benchJob(1, routeOfSteps(work("cut", 60)), { dueAt: inMinutes(59), weight: 1 });
    const short = benchJob(2, routeOfSteps(work("cut", 5)), { dueAt: inMinutes(60), weight: 20 });
    const { policy, kept } = choosePolicy({
      snapshot: benchWith([long, short]),
      pace: fixed,
      seed: 1,
      scenarios: 1,
      schedules: 10,
      incumbent: { rule: "due", planOrder: [], idle: null },
    });
    expect(policy.rule).not.toBe("due");
    expect(kept).toBe(false);
  });

  it("leaves a newcomer without work where a second pair of hands makes the bench slower", () => {
    // Alone, the first works A's steps one after another and then B; a second begins B at the only cutter at once, which no
    // rule interrupts, and A, worth forty times as much, waits for the cutter until B is through.
    const a = benchJob(1, routeOfSteps(work("tipPrepare", 2), work("cut", 3, { station: "cutter", after: ["tipPrepare"] })), {
      dueAt: inMinutes(5),
      weight: 40,
    });
    const b = benchJob(2, routeOfSteps(work("cut", 60, { station: "cutter" })), { dueAt: inMinutes(300), weight: 1 });
    const bench = (technicians: number): BenchSnapshot => benchWith([a, b], { technicians: hands(technicians) });
    const choice = choosePolicy({ snapshot: bench(2), pace: fixed, seed: 1, scenarios: 1, schedules: 10, incumbent: null });
    expect(choice.policy.idle).not.toBeNull();
    expect([id<"person">(1), id<"person">(2)]).toContain(choice.policy.idle);
    const both = choice.trials.filter(({ policy }) => policy.idle === null).map(cost);
    const chosen = choice.trials.find(({ policy }) => policy === choice.policy);
    expect(chosen?.tardinessMin).toBe(0);
    expect(Math.min(...both)).toBeGreaterThan(40 * 50);
  });
});

describe(byLaw(choosePolicyInSlices, "where the work is cut into slices changes nothing"), () => {
  it("chooses in slices what it chooses at once", () => {
    const question = { snapshot: queue(6, 2), pace: defaultPace, seed: 5, scenarios: 6, schedules: 12, incumbent: null };
    const slices = choosePolicyInSlices(question, 1);
    let count = 0;
    for (;;) {
      const slice = slices.next();
      if (slice.done) {
        expect(slice.value).toEqual(choosePolicy(question));
        break;
      }
      count += 1;
    }
    expect(count).toBeGreaterThan(6);
  });
});
