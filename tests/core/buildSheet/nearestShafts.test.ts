import fc from "fast-check";
import { distance } from "mathjs";
import { describe, expect, it } from "vitest";
import { defaultShaftTolerances, FLEX_STEP_CPM, nearestShafts, SAME_TIP_MM, type ShaftTolerances } from "../../../core/buildSheet/nearestShafts.ts";
import { id } from "../../../core/kinds.ts";
import { cyclesPerMinute } from "../../../core/quantity/units.ts";
import { byLaw, byLibrary } from "../../support/checkOf.ts";
import { someShaft, stocked } from "./someParts.ts";

const wanted = someShaft({ name: "Dunlin 60 X", rawMassG: 63.5, balanceFromTipMm: 611, frequencyCpm: cyclesPerMinute(262) });
const named = (name: string, given: Parameters<typeof someShaft>[0] = {}) => someShaft({ ...wanted, name, ...given });
const names = (near: ReturnType<typeof nearestShafts>) => near.map(({ row }) => row.model.name);

const anyShaft = fc
  .record({
    rawMassG: fc.double({ min: 45, max: 90, noNaN: true }),
    balanceFromTipMm: fc.double({ min: 560, max: 660, noNaN: true }),
    frequencyCpm: fc.double({ min: 230, max: 290, noNaN: true }),
  })
  .map(({ frequencyCpm, ...given }) => named("other", { ...given, frequencyCpm: cyclesPerMinute(frequencyCpm) }));

describe(byLibrary(nearestShafts, "mathjs", "the squared Euclidean distance of mass, balance and frequency, each in its tolerances"), () => {
  it("scores any shaft so", () => {
    const { massG, balanceMm, frequencyCpm } = defaultShaftTolerances;
    fc.assert(
      fc.property(anyShaft, (model) => {
        const point = (of: typeof model) => [of.rawMassG / massG, of.balanceFromTipMm / balanceMm, (of.frequencyCpm ?? 0) / frequencyCpm];
        const [near] = nearestShafts(wanted, "driver", [stocked(model)]);
        expect(near?.score).toBeCloseTo(Number(distance(point(wanted), point(model))) ** 2, 8);
      }),
    );
  });
});

describe(byLaw(nearestShafts, "a shaft is nearest to itself, and a difference taken the other way round is its negative"), () => {
  it("puts the wanted one first, with no difference", () => {
    fc.assert(
      fc.property(fc.array(anyShaft, { minLength: 0, maxLength: 5 }), (others) => {
        const stock = [...others.map((model, at) => stocked({ ...model, name: `other ${at}` })), stocked(wanted)];
        const [first] = nearestShafts(wanted, "driver", stock);
        expect(first).toMatchObject({ row: { model: wanted }, score: 0, differences: { massG: 0, balanceMm: 0, frequencyCpm: 0 } });
      }),
    );
  });

  it("tells one's own less the wanted one's", () => {
    const other = named("Dunlin 70 S", { rawMassG: 72, balanceFromTipMm: 607.5, frequencyCpm: cyclesPerMinute(254), flex: "S", tipDiameterMm: 8.9 });
    const [there] = nearestShafts(wanted, "driver", [stocked(other)]);
    const [back] = nearestShafts(other, "driver", [stocked(wanted)]);
    expect(there?.differences).toEqual({ massG: 8.5, balanceMm: -3.5, frequencyCpm: -8, flexDiffers: true, tipDiffers: true });
    expect(back?.differences).toEqual({ massG: -8.5, balanceMm: 3.5, frequencyCpm: 8, flexDiffers: true, tipDiffers: true });
    expect(back?.score).toBe(there?.score);
  });
});

