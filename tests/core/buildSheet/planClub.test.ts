import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultAllowances as allowances } from "../../../core/buildSheet/allowances.ts";
import type { PartsInReach } from "../../../core/buildSheet/parts.ts";
import type { ClubPlan, PlanFault, Target } from "../../../core/buildSheet/plan.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import type { ClubFamily, ClubName } from "../../../core/kinds.ts";
import { id } from "../../../core/kinds.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import worked from "../../../fixtures/published/workedSet.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { someClub, someGrip, someHead, someHeadModel, someParts, someShaft, someSleeve, someTarget, someWeight, stocked } from "./someParts.ts";
import { somePiece, someSleevedPiece } from "./somePieces.ts";

const IN = 25.4;

function build(target: Partial<Target>, parts: Partial<PartsInReach> = {}) {
  return planClub({
    target: someTarget({ stampedLoftDeg: 9, ...target }),
    kind: "build",
    reference: null,
    parts: someParts(parts),
    allowances,
    tolerances,
  });
}

function planOf(result: ReturnType<typeof planClub>): ClubPlan {
  if (result.kind !== "planned") {
    throw new Error(JSON.stringify(result.faults));
  }
  return result.plan;
}

function faultsOf(result: ReturnType<typeof planClub>): readonly PlanFault[] {
  return result.kind === "refused" ? result.faults : [];
}

/** Swing weight straight from the definition, parts as [g, in from the stop]. */
const pointsByHand = (parts: readonly (readonly [number, number])[]) =>
  (parts.reduce((total, [massG, x]) => total + massG * (x - 14), 0) / 28.349523125 - 213.5) / 1.75;

describe(byTable(planClub, "workedSet", worked), () => {
  it.each(worked.rows)("builds the $club", (row) => {
    const isDriver = row.family === "driver";
    const raw = worked.shafts[isDriver ? "driver" : "iron"];
    const model = someHeadModel({
      family: row.family as ClubFamily,
      sleeveFamily: isDriver ? "loft" : null,
      boreToGroundMm: row.boreIn * IN,
      centreAboveGroundMm: row.centreAboveGroundMm,
    });
    const shaft = someShaft({
      forFamilies: [model.family],
      rawLengthMm: raw.rawIn * IN,
      rawMassG: raw.rawMassG,
      balanceFromTipMm: raw.balanceFromTipIn * IN,
      parallelTipMm: 200,
    });
    const head = someHead({ model, massG: row.headMassG, designLieDeg: row.lieDeg, soledLoftDeg: 9 });
    const plan = planOf(
      build({ club: row.club as ClubName, lengthMm: row.lengthIn * IN, tipTrimMm: row.tipIn * IN }, { heads: [head], shafts: [stocked(shaft)] }),
    );
    expect(plan.bareCutMm).toBeCloseTo(row.cutIn * IN, 9);
    expect(plan.buttTrimMm).toBeCloseTo((raw.rawIn - row.tipIn - row.cutIn) * IN, 9);
    const { predicted } = plan;
    expect(Math.abs((plan.trimmedShaftMassG ?? 0) - row.shaftMassG)).toBeLessThan(worked.tolerance.massG);
    expect(Math.abs((predicted.totalMassG ?? 0) - row.totalMassG)).toBeLessThan(worked.tolerance.massG);
    expect(Math.abs((predicted.balancePointMm ?? 0) / IN - row.balancePointIn)).toBeLessThan(worked.tolerance.balancePointIn);
    expect(Math.abs((predicted.swingWeightPoints ?? 99) - row.points)).toBeLessThan(worked.tolerance.points);
    expect(Math.abs((predicted.inertiaKgCm2 ?? 0) - row.inertiaKgCm2)).toBeLessThan(worked.tolerance.inertiaKgCm2);
  });
});

