import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planService } from "../../../core/buildSheet/planService.ts";
import type { HeadConstruction, HeadMaterial } from "../../../core/head/bendLimits.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/bending.json" with { type: "json" };
import limits from "../../../fixtures/published/bendLimits.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { between } from "../head/someAngles.ts";
import { someHeadModel } from "./someParts.ts";
import { bareClub, by, exactly, faultsOf, plannedAs, same, someWedge } from "./someService.ts";

const bent = (loft: number, lie = 0) => ({ loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) });
const wedge = { reference: someWedge() };

describe(byTable(planService, "bending", published), () => {
  it.each(published.rows)("bends $loftDeg/$bounceDeg by $loftChangeDeg to $loftAfterDeg/$bounceAfterDeg", (row) => {
    const reference = someWedge({ squaredLoftDeg: row.loftDeg, bounceDeg: row.bounceDeg });
    const plan = plannedAs("bend", { squaredLoftDeg: by(row.loftChangeDeg) }, { reference });
    expect(plan.from).toEqual({ squaredLoftDeg: row.loftDeg, seatedLieDeg: 64, bounceDeg: row.bounceDeg });
    expect(plan.to).toEqual({ squaredLoftDeg: row.loftAfterDeg, seatedLieDeg: 64, bounceDeg: row.bounceAfterDeg });
    expect([plan.loftChangeDeg, plan.lieChangeDeg]).toEqual([row.loftChangeDeg, 0]);
  });

  it.each(published.offset.filter(({ bendPointHeightMm }) => bendPointHeightMm === 55))(
    "moves the offset by $offsetChangeMm mm at $loftChangeDeg°",
    (row) => {
      const plan = plannedAs("bend", { squaredLoftDeg: by(row.loftChangeDeg) }, { reference: someWedge({ offsetMm: 2 }) });
      expect(Math.abs((plan.offsetChangeMm ?? Number.NaN) - row.offsetChangeMm)).toBeLessThan(published.tolerance.offsetMm);
      expect(plan.offsetMm).toBeCloseTo(2 + (plan.offsetChangeMm ?? Number.NaN), 9);
    },
  );
});

describe(byTable(planService, "bendLimits", limits), () => {
  it.each(limits.rows)("$material, $construction, bent $bendDeg°, maker $makerLimitDeg, skill $skilledTechnician: $kind", (row) => {
    const makerBendLimitDeg = row.makerLimitDeg === null ? null : degrees(row.makerLimitDeg);
    const made = { material: row.material as HeadMaterial, construction: row.construction as HeadConstruction, makerBendLimitDeg };
    const asked = { ...wedge, head: someHeadModel({ family: "wedge", ...made }), skilledTechnician: row.skilledTechnician };
    if (row.kind === "blocked") {
      expect(faultsOf("bend", { squaredLoftDeg: by(-row.bendDeg) }, asked).length).toBeGreaterThan(0);
      expect(faultsOf("bend", { seatedLieDeg: by(row.bendDeg) }, asked).length).toBeGreaterThan(0);
    } else {
      expect(plannedAs("bend", { squaredLoftDeg: by(-row.bendDeg) }, asked).allowance.kind).toBe(row.kind);
    }
  });
});

describe(byLaw(planService, "bent there and back a head reads as it did, and loft less bounce stays"), () => {
  it("for any bend a soft head bears", () => {
    fc.assert(
      fc.property(between(-2, 2), between(-2, 2), (loft, lie) => {
        const reference = someWedge();
        const there = plannedAs("bend", { squaredLoftDeg: by(loft), seatedLieDeg: by(lie) }, { reference });
        expect((there.to.squaredLoftDeg ?? 0) - (there.to.bounceDeg ?? 0)).toBeCloseTo(46, 9);
        const clauses = { squaredLoftDeg: exactly(56), seatedLieDeg: exactly(64) };
        const back = plannedAs("bend", clauses, { reference: { ...reference, ...there.to }, bends: [bent(loft, lie)] });
        expect(back.to.bounceDeg).toBeCloseTo(10, 9);
        expect(back.loftChangeDeg).toBeCloseTo(-loft, 9);
        expect(back.lieChangeDeg).toBeCloseTo(-lie, 9);
        expect(back.allowance.totalLoftDeg).toBeCloseTo(2 * Math.abs(loft), 9);
      }),
    );
  });
});

