import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { Amount, Clauses, Wish } from "../../../core/buildSheet/buildRequest.ts";
import { resolveTarget } from "../../../core/buildSheet/resolveTarget.ts";
import type { ClubFamily, ClubName } from "../../../core/kinds.ts";
import { someClub, someSleeve } from "./someParts.ts";

const wish = <T>(value: T): Wish<T> => ({ value, asWritten: "as written" });
const exactly = (value: number) => wish<Amount>({ kind: "exactly", value });
const by = (value: number) => wish<Amount>({ kind: "by", value });
const same = wish<Amount>({ kind: "same" });

const resolve = (clauses: Clauses, reference: SpecClub | null = someClub({}), family: ClubFamily = "driver") =>
  resolveTarget({ request: { clauses }, club: "driver" as ClubName, hand: "right", reference, family, sleeves: [someSleeve({})] });

describe("resolveTarget", () => {
  it("reads `like gamer, 1/2 stronger, d3`: the gamer's true loft less a half, its stamp set free", () => {
    const { target, changes, faults } = resolve({ squaredLoftDeg: by(-0.5), swingWeightPoints: exactly(3) });
    expect(target.squaredLoftDeg).toBeCloseTo(8.7, 9);
    expect([target.stampedLoftDeg, target.swingWeightPoints, target.lengthMm, target.shaft, target.grip]).toEqual([
      null,
      3,
      45.25 * 25.4,
      "Dunlin 60 X",
      "Gorse Standard Round",
    ]);
    expect([changes, faults]).toEqual([["squaredLoftDeg"], []]);
  });

  it("reads `same as gamer but 1/4 shorter swing stays`: swing weight held, masses set free", () => {
    const { target, changes } = resolve({ lengthMm: by(-6.35), swingWeightPoints: same });
    expect([target.lengthMm, target.swingWeightPoints]).toEqual([45 * 25.4, 3]);
    expect([target.totalMassG, target.headMassG]).toEqual([null, null]);
    expect(changes).toEqual(["lengthMm"]);
  });

  it("takes over everything when nothing is written", () => {
    const { target, changes } = resolve({});
    expect([target.headModel, target.stampedLoftDeg, target.squaredLoftDeg, target.totalMassG, target.tipTrimMm, target.wraps]).toEqual([
      "Cairn",
      9,
      9.2,
      321,
      12.7,
      1,
    ]);
    expect(changes).toEqual([]);
  });

  it("knows only what is written without a club to be like", () => {
    const { target, changes, faults } = resolve({ headModel: wish("Cairn"), squaredLoftDeg: exactly(9.25) }, null);
    expect([target.headModel, target.squaredLoftDeg, target.lengthMm, target.shaft]).toEqual(["Cairn", 9.25, null, null]);
    expect([changes, faults]).toEqual([[], []]);
  });

  it("returns every relative wish that leans on something unknown, at once", () => {
    const { faults } = resolve({ lengthMm: by(-6.35), swingWeightPoints: same, wraps: by(1), sleeve: wish({ kind: "turn", marks: -1 }) }, null);
    expect(faults).toEqual([
      { code: "needs-reference", quantity: "lengthMm" },
      { code: "needs-reference", quantity: "swingWeightPoints" },
      { code: "needs-reference", quantity: "wraps" },
      { code: "needs-reference", quantity: "sleeve" },
    ]);
  });

  it("refuses a relative wish that leads past what a club can be", () => {
    const { faults } = resolve({ lengthMm: by(-1000), soledFaceDeg: exactly(10.5) });
    expect(faults).toEqual([
      { code: "out-of-range", quantity: "soledFaceDeg", value: 10.5, min: -10, max: 10 },
      { code: "out-of-range", quantity: "lengthMm", value: expect.closeTo(149.35, 6), min: 457.2, max: 1320.8 },
    ]);
  });

  it("lets a written stamp free the loft, and a written mark free loft, face and lie", () => {
    expect(resolve({ stampedLoftDeg: wish(10.5) }).target.squaredLoftDeg).toBeNull();
    const { target } = resolve({ sleeve: wish({ kind: "turn", marks: -1 }) });
    expect([target.sleeveMark, target.squaredLoftDeg, target.soledFaceDeg, target.seatedLieDeg, target.stampedLoftDeg]).toEqual([
      "strong 1",
      null,
      null,
      null,
      9,
    ]);
  });

  it("takes loft but no model from a club of another maker", () => {
    const { target } = resolve({}, someClub({ outside: true, headModel: "Somebody's" }));
    expect([target.headModel, target.squaredLoftDeg, target.stampedLoftDeg]).toEqual([null, 9.2, null]);
  });

  it("copies the grind of a wedge, not the bounce its worn sole reads", () => {
    const { target } = resolve({}, someClub({ grind: "full", bounceDeg: 9 }), "wedge");
    expect([target.grind, target.bounceDeg]).toEqual(["full", null]);
  });

  it("leaves the tip trim with its shaft and the rib with its grip", () => {
    const { target } = resolve({ shaft: wish("Curlew 70 S"), grip: wish("Heather Rib") });
    expect([target.tipTrimMm, target.rib]).toEqual([null, null]);
  });

  it("adds an amount to the reference as it stands, whatever both are", () => {
    fc.assert(
      fc.property(fc.double({ min: 1000, max: 1200, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }), (lengthMm, moreMm) => {
        expect(resolve({ lengthMm: by(moreMm) }, someClub({ lengthMm })).target.lengthMm).toBe(lengthMm + moreMm);
      }),
    );
  });
});
