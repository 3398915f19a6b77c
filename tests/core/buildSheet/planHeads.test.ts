import { describe, expect, it } from "vitest";
import { defaultAllowances as allowances } from "../../../core/buildSheet/allowances.ts";
import type { MeasuredHead, PartsInReach } from "../../../core/buildSheet/parts.ts";
import type { ClubPlan, Target } from "../../../core/buildSheet/plan.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import type { PlanQuestion } from "../../../core/buildSheet/planQuestion.ts";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { type ClubName, id } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import { tilted } from "../head/someAngles.ts";
import { someClub, someHead, someHeadModel, someParts, someShaft, someTarget, someWeight, stocked } from "./someParts.ts";

type Given = Partial<Omit<PlanQuestion, "target" | "parts">> & { readonly parts?: Partial<PartsInReach> };

function plan(target: Partial<Target>, heads: readonly MeasuredHead[], { parts = {}, ...given }: Given = {}): ClubPlan {
  const shafts = [stocked(someShaft({ forFamilies: ["driver", "fairway", "wedge", "iron"] }))];
  const result = planClub({
    target: someTarget(target),
    kind: "build",
    reference: null,
    parts: someParts({ heads, shafts, ...parts }),
    allowances,
    tolerances,
    ...given,
  });
  if (result.kind !== "planned") {
    throw new Error(JSON.stringify(result.faults));
  }
  return result.plan;
}

const full = someHeadModel({ id: 2, name: "Tarn Full", family: "wedge", sleeveFamily: null, grind: "full" });
const relieved = someHeadModel({ id: 3, name: "Tarn Heel-Relieved", family: "wedge", sleeveFamily: null, grind: "heel-relieved" });

const wedge = (serial: string, loftDeg: number, bounceDeg: number | null, given: Parameters<typeof someHead>[0] = {}) =>
  someHead({ serial, model: full, stampedLoftDeg: loftDeg, soledLoftDeg: loftDeg, designLieDeg: 64, bounceDeg, massG: 300, ...given });
const sw = (target: Partial<Target>): Partial<Target> => ({ club: "sw" as ClubName, headModel: "Tarn Full", lengthMm: 900, ...target });

