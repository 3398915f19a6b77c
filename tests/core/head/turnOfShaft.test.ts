import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { graphicsAfterTurn, graphicsToSet, type Logo, type ShaftMarkings } from "../../../core/head/graphicsAfterTurn.ts";
import { turnOfShaft } from "../../../core/head/turnOfShaft.ts";
import type { Hand } from "../../../core/kinds.ts";
import { type Degrees, degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/sleeveHands.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { clockAfterTurn } from "./byQuaternions.ts";
import { between, pieceOf, sleeveOf, someHands } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const clocks = [270, 225, 180, 135, 90, 45, 0, 315];
const sleeve = sleeveOf(1.5, clocks);
const someMarks = fc.constantFrom(...clocks.map(String));
const logoOnly = (logo: Logo): ShaftMarkings => ({ logo, ribClockDeg: null, spineClockDeg: null });
const cosineOf = (deg: number | null) => Math.cos(((deg ?? Number.NaN) * Math.PI) / 180);
const sineOf = (deg: number | null) => Math.sin(((deg ?? Number.NaN) * Math.PI) / 180);
const samePlace = (got: number | null, wanted: number) => {
  expect(cosineOf(got)).toBeCloseTo(cosineOf(wanted), 9);
  expect(sineOf(got)).toBeCloseTo(sineOf(wanted), 9);
};

describe(byTable(turnOfShaft, "sleeveHands", published), () => {
  it.each(published.turns)("turns $clockwiseFromButtDeg° from $fromClockDeg to $toClockDeg", ({ hand, fromClockDeg, toClockDeg, ...wanted }) => {
    expect(turnOfShaft(String(fromClockDeg), String(toClockDeg), sleeve, hand as Hand).fromButtDeg).toBe(wanted.clockwiseFromButtDeg);
  });
});

describe(byTable(graphicsAfterTurn, "sleeveHands", published), () => {
  it.each(published.turns)("ends $logoEnds at $logoClockDeg, $hand hand, from $fromClockDeg to $toClockDeg", (row) => {
    const turn = turnOfShaft(String(row.fromClockDeg), String(row.toClockDeg), sleeve, row.hand as Hand);
    const got = graphicsAfterTurn(logoOnly(row.logo as Logo), turn.onClockDeg);
    expect(got).toEqual({ logo: row.logoEnds, logoClockDeg: row.logoClockDeg, ribClockDeg: null, spineClockDeg: null });
  });
});

describe(byLibrary(graphicsAfterTurn, "gl-matrix", "markings turned about the hosel of a real club in the world by quaternions"), () => {
  it("agrees in either hand", () => {
    fc.assert(
      fc.property(someHands, someMarks, someMarks, between(54, 64), between(0, 360), (hand, from, to, lie, clockDeg) => {
        const { fromButtDeg, onClockDeg } = turnOfShaft(from, to, sleeve, hand);
        const got = graphicsAfterTurn({ logo: "down", ribClockDeg: degrees(clockDeg), spineClockDeg: degrees(-clockDeg) }, onClockDeg);
        samePlace(got.logoClockDeg, clockAfterTurn(270, fromButtDeg, lie, hand));
        samePlace(got.ribClockDeg, clockAfterTurn(clockDeg, fromButtDeg, lie, hand));
        samePlace(got.spineClockDeg, clockAfterTurn(-clockDeg, fromButtDeg, lie, hand));
      }),
    );
  });
});

describe(byLaw(turnOfShaft, "mirrored hands mirror, there and back is nothing, turns add"), () => {
  it("turns the other way on the clock of the other hand, and the same seen from the butt", () => {
    fc.assert(
      fc.property(someMarks, someMarks, (from, to) => {
        const [right, left] = [turnOfShaft(from, to, sleeve, "right"), turnOfShaft(from, to, sleeve, "left")];
        expect(left.fromButtDeg).toBe(right.fromButtDeg);
        expect(right.onClockDeg).toBe(right.fromButtDeg);
        samePlace(left.onClockDeg, -right.onClockDeg);
      }),
    );
  });

  it("adds up on any way round", () => {
    fc.assert(
      fc.property(someMarks, someMarks, someMarks, someHands, (one, two, three, hand) => {
        const turn = (from: string, to: string) => turnOfShaft(from, to, sleeve, hand).onClockDeg;
        samePlace(turn(one, two) + turn(two, three), turn(one, three));
        samePlace(turn(one, two) + turn(two, one), 0);
        expect(turn(one, one)).toBe(0);
      }),
    );
  });
});

describe(byLaw(graphicsToSet, "set so and turned, everything is as wanted"), () => {
  it("undoes the turn", () => {
    fc.assert(
      fc.property(someMarks, someMarks, someHands, fc.constantFrom<Logo>("up", "down"), between(0, 360), (from, to, hand, logo, clockDeg) => {
        const { onClockDeg } = turnOfShaft(from, to, sleeve, hand);
        const set = graphicsToSet({ logo, ribClockDeg: degrees(clockDeg), spineClockDeg: null }, onClockDeg);
        samePlace(set.logoClockDeg + onClockDeg, logo === "up" ? 90 : 270);
        samePlace((set.ribClockDeg ?? Number.NaN) + onClockDeg, clockDeg);
        expect(set.spineClockDeg).toBeNull();
        if (set.logo !== "turned") {
          expect(graphicsAfterTurn(logoOnly(set.logo), onClockDeg).logo).toBe(logo);
        }
      }),
    );
  });
});

describe("turnOfShaft", () => {
  it.each([
    ["270", "90", 180],
    ["90", "270", 180],
    ["315", "0", 45],
    ["0", "315", -45],
    ["45", "180", 135],
    ["0", "225", -135],
  ])("goes from %s to %s the shorter way, half a turn always positive", (from, to, wanted) => {
    expect(turnOfShaft(from, to, sleeve, "right")).toEqual({ fromButtDeg: wanted, onClockDeg: wanted });
  });

  it("turns with the sleeve and not with its ring", () => {
    const pieces = { ring: pieceOf(0.75, [0, 90]), sleeve: pieceOf(0.75, [0, 45]), standardMark: "0 0" };
    expect(turnOfShaft("0 0", "90 0", pieces, "right").fromButtDeg).toBe(0);
    expect(turnOfShaft("0 0", "90 45", pieces, "right").fromButtDeg).toBe(45);
  });

  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled(["270", "90", sleeve, "right"] as const)) {
      expect(() => turnOfShaft(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("refuses a mark that is not printed and a hand that is none", () => {
    expect(() => turnOfShaft("10", "90", sleeve, "right")).toThrow('"field":"fromMark","written":"10"');
    expect(() => turnOfShaft("90", "20", sleeve, "right")).toThrow('"field":"toMark","written":"20"');
    expect(() => turnOfShaft("90", "0", sleeve, "both" as Hand)).toThrow('"accepted":"left, right"');
  });
});

describe.each([graphicsAfterTurn, graphicsToSet])("$name", (graphics: (markings: ShaftMarkings, turn: Degrees) => unknown) => {
  const markings: ShaftMarkings = { logo: "up", ribClockDeg: degrees(270), spineClockDeg: degrees(0) };

  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([markings, degrees(90)] as const)) {
      expect(() => graphics(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("refuses a logo that is neither up nor down, and names a wrong clock", () => {
    expect(() => graphics({ ...markings, logo: "side" as Logo }, degrees(0))).toThrow('"accepted":"up, down"');
    expect(() => graphics({ ...markings, ribClockDeg: degrees(361) }, degrees(0))).toThrow('"field":"ribClockDeg"');
    expect(() => graphics({ ...markings, spineClockDeg: degrees(361) }, degrees(0))).toThrow('"field":"spineClockDeg"');
    expect(() => graphics(markings, degrees(361))).toThrow('"field":"onClockDeg"');
  });

  it("leaves everything where it was without a turn", () => {
    expect(graphics(markings, degrees(0))).toEqual({ logo: "up", logoClockDeg: 90, ribClockDeg: 270, spineClockDeg: 0 });
  });

  it("calls a logo turned from a millionth of a degree on", () => {
    expect(graphics(markings, degrees(1e-7))).toMatchObject({ logo: "up" });
    expect(graphics(markings, degrees(1e-5))).toMatchObject({ logo: "turned" });
    expect(graphics(markings, degrees(180 - 1e-7))).toMatchObject({ logo: "down" });
  });
});
