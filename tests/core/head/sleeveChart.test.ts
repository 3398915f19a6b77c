import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeFrom, readings } from "../../../core/head/attitude.ts";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { sleeveChart } from "../../../core/head/sleeveChart.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import fromFlat from "../../../fixtures/published/sleeveFromFlatStandard.json" with { type: "json" };
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import hands from "../../../fixtures/published/sleeveHands.json" with { type: "json" };
import twoPiece from "../../../fixtures/published/twoPieceSleeves.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { bareHead, pieceOf, sleeveOf, someHeads } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const head = bareHead(published.head);
const clocks = [270, 225, 180, 135, 90, 45, 0, 315];
const charted = sleeveChart(head, sleeveOf(fromFlat.tiltDeg, clocks));
const at = (clockDeg: number) => charted.find(({ mark }) => mark === String(clockDeg));

describe(byTable(sleeveChart, "sleeveGeometry", published), () => {
  it("lists every mark in the order of the sleeve", () => {
    expect(charted.map(({ mark }) => mark)).toEqual(clocks.map(String));
  });

  it.each(published.rows.filter(({ tiltDeg }) => tiltDeg === fromFlat.tiltDeg))(
    "reads the published angles at $clockDeg",
    ({ clockDeg, ...wanted }) => {
      for (const reading of readings) {
        expect(Math.abs((at(clockDeg)?.attitude[reading] ?? Number.NaN) - wanted[reading]), reading).toBeLessThan(published.tolerance);
      }
    },
  );
});

describe(byTable(sleeveChart, "sleeveFromFlatStandard", fromFlat), () => {
  it.each(fromFlat.rows)("counts $clockDeg from the standard at the side", ({ clockDeg, ...wanted }) => {
    const got = at(clockDeg)?.fromStandard;
    for (const reading of ["seatedLieDeg", "soledFaceDeg", "squaredLoftAtDesignLieDeg"] as const) {
      expect(Math.abs((got?.[reading] ?? Number.NaN) - wanted[reading]), reading).toBeLessThan(fromFlat.tolerance);
    }
  });

  it("is standard at the standard mark alone, and nothing from it there", () => {
    expect(charted.filter(({ standard }) => standard).map(({ mark, fromStandard }) => ({ mark, fromStandard }))).toEqual([
      { mark: String(fromFlat.standardClockDeg), fromStandard: attitudeFrom(() => 0) },
    ]);
  });

  it.each(fromFlat.partTurns.rows)(
    "gains $partOfLoft of the loft and $tiltsOfLie tilts of lie at $turnDeg° from standard",
    ({ turnDeg, ...wanted }) => {
      const tiltDeg = 0.1;
      const [, part, whole] = sleeveChart(head, sleeveOf(tiltDeg, [270, 270 - turnDeg, 180]));
      const partOfLoft = (part?.fromStandard.squaredLoftDeg ?? Number.NaN) / (whole?.fromStandard.squaredLoftDeg ?? Number.NaN);
      expect(Math.abs(partOfLoft - wanted.partOfLoft)).toBeLessThan(fromFlat.partTurns.tolerance);
      expect(Math.abs((part?.fromStandard.seatedLieDeg ?? Number.NaN) / tiltDeg - wanted.tiltsOfLie)).toBeLessThan(fromFlat.partTurns.tolerance);
    },
  );
});

describe(byTable(sleeveChart, "sleeveHands", hands), () => {
  it.each(hands.rows)("stands at $seatedLieDeg° with the mark at $clockDeg in the $hand hand", ({ hand, clockDeg, tiltDeg, seatedLieDeg }) => {
    const [row] = sleeveChart({ ...head, hand: hand as Hand }, sleeveOf(tiltDeg, [clockDeg]));
    expect(row?.attitude.seatedLieDeg).toBeCloseTo(seatedLieDeg, 9);
  });
});