describe("planClub, heads that are bent (by hand)", () => {
  it("makes a 54 of a 55 with a bend of 1° stronger, and says that 9° of bounce become 8°", () => {
    const { choice } = plan(sw({ squaredLoftDeg: 54 }), [wedge("0301", 55, 9)]);
    expect([choice.bend, choice.bendWarned, choice.attitude.squaredLoftDeg, choice.bounceDeg, choice.misses]).toEqual([
      { loftChangeDeg: expect.closeTo(-1, 9), lieChangeDeg: 0 },
      false,
      expect.closeTo(54, 9),
      expect.closeTo(8, 9),
      [],
    ]);
  });

  it("bends the lie by itself", () => {
    const { choice } = plan(sw({ squaredLoftDeg: 55, seatedLieDeg: 65.5 }), [wedge("0301", 55, 9)]);
    expect(choice.bend).toEqual({ loftChangeDeg: 0, lieChangeDeg: expect.closeTo(1.5, 9) });
    const { squaredLoftDeg, seatedLieDeg } = choice.attitude;
    expect([squaredLoftDeg, seatedLieDeg, choice.bounceDeg]).toEqual([expect.closeTo(55, 9), expect.closeTo(65.5, 9), 9]);
  });

  it("stops at the limit and says why it goes no further", () => {
    const { choice, remedies } = plan(sw({ squaredLoftDeg: 54 }), [wedge("0301", 60, 9)]);
    expect([choice.bend?.loftChangeDeg, choice.bendWarned, choice.bounceDeg]).toEqual([-4, true, 5]);
    expect(choice.misses).toEqual([{ quantity: "squaredLoftDeg", wanted: 54, got: expect.closeTo(56, 9), tolerance: 0.25 }]);
    expect(remedies).toEqual([
      { code: "no-further-bend", reason: { code: "past-limit", plane: "loft", totalDeg: expect.closeTo(6, 9), limitDeg: 4 } },
    ]);
  });

  it("counts what was bent before, there and back", () => {
    const bends = [1, -1].map((loftChangeDeg) => ({ loftChangeDeg: degrees(loftChangeDeg), lieChangeDeg: degrees(0) }));
    const { choice } = plan(sw({ squaredLoftDeg: 52 }), [wedge("0301", 55, 9, { bends })]);
    expect([choice.bend?.loftChangeDeg, choice.bendWarned]).toEqual([expect.closeTo(-2, 9), true]);
  });

  it("leaves alone what no gauge can tell, and bends what one can", () => {
    const bendAt = (loftDeg: number) => plan(sw({ squaredLoftDeg: 55 }), [wedge("0301", loftDeg, 9, { stampedLoftDeg: 55 })]).choice.bend;
    expect(bendAt(55.125)).toBeNull();
    expect(bendAt(54.875)).toBeNull();
    expect(bendAt(55.126)).toEqual({ loftChangeDeg: expect.closeTo(-0.126, 9), lieChangeDeg: 0 });
  });

  it("takes the head that needs less of a bend, in begun half degrees, before a lower serial", () => {
    const heads = [wedge("0301", 56, 9), wedge("0302", 55.5, 9), wedge("0303", 55.4, 9)];
    expect(plan(sw({ squaredLoftDeg: 55 }), heads).choice.head.serial).toBe("0302");
  });

  it("bends neither a driver nor a head with a sleeve, and a hollow head only as its maker allows", () => {
    const bendOf = (given: Parameters<typeof someHeadModel>[0], club: string) => {
      const model = someHeadModel({ id: 9, name: "Rill", sleeveFamily: null, ...given });
      const head = someHead({ model, stampedLoftDeg: 20, soledLoftDeg: 20 });
      return plan({ club: club as ClubName, headModel: "Rill", squaredLoftDeg: 19 }, [head], {
        parts: { shafts: [stocked(someShaft({ forFamilies: ["driver", "fairway", "hybrid"] }))] },
      }).choice.bend;
    };
    const whole = { loftChangeDeg: expect.closeTo(-1, 9), lieChangeDeg: 0 };
    expect(bendOf({ family: "driver", makerBendLimitDeg: degrees(4) }, "driver")).toBeNull();
    expect(bendOf({ family: "fairway", sleeveFamily: "loft", makerBendLimitDeg: degrees(4) }, "5w")).toBeNull();
    expect(bendOf({ family: "hybrid" }, "4h")).toBeNull();
    expect(bendOf({ family: "hybrid", makerBendLimitDeg: degrees(0.5) }, "4h")).toEqual({ ...whole, loftChangeDeg: expect.closeTo(-0.5, 9) });
    expect(bendOf({ family: "hybrid", makerBendLimitDeg: degrees(3) }, "4h")).toEqual(whole);
  });

  it("bends a bonded fairway wood only by a technician who has the skill, 1° at most, whatever its metal allows", () => {
    const model = someHeadModel({
      id: 9,
      name: "Cairn 5",
      family: "fairway",
      sleeveFamily: null,
      construction: "cast",
      makerBendLimitDeg: degrees(3),
    });
    const head = someHead({ model, stampedLoftDeg: 18, soledLoftDeg: 18 });
    const wish = { club: "5w" as ClubName, headModel: "Cairn 5", squaredLoftDeg: 16 };
    expect(plan(wish, [head]).choice.bend).toBeNull();
    expect(plan(wish, [head]).remedies).toContainEqual({ code: "no-further-bend", reason: { code: "needs-skill" } });
    expect(plan(wish, [head], { skilledTechnician: true }).choice.bend?.loftChangeDeg).toBe(-1);
  });
});

