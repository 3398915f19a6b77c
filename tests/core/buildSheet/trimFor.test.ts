import { describe, expect, it } from "vitest";
import { trimFor } from "../../../core/buildSheet/trimFor.ts";
import published from "../../../fixtures/published/shaftTrimming.json" with { type: "json" };
import { someShaft } from "./someParts.ts";

const IN = 25.4;

describe(`trimFor (${published.source})`, () => {
  const row = published.cuts.find(({ rawIn }) => rawIn !== undefined);

  it("takes 5 in off a raw 47 in for a driver of 43 in on a bore of 1 in, the cap ignored", () => {
    const trim = trimFor(someShaft({ rawLengthMm: (row?.rawIn ?? 0) * IN }), 0, (row?.cutIn ?? 0) * IN, 38.1);
    expect(trim).toEqual({ kind: "trim", tipTrimMm: 0, buttTrimMm: expect.closeTo((row?.trimIn ?? 0) * IN, 9) });
  });
});

describe("trimFor", () => {
  it("takes the tip first and the rest off the butt", () => {
    expect(trimFor(someShaft({ rawLengthMm: 1168 }), 12, 1100, 38.1)).toEqual({ kind: "trim", tipTrimMm: 12, buttTrimMm: 56 });
  });

  it("uses a shaft to its last millimetre", () => {
    expect(trimFor(someShaft({ rawLengthMm: 1168 }), 12, 1156, 38.1)).toEqual({ kind: "trim", tipTrimMm: 12, buttTrimMm: 0 });
  });

  it("names every reason at once", () => {
    expect(trimFor(someShaft({ rawLengthMm: 1168, parallelTipMm: 50 }), 20, 1160, 38.1)).toEqual({
      kind: "refused",
      faults: [
        { code: "shaft-too-short", rawMm: 1168, neededMm: 1180 },
        { code: "tip-section-too-short", wantedTrimMm: 20, allowedTrimMm: expect.closeTo(11.9, 9) },
      ],
    });
  });
});
