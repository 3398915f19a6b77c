import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RouteStep } from "../../../../core/bench/benchTypes.ts";
import type { BenchPress, PressedOrder, PressKind } from "../../../../core/bench/learning/presses.ts";
import { stagesSeen } from "../../../../core/bench/learning/stagesSeen.ts";
import { defaultFloors, routeFor } from "../../../../core/bench/routes.ts";
import { id } from "../../../../core/kinds.ts";
import { byLaw } from "../../../support/checkOf.ts";
import { inMinutes, work } from "../benchBuilders.ts";

const driver = routeFor({ kind: "build", family: "driver", adjustable: true }, defaultFloors).steps;
const turn = routeFor({ kind: "turn", family: "driver", adjustable: true }, defaultFloors).steps;
/** All work and no waiting but the glue's, which is over before the work beside it. */
const plain: readonly RouteStep[] = [
  work("tipPrepare", 2),
  work("bond", 2, { after: ["tipPrepare"] }),
  work("bondSet", 1, { after: ["bond"], unattended: true }),
  work("pullHead", 5),
  work("cut", 3, { after: ["bondSet", "pullHead"] }),
  work("measure", 2, { after: ["cut"] }),
  work("sign", 1, { after: ["measure"] }),
];

const order = (number: number, steps: readonly RouteStep[] = plain): PressedOrder => ({
  order: id<"order">(number),
  work: "build driver",
  clubs: [steps],
});
const press = (kind: PressKind, minute: number, extra: { readonly order?: number; readonly person?: number } = {}): BenchPress => ({
  order: id<"order">(extra.order ?? 1),
  press: kind,
  person: id<"person">(extra.person ?? 1),
  at: inMinutes(minute),
});
const allDay = [{ from: inMinutes(0), to: inMinutes(600) }];
/** Start, Glue on after 4, Done after 8 more, checked after 3 more: the plain route's own minutes. */
const usual: readonly BenchPress[] = [press("start", 10), press("glueOn", 14), press("done", 22), press("checked", 25)];
const stagesOf = (presses: readonly BenchPress[], open = allDay, orders = [order(1)]): readonly string[] =>
  stagesSeen(orders, presses, open).map(({ stage }) => stage);
const without = (kind: PressKind): readonly BenchPress[] => usual.filter((one) => one.press !== kind);

describe(byLaw(stagesSeen, "work at x times its minutes is seen as ln x in every stage"), () => {
  it("sees the pace that presses were made with", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 3.9, noNaN: true }), (pace) => {
        const at = (minutes: number): number => 10 + pace * minutes;
        const presses = [press("start", 10), press("glueOn", at(4)), press("done", at(12)), press("checked", at(15))];
        const seen = stagesSeen([order(1)], presses, allDay);
        expect(seen.map(({ stage }) => stage)).toEqual(["toGlue", "toDone", "check"]);
        for (const { logPace } of seen) expect(logPace).toBeCloseTo(Math.log(pace), 7);
      }),
      { numRuns: 50 },
    );
  });
});

describe("stagesSeen", () => {
  it("tells order, work, stage, pace and share", () => {
    expect(stagesSeen([order(1)], usual.slice(0, 2), allDay)).toEqual([
      { order: 1, work: "build driver", stage: "toGlue", logPace: expect.closeTo(0, 9), spreadShare: expect.closeTo(Math.sqrt(8) / 4, 12) },
    ]);
  });

  it("takes presses in any order, and orders apart", () => {
    const second = usual.map((one) => ({ ...one, order: id<"order">(2), at: inMinutes(100 + (one.at - inMinutes(0)) / 60_000) }));
    expect(stagesOf([...second, ...usual].toReversed(), allDay, [order(2), order(1)])).toHaveLength(6);
  });

  it("begins toDone with Start where nothing is glued", () => {
    expect(stagesOf([press("start", 10), press("done", 11), press("checked", 12.5)], allDay, [order(1, turn)])).toEqual(["toDone", "check"]);
  });

  it.each<[PressKind, readonly string[]]>([
    ["start", ["toDone", "check"]],
    ["glueOn", ["check"]],
    ["done", ["toGlue"]],
    ["checked", ["toGlue", "toDone"]],
  ])("misses only the stages that a missing %s bounds", (kind, left) => {
    expect(stagesOf(without(kind))).toEqual(left);
  });

  it("counts the first of a press made twice", () => {
    expect(stagesSeen([order(1)], [...usual, press("start", 12), press("done", 24)], allDay)).toEqual(stagesSeen([order(1)], usual, allDay));
  });

  it("leaves out a stage that one person began and another ended", () => {
    expect(stagesOf([...without("done"), press("done", 22, { person: 2 })])).toEqual(["toGlue"]);
  });

  it("leaves out a stage in which the person pressed on another order, not one in which another person did", () => {
    expect(stagesOf([...usual, press("start", 18, { order: 2 })])).toEqual(["toGlue", "check"]);
    expect(stagesOf([...usual, press("start", 18, { order: 2, person: 2 })])).toEqual(["toGlue", "toDone", "check"]);
    expect(stagesOf([...usual, press("start", 22, { order: 2 })])).toEqual(["toGlue", "toDone", "check"]);
  });

  it.each<PressKind>(["pause", "resume", "handBack"])("leaves out a stage with a %s in it, whoever pressed", (kind) => {
    expect(stagesOf([...usual, press(kind, 12, { person: 2 })])).toEqual(["toDone", "check"]);
  });

  it("leaves out a stage in which the workshop closed, and keeps one that ends as it closes", () => {
    const hours = (from: number, to: number) => ({ from: inMinutes(from), to: inMinutes(to) });
    expect(stagesOf(usual, [hours(0, 18), hours(19, 600)])).toEqual(["toGlue", "check"]);
    expect(stagesOf(usual, [hours(10, 14), hours(14, 22)])).toEqual(["toGlue", "toDone"]);
    expect(stagesOf(usual, [])).toEqual([]);
  });

  it("leaves out presses within seconds and those made up for at supper", () => {
    expect(stagesOf([press("start", 10), press("glueOn", 10.1), press("done", 200), press("checked", 200.1)])).toEqual([]);
  });

  it("leaves out presses that came in the wrong order", () => {
    expect(stagesOf([press("start", 14), press("glueOn", 10)])).toEqual([]);
  });

  it("learns nothing of a driver's check, which the grip's setting bounds", () => {
    const presses = [press("start", 10), press("glueOn", 14), press("done", 25), press("checked", 30)];
    expect(stagesOf(presses, allDay, [order(1, driver)])).toEqual(["toGlue", "toDone"]);
  });

  it("sees nothing of an order without presses, nor of no orders", () => {
    expect(stagesOf([], allDay)).toEqual([]);
    expect(stagesOf(usual, allDay, [])).toEqual([]);
  });

  it("refuses numbers that cannot be and presses it does not know", () => {
    expect(() => stagesSeen([order(1)], [{ ...press("start", 1), at: inMinutes(Number.NaN) }], allDay)).toThrow("quantity-out-of-range");
    expect(() => stagesSeen([order(1)], usual, [{ from: inMinutes(Number.NEGATIVE_INFINITY), to: inMinutes(9) }])).toThrow("quantity-out-of-range");
    expect(() => stagesSeen([order(Number.NaN)], usual, allDay)).toThrow("quantity-out-of-range");
    expect(() => stagesSeen([order(1, [work("cut", -1)])], usual, allDay)).toThrow("quantity-out-of-range");
    expect(() => stagesSeen([order(1)], [{ ...press("start", 1), press: "polish" as PressKind }], allDay)).toThrow("quantity-unreadable");
  });
});
