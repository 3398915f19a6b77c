import { describe, expect, it } from "vitest";
import { setTipTrim } from "../../../core/club/setTipTrim.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import tips from "../../../fixtures/published/tipTrims.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const steps = { firstMm: millimetres(0), stepMm: mmFromInches(tips.stepIn) };

describe(byTable(setTipTrim, "tipTrims", tips), () => {
  it.each(tips.rows)("takes $tipTrimIn in off the club $place down from the longest", ({ place, tipTrimIn }) => {
    expect(Math.abs(setTipTrim(place, steps) / 25.4 - tipTrimIn)).toBeLessThan(tips.tolerance);
  });
});

describe("setTipTrim", () => {
  it("starts from the first trim; soft-stepping takes one step less", () => {
    expect(setTipTrim(3, { firstMm: millimetres(10), stepMm: millimetres(12) })).toBe(46);
    expect(setTipTrim(3 - 1, { firstMm: millimetres(10), stepMm: millimetres(12) })).toBe(34);
  });

  it("refuses a trim below nothing and takes none at all", () => {
    expect(() => setTipTrim(-1, steps)).toThrow("quantity-out-of-range");
    expect(setTipTrim(-1, { firstMm: millimetres(12), stepMm: millimetres(12) })).toBe(0);
  });

  it("refuses a place or a step that cannot be", () => {
    expectBounds((place) => setTipTrim(place, { firstMm: millimetres(200), stepMm: millimetres(1) }), { lowest: -14, highest: 14, step: 0.1 });
    expectBounds((mm) => setTipTrim(1, { ...steps, firstMm: millimetres(mm) }), { lowest: 0, highest: 200, step: 0.1 });
    expectBounds((mm) => setTipTrim(1, { ...steps, stepMm: millimetres(mm) }), { lowest: 0, highest: 50, step: 0.1 });
  });
});
