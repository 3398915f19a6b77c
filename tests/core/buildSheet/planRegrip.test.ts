import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { planService } from "../../../core/buildSheet/planService.ts";
import { id } from "../../../core/kinds.ts";
import tape from "../../../fixtures/published/gripTape.json" with { type: "json" };
import published from "../../../fixtures/published/swingWeightSensitivity.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { between } from "../head/someAngles.ts";
import { someClub, someGrip, someShaft, stocked } from "./someParts.ts";
import { bareClub, by, exactly, faultsOf, plannedAs, same, wish } from "./someService.ts";

const IN = 25.4;
const gorse = someGrip({});
const heather = someGrip({ id: id(32), name: "Heather Soft", massG: 55 });
const grips = [stocked(gorse), stocked(heather)];
const toHeather = { grip: wish("Heather Soft") };

describe(byTable(planService, "swingWeightSensitivity", published), () => {
  const row = published.rows.find(({ massG, fromCapIn }) => massG === 5 && fromCapIn === 4.25);

  it("5 g more of grip at 4.25 in take a point off", () => {
    const plan = plannedAs("regrip", toHeather, { grips });
    expect(Math.abs((plan.swingWeightChangePoints ?? Number.NaN) - (row?.points ?? 0))).toBeLessThan(published.tolerance.points);
    expect([plan.massChangeG, plan.predicted.totalMassG]).toEqual([5, 326]);
    expect(plan.predicted.swingWeightPoints).toBeCloseTo(3 + (plan.swingWeightChangePoints ?? Number.NaN), 9);
  });

  it("a grip 25 g lighter gives the rule's five points", () => {
    const light = someGrip({ id: id(33), name: "Gorse Light", massG: 25 });
    const plan = plannedAs("regrip", { grip: wish("Gorse Light") }, { grips: [...grips, stocked(light)] });
    expect(Math.abs((plan.swingWeightChangePoints ?? Number.NaN) - published.rule.points)).toBeLessThan(published.tolerance.rulePoints);
  });
});

describe(byTable(planService, "gripTape", tape), () => {
  it("3 g of tape at 5 in take half a point off", () => {
    const allowances = { ...defaultAllowances, wrapG: tape.iron.massG, tapeFromCapMm: tape.iron.centreFromCapIn * IN };
    const plan = plannedAs("regrip", { wraps: by(1) }, { grips, allowances });
    expect([plan.wraps, plan.massChangeG]).toEqual([2, tape.iron.massG]);
    expect(Math.abs((plan.swingWeightChangePoints ?? Number.NaN) - tape.iron.points)).toBeLessThan(tape.iron.tolerancePoints);
  });
});

describe(byLaw(planService, "regripped there and back a club weighs what it did"), () => {
  it("for any two grips and any wraps", () => {
    const grip = fc.record({ massG: between(25, 90), centreFromCapMm: between(90, 140) });
    fc.assert(
      fc.property(grip, grip, fc.nat(5), fc.nat(5), (one, other, wraps, otherWraps) => {
        const both = [stocked(someGrip({ ...one, name: "one" })), stocked(someGrip({ ...other, id: id(32), name: "other" }))];
        const reference = someClub({ gripModel: "one", wraps });
        const there = plannedAs("regrip", { grip: wish("other"), wraps: exactly(otherWraps) }, { grips: both, reference });
        const { totalMassG, swingWeightPoints } = there.predicted;
        const after = someClub({ gripModel: "other", wraps: otherWraps, totalMassG, swingWeightPoints });
        const back = plannedAs("regrip", { grip: wish("one"), wraps: exactly(wraps) }, { grips: both, reference: after });
        expect(back.predicted.totalMassG).toBeCloseTo(321, 9);
        expect(back.predicted.swingWeightPoints).toBeCloseTo(3, 9);
      }),
    );
  });
});

