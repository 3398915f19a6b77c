import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseShaft, type ShaftChoice, type ShaftQuestion } from "../../../core/buildSheet/chooseShaft.ts";
import type { ShaftPiece } from "../../../core/buildSheet/parts.ts";
import { id } from "../../../core/kinds.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/sleeveHands.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { someShaft, someSleeve, stocked } from "./someParts.ts";
import { somePiece, someSleevedPiece } from "./somePieces.ts";

const IN = 25.4;
const sleeve = { model: someSleeve({}), mark: "standard" };

const question = (given: Partial<ShaftQuestion>): ShaftQuestion => ({
  shaft: "Dunlin 60 X",
  family: "driver",
  hand: "right",
  forGamer: true,
  tipTrimMm: millimetres(12.7),
  bareCutMm: millimetres(43.5 * IN),
  sleeve,
  logo: null,
  stock: [],
  pieces: [],
  elsewhere: [],
  ...given,
});
const choose = (given: Partial<ShaftQuestion>): ShaftChoice => chooseShaft(question(given));
const withPiece = (piece: ShaftPiece, given: Partial<ShaftQuestion> = {}) => choose({ pieces: [piece], ...given });
const unfitOf = (choice: ShaftChoice) => (choice.kind === "short" ? choice.shortage.unfit : null);

describe(byTable(chooseShaft, "sleeveHands", published), () => {
  it.each(published.turns)("takes a shaft whose logo $logo at $fromClockDeg ends $logoEnds at $toClockDeg in a $hand-handed head", (row) => {
    const marks = [
      { mark: "standard", clockDeg: degrees(row.fromClockDeg) },
      { mark: "set", clockDeg: degrees(row.toClockDeg) },
    ];
    const model = someSleeve({ marks });
    const piece = someSleevedPiece({ sleeve: model, logo: row.logo as "up" });
    for (const logo of ["up", "down"] as const) {
      const choice = withPiece(piece, { hand: row.hand as "left", sleeve: { model, mark: "set" }, logo });
      expect(choice.kind === "short" ? choice.shortage.unfit : choice.kind).toEqual(row.logoEnds === logo ? "piece" : ["logo"]);
    }
  });
});

const states = ["sleeved", "tipped", "raw", "tippedByLess", "used"] as const;
type State = (typeof states)[number];
interface Lying {
  readonly state: State;
  readonly inPlayersBin: boolean;
}

/** One of each state that all fit, in a bin or the rack. */
function lying({ state, inPlayersBin }: Lying, at: number): Pick<ShaftQuestion, "stock" | "pieces"> {
  const where = { inPlayersBin, placeId: id<"place">(inPlayersBin ? 20 : 10) };
  const given = { ...where, id: id<"shaftPiece">(at + 1) };
  if (state === "raw") return { stock: [stocked(someShaft({}), where)], pieces: [] };
  if (state === "sleeved") return { stock: [], pieces: [someSleevedPiece(given)] };
  if (state === "used") return { stock: [], pieces: [somePiece({ ...given, state: "used", cutLengthMm: millimetres(44 * IN) })] };
  return { stock: [], pieces: [somePiece({ ...given, tipTrimMm: millimetres(state === "tipped" ? 12.7 : 0) })] };
}

function stateOf(choice: ShaftChoice): Lying | null {
  if (choice.kind === "short") return null;
  if (choice.kind === "raw") return { state: "raw", inPlayersBin: choice.row.inPlayersBin };
  const { state, tipTrimMm, inPlayersBin } = choice.piece;
  return { state: state === "tipped" && tipTrimMm === 0 ? "tippedByLess" : state, inPlayersBin };
}

/** The rule said one step after another: no used one on a gamer while there is another; the bin; what saves most work. */
function byTheTrade(all: readonly Lying[], forGamer: boolean): Lying | null {
  const unused = all.filter(({ state }) => state !== "used");
  const wearable = forGamer && unused.length > 0 ? unused : all;
  const inBin = wearable.filter(({ inPlayersBin }) => inPlayersBin);
  const near = inBin.length > 0 ? inBin : wearable;
  return states.flatMap((state) => near.filter((one) => one.state === state))[0] ?? null;
}

const anyLying = fc.array(fc.record({ state: fc.constantFrom(...states), inPlayersBin: fc.boolean() }), { maxLength: 6 });
const partsOf = (all: readonly Lying[]) => {
  const parts = all.map(lying);
  return { stock: parts.flatMap(({ stock }) => stock), pieces: parts.flatMap(({ pieces }) => pieces) };
};

