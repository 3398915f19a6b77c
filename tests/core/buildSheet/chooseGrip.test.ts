import { describe, expect, it } from "vitest";
import { CORE_TOLERANCE_MM, chooseGrip, type GripChoice, type GripQuestion, MOUNTABLE } from "../../../core/buildSheet/chooseGrip.ts";
import { gripDiameter } from "../../../core/club/gripDiameter.ts";
import { gripSize } from "../../../core/club/gripSize.ts";
import { id } from "../../../core/kinds.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { byLaw } from "../../support/checkOf.ts";
import { someGrip, stocked } from "./someParts.ts";

const IN = 25.4;
const CORE_MM = 15.24;

const question = (given: Partial<GripQuestion>): GripQuestion => ({
  grip: "Gorse Standard",
  rib: null,
  buttDiameterMm: millimetres(CORE_MM),
  wraps: 0,
  stock: [stocked(someGrip({ name: "Gorse Standard", coreMm: CORE_MM, rib: true }))],
  elsewhere: [],
  ...given,
});
const choose = (given: Partial<GripQuestion>): GripChoice => chooseGrip(question(given));
const onButt = (mm: number, given: Partial<GripQuestion> = {}) => choose({ buttDiameterMm: millimetres(mm), ...given });
const flagOf = (choice: GripChoice) => (choice.kind === "stocked" ? choice.misfit : "short");
const unfitOf = (choice: GripChoice) => (choice.kind === "short" ? choice.shortage.unfit : null);

describe(byLaw(chooseGrip, "the flag stands where rubber of constant volume comes out 0.010 in off the size of a standard grip"), () => {
  const nominalMm = gripSize("standard");
  it.each([
    ["thicker", 0.6, 1],
    ["thinner", 0.6, -1],
    ["thicker", 0.58, 1],
    ["thinner", 0.58, -1],
  ])("on a %s shaft over a core of %d in", (_, coreIn, sign) => {
    const coreMm = millimetres(coreIn * IN);
    const shaftMm = millimetres(coreMm + sign * CORE_TOLERANCE_MM);
    const sizeMm = gripDiameter({ nominalMm, coreMm, shaftMm }, { layers: 0, layerMm: millimetres(0.127) });
    expect(Math.abs(sizeMm - nominalMm) / IN).toBeCloseTo(0.01, 3);
    const stock = [stocked(someGrip({ name: "Gorse Standard", coreMm }))];
    expect(flagOf(onButt(shaftMm, { stock }))).toBeNull();
    expect(flagOf(onButt(shaftMm + sign * 0.001, { stock }))).toEqual({ coreMm, buttMm: shaftMm + sign * 0.001 });
  });
});