describe("planBend", () => {
  it("bends 56 to 54 with bounce 10 to 8, the lie as on record, and leaves the bounce to the gauge", () => {
    const plan = plannedAs("bend", { squaredLoftDeg: exactly(54) }, wedge);
    expect(plan).toMatchObject({ version: 1, club: "sw", loftChangeDeg: -2, lieChangeDeg: 0, allowance: { kind: "allowed", totalLoftDeg: 2 } });
    expect(plan.to).toEqual({ squaredLoftDeg: 54, seatedLieDeg: 64, bounceDeg: 8 });
    expect(plan.target).toMatchObject({ squaredLoftDeg: 54, seatedLieDeg: 64, bounceDeg: null });
    expect(plan.predicted).toMatchObject({ squaredLoftDeg: 54, seatedLieDeg: 64, bounceDeg: 8, lengthMm: null });
  });

  it("takes loft and bounce that go together, in the target too", () => {
    const plan = plannedAs("bend", { squaredLoftDeg: exactly(54), bounceDeg: exactly(8) }, wedge);
    expect([plan.to.bounceDeg, plan.target.bounceDeg]).toEqual([8, 8]);
    expect(plannedAs("bend", { seatedLieDeg: exactly(65), bounceDeg: same }, wedge).to).toEqual({
      squaredLoftDeg: 56,
      seatedLieDeg: 65,
      bounceDeg: 10,
    });
  });

  it("refuses less bounce at the same loft, with what bending can give", () => {
    expect(faultsOf("bend", { bounceDeg: exactly(8), seatedLieDeg: exactly(63) }, wedge)).toEqual([
      {
        code: "bounce-goes-with-loft",
        wantedBounceDeg: 8,
        nearest: { squaredLoftDeg: 56, seatedLieDeg: 63, bounceDeg: 10 },
        bounceMissDeg: -2,
        loftAtWantedBounceDeg: 54,
      },
    ]);
  });

  it("warns past 2° with what went before, and refuses past 4° with the total so far", () => {
    expect(plannedAs("bend", { squaredLoftDeg: by(-1) }, { ...wedge, bends: [bent(1, 0.5), bent(-1)] }).allowance).toMatchObject({
      kind: "warned",
      reasons: [{ code: "past-warning", plane: "loft", totalDeg: 3, limitDeg: 2 }],
      totalLieDeg: 0.5,
    });
    expect(faultsOf("bend", { squaredLoftDeg: by(-1.5), seatedLieDeg: by(5) }, { ...wedge, bends: [bent(3)] })).toEqual([
      { code: "bend-blocked", plane: "loft", totalDeg: 4.5, limitDeg: 4 },
      { code: "bend-blocked", plane: "lie", totalDeg: 5, limitDeg: 4 },
    ]);
  });

  it.each([
    [by(10), { code: "bend-blocked", plane: "loft", totalDeg: 11, limitDeg: 4 }],
    [by(10.5), { code: "bend-blocked", plane: "loft", totalDeg: 11.5, limitDeg: 4 }],
    [by(-12), { code: "bend-blocked", plane: "loft", totalDeg: 13, limitDeg: 4 }],
  ])("refuses a mistyped %o as it does any bend too far", (squaredLoftDeg, fault) => {
    expect(faultsOf("bend", { squaredLoftDeg }, { ...wedge, bends: [bent(1)] })).toEqual([fault]);
  });

  it("names no limit farther than any bend is made", () => {
    const soft = { material: "304 stainless", construction: "forged", makerBendLimitDeg: degrees(20) } as const;
    const asked = { ...wedge, head: someHeadModel({ family: "wedge", ...soft }) };
    expect(faultsOf("bend", { seatedLieDeg: by(-11) }, asked)).toEqual([{ code: "bend-blocked", plane: "lie", totalDeg: 11, limitDeg: 4 }]);
  });

  it("plans a head that is not on record, measured first", () => {
    const plan = plannedAs("bend", { squaredLoftDeg: exactly(54), seatedLieDeg: exactly(63) }, { club: "sw" as ClubName, reference: null });
    expect(plan).toMatchObject({ loftChangeDeg: null, lieChangeDeg: null, offsetChangeMm: null, offsetMm: null, allowance: { kind: "allowed" } });
    expect(plan.from).toEqual({ squaredLoftDeg: null, seatedLieDeg: null, bounceDeg: null });
    expect(plan.to).toEqual({ squaredLoftDeg: 54, seatedLieDeg: 63, bounceDeg: null });
    const lieOnly = plannedAs("bend", { seatedLieDeg: exactly(63) }, { reference: bareClub("7i", { bounceDeg: 6 }) });
    expect([lieOnly.loftChangeDeg, lieOnly.lieChangeDeg, lieOnly.to]).toEqual([0, null, { squaredLoftDeg: null, seatedLieDeg: 63, bounceDeg: 6 }]);
  });

  it("tells no bounce of a head whose loft or bounce is not on record, and asks for both when it is wished", () => {
    const noLoft = { reference: someWedge({ squaredLoftDeg: null }) };
    expect(plannedAs("bend", { squaredLoftDeg: exactly(54) }, noLoft).to.bounceDeg).toBeNull();
    expect(plannedAs("bend", { squaredLoftDeg: exactly(54) }, { reference: someWedge({ bounceDeg: null }) }).to.bounceDeg).toBeNull();
    const needs = (quantities: readonly string[]) => [{ code: "needs-record", kind: "bend", quantities }];
    expect(faultsOf("bend", { bounceDeg: exactly(8) }, noLoft)).toEqual(needs(["squaredLoftDeg"]));
    expect(faultsOf("bend", { bounceDeg: exactly(8) }, { reference: bareClub("sw") })).toEqual(needs(["squaredLoftDeg", "bounceDeg"]));
  });

  it.each([
    ["driver", ["maker-does-not-allow"]],
    ["3w", ["maker-does-not-allow", "needs-skill"]],
    ["3h", ["maker-does-not-allow"]],
    ["7i", []],
    ["sw", []],
    ["putter", []],
  ])("takes a %s whose model is unknown as usually made: %j", (club, codes) => {
    const asked = { reference: bareClub(club, { squaredLoftDeg: 20, seatedLieDeg: 60 }), head: null };
    expect(faultsOf("bend", { squaredLoftDeg: by(0.5) }, asked).map(({ code }) => code)).toEqual(codes);
    expect(faultsOf("bend", { squaredLoftDeg: exactly(20) }, { ...asked, reference: bareClub(club) }).map(({ code }) => code)).toEqual(codes);
  });

  it("bends a driver its maker allows, and tells no offset of what is no iron", () => {
    const head = someHeadModel({ makerBendLimitDeg: degrees(1) });
    const reference = bareClub("driver", { squaredLoftDeg: 9, seatedLieDeg: 58 });
    const plan = plannedAs("bend", { seatedLieDeg: by(1) }, { reference, head });
    expect([plan.lieChangeDeg, plan.offsetChangeMm, plan.allowance.kind]).toEqual([1, null, "allowed"]);
    expect(faultsOf("bend", { seatedLieDeg: by(1.01) }, { reference, head })).toMatchObject([{ code: "bend-blocked", plane: "lie", limitDeg: 1 }]);
  });

  it("leaves a putter 1° weaker its offset unknown, and an iron bent in lie only its offset", () => {
    const putter = plannedAs("bend", { squaredLoftDeg: by(1) }, { reference: bareClub("putter", { squaredLoftDeg: 3, seatedLieDeg: 70 }) });
    expect([putter.to.squaredLoftDeg, putter.offsetChangeMm]).toEqual([4, null]);
    const iron = bareClub("7i", { squaredLoftDeg: 35, seatedLieDeg: 62, offsetMm: 3 });
    expect(plannedAs("bend", { seatedLieDeg: by(-1) }, { reference: iron })).toMatchObject({ offsetChangeMm: 0, offsetMm: 3, lieChangeDeg: -1 });
  });

  it("refuses nothing asked, and what bending leaves as it is", () => {
    expect(faultsOf("bend", {}, wedge)).toEqual([{ code: "nothing-asked", kind: "bend" }]);
    expect(faultsOf("bend", { squaredLoftDeg: by(-1), soledFaceDeg: exactly(1) }, wedge)).toEqual([
      { code: "stays", kind: "bend", quantities: ["soledFaceDeg"] },
    ]);
  });

  it("bends back to the record, where the head as found may differ", () => {
    expect(plannedAs("bend", { squaredLoftDeg: exactly(56) }, wedge)).toMatchObject({ loftChangeDeg: 0, allowance: { kind: "allowed" } });
  });

  it("tells every fault at once", () => {
    const clauses = { squaredLoftDeg: by(-3), bounceDeg: exactly(12), lengthMm: exactly(900) };
    expect(faultsOf("bend", clauses, { ...wedge, bends: [bent(-2)] }).map(({ code }) => code)).toEqual([
      "stays",
      "bounce-goes-with-loft",
      "bend-blocked",
    ]);
    const unread = { reference: bareClub("driver", { squaredLoftDeg: 9 }), head: null };
    expect(faultsOf("bend", { squaredLoftDeg: by(-1), bounceDeg: exactly(5) }, unread).map(({ code }) => code)).toEqual([
      "needs-record",
      "maker-does-not-allow",
    ]);
  });
});
