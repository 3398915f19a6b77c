import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepKind } from "../../../core/bench/benchTypes.ts";
import { checkedRoutes } from "../../../core/bench/checkedRoutes.ts";
import type { RouteRow } from "../../../core/bench/routeRows.ts";
import { defaultFloors, defaultRoutes, type RouteName, routeFor, routeNames } from "../../../core/bench/routes.ts";
import { DomainError } from "../../../core/errors.ts";
import { byLaw } from "../../support/checkOf.ts";

const { turn } = defaultRoutes;
const build = defaultRoutes["build sleeve"];

/** A route with one row changed, or left out. */
const withRow = (rows: readonly RouteRow[], kind: StepKind, change: Partial<RouteRow> | null): readonly RouteRow[] =>
  rows.flatMap((row) => (row.kind === kind ? (change === null ? [] : [{ ...row, ...change }]) : [row]));
const withoutWait = ({ wait, ...row }: RouteRow): RouteRow => row;

function refusalOf(rows: readonly RouteRow[]): Pick<DomainError, "code" | "facts"> {
  try {
    checkedRoutes(rows);
  } catch (error) {
    if (error instanceof DomainError) return { code: error.code, facts: error.facts };
    throw error;
  }
  throw new Error("was taken");
}

describe(byLaw(checkedRoutes, "what is taken can be worked, with waits no shorter than their sheets"), () => {
  it("whatever minutes the lead writes", () => {
    const minutes = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: build.length, maxLength: build.length });
    fc.assert(
      fc.property(fc.constantFrom<RouteName>("build sleeve", "build iron", "swap putter", "regrip"), minutes, (name, drawn) => {
        const rows = checkedRoutes(defaultRoutes[name].map((row, at) => ({ ...row, min: drawn[at] ?? 0 })));
        const { steps } = routeFor({ kind: "build", family: "driver", adjustable: true }, defaultFloors, { ...defaultRoutes, "build sleeve": rows });
        for (const step of steps) {
          const written = rows.find(({ kind }) => kind === step.kind);
          expect(step.medianMin).toBe(Math.max(written?.min ?? 0, step.floorMin));
          if (written?.wait?.sheet !== undefined) expect(step.floorMin).toBeGreaterThanOrEqual(defaultFloors[written.wait.sheet]);
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe("checkedRoutes", () => {
  it.each(routeNames)("takes the usual route %s as it is", (name) => {
    expect(checkedRoutes(defaultRoutes[name])).toBe(defaultRoutes[name]);
  });

  it.each([
    [0, true],
    [-0.01, false],
    [14 * 24 * 60, true],
    [14 * 24 * 60 + 0.01, false],
    [Number.NaN, false],
  ])("takes %d minutes of a step: %s", (min, taken) => {
    const rows = withRow(turn, "turnSleeve", { min });
    if (taken) expect(checkedRoutes(rows)).toBe(rows);
    else expect(refusalOf(rows).code).toBe("quantity-out-of-range");
  });

  it.each([
    [0, true],
    [0.9, true],
    [-0.01, false],
    [0.91, false],
    [Number.POSITIVE_INFINITY, false],
  ])("takes a set-up share of %d: %s", (setUpShare, taken) => {
    const rows = withRow(turn, "turnSleeve", { setUpShare });
    if (taken) expect(checkedRoutes(rows)).toBe(rows);
    else expect(refusalOf(rows).code).toBe("quantity-out-of-range");
  });

  it("refuses a wait at least below 0", () => {
    const rows = withRow(build, "bondSet", { wait: { sheet: "adhesiveHandleMin", atLeastMin: -1 } });
    expect(refusalOf(rows)).toMatchObject({ code: "quantity-out-of-range", facts: { field: "bondSet atLeastMin" } });
  });

  it.each<StepKind>(["measure", "sign", "walk"])("refuses a route without %s: the final check is the contract", (kind) => {
    const rows = withRow(build, kind, null).map((row) => ({ ...row, after: row.after.filter((earlier) => earlier !== kind) }));
    expect(refusalOf(rows)).toMatchObject({ code: "quantity-unreadable", facts: { field: "rows", written: kind } });
  });

  it("refuses a step that is not known, and one that waits for a step the route has not", () => {
    expect(refusalOf([{ kind: "polish" as StepKind, min: 1, after: [] }, ...turn])).toMatchObject({ facts: { field: "kind", written: "polish" } });
    expect(refusalOf(withRow(turn, "measure", { after: ["turnSleeve", "cut"] }))).toMatchObject({
      facts: { field: "measure after", written: "cut" },
    });
  });

  it("refuses a step that stands there twice", () => {
    const facts = { field: "turnSleeve", min: 1, max: 1, count: 2 };
    expect(refusalOf([...turn, { kind: "turnSleeve", min: 1, after: [] }])).toEqual({ code: "list-of-wrong-size", facts });
  });

  it("refuses fewer than three rows and more than sixty", () => {
    expect(refusalOf(turn.slice(0, 2)).code).toBe("list-of-wrong-size");
    expect(refusalOf(Array.from({ length: 61 }, () => turn[0] ?? { kind: "turnSleeve", min: 1, after: [] }))).toMatchObject({
      code: "list-of-wrong-size",
      facts: { field: "rows", max: 60 },
    });
  });

  it("refuses steps that wait for each other", () => {
    expect(refusalOf(withRow(build, "pullParts", { after: ["cut"] })).code).toBe("route-has-a-cycle");
  });

  it.each<StepKind>(["bondSet", "gripSet", "walk"])("refuses %s as work of somebody, or without its sheet", (kind) => {
    const asWork = build.map((row) => (row.kind === kind ? withoutWait(row) : row));
    expect(refusalOf(asWork)).toMatchObject({ code: "quantity-unreadable", facts: { field: `${kind} wait`, written: "none" } });
    expect(refusalOf(withRow(build, kind, { wait: {} }))).toMatchObject({
      code: "quantity-unreadable",
      facts: { field: `${kind} wait`, written: "yes" },
    });
    const other = kind === "walk" ? "gripHandleMin" : "walkMin";
    expect(refusalOf(withRow(build, kind, { wait: { sheet: other } }))).toMatchObject({ facts: { written: other } });
  });

  it("refuses hands-on work that is called a wait", () => {
    expect(refusalOf(withRow(build, "cut", { wait: {} }))).toMatchObject({ facts: { field: "cut wait", accepted: "none" } });
  });

  it.each<[StepKind, StepKind]>([
    ["bond", "bondSet"],
    ["grip", "gripSet"],
  ])("refuses %s without a wait after it", (work, set) => {
    const without = withRow(build, set, null).map((row) => ({ ...row, after: row.after.map((kind) => (kind === set ? work : kind)) }));
    expect(refusalOf(without)).toMatchObject({ facts: { field: `${set} after`, accepted: work } });
    expect(refusalOf(withRow(build, set, { after: ["pullParts"] }))).toMatchObject({ facts: { field: `${set} after` } });
  });

  it("refuses a step that is not done before the way out, and one behind it", () => {
    expect(refusalOf(withRow(build, "sign", { after: ["measure"] }))).toMatchObject({ facts: { field: "gripSet" } });
    const behind: readonly RouteRow[] = [...turn, { kind: "inspect", min: 1, after: ["walk"] }];
    expect(refusalOf(behind)).toMatchObject({ facts: { field: "inspect" } });
  });
});