describe(byTable(sleeveChart, "twoPieceSleeves", twoPiece), () => {
  const ringClocks = [0, 45, 90];
  const sleeveClocks = [0, 180, -45, 90];
  const rows = sleeveChart(head, {
    ring: pieceOf(twoPiece.tiltDeg, ringClocks),
    sleeve: pieceOf(twoPiece.tiltDeg, sleeveClocks),
    standardMark: "0 180",
  });

  it("names every setting ring first, in the order printed", () => {
    expect(rows.map(({ mark }) => mark)).toEqual(ringClocks.flatMap((ring) => sleeveClocks.map((sleeve) => `${ring} ${sleeve}`)));
    expect(rows.filter(({ standard }) => standard).map(({ mark }) => mark)).toEqual(["0 180"]);
  });

  it.each(twoPiece.rows)("reads ring and sleeve at $clocksDeg", ({ clocksDeg, ...wanted }) => {
    const attitude = rows.find(({ mark }) => mark === clocksDeg.join(" "))?.attitude;
    for (const reading of ["seatedLieDeg", "soledFaceDeg", "squaredLoftAtDesignLieDeg"] as const) {
      expect(Math.abs((attitude?.[reading] ?? Number.NaN) - wanted[reading]), reading).toBeLessThan(twoPiece.tolerance);
    }
  });
});

describe(byLaw(sleeveChart, "mirrored hands mirror"), () => {
  it("charts a left head as a right head with the clock printed the other way round", () => {
    fc.assert(
      fc.property(someHeads, (someHead) => {
        const left = sleeveChart({ ...someHead, hand: "left" }, sleeveOf(1.5, [270, 225, 0]));
        const right = sleeveChart({ ...someHead, hand: "right" }, sleeveOf(1.5, [-270, -225, 0]));
        left.forEach(({ fromStandard }, index) => {
          expect(fromStandard).toEqual(attitudeFrom((reading) => expect.closeTo(right[index]?.fromStandard[reading] ?? Number.NaN, 9)));
        });
      }),
    );
  });

  it("charts a ring without tilt as the sleeve alone", () => {
    fc.assert(
      fc.property(someHeads, (someHead) => {
        const [only] = sleeveChart(someHead, { ring: pieceOf(0, [0]), sleeve: pieceOf(1.5, [225]), standardMark: "0 225" });
        const alone = attitudeOf(someHead, { ...sleeveOf(1.5, [225]), clockDeg: 225 as never });
        expect(only?.attitude).toEqual(attitudeFrom((reading) => expect.closeTo(alone[reading], 9)));
      }),
    );
  });
});

describe("sleeveChart", () => {
  const twoPieces = { ring: pieceOf(0.75, [0]), sleeve: pieceOf(0.75, [90]), standardMark: "0 90" };

  it("refuses a mark that is printed twice, on a sleeve or on a ring", () => {
    const twice = { ...sleeveOf(1, [270, 180]), marks: [...sleeveOf(1, [270]).marks, ...sleeveOf(1, [270]).marks] };
    expect(() => sleeveChart(head, twice)).toThrow('quantity-unreadable {"field":"mark"');
    expect(() => sleeveChart(head, { ...twoPieces, ring: pieceOf(0.75, [0, 0]) })).toThrow('quantity-unreadable {"field":"mark"');
  });

  it("refuses two pieces whose marks read the same in two ways", () => {
    const piece = (...marks: readonly string[]) => ({ ...pieceOf(0.75, [0]), marks: marks.map((mark) => ({ mark, clockDeg: degrees(0) })) });
    expect(() => sleeveChart(head, { ring: piece("A", "A B"), sleeve: piece("B C", "D"), standardMark: "A D" })).not.toThrow();
    expect(() => sleeveChart(head, { ring: piece("A", "A B"), sleeve: piece("B C", "C"), standardMark: "A C" })).toThrow(
      'quantity-unreadable {"field":"mark","written":"A B C"',
    );
  });

  it("refuses every number of its call when it is none", () => {
    for (const sleeve of [sleeveOf(1, [270, 180]), twoPieces]) {
      for (const { where, args } of spoiled([head, sleeve] as const)) {
        expect(() => sleeveChart(...args), where).toThrow("quantity-out-of-range");
      }
    }
  });

  it("refuses a standard mark that is not printed, and says which are", () => {
    expect(() => sleeveChart(head, sleeveOf(1, [270, 180], "nowhere"))).toThrow('{"field":"standardMark","written":"nowhere","accepted":"270, 180"}');
  });

  it("takes one mark to 48", () => {
    const marked = (count: number) =>
      sleeveOf(
        1,
        Array.from({ length: count }, (_, index) => index),
        "0",
      );
    expect(sleeveChart(head, marked(1))).toHaveLength(1);
    expect(sleeveChart(head, marked(48))).toHaveLength(48);
    expect(() => sleeveChart(head, marked(0))).toThrow("list-of-wrong-size");
    expect(() => sleeveChart(head, marked(49))).toThrow("list-of-wrong-size");
  });
});