describe("planClub, which head (by hand)", () => {
  const driver = (serial: string, soledLoftDeg: number, given: Parameters<typeof someHead>[0] = {}) => someHead({ serial, soledLoftDeg, ...given });

  it("puts the standard mark before a turned one within a band of scores", () => {
    const strongAt = attitudeOf(driver("0001", 10), tilted(1, 225)).squaredLoftDeg;
    const { choice, runnersUp } = plan({ squaredLoftDeg: strongAt }, [driver("0001", 10), driver("0002", strongAt - 0.1)]);
    expect([choice.head.serial, choice.mark]).toEqual(["0002", "standard"]);
    expect(runnersUp.map(({ head, givesUp }) => [head.serial, givesUp])).toEqual([["0001", [{ code: "turned-sleeve", mark: "strong 1" }]]]);
  });

  it("leaves another player's bin alone, and names what is nearer there", () => {
    const heads = [driver("0001", 9.4), driver("0002", 9, { here: false, place: "Bin Toll" })];
    const { choice, runnersUp, elsewhere } = plan({ stampedLoftDeg: 9 }, heads);
    expect([choice.head.serial, runnersUp]).toEqual(["0001", []]);
    expect(elsewhere.map(({ head }) => [head.serial, head.place])).toEqual([["0002", "Bin Toll"]]);
  });

  it("lists a head at home base that is nearer by a band, and none that is not", () => {
    const heads = [driver("0001", 9.3), driver("0002", 9, { here: false, place: "home base" }), driver("0003", 9.26, { here: false })];
    const { choice, elsewhere, remedies } = plan({ stampedLoftDeg: 9 }, heads);
    expect(choice.head.serial).toBe("0001");
    expect(elsewhere.map(({ head }) => head.serial)).toEqual(["0002", "0003"]);
    expect(remedies).toEqual([
      { code: "head-elsewhere", missCount: 0, serial: "0002", model: "Cairn", stampedLoftDeg: 9, place: "home base", here: false },
    ]);
    expect(plan({ stampedLoftDeg: 9 }, [driver("0001", 9.1), driver("0002", 9, { here: false })]).elsewhere).toEqual([]);
  });

  it("says which stamp to send for when no head anywhere meets the loft", () => {
    const heads = [driver("0001", 9.6), driver("0002", 10, { stampedLoftDeg: 10.5, hand: "left" })];
    expect(plan({ squaredLoftDeg: 9, sleeveMark: "standard" }, heads).remedies).toEqual([{ code: "order-head", model: "Cairn", stampedLoftDeg: 9 }]);
    expect(plan({ squaredLoftDeg: 12, sleeveMark: "standard" }, heads).remedies).toEqual([]);
  });

  it("answers two less bounce at the same loft with grinds that have it, sole work and the loft where it comes", () => {
    const heads = [
      wedge("0301", 56, 12),
      wedge("0302", 58, 12, { model: relieved }),
      wedge("0303", 56, 10, { model: relieved, here: false, place: "home base" }),
      wedge("0304", 56, 10, { model: { ...relieved, id: id(4), name: "Tarn Wide", grind: "wide" }, here: false, place: "home base" }),
    ];
    const { choice, remedies } = plan(sw({ squaredLoftDeg: 56, bounceDeg: 10, grind: "full" }), heads);
    expect([choice.head.serial, choice.bend, choice.misses.map(({ quantity }) => quantity)]).toEqual(["0301", null, ["bounceDeg"]]);
    const bent = { loftChangeDeg: expect.closeTo(-2, 9), lieChangeDeg: 0 };
    expect(remedies).toEqual([
      {
        code: "another-grind",
        grind: "heel-relieved",
        squaredLoftDeg: expect.closeTo(56, 9),
        bounceDeg: expect.closeTo(10, 9),
        bend: bent,
        serial: "0302",
        model: "Tarn Heel-Relieved",
        stampedLoftDeg: 58,
        place: "D-1",
        here: true,
      },
      expect.objectContaining({ code: "another-grind", grind: "wide", serial: "0304", bend: null, here: false, place: "home base" }),
      { code: "sole-work", bounceChangeDeg: expect.closeTo(-2, 9) },
      { code: "loft-for-bounce", squaredLoftDeg: expect.closeTo(54, 9), bounceDeg: 10 },
    ]);
  });

  it("offers no loft for a bounce that is past the limit, and no sole work on a hybrid", () => {
    const { choice, remedies } = plan(sw({ squaredLoftDeg: 56, bounceDeg: 6 }), [wedge("0301", 58, 12)]);
    /** Loft and bounce pull by 16 to 1: (16 · 2 + 6) / 17. */
    const bentDeg = -(16 * 2 + 6) / 17;
    expect(choice.bend?.loftChangeDeg).toBeCloseTo(bentDeg, 9);
    expect(remedies).toEqual([{ code: "sole-work", bounceChangeDeg: expect.closeTo(6 - (12 + bentDeg), 9) }]);
    const rill = someHeadModel({ id: 9, name: "Rill", family: "hybrid", sleeveFamily: null });
    const shafts = [stocked(someShaft({ forFamilies: ["hybrid"] }))];
    const hybrid = plan({ club: "4h" as ClubName, headModel: "Rill", squaredLoftDeg: 22, bounceDeg: 5 }, [wedge("0302", 22, 9, { model: rill })], {
      parts: { shafts },
    });
    expect([hybrid.choice.misses.map(({ quantity }) => quantity), hybrid.remedies]).toEqual([["bounceDeg"], []]);
  });

  it("answers for an iron's bounce too", () => {
    const scree = someHeadModel({ id: 9, name: "Scree", family: "iron", sleeveFamily: null });
    const { remedies } = plan({ club: "7i" as ClubName, headModel: "Scree", squaredLoftDeg: 34, bounceDeg: 4 }, [
      wedge("0302", 34, 6, { model: scree }),
    ]);
    expect(remedies.map(({ code }) => code)).toEqual(["sole-work", "loft-for-bounce"]);
  });

  it("gives a left-hander left-handed heads, at the mark that is strong for them", () => {
    const left = driver("0001", 10, { hand: "left" });
    const strong = attitudeOf(left, tilted(1, 180)).squaredLoftDeg;
    const { choice } = plan({ hand: "left", squaredLoftDeg: strong }, [left, driver("0002", strong)]);
    expect([choice.head.serial, choice.mark, choice.score]).toEqual(["0001", "strong 2", expect.closeTo(0, 9)]);
    const mirrored = plan({ hand: "right", squaredLoftDeg: strong }, [driver("0003", 10)]).choice;
    expect([mirrored.mark, mirrored.attitude.squaredLoftDeg]).toEqual(["strong 2", expect.closeTo(choice.attitude.squaredLoftDeg, 9)]);
  });

  it("takes fewer weights before a lower score within a band", () => {
    const weights = [stocked(someWeight(6))];
    const heads = [driver("0001", 9, { massG: 192 }), driver("0002", 9, { massG: 198.4 })];
    const { choice, runnersUp } = plan({ stampedLoftDeg: 9, headMassG: 198 }, heads, { parts: { weights } });
    expect([choice.head.serial, choice.addedCount]).toEqual(["0002", 0]);
    expect(runnersUp.map(({ head, givesUp }) => [head.serial, givesUp])).toEqual([["0001", [{ code: "more-weights", count: 1 }]]]);
  });

  it("builds with the head that was allotted, the nearer ones behind it", () => {
    const heads = [driver("0001", 9), driver("0002", 9.6), driver("0003", 9.3)];
    const { choice, runnersUp } = plan({ stampedLoftDeg: 9 }, heads, { allottedHead: id(2) });
    expect([choice.head.serial, runnersUp.map(({ head, givesUp }) => [head.serial, givesUp])]).toEqual([
      "0002",
      [
        ["0001", []],
        ["0003", []],
      ],
    ]);
  });

  it("looks past an allotted head that is not here or not known", () => {
    const heads = [driver("0001", 9), driver("0002", 9.6, { here: false })];
    expect(plan({ stampedLoftDeg: 9 }, heads, { allottedHead: id(2) }).choice.head.serial).toBe("0001");
    expect(plan({ stampedLoftDeg: 9 }, heads, { allottedHead: id(77) }).choice.head.serial).toBe("0001");
  });

  it("says what each runner-up gives up, in its own unit", () => {
    const heads = [wedge("0301", 55, 9), wedge("0302", 57, 9, { massG: 300 }), wedge("0303", 61, null)];
    const { runnersUp } = plan(sw({ squaredLoftDeg: 55, bounceDeg: 9 }), heads);
    expect(runnersUp.map(({ head, givesUp }) => [head.serial, givesUp])).toEqual([
      [
        "0302",
        [
          { code: "further", quantity: "bounceDeg", worseBy: expect.closeTo((2 * 16) / 17, 9) },
          { code: "more-bend", deg: expect.closeTo((2 * 16) / 17, 9) },
        ],
      ],
      [
        "0303",
        [{ code: "further", quantity: "squaredLoftDeg", worseBy: expect.closeTo(2, 9) }, { code: "bounce-unknown" }, { code: "more-bend", deg: 4 }],
      ],
    ]);
  });

  it("shows five runners-up and three heads elsewhere at most", () => {
    const here = Array.from({ length: 8 }, (_, at) => driver(String(1000 + at), 9.5));
    const away = Array.from({ length: 5 }, (_, at) => driver(String(2000 + at), 9, { here: false }));
    const { runnersUp, elsewhere } = plan({ stampedLoftDeg: 9 }, [...here, ...away]);
    expect([runnersUp.length, elsewhere.map(({ head }) => head.serial)]).toEqual([5, ["2000", "2001", "2002"]]);
  });
});

describe("planClub, the head of a swap", () => {
  it("is bent like that of a new club, and needs no other part", () => {
    const reference = { ...someClub({}), club: "sw" as ClubName, headModel: "Tarn Full", sleeveModel: null, sleeveMark: null };
    const target = sw({ squaredLoftDeg: 54, shaft: null, grip: null, lengthMm: null });
    const swapped = plan(target, [wedge("0301", 55, 9), wedge("0302", 55.5, 9)], { kind: "swap", reference, parts: { shafts: [], grips: [] } });
    expect([swapped.kind, swapped.piece, swapped.choice.head.serial, swapped.choice.bend?.loftChangeDeg]).toEqual([
      "swap",
      null,
      "0301",
      expect.closeTo(-1, 9),
    ]);
    expect(swapped.runnersUp.map(({ head, givesUp }) => [head.serial, givesUp])).toEqual([
      ["0302", [{ code: "more-bend", deg: expect.closeTo(0.5, 9) }]],
    ]);
  });
});
