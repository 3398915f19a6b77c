import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planService } from "../../../core/buildSheet/planService.ts";
import type { ClubName, Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import geometry from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import hands from "../../../fixtures/published/sleeveHands.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { between, someHands } from "../head/someAngles.ts";
import { someClub, someHeadModel, someSleeve } from "./someParts.ts";
import { bareClub, by, exactly, faultsOf, mark, plannedAs, turned } from "./someService.ts";

const clocks = [0, 45, 90, 135, 180, 225, 270, 315];
const printed = someSleeve({ tiltDeg: 1.5, standardMark: "270", marks: clocks.map((clock) => ({ mark: String(clock), clockDeg: degrees(clock) })) });
const rowAt = (clockDeg: number) => geometry.rows.find((row) => row.tiltDeg === 1.5 && row.clockDeg === clockDeg);
/** In a left-handed head a mark leans where its mirror image does in a right-handed one. */
const mirrored = (clockDeg: number, hand: Hand) => (hand === "right" ? clockDeg : (360 - clockDeg) % 360);

function readAt(clockDeg: number, hand: Hand) {
  const row = rowAt(mirrored(clockDeg, hand));
  return { squaredLoftDeg: row?.squaredLoftDeg ?? 0, soledFaceDeg: row?.soledFaceDeg ?? 0, seatedLieDeg: row?.seatedLieDeg ?? 0 };
}
const standingAt = (clockDeg: number, hand: Hand) => someClub({ ...readAt(clockDeg, hand), sleeveMark: String(clockDeg) });

describe(byTable(planService, "sleeveGeometry", geometry), () => {
  const turns = (["right", "left"] as const).flatMap((hand) =>
    [0, 90, 180, 225].map((to) => ({ hand, from: 270, to, ...readAt(to, hand), before: readAt(270, hand) })),
  );

  it.each(turns)("turns a $hand-handed sleeve from $from to $to: loft $squaredLoftDeg, face $soledFaceDeg, lie $seatedLieDeg", (row) => {
    const plan = plannedAs("turn", { sleeve: mark(String(row.to)) }, { hand: row.hand, sleeve: printed, reference: standingAt(row.from, row.hand) });
    expect(plan.before).toEqual(row.before);
    for (const reading of ["squaredLoftDeg", "soledFaceDeg", "seatedLieDeg"] as const) {
      expect(Math.abs((plan.after[reading] ?? Number.NaN) - row[reading])).toBeLessThan(0.001);
      expect(plan.change[reading]).toBeCloseTo((plan.after[reading] ?? Number.NaN) - row.before[reading], 9);
      expect(plan.predicted[reading]).toBe(plan.after[reading]);
    }
  });

  it.each(turns)("finds the $hand-handed mark $to from its loft and lie", (row) => {
    const clauses = { squaredLoftDeg: exactly(row.squaredLoftDeg), seatedLieDeg: exactly(row.seatedLieDeg) };
    const plan = plannedAs("turn", clauses, { hand: row.hand, sleeve: printed, reference: standingAt(row.from, row.hand) });
    expect([plan.toMark, plan.misses]).toEqual([String(row.to), []]);
    expect([plan.target.sleeveMark, plan.target.squaredLoftDeg, plan.target.soledFaceDeg]).toEqual([String(row.to), row.squaredLoftDeg, null]);
  });
});

describe(byTable(planService, "sleeveHands", hands), () => {
  it.each(hands.turns)("a logo $logo on a $hand-handed club ends $logoEnds from $fromClockDeg to $toClockDeg", (row) => {
    const [hand, logo] = [row.hand as Hand, row.logo as "up" | "down"];
    const reference = { ...standingAt(row.fromClockDeg, hand), logo };
    const plan = plannedAs("turn", { sleeve: mark(String(row.toClockDeg)) }, { hand, sleeve: printed, reference });
    expect([plan.logoBefore, plan.logoAfter, plan.shaftTurnDeg]).toEqual([logo, row.logoEnds, row.clockwiseFromButtDeg]);
  });
});

describe(byLaw(planService, "a sleeve turned there and back reads as it did, and hands mirror"), () => {
  const someMark = fc.constantFrom(...clocks.map(String));

  it("there and back", () => {
    fc.assert(
      fc.property(someHands, someMark, someMark, between(7, 20), between(-3, 3), between(54, 62), (hand, from, to, loft, face, lie) => {
        fc.pre(from !== to);
        const reference = someClub({ squaredLoftDeg: loft, soledFaceDeg: face, seatedLieDeg: lie, sleeveMark: from });
        const there = plannedAs("turn", { sleeve: mark(to) }, { hand, sleeve: printed, reference });
        const back = plannedAs(
          "turn",
          { sleeve: mark(from) },
          { hand, sleeve: printed, reference: { ...reference, ...there.after, sleeveMark: to } },
        );
        expect(back.after.squaredLoftDeg).toBeCloseTo(loft, 7);
        expect(back.after.soledFaceDeg).toBeCloseTo(face, 7);
        expect(back.after.seatedLieDeg).toBeCloseTo(lie, 7);
      }),
    );
  });

  it("mirrors", () => {
    fc.assert(
      fc.property(fc.constantFrom(...clocks), fc.constantFrom(...clocks), (from, to) => {
        fc.pre(from !== to);
        const reference = someClub({});
        const [fromLeft, toLeft] = [mirrored(from, "left"), mirrored(to, "left")];
        const right = plannedAs("turn", { sleeve: mark(`${to}`) }, { sleeve: printed, reference: { ...reference, sleeveMark: `${from}` } });
        const left = plannedAs(
          "turn",
          { sleeve: mark(`${toLeft}`) },
          { hand: "left", sleeve: printed, reference: { ...reference, sleeveMark: `${fromLeft}` } },
        );
        expect(left.after.squaredLoftDeg).toBeCloseTo(right.after.squaredLoftDeg ?? Number.NaN, 9);
        expect(left.after.soledFaceDeg).toBeCloseTo(right.after.soledFaceDeg ?? Number.NaN, 9);
        expect(left.after.seatedLieDeg).toBeCloseTo(right.after.seatedLieDeg ?? Number.NaN, 9);
        expect(left.logoAfter).toBe(right.logoAfter);
      }),
    );
  });
});

describe("planTurn", () => {
  it("counts whole marks from where the sleeve stands", () => {
    const plan = plannedAs("turn", { sleeve: turned(-1) });
    expect([plan.fromMark, plan.toMark, plan.turnedFromStandard, plan.version, plan.club]).toEqual(["standard", "strong 1", true, 1, "driver"]);
    expect(plan.change.squaredLoftDeg).toBeLessThan(0);
    const back = plannedAs("turn", { sleeve: mark("standard") }, { reference: someClub({ sleeveMark: "strong 1" }) });
    expect(back.turnedFromStandard).toBe(false);
  });

  it("finds the mark for a wish relative to the record, says what it misses, and leaves the rest to the gauge", () => {
    const plan = plannedAs("turn", { squaredLoftDeg: by(-0.8) });
    expect(plan.toMark).toBe("strong 1");
    expect(plan.target.squaredLoftDeg).toBeCloseTo(8.4, 9);
    expect([plan.target.soledFaceDeg, plan.target.seatedLieDeg]).toEqual([null, null]);
    expect(plan.misses).toEqual([]);
    const far = plannedAs("turn", { squaredLoftDeg: by(-3) });
    expect([far.toMark, far.misses.map(({ quantity, tolerance }) => [quantity, tolerance])]).toEqual(["strong 2", [["squaredLoftDeg", 0.25]]]);
  });

  it("takes a written mark before a written loft, and says how far that is off", () => {
    const plan = plannedAs("turn", { sleeve: mark("upright"), squaredLoftDeg: exactly(8) });
    expect([plan.toMark, plan.target.squaredLoftDeg]).toEqual(["upright", 8]);
    expect(plan.misses).toMatchObject([{ quantity: "squaredLoftDeg", wanted: 8, tolerance: 0.25 }]);
  });

  it.each([
    [true, true],
    [false, false],
    [null, null],
  ])("knows of a rib %s that the grip turns wrong: %s", (rib, wrong) => {
    expect(plannedAs("turn", { sleeve: mark("upright") }, { reference: someClub({ rib }) }).gripTurnsWrong).toBe(wrong);
  });

  it("plans without a record, everything before and after unknown", () => {
    const plan = plannedAs("turn", { sleeve: mark("upright") }, { reference: null });
    const unknown = { squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null };
    expect(plan).toMatchObject({ fromMark: null, toMark: "upright", before: unknown, after: unknown, change: unknown, misses: [] });
    expect(plan).toMatchObject({ shaftTurnDeg: null, logoBefore: null, logoAfter: null, gripTurnsWrong: null, turnedFromStandard: true });
  });

  it("knows no turn from a mark that is not printed, but a round grip stays right", () => {
    const plan = plannedAs("turn", { sleeve: mark("upright") }, { reference: someClub({ sleeveMark: "weak 9" }) });
    expect([plan.fromMark, plan.shaftTurnDeg, plan.logoBefore, plan.logoAfter, plan.gripTurnsWrong]).toEqual([null, null, "down", null, false]);
    expect(plan.before.squaredLoftDeg).toBe(9.2);
    const ribbed = someClub({ sleeveMark: null, rib: true });
    expect(plannedAs("turn", { sleeve: mark("upright") }, { reference: ribbed }).gripTurnsWrong).toBeNull();
  });

  it("knows the change where a reading is missing, not what comes out; a stamp stands in for an unread loft", () => {
    const plan = plannedAs(
      "turn",
      { sleeve: mark("strong 2") },
      { reference: someClub({ squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null }) },
    );
    expect(plan.after).toEqual({ squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null });
    const known = plannedAs("turn", { sleeve: mark("strong 2") }, { reference: someClub({ squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 58 }) });
    expect(plan.change).toEqual(known.change);
    const nothing = plannedAs("turn", { sleeve: mark("upright") }, { reference: bareClub("driver", { sleeveMark: "standard" }) });
    expect([nothing.change.squaredLoftDeg, nothing.shaftTurnDeg]).toEqual([null, 180]);
  });

  it("leaves what a turn does not move as on record", () => {
    const { predicted } = plannedAs("turn", { sleeve: mark("upright") });
    expect(predicted).toMatchObject({ lengthMm: 45.25 * 25.4, swingWeightPoints: 3, totalMassG: 321, headMassG: 198, wraps: 1, gripAt2InMm: null });
  });

  it("refuses a bonded head, in a club that has no sleeve unless one is known, and an unknown sleeve", () => {
    const clauses = { sleeve: mark("upright") };
    expect(faultsOf("turn", clauses, { head: someHeadModel({ sleeveFamily: null }) })).toEqual([{ code: "no-sleeve", family: "driver" }]);
    expect(faultsOf("turn", clauses, { sleeve: null, head: null })).toEqual([{ code: "sleeve-unknown" }]);
    expect(faultsOf("turn", clauses, { sleeve: null })).toEqual([{ code: "sleeve-unknown" }]);
    for (const [club, family] of [
      ["7i", "iron"],
      ["sw", "wedge"],
      ["putter", "putter"],
    ]) {
      expect(faultsOf("turn", clauses, { reference: bareClub(club ?? "") })).toEqual([{ code: "no-sleeve", family }]);
    }
    expect(faultsOf("turn", clauses, { club: "3h" as ClubName, reference: null, head: null })).toEqual([{ code: "sleeve-unknown" }]);
    expect(faultsOf("turn", clauses, { reference: bareClub("7i"), sleeve: printed })).toMatchObject([{ code: "mark-unknown" }]);
  });

  it("refuses an unknown mark with those printed, a turn past the last one, and nothing asked", () => {
    expect(faultsOf("turn", { sleeve: mark("weak 7") })).toMatchObject([{ code: "mark-unknown", mark: "weak 7", known: { length: 6 } }]);
    expect(faultsOf("turn", { sleeve: turned(-5) })).toEqual([{ code: "needs-record", kind: "turn", quantities: ["sleeve"] }]);
    expect(faultsOf("turn", {})).toEqual([{ code: "nothing-asked", kind: "turn" }]);
  });

  it("refuses a turn to where it stands, with what that misses", () => {
    expect(faultsOf("turn", { sleeve: mark("standard") })).toEqual([{ code: "already-there", mark: "standard", misses: [] }]);
    expect(faultsOf("turn", { soledFaceDeg: by(-0.7), squaredLoftDeg: exactly(9.2) })).toMatchObject([
      { code: "already-there", mark: "standard", misses: [{ quantity: "soledFaceDeg" }] },
    ]);
  });

  it("refuses a wish that the record gives no start for", () => {
    const faults = (reference: Parameters<typeof bareClub>[1]) =>
      faultsOf("turn", { soledFaceDeg: exactly(1) }, { reference: bareClub("driver", reference) });
    const needs = (quantities: readonly string[]) => [{ code: "needs-record", kind: "turn", quantities }];
    expect(faults({ sleeveMark: "standard", squaredLoftDeg: 9 })).toEqual(needs(["soledFaceDeg"]));
    expect(faults({ sleeveMark: "standard", soledFaceDeg: 0 })).toEqual(needs(["squaredLoftDeg"]));
    expect(faults({ stampedLoftDeg: 9, soledFaceDeg: 0 })).toEqual(needs(["sleeve"]));
    expect(faultsOf("turn", { squaredLoftDeg: exactly(9) }, { reference: null })).toEqual(needs(["sleeve", "squaredLoftDeg"]));
  });

  it("refuses what a turn leaves as it is, beside every other fault", () => {
    const faults = faultsOf("turn", { lengthMm: by(-6.35), swingWeightPoints: exactly(3) });
    expect(faults).toEqual([
      { code: "nothing-asked", kind: "turn" },
      { code: "stays", kind: "turn", quantities: ["lengthMm"] },
    ]);
  });

  it("tells what a wish needs beside what stays, and nothing of a mark where there is no sleeve", () => {
    const clauses = { soledFaceDeg: exactly(1), lengthMm: exactly(1000) };
    expect(faultsOf("turn", clauses, { reference: null }).map(({ code }) => code)).toEqual(["needs-record", "stays"]);
    expect(faultsOf("turn", clauses, { reference: null, sleeve: null }).map(({ code }) => code)).toEqual(["sleeve-unknown", "stays"]);
    expect(faultsOf("turn", { sleeve: mark("upright"), soledFaceDeg: exactly(1) }, { reference: null })).toEqual([]);
  });
});