describe("chooseGrip", () => {
  it("takes the player's own bin before the rack", () => {
    const model = someGrip({ name: "Gorse Standard" });
    const stock = [stocked(model, { place: "rack" }), stocked(model, { place: "bin", placeId: id(9), inPlayersBin: true })];
    expect(choose({ stock })).toMatchObject({ kind: "stocked", row: { place: "bin" } });
    expect(choose({ stock: stock.slice(0, 1) })).toMatchObject({ kind: "stocked", row: { place: "rack" } });
  });

  it("takes none that is gone, none of another name and none with another rib than wished", () => {
    expect(choose({ rib: true }).kind).toBe("stocked");
    expect(unfitOf(choose({ rib: false }))).toEqual(["rib"]);
    expect(unfitOf(choose({ grip: "Heather" }))).toEqual([]);
    expect(unfitOf(choose({ stock: [stocked(someGrip({ name: "Gorse Standard" }), { free: 0 })] }))).toEqual([]);
  });

  it("does not flag wraps, which are wished for", () => {
    expect(flagOf(choose({ wraps: 4 }))).toBeNull();
  });

  it.each<[string, Partial<GripQuestion>, readonly string[] | null]>([
    ["a shaft as thin as it goes", { buttDiameterMm: millimetres(MOUNTABLE.least * CORE_MM) }, null],
    ["a thinner one, on which it turns", { buttDiameterMm: millimetres(MOUNTABLE.least * CORE_MM - 0.01) }, ["core"]],
    ["that one with a layer of tape", { buttDiameterMm: millimetres(MOUNTABLE.least * CORE_MM - 0.01), wraps: 1 }, null],
    ["a shaft as thick as it goes", { buttDiameterMm: millimetres(MOUNTABLE.most * CORE_MM) }, null],
    ["a thicker one", { buttDiameterMm: millimetres(MOUNTABLE.most * CORE_MM + 0.01) }, ["core"]],
    ["that one with a layer of tape on it", { buttDiameterMm: millimetres(MOUNTABLE.most * CORE_MM), wraps: 1 }, ["core"]],
    ["a thick layer on a thin shaft", { buttDiameterMm: millimetres(12), wraps: 2, layerMm: millimetres(0.5) }, null],
  ])("mounts a grip on %s, or not", (_, given, unfit) => {
    expect(unfitOf(choose(given))).toEqual(unfit);
  });

  it("names where the grip lies elsewhere and the nearest with the rib as wished, and takes nothing of it", () => {
    const round = someGrip({ name: "Gorse Standard Round", rib: false });
    const heavier = someGrip({ name: "Gorse Cord Round", rib: false, massG: 52 });
    const ribbed = someGrip({ name: "Heather Standard", rib: true, massG: 50 });
    const thick = someGrip({ name: "Heather Thick", rib: false, coreMm: 20 });
    const stock = [...question({}).stock, ...[heavier, ribbed, thick].map((model) => stocked(model))];
    const elsewhere = [
      stocked(round, { place: "main rack, truck Knot" }),
      stocked(someGrip({ name: "Gorse Standard", rib: true }), { place: "home base" }),
    ];
    const choice = choose({ rib: false, stock, elsewhere });
    expect(choice).toMatchObject({
      kind: "short",
      shortage: { part: "grip", wanted: "Gorse Standard", nearest: ["Gorse Standard Round", "Gorse Cord Round"], unfit: ["rib"], elsewhere: [] },
    });
    expect(
      choice.kind === "short" && choice.shortage.alike.map(({ row, differences }) => [row.place, differences.massG, differences.ribDiffers]),
    ).toEqual([
      ["main rack, truck Knot", 0, false],
      ["Rack 1", 2, false],
    ]);
    const gone = choose({ stock: [], elsewhere });
    expect(gone.kind === "short" && gone.shortage.elsewhere.map(({ place }) => place)).toEqual(["home base"]);
  });

  it("compares with a grip none of which is left, when the shop knows it; else goes by the name", () => {
    const stock = [stocked(someGrip({ name: "Heather Round", massG: 50 })), stocked(someGrip({ name: "Gorse Round", massG: 58 }))];
    const known = choose({ stock, known: [someGrip({ name: "Gorse Standard", massG: 50 })] });
    expect(known.kind === "short" && known.shortage.nearest).toEqual(["Heather Round", "Gorse Round"]);
    const unknown = choose({ stock });
    expect(unknown).toMatchObject({ kind: "short", shortage: { nearest: ["Gorse Round", "Heather Round"], alike: [] } });
  });

  it("shows three of the nearest", () => {
    const stock = [1, 2, 3, 4].map((g) => stocked(someGrip({ name: `Reed ${g}`, massG: 50 + g })));
    const choice = choose({ stock, known: [someGrip({ name: "Gorse Standard" })] });
    expect(choice.kind === "short" && choice.shortage.nearest).toEqual(["Reed 1", "Reed 2", "Reed 3"]);
  });

  it.each<Partial<Record<"buttDiameterMm" | "wraps" | "layerMm", number>>>([
    { buttDiameterMm: 4.9 },
    { buttDiameterMm: 50.1 },
    { buttDiameterMm: Number.NaN },
    { wraps: -1 },
    { wraps: 21 },
    { wraps: Number.POSITIVE_INFINITY },
    { layerMm: 0 },
    { layerMm: 5.1 },
  ])("refuses %o", (given) => {
    expect(() => choose(given as Partial<GripQuestion>)).toThrow("quantity-out-of-range");
  });

  it("takes the least and the most that can be asked for, and refuses a stock of nothing numeric", () => {
    for (const mm of [5, 50]) expect(onButt(mm).kind).toBe("short");
    for (const layerMm of [0.001, 5]) expect(choose({ layerMm: millimetres(layerMm) }).kind).toBe("stocked");
    expect(choose({ wraps: 20, layerMm: millimetres(0.1) }).kind).toBe("stocked");
    expect(() => choose({ stock: [stocked(someGrip({ massG: Number.NaN }))] })).toThrow("quantity-out-of-range");
  });
});
