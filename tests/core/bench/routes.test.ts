import { describe, expect, it } from "vitest";
import type { Route, RouteQuestion, StepKind } from "../../../core/bench/benchTypes.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { workableOrder } from "../../../core/bench/stepOrder.ts";
import { clubFamilies, orderKinds } from "../../../core/kinds.ts";
import published from "../../../fixtures/published/handsOnMinutes.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";

const question = (extra: Partial<RouteQuestion>): RouteQuestion => ({
  kind: "build",
  family: "driver",
  adjustable: true,
  readySleeved: false,
  ...extra,
});
const route = (extra: Partial<RouteQuestion>, floors = defaultFloors): Route => routeFor(question(extra), floors);
const kindsOf = (one: Route): readonly StepKind[] => one.steps.map((step) => step.kind);
const handsOnMin = (one: Route): number => one.steps.reduce((sum, step) => sum + (step.unattended ? 0 : step.medianMin), 0);

const everyQuestion = orderKinds.flatMap((kind) =>
  clubFamilies.flatMap((family) =>
    [true, false].flatMap((adjustable) => [true, false].map((readySleeved) => ({ kind, family, adjustable, readySleeved }))),
  ),
);

describe(byTable(routeFor, "handsOnMinutes", published), () => {
  it.each(published.rows)("plans a $work within $leastMin to $mostMin minutes", ({ question: asked, leastMin, mostMin }) => {
    const minutes = handsOnMin(route(asked as Partial<RouteQuestion>));
    expect(minutes).toBeGreaterThanOrEqual(leastMin - published.tolerance);
    expect(minutes).toBeLessThanOrEqual(mostMin + published.tolerance);
  });

  it("builds seven irons together in what common practice takes", () => {
    const together = 7 * handsOnMin(route({ family: "iron", clubsInSet: 7 }));
    expect(together).toBeGreaterThanOrEqual(published.sevenIrons.leastMin);
    expect(together).toBeLessThanOrEqual(published.sevenIrons.mostMin);
  });
});

describe("routeFor", () => {
  it.each(everyQuestion)("gives $kind of a $family (adjustable $adjustable, ready-sleeved $readySleeved) a route that can be worked", (asked) => {
    const one = routeFor(asked, defaultFloors);
    const kinds = kindsOf(one);
    expect(workableOrder(one.steps)).toHaveLength(kinds.length);
    expect(new Set(kinds).size).toBe(kinds.length);
    expect(one.steps.every((step) => step.after.every((kind) => kinds.includes(kind)))).toBe(true);
    expect(kinds).toContain("measure");
    expect(kinds.at(-1)).toBe("walk");
    const notLast = one.steps.filter((step) => !one.steps.some((other) => other.after.includes(step.kind)));
    expect(notLast.map((step) => step.kind)).toEqual(["walk"]);
  });

  // Common practice, no source: the driver's table, minute by minute.
  it.each<[StepKind, number, boolean]>([
    ["pullParts", 1, false],
    ["tipPrepare", 1.5, false],
    ["dryFit", 0.5, false],
    ["bond", 1, false],
    ["bondSet", 6, true],
    ["pullHead", 1.5, false],
    ["gaugeHead", 1.5, false],
    ["layOutGrip", 1, false],
    ["headOn", 0.5, false],
    ["cut", 1.5, false],
    ["dryWeigh", 1, false],
    ["grip", 1.5, false],
    ["gripSet", 4, true],
    ["measure", 2.5, false],
    ["sign", 0.5, false],
    ["walk", 2, true],
  ])("plans %s of an adjustable driver with %d min (a wait: %s), common practice", (kind, min, unattended) => {
    expect(route({}).steps.find((step) => step.kind === kind)).toMatchObject({ medianMin: min, unattended });
  });

  it("never shortens a wait for a set", () => {
    const waits = (one: Route): readonly number[] => one.steps.filter((step) => step.unattended).map((step) => step.medianMin);
    expect(waits(route({ family: "iron", clubsInSet: 7 }))).toEqual(waits(route({ family: "iron" })));
  });

  it("skips the sleeve's bonding for a ready-sleeved shaft and still pulls its parts first", () => {
    const one = route({ readySleeved: true });
    for (const kind of ["tipPrepare", "dryFit", "bond", "bondSet"] as const) expect(kindsOf(one)).not.toContain(kind);
    expect(one.steps.find((step) => step.kind === "headOn")?.after).toContain("pullParts");
    expect(one.playableAfterBondMin).toBe(0);
  });

  it("never bends an iron on green glue", () => {
    expect(route({ family: "iron" }).steps.find((step) => step.kind === "bend")?.after).toContain("bondSet");
  });

  it("lengthens a wait to the floor of its data sheet", () => {
    const one = route({}, { ...defaultFloors, adhesiveHandleMin: 10, gripHandleMin: 60, walkMin: 7 });
    const min = (kind: StepKind): number | undefined => one.steps.find((step) => step.kind === kind)?.medianMin;
    expect([min("bondSet"), min("gripSet"), min("walk")]).toEqual([10, 60, 7]);
  });
});