describe(byLaw(chooseShaft, "what going through the trade's order step by step finds, whatever the order of the stock"), () => {
  it("takes the bin first, then what saves most work, and no used one for a gamer while there is another", () => {
    fc.assert(
      fc.property(anyLying, fc.boolean(), (all, forGamer) => {
        expect(stateOf(choose({ ...partsOf(all), forGamer }))).toEqual(byTheTrade(all, forGamer));
      }),
    );
  });

  it("takes the same from the stock turned round", () => {
    fc.assert(
      fc.property(anyLying, fc.boolean(), (all, forGamer) => {
        const { stock, pieces } = partsOf(all);
        const turned = { stock: stock.toReversed(), pieces: pieces.toReversed(), forGamer };
        expect(choose(turned)).toEqual(choose({ stock, pieces, forGamer }));
      }),
    );
  });
});

describe("chooseShaft", () => {
  it("says what is left to cut: nothing of a tip within 1/16 in, the rest off the butt", () => {
    const uncut = withPiece(someSleevedPiece({}));
    expect(uncut).toMatchObject({ kind: "piece", tipTrimMm: 0, buttTrimMm: expect.closeTo((46 - 0.5 - 43.5) * IN, 9) });
    const byLess = withPiece(somePiece({ tipTrimMm: millimetres(6.35), cutLengthMm: millimetres(45 * IN) }));
    expect(byLess).toMatchObject({ kind: "piece", tipTrimMm: 6.35, buttTrimMm: expect.closeTo((45 - 0.25 - 43.5) * IN, 9) });
    const nearly = withPiece(somePiece({ tipTrimMm: millimetres(12), cutLengthMm: millimetres(44 * IN) }));
    expect(nearly).toMatchObject({ kind: "piece", tipTrimMm: 0, buttTrimMm: expect.closeTo(0.5 * IN, 9) });
  });

  it.each<[string, number, "piece" | readonly string[]]>([
    ["1/16 in less", 7 / 16, "piece"],
    ["more than 1/16 in less", 0.437, ["tipTrim"]],
    ["1/16 in more", 9 / 16, "piece"],
    ["more than 1/16 in more", 0.563, ["tipTrim"]],
  ])("takes a sleeved shaft with %s off its tip as it is, or not", (_, tipIn, expected) => {
    const choice = withPiece(someSleevedPiece({ tipTrimMm: millimetres(tipIn * IN) }));
    expect(unfitOf(choice) ?? choice.kind).toEqual(expected);
  });

  it.each<[string, Partial<ShaftPiece>, "piece" | readonly string[]]>([
    ["off by 1/16 in too much", { tipTrimMm: millimetres((9 / 16) * IN) }, "piece"],
    ["off by more than that", { tipTrimMm: millimetres(0.563 * IN) }, ["tipTrim"]],
    ["long enough to the last", { cutLengthMm: millimetres(43.5 * IN) }, "piece"],
    ["a tenth of a mm short", { cutLengthMm: millimetres(43.5 * IN - 0.1) }, ["length"]],
    ["too short once it is tipped", { tipTrimMm: millimetres(0), cutLengthMm: millimetres(44 * IN - 0.1) }, ["length"]],
    ["just long enough once it is tipped", { tipTrimMm: millimetres(0), cutLengthMm: millimetres(44 * IN) }, "piece"],
    ["with a parallel tip that keeps 1.5 in", { tipTrimMm: millimetres(0), model: someShaft({ parallelTipMm: 2 * IN }) }, "piece"],
    ["with a parallel tip that would keep less", { tipTrimMm: millimetres(0), model: someShaft({ parallelTipMm: 2 * IN - 0.1 }) }, ["tipTrim"]],
    ["with such a tip that is trimmed already", { model: someShaft({ parallelTipMm: 2 * IN - 0.1 }) }, "piece"],
    ["with a taper tip, which is never trimmed", { tipTrimMm: millimetres(0), model: someShaft({ tip: "taper" }) }, ["tipTrim"]],
    ["with a taper tip near enough as it is", { tipTrimMm: millimetres(12), model: someShaft({ tip: "taper" }) }, "piece"],
    ["that is said to be sleeved, on a sleeve nobody noted", { state: "sleeved" }, ["sleeve"]],
  ])("takes a tipped shaft %s or leaves it", (_, given, expected) => {
    const choice = withPiece(somePiece(given));
    expect(unfitOf(choice) ?? choice.kind).toEqual(expected);
  });

  it("lets a shop keep more of a parallel tip, or less", () => {
    const piece = somePiece({ tipTrimMm: millimetres(0), model: someShaft({ parallelTipMm: 50 }) });
    expect(withPiece(piece, { leastParallelTipMm: millimetres(50 - 12.7) }).kind).toBe("piece");
    expect(unfitOf(withPiece(piece, { leastParallelTipMm: millimetres(50 - 12.6) }))).toEqual(["tipTrim"]);
  });

  it("leaves a shaft on another sleeve, or on any when it is bonded into the hosel, and says all that is against it", () => {
    const other = someSleeve({ id: id(12), name: "Other sleeve" });
    expect(unfitOf(withPiece(someSleevedPiece({ sleeve: other })))).toEqual(["sleeve"]);
    expect(unfitOf(withPiece(someSleevedPiece({}), { sleeve: null }))).toEqual(["sleeve"]);
    expect(withPiece(somePiece({}), { sleeve: null }).kind).toBe("piece");
    const worse = someSleevedPiece({ sleeve: other, tipTrimMm: millimetres(0), cutLengthMm: millimetres(40 * IN) });
    expect(unfitOf(withPiece(worse))).toEqual(["sleeve", "tipTrim", "length"]);
    expect(unfitOf(withPiece(someSleevedPiece({ tipTrimMm: millimetres(0) }), { logo: "up" }))).toEqual(["logo", "tipTrim"]);
  });

  it("takes a used shaft that still has the sleeve wanted on it, and not with another trim", () => {
    const used = { state: "used" as const, cutLengthMm: millimetres(44 * IN) };
    expect(withPiece(someSleevedPiece(used)).kind).toBe("piece");
    expect(unfitOf(withPiece(someSleevedPiece({ ...used, tipTrimMm: millimetres(0) })))).toEqual(["tipTrim"]);
  });

  it("asks for the logo only when somebody minds, and does not trust one that is not known", () => {
    const unknown = someSleevedPiece({ logo: null });
    expect(withPiece(unknown).kind).toBe("piece");
    expect(unfitOf(withPiece(unknown, { logo: "down" }))).toEqual(["logo"]);
    expect(withPiece(someSleevedPiece({ logo: "down" }), { logo: "down" }).kind).toBe("piece");
  });

  it("holds kind of club, kind of tip and its diameter against what is known of them", () => {
    const raw = { stock: [stocked(someShaft({}))], pieces: [somePiece({})] };
    const bore = (tip: "parallel" | "taper", mm: number) => ({ tip, tipDiameterMm: millimetres(mm) });
    expect(unfitOf(choose({ ...raw, family: "iron" }))).toEqual(["family"]);
    expect(choose({ ...raw, family: null }).kind).toBe("piece");
    expect(choose({ ...raw, bore: bore("parallel", 8.64) }).kind).toBe("piece");
    expect(unfitOf(choose({ ...raw, bore: bore("parallel", 8.66) }))).toEqual(["tip"]);
    expect(unfitOf(choose({ ...raw, bore: bore("taper", 8.5) }))).toEqual(["tip"]);
    expect(unfitOf(choose({ ...raw, bore: bore("taper", 9), family: "putter" }))).toEqual(["family", "tip"]);
    expect(choose({ ...raw, bore: null }).kind).toBe("piece");
  });

  it("names where the shaft lies elsewhere and what is nearest, and takes nothing of it", () => {
    const near = someShaft({ id: id(22), name: "Dunlin 60 S", flex: "S", rawMassG: 63 });
    const far = someShaft({ id: id(23), name: "Dunlin 80 X", rawMassG: 85 });
    const short = someShaft({ id: id(24), name: "Stub 60 X", rawLengthMm: 43.9 * IN });
    const enough = someShaft({ id: id(25), name: "Stub 61 X", rawLengthMm: 44 * IN, rawMassG: 90 });
    const iron = someShaft({ id: id(26), name: "Curlew 95 S", forFamilies: ["iron"] });
    const there = stocked(someShaft({}), { place: "main rack, truck Avocet", placeId: id(40) });
    const choice = choose({
      stock: [far, short, enough, iron].map((model) => stocked(model)),
      elsewhere: [there, stocked(near, { place: "home base" }), stocked(someShaft({}), { free: 0 })],
    });
    expect(choice).toMatchObject({
      kind: "short",
      shortage: { part: "shaft", wanted: "Dunlin 60 X", nearest: ["Dunlin 60 S", "Dunlin 80 X", "Stub 61 X"], unfit: [], elsewhere: [there] },
    });
    const alike = choice.kind === "short" ? choice.shortage.alike : [];
    expect(alike.map(({ row, differences }) => [row.place, differences.massG, differences.flexDiffers])).toEqual([
      ["home base", -2, true],
      ["Rack 1", 20, false],
      ["Rack 1", 25, false],
    ]);
  });

  it("compares with a shaft none of which is left, when the shop knows it; else goes by the name", () => {
    const stock = [stocked(someShaft({ name: "Sandpiper 60 X", rawMassG: 64 })), stocked(someShaft({ name: "Dunlin 50 X", rawMassG: 55 }))];
    const known = choose({ stock, known: [someShaft({})] });
    expect(known.kind === "short" && known.shortage.nearest).toEqual(["Sandpiper 60 X", "Dunlin 50 X"]);
    const unknown = choose({ stock });
    expect(unknown).toMatchObject({ kind: "short", shortage: { nearest: ["Dunlin 50 X", "Sandpiper 60 X"], alike: [] } });
    expect(choose({})).toMatchObject({ kind: "short", shortage: { nearest: [], unfit: [], elsewhere: [], alike: [] } });
  });

  it("shows three of the nearest, and no shaft that is for another club elsewhere", () => {
    const stock = [1, 2, 3, 4].map((g) => stocked(someShaft({ name: `Reed ${g}`, rawMassG: 65 + g })));
    const choice = choose({ stock, elsewhere: [stocked(someShaft({}), { free: 1 })], family: "fairway" });
    expect(choice.kind === "short" && choice.shortage.nearest).toEqual(["Reed 1", "Reed 2", "Reed 3"]);
    const iron = choose({ elsewhere: [stocked(someShaft({}))], family: "iron" });
    expect(iron.kind === "short" && iron.shortage.elsewhere).toEqual([]);
  });

  it("takes from no row in which none is free", () => {
    expect(choose({ stock: [stocked(someShaft({}), { free: 0 })] }).kind).toBe("short");
    expect(choose({ stock: [stocked(someShaft({}), { free: 1 })] }).kind).toBe("raw");
  });

  it.each<[string, Partial<ShaftQuestion>, string]>([
    ["a trim below 0", { tipTrimMm: millimetres(-0.1) }, "quantity-out-of-range"],
    ["a trim that is no number", { tipTrimMm: millimetres(Number.NaN) }, "quantity-out-of-range"],
    ["a trim of more than 2 m", { tipTrimMm: millimetres(2000.1) }, "quantity-out-of-range"],
    ["no length at all", { bareCutMm: millimetres(0.9) }, "quantity-out-of-range"],
    ["a length of more than 2 m", { bareCutMm: millimetres(2000.1) }, "quantity-out-of-range"],
    ["less than nothing of a tip", { leastParallelTipMm: millimetres(-1) }, "quantity-out-of-range"],
    ["a piece trimmed by infinity", { pieces: [somePiece({ tipTrimMm: millimetres(Number.POSITIVE_INFINITY) })] }, "quantity-out-of-range"],
    ["a hand that is none", { hand: "both" as "left" }, "quantity-unreadable"],
    ["a family that is none", { family: "chipper" as "driver" }, "quantity-unreadable"],
    ["a logo that is neither up nor down", { logo: "side" as "up" }, "quantity-unreadable"],
    ["a mark that is not printed", { sleeve: { ...sleeve, mark: "strong 9" } }, "quantity-unreadable"],
  ])("refuses %s", (_, given, code) => {
    expect(() => choose(given)).toThrow(code);
  });

  it("takes the least and the most that can be asked for", () => {
    expect(choose({ tipTrimMm: millimetres(0), bareCutMm: millimetres(1), leastParallelTipMm: millimetres(0) }).kind).toBe("short");
    expect(choose({ tipTrimMm: millimetres(2000), bareCutMm: millimetres(2000), leastParallelTipMm: millimetres(2000) }).kind).toBe("short");
  });
});
