import { describe, expect, it } from "vitest";
import { medianDay } from "../../../core/bench/medianDay.ts";
import { nextWork } from "../../../core/bench/nextWork.ts";
import { defaultPace } from "../../../core/bench/pace.ts";
import { defaultPolicy } from "../../../core/bench/policy.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { id } from "../../../core/kinds.ts";
import { byLaw } from "../../support/checkOf.ts";
import { benchJob, benchStep, benchWith, hands, inMinutes, minutesFromNow, now, routeOfSteps, work } from "./benchBuilders.ts";

const driver = routeFor({ kind: "build", family: "driver", adjustable: true }, defaultFloors);
const first = id<"person">(1);
const ask = (snapshot: ReturnType<typeof benchWith>, policy = defaultPolicy) => nextWork({ snapshot, policy });

describe(byLaw(medianDay, "without spreads a driver alone takes the 21 minutes of its table"), () => {
  it("is in hand after 21 minutes (common practice, no source)", () => {
    const day = medianDay({ snapshot: benchWith([benchJob(1, driver)]), policy: defaultPolicy, pace: defaultPace });
    expect(Math.max(...day.map(({ endAt }) => minutesFromNow(endAt)))).toBeCloseTo(21, 6);
  });
});

describe(byLaw(nextWork, "what is next starts now, and what fits into a wait ends with it"), () => {
  it("begins the only order, and says that it is all there is", () => {
    const [next] = ask(benchWith([benchJob(1, driver)]));
    expect(next).toMatchObject({ person: first, underWay: false, why: { kind: "onlyWork" }, now: { startAt: now } });
  });

  it("names what fits while the glue sets", () => {
    const steps = driver.steps.map((step) =>
      benchStep(
        step,
        ["pullParts", "tipPrepare", "dryFit"].includes(step.kind)
          ? { state: "done" }
          : step.kind === "bond"
            ? { state: "running", startedAt: now, person: first }
            : {},
      ),
    );
    const [next] = ask(benchWith([benchJob(1, driver, { steps })]));
    expect(next).toMatchObject({ underWay: true, why: { kind: "underWay" }, now: { kind: "bond" } });
    expect(minutesFromNow(next?.waitEndsAt ?? null)).toBeCloseTo(7, 6);
    expect(next?.meanwhile.map(({ kind }) => kind)).toEqual(["pullHead", "gaugeHead", "layOutGrip"]);
  });

  it("says how much time is to spare, or that it is late", () => {
    const other = benchJob(2, driver, { dueAt: inMinutes(900) });
    const why = (dueMin: number) => ask(benchWith([benchJob(1, routeOfSteps(work("cut", 10)), { dueAt: inMinutes(dueMin) }), other]))[0]?.why;
    expect(why(25)).toMatchObject({ kind: "due", spareMin: expect.closeTo(15, 6) });
    expect(why(4)).toMatchObject({ kind: "late", lateMin: expect.closeTo(6, 6) });
  });

  it("says that a player waits on the range", () => {
    const jobs = [benchJob(1, routeOfSteps(work("cut", 10)), { weight: 4 }), benchJob(2, routeOfSteps(work("cut", 10)))];
    expect(ask(benchWith(jobs))[0]?.why).toEqual({ kind: "urgent" });
  });

  it("says why there is nothing: away, closed, idle, no work", () => {
    const jobs = [benchJob(1, routeOfSteps(work("cut", 10)))];
    const away = [{ ...hands(1)[0], person: first, skills: [], away: [{ from: now, to: inMinutes(30) }] }];
    expect(ask(benchWith(jobs, { technicians: away }))[0]?.why).toEqual({ kind: "away", till: inMinutes(30) });
    expect(ask(benchWith(jobs, { open: [{ from: inMinutes(60), to: inMinutes(90) }] }))[0]?.why).toEqual({ kind: "closed", till: inMinutes(60) });
    expect(ask(benchWith(jobs), { ...defaultPolicy, idle: first })[0]?.why).toEqual({ kind: "idle" });
    expect(ask(benchWith([]))[0]?.why).toEqual({ kind: "noWork" });
  });

  it("waits for what sets when there is nothing else", () => {
    const route = routeOfSteps(work("bondSet", 8, { unattended: true }), work("cut", 2, { after: ["bondSet"] }));
    expect(ask(benchWith([benchJob(1, route)]))[0]?.why).toMatchObject({ kind: "waiting", till: inMinutes(8) });
  });
});