describe("planRegrip", () => {
  it("puts on the grip on record with its wraps when nothing is written, and nothing changes", () => {
    const plan = plannedAs("regrip", {}, { grips });
    expect(plan).toMatchObject({ version: 1, club: "driver", wraps: 1, rib: false, logo: "down", massChangeG: 0, swingWeightChangePoints: 0 });
    expect([plan.grip.model.name, plan.grip.place]).toEqual(["Gorse Standard Round", "Rack 1"]);
    expect(plan.target).toMatchObject({ grip: "Gorse Standard Round", rib: false, wraps: 1, swingWeightPoints: null, totalMassG: null });
  });

  it("takes from the player's bin first, and the rib that is wished", () => {
    const ribbed = { ...gorse, id: id<"partModel">(35), rib: true };
    const stock = [...grips, stocked(gorse, { place: "Bin 7", placeId: id(9), inPlayersBin: true }), stocked(ribbed, { place: "Rack 3" })];
    expect(plannedAs("regrip", {}, { grips: stock }).grip.place).toBe("Bin 7");
    const plan = plannedAs("regrip", { rib: wish("rib") }, { grips: stock });
    expect([plan.grip.place, plan.rib, plan.target.rib]).toEqual(["Rack 3", true, true]);
    expect(faultsOf("regrip", { rib: wish("rib") }, { grips })).toMatchObject([{ code: "short", shortages: [{ part: "grip" }] }]);
  });

  it("weighs the old grip with its own rib, and knows it though none is left", () => {
    const heavyRib = someGrip({ id: id(36), rib: true, massG: 52 });
    const stock = [stocked(gorse, { free: 0 }), stocked(heavyRib, { free: 0 }), stocked(heather)];
    const from = (rib: boolean | null) =>
      plannedAs("regrip", { ...toHeather, rib: wish("none") }, { grips: stock, reference: someClub({ rib }) }).massChangeG;
    expect([from(false), from(true), from(null)]).toEqual([5, 3, 5]);
  });

  it("knows no change from a grip or wraps that nobody knows", () => {
    const unknown = plannedAs("regrip", toHeather, { grips, reference: someClub({ gripModel: "Old Faithful" }) });
    expect([unknown.massChangeG, unknown.swingWeightChangePoints]).toEqual([null, null]);
    expect(unknown.predicted).toMatchObject({ totalMassG: null, swingWeightPoints: null, headMassG: 198, wraps: 1 });
    expect(plannedAs("regrip", toHeather, { grips, reference: someClub({ wraps: null }) })).toMatchObject({ wraps: 0, massChangeG: null });
    const unweighed = plannedAs("regrip", toHeather, { grips, reference: someClub({ totalMassG: null, swingWeightPoints: null }) });
    expect([unweighed.massChangeG, unweighed.predicted.totalMassG, unweighed.predicted.swingWeightPoints]).toEqual([5, null, null]);
  });

  it("grips a club that is not on record with what is written", () => {
    const plan = plannedAs("regrip", { ...toHeather, wraps: exactly(2), logo: wish("up") }, { grips, reference: null });
    expect(plan).toMatchObject({ wraps: 2, logo: "up", massChangeG: null, predicted: { wraps: 2, lengthMm: null } });
    expect(faultsOf("regrip", {}, { grips, reference: null })).toEqual([{ code: "needs-record", kind: "regrip", quantities: ["grip"] }]);
  });

  it("wants the sizes on record of the same grip over the same tape only", () => {
    const reference = someClub({ gripAt2InMm: 23.4, gripAt6InMm: 22 });
    const sizes = (clauses: Parameters<typeof plannedAs>[1]) => {
      const { gripAt2InMm, gripAt6InMm } = plannedAs("regrip", clauses, { grips, reference }).predicted;
      return [gripAt2InMm, gripAt6InMm];
    };
    expect(sizes({})).toEqual([23.4, 22]);
    expect(sizes({ wraps: by(1) })).toEqual([null, null]);
    expect(sizes(toHeather)).toEqual([null, null]);
  });

  it.each([
    [15.24, 0, false],
    [15.24 + 0.254, 0.254, false],
    [15.24 - 0.254, -0.254, false],
    [15.24 + 0.255, 0.255, true],
    [14.7, -0.54, true],
  ])("holds the core against a butt of %d mm", (buttDiameterMm, over, mismatch) => {
    const plan = plannedAs("regrip", {}, { grips, shaft: someShaft({ buttDiameterMm }) });
    expect(plan.buttOverCoreMm).toBeCloseTo(over, 9);
    expect(plan.coreMismatch).toBe(mismatch);
  });

  it("knows nothing of the core over an unknown shaft", () => {
    expect(plannedAs("regrip", {}, { grips })).toMatchObject({ buttOverCoreMm: null, coreMismatch: null });
  });

  it("names what is short and what is nearest to it", () => {
    expect(faultsOf("regrip", { grip: wish("Gorse Midsize Round") }, { grips })).toMatchObject([
      { code: "short", shortages: [{ part: "grip", wanted: "Gorse Midsize Round" }] },
    ]);
  });

  it("keeps a wished swing weight to check, and refuses one that a grip was not changed for", () => {
    expect(plannedAs("regrip", { ...toHeather, swingWeightPoints: same }, { grips }).target.swingWeightPoints).toBe(3);
    expect(faultsOf("regrip", { swingWeightPoints: exactly(5), shaft: wish("Curlew 120 X") }, { grips })).toEqual([
      { code: "stays", kind: "regrip", quantities: ["swingWeightPoints", "shaft"] },
    ]);
    expect(
      faultsOf("regrip", { shaft: wish("Dunlin 60 X"), lead: wish("2 g") }, { grips, reference: bareClub("7i", { gripModel: gorse.name }) }),
    ).toEqual([{ code: "stays", kind: "regrip", quantities: ["lead"] }]);
  });
});
