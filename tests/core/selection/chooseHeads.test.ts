import { describe, expect, it } from "vitest";
import type { MeasuredHead } from "../../../core/buildSheet/parts.ts";
import type { Target } from "../../../core/buildSheet/plan.ts";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { chooseHeads } from "../../../core/selection/chooseHeads.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import { someHead, someHeadModel, someSleeve, someTarget } from "../buildSheet/someParts.ts";
import { tilted } from "../head/someAngles.ts";

const sleeve = someSleeve({});
const choose = (target: Partial<Target>, heads: readonly MeasuredHead[]) =>
  chooseHeads({ target: someTarget(target), heads, sleeves: [sleeve], tolerances });

describe("chooseHeads", () => {
  it("puts the standard mark before a turned one that is nearer by less than the gauge can tell", () => {
    const strong = someHead({ serial: "0002", soledLoftDeg: 10 });
    const strongAt = attitudeOf(strong, tilted(1, 225)).squaredLoftDeg;
    const standard = someHead({ serial: "0003", soledLoftDeg: strongAt - 0.1 });
    const [first] = choose({ squaredLoftDeg: strongAt }, [strong, standard]);
    expect([first?.head.serial, first?.mark]).toEqual(["0003", "standard"]);
  });

  it("turns the sleeve when the standard mark is past what the gauge can tell", () => {
    const head = someHead({ soledLoftDeg: 10 });
    const wanted = attitudeOf(head, tilted(1, 225)).squaredLoftDeg;
    const [first] = choose({ squaredLoftDeg: wanted }, [head]);
    expect(first?.mark).toBe("strong 1");
    expect(first?.score).toBeCloseTo(0, 9);
  });

  it("keeps to the mark that was written", () => {
    const choices = choose({ squaredLoftDeg: 9, sleeveMark: "upright" }, [someHead({})]);
    expect(choices.map(({ mark }) => mark)).toEqual(["upright"]);
  });

  it("finds no bonded head where a mark is written, and no head without a sleeve of its family", () => {
    expect(choose({ squaredLoftDeg: 9, sleeveMark: "standard" }, [someHead({ model: someHeadModel({ sleeveFamily: null }) })])).toEqual([]);
    expect(choose({ squaredLoftDeg: 9 }, [someHead({ model: someHeadModel({ sleeveFamily: "another" }) })])).toEqual([]);
  });

  it("takes a stamp alone as the loft it says, at the standard mark", () => {
    const heads = [
      someHead({ serial: "0001", soledLoftDeg: 9.4 }),
      someHead({ serial: "0002", soledLoftDeg: 9.1 }),
      someHead({ serial: "0003", stampedLoftDeg: 10.5 }),
    ];
    const choices = choose({ stampedLoftDeg: 9 }, heads);
    expect(choices.map(({ head, mark }) => [head.serial, mark])).toEqual([
      ["0002", "standard"],
      ["0001", "standard"],
    ]);
  });

  it("offers nothing of the other hand, model, family or grind", () => {
    const heads = [
      someHead({ serial: "0001", hand: "left" }),
      someHead({ serial: "0002", model: someHeadModel({ name: "Rill" }) }),
      someHead({ serial: "0003", model: someHeadModel({ family: "fairway" }) }),
      someHead({ serial: "0004", model: someHeadModel({ grind: "full" }) }),
    ];
    expect(choose({ squaredLoftDeg: 9, grind: "heel-relieved" }, heads)).toEqual([]);
  });

  it("puts fewer misses before a lower score within one band", () => {
    const bonded = someHeadModel({ sleeveFamily: null });
    /** 1.02 tolerances of loft against 0.75 of loft and 0.75 of lie: scores 1.04 and 1.125. */
    const miss = someHead({ serial: "0001", model: bonded, soledLoftDeg: 9.255, designLieDeg: 58 });
    const inside = someHead({ serial: "0002", model: bonded, soledLoftDeg: 9.1875, designLieDeg: 58.375 });
    const choices = choose({ squaredLoftDeg: 9, seatedLieDeg: 58 }, [miss, inside]);
    expect(choices.map(({ head, misses }) => [head.serial, misses.length])).toEqual([
      ["0002", 0],
      ["0001", 1],
    ]);
  });

  it("reads a stamp at the standard mark when a turned mark is written with it", () => {
    const standardLoft = (soledLoftDeg: number) => attitudeOf(someHead({ soledLoftDeg }), tilted(1, 270)).squaredLoftDeg;
    const heads = [someHead({ serial: "0001", soledLoftDeg: 9.85 }), someHead({ serial: "0002", soledLoftDeg: 9 })];
    const [first] = choose({ stampedLoftDeg: 9, sleeveMark: "strong 1" }, heads);
    expect([first?.head.serial, first?.mark]).toEqual(["0002", "strong 1"]);
    expect(first?.score).toBeCloseTo(((standardLoft(9) - 9) / 0.25) ** 2, 9);
  });

  it("scores the head mass that swing weight needs, with the weights at hand", () => {
    const heads = [someHead({ serial: "0001", massG: 200 }), someHead({ serial: "0002", massG: 195 })];
    const massWish = () => ({ wantedG: 203, addable: [{ massG: 8, count: 1 }] });
    const [first, second] = chooseHeads({ target: someTarget({ stampedLoftDeg: 9 }), heads, sleeves: [sleeve], tolerances, massWish });
    expect([first?.head.serial, first?.score]).toEqual(["0002", expect.closeTo(0, 9)]);
    expect(second?.score).toBeCloseTo((3 / 2) ** 2, 9);
    expect(second?.misses).toEqual([{ quantity: "headMassG", wanted: 203, got: 200, tolerance: 2 }]);
  });

  it("counts on no weight that makes a head too heavy", () => {
    const massWish = () => ({ wantedG: 203, addable: [{ massG: 5.5, count: 1 }] });
    const [only] = chooseHeads({
      target: someTarget({ stampedLoftDeg: 9 }),
      heads: [someHead({ massG: 200 })],
      sleeves: [sleeve],
      tolerances,
      massWish,
    });
    expect(only?.misses).toEqual([{ quantity: "headMassG", wanted: 203, got: 200, tolerance: 2 }]);
  });

  it("counts a bounce that was never measured as one tolerance off", () => {
    const wedge = someHeadModel({ family: "wedge", sleeveFamily: null, name: "Tarn" });
    const head = { model: wedge, stampedLoftDeg: 56, soledLoftDeg: 56, designLieDeg: 64 };
    const heads = [someHead({ ...head, serial: "0001" }), someHead({ ...head, serial: "0002", bounceDeg: 10.5 })];
    const choices = choose({ club: "sw" as Target["club"], headModel: "Tarn", stampedLoftDeg: 56, bounceDeg: 10 }, heads);
    expect(choices.map((choice) => [choice.head.serial, choice.mark])).toEqual([
      ["0002", null],
      ["0001", null],
    ]);
  });

  it("refuses a head recorded with a loft that is no number", () => {
    expect(() => choose({ squaredLoftDeg: 9 }, [someHead({ soledLoftDeg: Number.NaN })])).toThrow("quantity-out-of-range");
  });

  it("puts the lower serial first where nothing else differs, whatever was loaded first", () => {
    const heads = [someHead({ serial: "0002" }), { ...someHead({ serial: "0001" }), id: someHead({ serial: "0009" }).id }];
    expect(choose({ squaredLoftDeg: 9 }, heads).map(({ head }) => head.serial)).toEqual(["0001", "0002"]);
  });

  it("bends a wedge to the loft that its stamp alone says", () => {
    const model = someHeadModel({ family: "wedge", sleeveFamily: null, name: "Tarn" });
    const [only] = choose({ club: "sw" as Target["club"], headModel: "Tarn", stampedLoftDeg: 56 }, [
      someHead({ model, stampedLoftDeg: 56, soledLoftDeg: 55.5 }),
    ]);
    expect(only?.bend).toEqual({ loftChangeDeg: expect.closeTo(0.5, 9), lieChangeDeg: 0 });
  });

  it.each([
    ["loft", { loftChangeDeg: 1.5, lieChangeDeg: 0 }, false, true],
    ["lie", { loftChangeDeg: 0, lieChangeDeg: 1.5 }, true, false],
  ])("warns of a bend past the warning in the plane that was bent before: %s", (_, { loftChangeDeg, lieChangeDeg }, inLie, inLoft) => {
    const model = someHeadModel({ family: "wedge", sleeveFamily: null, name: "Tarn" });
    const bends = [{ loftChangeDeg: degrees(loftChangeDeg), lieChangeDeg: degrees(lieChangeDeg) }];
    const head = someHead({ model, stampedLoftDeg: 56, soledLoftDeg: 56, designLieDeg: 64, bends });
    const wedge = { club: "sw" as Target["club"], headModel: "Tarn" };
    expect(choose({ ...wedge, squaredLoftDeg: 55 }, [head])[0]?.bendWarned).toBe(inLoft);
    expect(choose({ ...wedge, squaredLoftDeg: 56, seatedLieDeg: 65 }, [head])[0]?.bendWarned).toBe(inLie);
    expect(choose({ ...wedge, squaredLoftDeg: 56.5, seatedLieDeg: 64.5 }, [head])[0]?.bendWarned).toBe(false);
  });

  it("refuses a head that was bent more than 200 times, or by no number", () => {
    const still = { loftChangeDeg: degrees(0), lieChangeDeg: degrees(0) };
    expect(choose({ squaredLoftDeg: 9 }, [someHead({ bends: Array(200).fill(still) })])).toHaveLength(1);
    expect(() => choose({ squaredLoftDeg: 9 }, [someHead({ bends: Array(201).fill(still) })])).toThrow("list-of-wrong-size");
    expect(() => choose({ squaredLoftDeg: 9 }, [someHead({ bends: [{ ...still, lieChangeDeg: degrees(Number.NaN) }] })])).toThrow(
      "quantity-out-of-range",
    );
  });

  it("refuses an impossible mass, bounce or maker's limit of a head that is not even a candidate", () => {
    const other = (given: Parameters<typeof someHead>[0]) => () => choose({ squaredLoftDeg: 9 }, [someHead({ hand: "left", ...given })]);
    const limited = (makerBendLimitDeg: number) => someHeadModel({ makerBendLimitDeg: degrees(makerBendLimitDeg) });
    for (const given of [
      { massG: 49 },
      { massG: 1001 },
      { bounceDeg: -11 },
      { bounceDeg: 31 },
      { model: limited(-1) },
      { model: limited(21) },
      { stampedLoftDeg: Number.NaN },
    ]) {
      expect(other(given)).toThrow("quantity-out-of-range");
    }
    for (const given of [{ massG: 50 }, { massG: 1000 }, { bounceDeg: -10 }, { bounceDeg: 30 }, { model: limited(0) }, { model: limited(20) }]) {
      expect(other(given)()).toEqual([]);
    }
  });
});
