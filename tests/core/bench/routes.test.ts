import { describe, expect, it } from "vitest";
import { simulateOnce } from "../../../core/bench/benchSimulation.ts";
import { type Route, type RouteQuestion, type RouteStep, type StepKind, shaftStates } from "../../../core/bench/benchTypes.ts";
import { defaultPolicy } from "../../../core/bench/policy.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { workableOrder } from "../../../core/bench/stepOrder.ts";
import { clubFamilies, orderKinds } from "../../../core/kinds.ts";
import published from "../../../fixtures/published/handsOnMinutes.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { benchJob, benchWith, minutesFromNow } from "./benchBuilders.ts";

const question = (extra: Partial<RouteQuestion>): RouteQuestion => ({
  kind: "build",
  family: "driver",
  adjustable: true,
  ...extra,
});
const route = (extra: Partial<RouteQuestion>, floors = defaultFloors): Route => routeFor(question(extra), floors);
const kindsOf = (one: Route): readonly StepKind[] => one.steps.map((step) => step.kind);
const handsOnMin = (one: Route): number => one.steps.reduce((sum, step) => sum + (step.unattended ? 0 : step.medianMin), 0);

const half = (step: RouteStep): RouteStep => ({
  ...step,
  medianMin: step.medianMin / 2,
  ...(step.setUpMin === undefined ? {} : { setUpMin: step.setUpMin / 2 }),
});

const everyQuestion = orderKinds.flatMap((kind) =>
  clubFamilies.flatMap((family) =>
    [true, false].flatMap((adjustable) => shaftStates.map((shaftState) => ({ kind, family, adjustable, shaftState, sleeveOn: adjustable }))),
  ),
);

describe(byTable(routeFor, "handsOnMinutes", published), () => {
  it.each(published.rows)("plans a $work within $leastMin to $mostMin minutes", ({ question: asked, leastMin, mostMin }) => {
    const minutes = handsOnMin(route(asked as Partial<RouteQuestion>));
    expect(minutes).toBeGreaterThanOrEqual(leastMin - published.tolerance);
    expect(minutes).toBeLessThanOrEqual(mostMin + published.tolerance);
  });

  it("builds seven irons together in what common practice takes", () => {
    const irons = Array.from({ length: 7 }, (_, job) => benchJob(1, route({ family: "iron" }), { job }));
    const pace = { spreads: { step: 0, job: 0, wait: 0 }, learned: [] };
    const day = simulateOnce({ snapshot: benchWith(irons), policy: defaultPolicy, pace, seed: 1, sample: 0 });
    const together = day.reduce((sum, step) => sum + (step.route.unattended ? 0 : minutesFromNow(step.endAt) - minutesFromNow(step.startAt)), 0);
    expect(together).toBeGreaterThanOrEqual(published.sevenIrons.leastMin);
    expect(together).toBeLessThanOrEqual(published.sevenIrons.mostMin);
  });
});

describe("routeFor", () => {
  it.each(everyQuestion)("gives $kind of a $family (adjustable $adjustable, shaft $shaftState) a route that can be worked", (asked) => {
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

  it("sets stations up for a series of irons and wedges only, and never for a wait", () => {
    expect(
      route({ family: "wedge" }).steps.every(({ unattended, setUpMin = 0, medianMin }) => (unattended ? setUpMin === 0 : setUpMin < medianMin)),
    ).toBe(true);
    expect(route({ family: "driver" }).steps.every(({ setUpMin }) => setUpMin === undefined)).toBe(true);
  });

  it("asks a skill for sole work, stamping and the bending of a wood", () => {
    const asked = (extra: Partial<RouteQuestion>): readonly unknown[] => route(extra).steps.flatMap(({ skill }) => skill ?? []);
    expect(asked({ kind: "grind", family: "wedge" })).toEqual(["grinding"]);
    expect(asked({ kind: "stamp", family: "wedge" })).toEqual(["stamping"]);
    expect(asked({ kind: "bend", family: "fairway" })).toEqual(["woodBending"]);
    expect(asked({ kind: "bend", family: "iron" })).toEqual([]);
  });

  it.each(["build", "reshaft"] as const)("skips the sleeve's bonding in a %s with a shaft on its sleeve and still pulls its parts first", (kind) => {
    const one = route({ kind, shaftState: "sleeved" });
    for (const skipped of ["tipPrepare", "dryFit", "bond", "bondSet"] as const) expect(kindsOf(one)).not.toContain(skipped);
    expect(one.steps.find((step) => step.kind === "headOn")?.after).toContain("pullParts");
    expect(one.playableAfterBondMin).toBe(0);
    expect(kindsOf(one)).toEqual(expect.arrayContaining(["cut", "grip", "gripSet", "measure"]));
  });

  it.each(["build", "reshaft"] as const)("halves the tip's preparation of a tipped shaft in a %s of every family, and nothing else", (kind) => {
    for (const family of clubFamilies) {
      const [raw, tipped] = [route({ kind, family }), route({ kind, family, shaftState: "tipped" })];
      const halved = raw.steps.map((step) => (step.kind === "tipPrepare" ? half(step) : step));
      expect(tipped.steps).toEqual(halved);
    }
  });

  it("takes the old grip off a used shaft before anything is done to it", () => {
    for (const family of clubFamilies) {
      const used = route({ family, shaftState: "used" });
      expect(handsOnMin(used)).toBeCloseTo(handsOnMin(route({ family })) + 1.5, 9);
      expect(used.steps.find((step) => step.kind === "removeOld")?.after).toEqual(["pullParts"]);
      expect(used.steps.find((step) => step.kind === "tipPrepare")?.after).toEqual(["removeOld"]);
    }
    expect(handsOnMin(route({ kind: "reshaft", shaftState: "used" }))).toBeCloseTo(handsOnMin(route({ kind: "reshaft" })) + 1.5, 9);
  });

  it("bonds no sleeve to a used shaft that still has it on, and takes its grip off", () => {
    const [used, sleeved] = [route({ shaftState: "used", sleeveOn: true }), route({ shaftState: "sleeved" })];
    expect(kindsOf(used)).not.toContain("bond");
    expect(handsOnMin(used)).toBeCloseTo(handsOnMin(sleeved) + 1.5, 9);
    expect(used.steps.find((step) => step.kind === "headOn")?.after).toContain("removeOld");
    expect(kindsOf(route({ shaftState: "used", sleeveOn: false }))).toContain("bond");
    expect(kindsOf(route({ shaftState: "tipped", sleeveOn: true }))).toContain("bond");
  });

  it("bonds a wood without a loft sleeve whatever is on the shaft", () => {
    expect(route({ adjustable: false, shaftState: "sleeved" })).toEqual(route({ adjustable: false }));
  });

  it.each(orderKinds.filter((kind) => kind !== "build" && kind !== "reshaft"))("works on a %s the same whatever shafts lie in the bin", (kind) => {
    for (const shaftState of shaftStates) expect(route({ kind, family: "iron", shaftState })).toEqual(route({ kind, family: "iron" }));
  });

  it("refuses a state of the shaft that is not known", () => {
    expect(() => route({ shaftState: "bent" as "raw" })).toThrow("quantity-unreadable");
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
