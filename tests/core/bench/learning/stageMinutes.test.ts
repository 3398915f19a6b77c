import { describe, expect, it } from "vitest";
import type { RouteQuestion, RouteStep } from "../../../../core/bench/benchTypes.ts";
import { paceOfStage } from "../../../../core/bench/learning/paceOfStage.ts";
import { stageMinutes } from "../../../../core/bench/learning/stageMinutes.ts";
import { stageParts } from "../../../../core/bench/learning/stageParts.ts";
import type { Stage } from "../../../../core/bench/pace.ts";
import { defaultFloors, routeFor } from "../../../../core/bench/routes.ts";
import { work } from "../benchBuilders.ts";

const route = (question: Partial<RouteQuestion> = {}): readonly RouteStep[] =>
  routeFor({ kind: "build", family: "driver", adjustable: true, ...question }, defaultFloors).steps;
const minutes = (clubs: readonly (readonly RouteStep[])[], stage: Stage, pace = 1): number =>
  stageMinutes(
    clubs.map((steps) => stageParts(steps)[stage]),
    pace,
  ).endMin;

/** E max(1, e^{0.1·Z}): what a wait with a floor as long as its plan takes on average; added up by hand: Φ(0) + e^{0.005}·Φ(0.1). */
const WAIT = 0.5 + Math.exp(0.005) * 0.539827837;

describe("stageMinutes", () => {
  it("takes 4 minutes from Start to Glue on for a driver on a sleeve: 1 + 1.5 + 0.5 + 1", () => {
    expect(minutes([route()], "toGlue")).toBeCloseTo(4, 12);
    expect(minutes([route()], "toGlue", 1.5)).toBeCloseTo(6, 12);
  });

  it("works during the setting of the glue, then 0.5 + 1.5 + 1 + 1.5 to Done", () => {
    expect(minutes([route()], "toDone")).toBeCloseTo(6 * WAIT + 4.5, 6);
    expect(minutes([route()], "toDone", 2)).toBeCloseTo(2 * 4 + 2 * 4.5, 12);
  });

  it("measures while the grip sets, then signs in 0.5", () => {
    expect(minutes([route()], "check")).toBeCloseTo(4 * WAIT + 0.5, 6);
    expect(minutes([route()], "check", 3)).toBeCloseTo(3 * 3, 12);
  });

  it("waits for a part to cool before the glue: 8, then 5 to cool with 2.5 of work on the shaft, then 0.5 + 1", () => {
    const coolMin = 5 * Math.exp(0.005);
    expect(minutes([route({ kind: "reshaft" })], "toGlue")).toBeCloseTo(8 + coolMin + 1.5, 12);
  });

  it("waits for paint before Done, for measuring waits for it", () => {
    expect(minutes([route({ kind: "stamp", family: "wedge" })], "toDone")).toBeGreaterThan(10 + 25);
    expect(minutes([route({ kind: "stamp", family: "wedge" })], "check")).toBeCloseTo(1, 12);
  });

  it("works a set kind by kind and sets up once", () => {
    const club = [
      work("tipPrepare", 2, { setUpMin: 0.5 }),
      work("bond", 3, { after: ["tipPrepare"], setUpMin: 1 }),
      work("bondSet", 20, { after: ["bond"], unattended: true, floorMin: 20 }),
      work("cut", 1, { after: ["bondSet"] }),
    ];
    expect(minutes([club], "toGlue")).toBeCloseTo(5, 12);
    expect(minutes([club, club, club], "toGlue")).toBeCloseTo(2 + 1.5 + 1.5 + 3 + 2 + 2, 12);
    expect(minutes([club, club, club], "toDone", 2)).toBeCloseTo(20 * WAIT + 3 * 2, 6);
  });

  it("takes no time for a stage the route does not have", () => {
    expect(minutes([route({ kind: "turn" })], "toGlue")).toBe(0);
    expect(minutes([], "toDone")).toBe(0);
  });

  it("says by what the time is bound", () => {
    const parts = [stageParts(route()).toDone];
    const { workMin, workSquares, waitSquares } = stageMinutes(parts, 1);
    expect([workMin, workSquares]).toEqual([4.5, 0.25 + 2.25 + 1 + 2.25]);
    expect(Math.sqrt(waitSquares)).toBeCloseTo(6 * WAIT, 6);
    expect(stageMinutes(parts, 2)).toMatchObject({ workMin: 8.5, waitSquares: 0 });
  });

  it("a longer wait than its floor is as likely shorter as longer until the floor cuts it", () => {
    const waiting = (medianMin: number, floorMin: number) =>
      minutes(
        [
          [
            work("stampText", 0),
            work("paintDry", medianMin, { after: ["stampText"], unattended: true, floorMin }),
            work("measure", 1, { after: ["paintDry"] }),
          ],
        ],
        "toDone",
      );
    expect(waiting(25, 0)).toBeCloseTo(25 * Math.exp(0.005), 9);
    expect(waiting(25, 10)).toBeCloseTo(25 * Math.exp(0.005), 6);
    expect(waiting(25, 25)).toBeCloseTo(25 * WAIT, 6);
    expect(waiting(10, 25)).toBeCloseTo(25 * WAIT, 6);
  });
});

describe("paceOfStage", () => {
  it("finds the pace that explains the time, through a wait or beside it", () => {
    expect(paceOfStage([stageParts(route()).toGlue], 6)?.logPace).toBeCloseTo(Math.log(1.5), 10);
    expect(paceOfStage([stageParts(route()).toDone], 6 * WAIT + 4.5 * 1.2)?.logPace).toBeCloseTo(Math.log(1.2), 6);
    expect(paceOfStage([stageParts(route()).toDone], 17)?.logPace).toBeCloseTo(Math.log(2), 10);
  });

  it("counts how far the time spreads by the work and the wait that bound it", () => {
    expect(paceOfStage([stageParts(route()).toGlue], 5)?.spreadShare).toBeCloseTo(Math.sqrt(1 + 2.25 + 0.25 + 1) / 4, 12);
    expect(paceOfStage([stageParts(route()).toDone], 12)?.spreadShare).toBeCloseTo(Math.sqrt(5.75 + (0.4 * 6 * WAIT) ** 2) / 4.5, 6);
  });

  it("learns nothing from a stage that is planned to be mostly waiting", () => {
    expect(paceOfStage([stageParts(route()).check], 6)).toBeNull();
    expect(paceOfStage([stageParts(route({ kind: "regrip" })).check], 12)).toBeNull();
    expect(paceOfStage([stageParts(route({ family: "iron", adjustable: false })).toDone], 27)).not.toBeNull();
  });

  it("learns nothing from less than a quarter or more than four times the pace, nor from a time that waiting explains", () => {
    expect(paceOfStage([stageParts(route()).toGlue], 0.999)).toBeNull();
    expect(paceOfStage([stageParts(route()).toGlue], 1.001)).not.toBeNull();
    expect(paceOfStage([stageParts(route()).toGlue], 15.999)).not.toBeNull();
    expect(paceOfStage([stageParts(route()).toGlue], 16.001)).toBeNull();
    expect(paceOfStage([stageParts(route()).toDone], 6)).toBeNull();
  });

  it("learns nothing from a stage without work", () => {
    expect(paceOfStage([stageParts(route({ kind: "turn" })).toGlue], 3)).toBeNull();
    expect(paceOfStage([], 3)).toBeNull();
  });
});
