import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LEAST_PARALLEL_TIP_MM, shaftTrim } from "../../../core/club/shaftTrim.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/shaftTrimming.json" with { type: "json" };
import tips from "../../../fixtures/published/tipTrims.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const parallel = { tip: "parallel" as const, parallelTipMm: millimetres(100), rawLengthMm: millimetres(1168) };
const trimmed = (shaft: typeof parallel | (Omit<typeof parallel, "tip"> & { tip: "taper" }), tipMm: number, cutMm: number) =>
  shaftTrim(shaft, millimetres(tipMm), millimetres(cutMm));

describe(byTable(shaftTrim, "shaftTrimming", published), () => {
  const row = published.cuts.find(({ rawIn }) => rawIn !== undefined);

  it("takes 5 in off a raw 47 in for a driver of 43 in on a bore of 1 in, the cap ignored", () => {
    const trim = trimmed({ ...parallel, rawLengthMm: mmFromInches(row?.rawIn ?? 0) }, 0, mmFromInches(row?.cutIn ?? 0));
    expect(trim).toEqual({ kind: "trim", tipTrimMm: 0, buttTrimMm: expect.closeTo(mmFromInches(row?.trimIn ?? 0), 9) });
  });
});

describe(byTable(shaftTrim, "tipTrims", tips), () => {
  it("leaves 1.5 in of the parallel tip section and not less", () => {
    expect(LEAST_PARALLEL_TIP_MM).toBeCloseTo(mmFromInches(tips.leastParallelTipIn), 9);
    const shaft = { ...parallel, parallelTipMm: mmFromInches(tips.leastParallelTipIn + 2) };
    expect(trimmed(shaft, mmFromInches(2), 900).kind).toBe("trim");
    expect(trimmed(shaft, mmFromInches(2) + 0.001, 900)).toEqual({
      kind: "refused",
      faults: [{ code: "tip-section-too-short", wantedTrimMm: expect.closeTo(50.801, 9), allowedTrimMm: expect.closeTo(50.8, 9) }],
    });
  });

  it("never trims a taper tip, and cuts it at the butt only", () => {
    const taper = { ...parallel, tip: "taper" as const };
    expect(trimmed(taper, 0.001, 900)).toEqual({ kind: "refused", faults: [{ code: "taper-not-tip-trimmed", wantedTrimMm: 0.001 }] });
    expect(trimmed(taper, 0, 900)).toEqual({ kind: "trim", tipTrimMm: 0, buttTrimMm: 268 });
  });
});

describe(byLaw(shaftTrim, "pieces and shaft make up the raw length"), () => {
  it("loses nothing between tip, shaft and butt", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), fc.double({ min: 800, max: 1100, noNaN: true }), (tipMm, cutMm) => {
        const trim = trimmed(parallel, tipMm, cutMm);
        expect(trim.kind === "trim" ? trim.tipTrimMm + cutMm + trim.buttTrimMm : null).toBeCloseTo(1168, 9);
      }),
    );
  });
});

describe("shaftTrim", () => {
  it("takes the tip first and the rest off the butt", () => {
    expect(trimmed(parallel, 12, 1100)).toEqual({ kind: "trim", tipTrimMm: 12, buttTrimMm: 56 });
  });

  it("uses a shaft to its last millimetre, and no further", () => {
    expect(trimmed(parallel, 12, 1156)).toEqual({ kind: "trim", tipTrimMm: 12, buttTrimMm: 0 });
    expect(trimmed(parallel, 12, 1156 + 1e-10)).toEqual({ kind: "trim", tipTrimMm: 12, buttTrimMm: 0 });
    expect(trimmed(parallel, 12, 1156.001)).toEqual({
      kind: "refused",
      faults: [{ code: "shaft-too-short", rawMm: 1168, neededMm: expect.closeTo(1168.001, 9) }],
    });
  });

  it("names every reason at once", () => {
    expect(trimmed({ ...parallel, parallelTipMm: millimetres(50) }, 20, 1160)).toEqual({
      kind: "refused",
      faults: [
        { code: "shaft-too-short", rawMm: 1168, neededMm: 1180 },
        { code: "tip-section-too-short", wantedTrimMm: 20, allowedTrimMm: expect.closeTo(11.9, 9) },
      ],
    });
  });

  it("allows no trim where the parallel section is short already, and another least section when told", () => {
    const short = { ...parallel, parallelTipMm: millimetres(30) };
    expect(trimmed(short, 5, 900)).toEqual({
      kind: "refused",
      faults: [{ code: "tip-section-too-short", wantedTrimMm: 5, allowedTrimMm: 0 }],
    });
    expect(trimmed(short, 0, 900).kind).toBe("trim");
    expect(shaftTrim(short, millimetres(5), millimetres(900), millimetres(25)).kind).toBe("trim");
  });

  it("refuses a length that cannot be", () => {
    expectBounds((mm) => trimmed({ ...parallel, parallelTipMm: millimetres(mm) }, 0, 900), { lowest: 0, highest: 1168, step: 0.1 });
    expectBounds((mm) => trimmed({ ...parallel, parallelTipMm: millimetres(1), rawLengthMm: millimetres(mm) }, 0, 900), {
      lowest: 1,
      highest: 2000,
      step: 0.1,
    });
    expectBounds((mm) => trimmed(parallel, mm, 900), { lowest: 0, highest: 2000, step: 0.1 });
    expectBounds((mm) => trimmed(parallel, 0, mm), { lowest: 1, highest: 2000, step: 0.1 });
    expectBounds((mm) => shaftTrim(parallel, millimetres(0), millimetres(900), millimetres(mm)), { lowest: 0, highest: 2000, step: 0.1 });
  });

  it("refuses a kind of tip it does not know", () => {
    expect(() => trimmed({ ...parallel, tip: "round" as "parallel" }, 0, 900)).toThrow("quantity-unreadable");
  });
});