describe("planClub, a build", () => {
  it("reads the dry targets with the butt of the shaft against the stop (by hand)", () => {
    const plan = planOf(build({ tipTrimMm: 12.7 }));
    const shaft = [plan.trimmedShaftMassG ?? 0, (plan.trimmedShaftBalanceFromButtMm ?? 0) / IN] as const;
    const ready = [shaft, [198, 44.5 - 0.125], [6.5, 45 - 1.25 - 1 - 0.125]] as const;
    expect(plan.beforeGluePoints).toBeCloseTo(pointsByHand(ready), 6);
    expect(plan.dryTargetPoints).toBeCloseTo(pointsByHand([...ready, [2, 45 - 1.25 - 35 / IN - 0.125]]), 6);
  });

  it("counts every extra wrap of tape (by hand: 1.5 g at 5 in)", () => {
    const [bare, wrapped] = [planOf(build({})), planOf(build({ wraps: 2 }))];
    expect(wrapped.wraps).toBe(2);
    expect((wrapped.predicted.totalMassG ?? 0) - (bare.predicted.totalMassG ?? 0)).toBeCloseTo(3, 9);
    expect((wrapped.predicted.swingWeightPoints ?? 0) - (bare.predicted.swingWeightPoints ?? 0)).toBeCloseTo((3 * (5 - 14)) / 49.6116654, 6);
    expect(wrapped.dryTargetPoints).toBe(bare.dryTargetPoints);
  });

  it("takes shaft and grip from the player's own bin first", () => {
    const rack = { place: "Rack 1", placeId: id<"place">(1) };
    const bin = { place: "Bin Toll", placeId: id<"place">(9), inPlayersBin: true };
    const plan = planOf(
      build(
        {},
        { shafts: [stocked(someShaft({}), rack), stocked(someShaft({}), bin)], grips: [stocked(someGrip({}), bin), stocked(someGrip({}), rack)] },
      ),
    );
    expect([plan.shaft?.place, plan.grip?.place]).toEqual(["Bin Toll", "Bin Toll"]);
  });

  it("leaves a bin alone that has none free", () => {
    const bin = { place: "Bin Toll", placeId: id<"place">(9), inPlayersBin: true, free: 0 };
    const plan = planOf(build({}, { shafts: [stocked(someShaft({}), bin), stocked(someShaft({}))] }));
    expect(plan.shaft?.place).toBe("Rack 1");
  });

  it("names everything that is missing, and every part that is short, at once", () => {
    const faults = faultsOf(build({ headModel: null, stampedLoftDeg: null, lengthMm: null, shaft: "Curlew 70 S", grip: null }));
    expect(faults).toEqual([
      { code: "missing", quantities: ["headModel", "loft", "length", "grip"] },
      { code: "short", shortages: [expect.objectContaining({ part: "shaft", wanted: "Curlew 70 S", nearest: ["Dunlin 60 X"] })] },
    ]);
  });

  it("asks for no loft of a putter", () => {
    const faults = faultsOf(build({ club: "putter" as ClubName, headModel: null, stampedLoftDeg: null }));
    expect(faults[0]).toEqual({ code: "missing", quantities: ["headModel"] });
  });

  it("does not build with a head that lies in another truck, but names it", () => {
    const elsewhere = someHead({ serial: "0417", here: false, place: "D-7, truck Heron" });
    const heads = [{ serial: "0417", model: "Cairn", stampedLoftDeg: 9, place: "D-7, truck Heron", here: false }];
    expect(faultsOf(build({}, { heads: [elsewhere] }))).toEqual([
      { code: "short", shortages: [{ part: "head", wanted: "Cairn 9", nearest: ["Cairn 9 0417 (D-7, truck Heron)"], heads }] },
    ]);
  });

  it("names the sleeve when heads fit and no sleeve of their family is free", () => {
    expect(faultsOf(build({}, { sleeves: [stocked(someSleeve({}), { free: 0 })] }))).toEqual([
      { code: "short", shortages: [{ part: "sleeve", wanted: "loft", nearest: [] }] },
    ]);
  });

  it("puts no iron shaft in a driver", () => {
    const parts = { shafts: [stocked(someShaft({ forFamilies: ["iron"] })), stocked(someShaft({ name: "Dunlin 70 X" }))] };
    expect(faultsOf(build({}, parts))).toEqual([
      { code: "short", shortages: [expect.objectContaining({ part: "shaft", unfit: ["family"], nearest: ["Dunlin 70 X"] })] },
    ]);
  });

  it("refuses a grip with a rib where none is wished", () => {
    const faults = faultsOf(build({ rib: false }, { grips: [stocked(someGrip({ rib: true })), stocked(someGrip({ name: "Heather Round" }))] }));
    expect(faults).toEqual([{ code: "short", shortages: [expect.objectContaining({ part: "grip", unfit: ["rib"], nearest: ["Heather Round"] })] }]);
  });

  it.each<[string, Partial<Target>, Parameters<typeof someShaft>[0], PlanFault["code"]]>([
    ["a shaft too short to cut", { lengthMm: 48 * IN }, {}, "shaft-too-short"],
    ["a tip trim past the parallel section", { tipTrimMm: 62 }, {}, "tip-section-too-short"],
    ["a tip trim on a taper tip", { tipTrimMm: 5 }, { tip: "taper" }, "taper-not-tip-trimmed"],
  ])("refuses %s", (_, target, shaft, code) => {
    expect(faultsOf(build(target, { shafts: [stocked(someShaft(shaft))] })).map((fault) => fault.code)).toContain(code);
  });

  it("meets the swing weight with the fewest weights, none when the head alone is near enough", () => {
    const weights = [4, 6, 8, 10].map((massG) => stocked(someWeight(massG)));
    const bare = planOf(build({})).predicted.swingWeightPoints ?? 0;
    const alone = planOf(build({ swingWeightPoints: bare + 0.4 }, { weights }));
    expect([alone.weights, alone.leadG]).toEqual([[], 0]);
    /** Eight grams at the head of a 45 in driver, by hand. */
    const eight = bare + (8 * 30.5) / 49.6116654;
    const one = planOf(build({ swingWeightPoints: eight }, { weights }));
    expect(one.weights.map(({ model, count }) => [model.massG, count])).toEqual([[8, 1]]);
    expect(one.predicted.swingWeightPoints).toBeCloseTo(eight, 6);
    expect(one.headMassWantedG).toBeCloseTo(206, 5);
  });

  it("asks for lead for what is left over when no weight is in stock", () => {
    const bare = planOf(build({})).predicted.swingWeightPoints ?? 0;
    const plan = planOf(build({ swingWeightPoints: bare + 2 }));
    /** Two points at 44.5 in, by hand. */
    expect(plan.leadG).toBeCloseTo((2 * 49.6116654) / 30.5, 5);
    expect(plan.predicted.swingWeightPoints).toBeCloseTo(bare + 2, 6);
    expect(plan.choice.misses.filter(({ quantity }) => quantity === "swingWeightPoints")).toEqual([]);
  });

  it("says so when the lightest way is still too heavy", () => {
    const bare = planOf(build({})).predicted.swingWeightPoints ?? 0;
    const plan = planOf(build({ swingWeightPoints: bare - 2 }, { weights: [stocked(someWeight(4))] }));
    expect([plan.weights, plan.leadG]).toEqual([[], 0]);
    expect(plan.choice.misses.find(({ quantity }) => quantity === "swingWeightPoints")?.got).toBeCloseTo(bare, 6);
  });

  it("keeps the prediction within half a point of every wish that mass can be added for", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 12, noNaN: true }), fc.array(fc.integer({ min: 1, max: 15 }), { maxLength: 6 }), (extra, massesG) => {
        const bare = planOf(build({})).predicted.swingWeightPoints ?? 0;
        const plan = planOf(build({ swingWeightPoints: bare + extra }, { weights: massesG.map((massG) => stocked(someWeight(massG))) }));
        const count = plan.weights.reduce((total, weight) => total + weight.count, 0);
        expect(count).toBeLessThanOrEqual(allowances.weightPorts.driver);
        const off = (plan.predicted.swingWeightPoints ?? 99) - (bare + extra);
        expect(Math.abs(off)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
      { numRuns: 50 },
    );
  });

  it("lists other heads once each, and changes from the club it is like", () => {
    const heads = ["0001", "0002", "0003"].map((serial, index) => someHead({ serial, soledLoftDeg: 9 + index / 10 }));
    const question = {
      target: someTarget({ squaredLoftDeg: 9, shaft: "Dunlin 60 X" }),
      kind: "build" as const,
      parts: someParts({ heads }),
      allowances,
      tolerances,
    };
    const plan = planOf(planClub({ ...question, reference: someClub({ shaftModel: "Curlew 70 S", lengthMm: 45 * IN, rib: null }) }));
    expect(plan.runnersUp.map(({ head }) => head.serial).sort()).toEqual(
      ["0001", "0002", "0003"].filter((serial) => serial !== plan.choice.head.serial),
    );
    expect([...plan.changes].sort()).toEqual(["shaft", "squaredLoftDeg"]);
  });

  it("plans the same whatever the order of the stock", () => {
    const heads = Array.from({ length: 8 }, (_, index) =>
      someHead({ serial: `00${index + 10}`, soledLoftDeg: 8.8 + index / 20, massG: 197 + (index % 3) }),
    );
    const weights = [3, 5, 7].map((massG) => stocked(someWeight(massG)));
    const wish = { stampedLoftDeg: null, squaredLoftDeg: 9.1, swingWeightPoints: 5 };
    fc.assert(
      fc.property(
        fc.shuffledSubarray(heads, { minLength: heads.length }),
        fc.shuffledSubarray(weights, { minLength: weights.length }),
        (shuffledHeads, shuffledWeights) => {
          expect(build(wish, { heads: shuffledHeads, weights: shuffledWeights })).toEqual(build(wish, { heads, weights }));
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe("planClub, a swap", () => {
  const reference = someClub({});
  const swap = (target: Partial<Target>, parts: Partial<PartsInReach> = {}, standing: Parameters<typeof someClub>[0] = {}) =>
    planClub({
      target: someTarget({ stampedLoftDeg: 9, lengthMm: reference.lengthMm, tipTrimMm: 12.7, wraps: 1, swingWeightPoints: 3, ...target }),
      kind: "swap",
      reference: someClub(standing),
      parts: someParts(parts),
      allowances,
      tolerances,
    });

  it("needs neither shaft nor grip in stock and cuts nothing", () => {
    const plan = planOf(swap({}, { shafts: [], grips: [], sleeves: [stocked(someSleeve({}), { free: 0 })] }));
    expect([plan.shaft, plan.grip, plan.bareCutMm, plan.dryTargetPoints, plan.wraps]).toEqual([null, null, null, null, 1]);
  });

  it("predicts the club on record with the head's mass exchanged (by hand)", () => {
    const plan = planOf(swap({}, { heads: [someHead({ massG: 199 })] }));
    expect(plan.predicted.swingWeightPoints).toBeCloseTo(3 + (45.25 - 0.5 - 14) / 49.6116654, 5);
    expect(plan.predicted.totalMassG).toBe(322);
    expect(plan.headMassWantedG).toBe(198);
  });

  it("prefers the mark the club was played at", () => {
    expect(planOf(swap({}, {}, { sleeveMark: "strong 1" })).choice.mark).toBe("strong 1");
  });

  it("puts no bonded head on a shaft with a sleeve", () => {
    const bonded = someHead({ model: someHeadModel({ sleeveFamily: null }) });
    expect(faultsOf(swap({}, { heads: [bonded] }))).toEqual([
      { code: "short", shortages: [{ part: "head", wanted: "Cairn 9", nearest: [], heads: [] }] },
    ]);
  });

  it("predicts nothing the record does not know", () => {
    const plan = planOf(swap({}, {}, { headMassG: null }));
    expect([plan.predicted.swingWeightPoints, plan.predicted.totalMassG, plan.headMassWantedG]).toEqual([null, null, null]);
  });

  it("refuses another shaft or length: they stay", () => {
    expect(faultsOf(swap({ shaft: "Curlew 70 S", lengthMm: 1143 }))).toEqual([{ code: "stays-in-swap", quantities: ["length", "shaft"] }]);
  });
});

describe("planClub: prepared shafts and grips that do not fit (common practice, no source)", () => {
  const noSleeveFree = { sleeves: [stocked(someSleeve({}), { free: 0 })] };
  const tipped = { tipTrimMm: 12.7, logo: "down" } as const;

  it("builds from the sleeved shaft in the player's bin, which brings its sleeve", () => {
    const piece = someSleevedPiece({ inPlayersBin: true, place: "bin", placeId: id(9) });
    const plan = planOf(build(tipped, { ...noSleeveFree, pieces: [piece] }));
    expect(plan.piece?.id).toBe(piece.id);
    expect(plan.shaft).toMatchObject({ place: "bin", placeId: 9 });
    expect(plan.choice.sleeve?.name).toBe("Loft sleeve");
  });

  it("names the sleeve that is lacking when the sleeved shaft does not fit", () => {
    const piece = someSleevedPiece({ tipTrimMm: millimetres(25.4) });
    expect(faultsOf(build(tipped, { ...noSleeveFree, pieces: [piece] }))).toEqual([
      { code: "short", shortages: [{ part: "sleeve", wanted: "Loft sleeve", nearest: [] }] },
    ]);
  });

  it("cuts the same length from a prepared shaft as from a raw one, and comes to the same club", () => {
    const raw = planOf(build(tipped));
    const prepared = planOf(build(tipped, { shafts: [], pieces: [somePiece({})] }));
    expect(prepared.piece).not.toBeNull();
    expect(prepared.bareCutMm).toBe(raw.bareCutMm);
    expect(prepared.predicted).toEqual(raw.predicted);
  });

  it("says where a shaft lies elsewhere, and what is nearest, with how it differs", () => {
    const elsewhere = { shafts: [stocked(someShaft({}), { place: "main rack, truck Heron" })], sleeves: [], grips: [] };
    const other = someShaft({ id: id(22), name: "Dunlin 70 X", rawMassG: 75 });
    const [fault] = faultsOf(build({}, { shafts: [stocked(other)], elsewhere }));
    expect(fault).toMatchObject({
      code: "short",
      shortages: [
        {
          part: "shaft",
          elsewhere: [{ place: "main rack, truck Heron" }],
          alike: [{ row: { model: { name: "Dunlin 70 X" } }, differences: { massG: 10 } }],
        },
      ],
    });
  });

  it("flags a grip whose core is not the shaft's", () => {
    expect(planOf(build({})).gripMisfit).toBeNull();
    expect(planOf(build({}, { grips: [stocked(someGrip({ coreMm: 14 }))] })).gripMisfit).toEqual({ coreMm: 14, buttMm: 15.2 });
  });
});