describe("nearestShafts", () => {
  it("keeps to shafts made for that club, with that kind of tip, that lie there", () => {
    const stock = [
      stocked(named("iron", { forFamilies: ["iron"] })),
      stocked(named("taper", { tip: "taper" })),
      stocked(named("gone"), { free: 0 }),
      stocked(named("good")),
    ];
    expect(names(nearestShafts(wanted, "fairway", stock))).toEqual(["good"]);
    expect(names(nearestShafts(wanted, null, stock))).toEqual(["good"]);
    expect(names(nearestShafts(wanted, "putter", stock))).toEqual([]);
    expect(nearestShafts(wanted, "driver", [])).toEqual([]);
  });

  it("sorts by what a player notices: 1 g before 1.5 g, and what fits the bore before either", () => {
    const stock = [
      stocked(named("thick", { tipDiameterMm: 8.5 + SAME_TIP_MM + 0.01 })),
      stocked(named("heavier", { rawMassG: 65 })),
      stocked(named("near", { rawMassG: 62.5, tipDiameterMm: 8.5 + SAME_TIP_MM - 0.01 })),
    ];
    expect(names(nearestShafts(wanted, "driver", stock))).toEqual(["near", "heavier", "thick"]);
    expect(nearestShafts(wanted, "driver", stock).map(({ differences }) => differences.tipDiffers)).toEqual([false, false, true]);
  });

  // About 10 cpm from letter to letter: a rule of thumb printed in articles on frequency; no standard says what a letter is.
  it.each<[string, string, number]>([
    ["X", "X", 0],
    ["X", "S", 1],
    ["S", "X", 1],
    ["X", "R", 2],
    ["X", "light", 1],
    ["light", "light", 0],
  ])("counts from %s to %s as %d letters where one was never read, and says that it is not known", (from, to, letters) => {
    const unread = { ...wanted, flex: from, frequencyCpm: null };
    const [near] = nearestShafts(unread, "driver", [stocked(named("other", { flex: to }))]);
    expect(near?.differences).toMatchObject({ frequencyCpm: null, flexDiffers: from !== to });
    expect(near?.score).toBeCloseTo(((letters * 10) / 3) ** 2, 9);
    const { frequencyCpm: _left, ...never } = named("other", { flex: to });
    expect(nearestShafts({ ...wanted, flex: from }, "driver", [stocked(never)])[0]?.score).toBeCloseTo(((letters * FLEX_STEP_CPM) / 3) ** 2, 9);
  });

  it("names each model once, in the player's own bin when it lies there, and equals by name", () => {
    const [one, other] = [named("Alder"), named("Birch")];
    const near = nearestShafts(wanted, "driver", [
      stocked(other, { place: "rack 2", placeId: id(2) }),
      stocked(other, { place: "rack 1", placeId: id(1) }),
      stocked(one, { place: "rack", placeId: id(1) }),
      stocked(one, { place: "bin", placeId: id(9), inPlayersBin: true }),
    ]);
    expect(near.map(({ row }) => row.place)).toEqual(["bin", "rack 1"]);
  });

  it.each<Partial<Record<keyof ShaftTolerances, number>>>([
    { massG: 0 },
    { balanceMm: 0 },
    { frequencyCpm: 0.009 },
    { massG: 101 },
    { massG: Number.NaN },
  ])("refuses a tolerance of %o", (given) => {
    const tolerances = { ...defaultShaftTolerances, ...given } as ShaftTolerances;
    expect(() => nearestShafts(wanted, "driver", [], tolerances)).toThrow("quantity-out-of-range");
  });

  it("counts a difference of one tolerance as 1, and takes the smallest tolerances and the largest", () => {
    const other = stocked(named("other", { rawMassG: 64.5, balanceFromTipMm: 612, frequencyCpm: cyclesPerMinute(263) }));
    const by = (massG: number, balanceMm: number, frequencyCpm: number) =>
      nearestShafts(wanted, "driver", [other], { massG, balanceMm, frequencyCpm } as ShaftTolerances)[0]?.score;
    expect(by(1, 1, 1)).toBeCloseTo(3, 9);
    expect(by(100, 1000, 1000)).toBeCloseTo(1e-4 + 2e-6, 12);
    expect(by(0.01, 0.01, 0.01)).toBeCloseTo(3e4, 4);
  });

  it("refuses a family that is none, and a shaft of no mass at all", () => {
    expect(() => nearestShafts(wanted, "chipper" as "driver", [])).toThrow("quantity-unreadable");
    expect(() => nearestShafts({ ...wanted, rawMassG: Number.NaN as typeof wanted.rawMassG }, "driver", [])).toThrow("quantity-out-of-range");
    expect(() => nearestShafts(wanted, "driver", [stocked(named("other", { frequencyCpm: cyclesPerMinute(Number.POSITIVE_INFINITY) }))])).toThrow(
      "quantity-out-of-range",
    );
  });
});
