import { describe, expect, it } from "vitest";
import { floorsOf } from "../../../core/rules/floorsOf.ts";
import { type Adhesive, adhesiveWaits, type GripMethod, gripWaits } from "../../../core/rules/waits.ts";
import published from "../../../fixtures/published/waits.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const asked = { adhesive: "quickEpoxy", gripMethod: "air", walkMin: 2 } as const;

describe(byTable(floorsOf, "waits", published), () => {
  it.each(published.adhesives)("waits $handleMin and $fullPlayMin min for $adhesive ($source)", (row) => {
    const floors = floorsOf({ ...asked, adhesive: row.adhesive as Adhesive });
    expect([floors.adhesiveHandleMin, floors.adhesivePlayMin]).toEqual([row.handleMin, row.fullPlayMin]);
    expect([floors.gripHandleMin, floors.gripPlayMin, floors.walkMin]).toEqual([4, 15, 2]);
    expect(adhesiveWaits[row.adhesive as Adhesive].lightPlayMin).toBe(row.lightPlayMin);
  });

  it.each(published.grips)("waits $handleMin and $fullPlayMin min for a grip put on with $gripMethod ($source)", (row) => {
    const floors = floorsOf({ ...asked, gripMethod: row.gripMethod as GripMethod });
    expect([floors.gripHandleMin, floors.gripPlayMin]).toEqual([row.handleMin, row.fullPlayMin]);
    expect([floors.adhesiveHandleMin, floors.adhesivePlayMin]).toEqual([6, 15]);
    expect(gripWaits[row.gripMethod as GripMethod].lightPlayMin).toBe(row.lightPlayMin);
  });

  it("has no wait that is not in the table", () => {
    expect(Object.keys(adhesiveWaits)).toEqual(published.adhesives.map(({ adhesive }) => adhesive));
    expect(Object.keys(gripWaits)).toEqual(published.grips.map(({ gripMethod }) => gripMethod));
  });
});

describe(byLaw(floorsOf, "cold lengthens an adhesive's wait, warmth never shortens it, grips are left alone"), () => {
  it.each([
    [13, 2],
    [23, 1],
    [22.9, 2 ** 0.01],
    [24, 1],
    [45, 1],
  ])("at %d °C by a factor of %d", (roomTemperatureC, factor) => {
    const floors = floorsOf({ ...asked, roomTemperatureC });
    expect(floors.adhesiveHandleMin).toBeCloseTo(6 * factor, 9);
    expect(floors.adhesivePlayMin).toBeCloseTo(15 * factor, 9);
    expect([floors.gripHandleMin, floors.gripPlayMin, floors.walkMin]).toEqual([4, 15, 2]);
  });
});

describe("floorsOf", () => {
  it.each([0, 240])("takes a walk of %d min", (walkMin) => {
    expect(floorsOf({ ...asked, walkMin }).walkMin).toBe(walkMin);
  });

  it.each([
    ["a walk of −0.1 min", { walkMin: -0.1 }, "walkMin"],
    ["a walk of 241 min", { walkMin: 241 }, "walkMin"],
    ["a walk that is no number", { walkMin: Number.NaN }, "walkMin"],
    ["an infinite room", { roomTemperatureC: Number.POSITIVE_INFINITY }, "roomC"],
    ["a room of 4 °C", { roomTemperatureC: 4 }, "roomC"],
    ["an unknown adhesive", { adhesive: "paste" as Adhesive }, "adhesive"],
    ["an unknown way of gripping", { gripMethod: "string" as GripMethod }, "gripMethod"],
  ])("refuses %s", (_, wrong, field) => {
    expect(() => floorsOf({ ...asked, ...wrong })).toThrow(`"field":"${field}"`);
  });
});
