import { describe, expect, it } from "vitest";
import { planService } from "../../../core/buildSheet/planService.ts";
import { serviceCheck } from "../../../core/buildSheet/serviceCheck.ts";
import type { ServiceKind, ServiceQuestion } from "../../../core/buildSheet/servicePlan.ts";
import type { ClubName, Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/finalChecks.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { numbersIn, withNumberAt } from "../numbersIn.ts";
import { someClub, someGrip, someHeadModel, someShaft, someSleeve, stocked } from "./someParts.ts";
import { bareClub, by, exactly, faultsOf, mark, plannedAs, same, serviceQuestion, someWedge, wish } from "./someService.ts";

const wedge = { reference: someWedge({ headMassG: 300, swingWeightPoints: 4, totalMassG: 465 }) };

describe(byTable(planService, "finalChecks", published), () => {
  it.each(published.bagCheck)(
    "a bag check of a $club, sleeved $sleeved, reads $reads and looks for $lookOver",
    ({ club, sleeved, reads, lookOver }) => {
      const head = someHeadModel({ sleeveFamily: sleeved ? "loft" : null });
      const plan = plannedAs("check", {}, { reference: bareClub(club, { squaredLoftDeg: 20 }), head });
      expect(plan.reads.map(({ quantity }) => quantity)).toEqual(reads);
      expect(plan.reads.map(({ onRecord }) => onRecord)).toEqual([20, null]);
      expect(plan.lookOver).toEqual(lookOver);
    },
  );
});

describe("planService, check", () => {
  const readOf = (asked: Parameters<typeof plannedAs>[2], clauses: Parameters<typeof plannedAs>[1] = {}) =>
    plannedAs("check", clauses, asked).reads.map(({ quantity }) => quantity);

  it("tells a hybrid's sleeve by the head, else by the sleeve or the mark on record", () => {
    const hybrid = bareClub("3h");
    expect(readOf({ reference: hybrid, head: null })[1]).toBe("seatedLieDeg");
    expect(readOf({ reference: hybrid, head: null, sleeve: someSleeve({}) })[1]).toBe("soledFaceDeg");
    expect(readOf({ reference: { ...hybrid, sleeveMark: "standard" }, head: null })[1]).toBe("soledFaceDeg");
    expect(readOf({ reference: { ...hybrid, sleeveMark: "standard" }, head: someHeadModel({ sleeveFamily: null }) })[1]).toBe("seatedLieDeg");
  });

  it("reads what is written beside the usual, each once, against what is written", () => {
    const plan = plannedAs("check", { seatedLieDeg: exactly(62), lengthMm: same, totalMassG: exactly(430) }, { reference: someClub({}) });
    expect(plan.reads).toEqual([
      { quantity: "squaredLoftDeg", onRecord: 9.2 },
      { quantity: "soledFaceDeg", onRecord: 0.4 },
      { quantity: "seatedLieDeg", onRecord: 57 },
      { quantity: "lengthMm", onRecord: 45.25 * 25.4 },
      { quantity: "totalMassG", onRecord: 321 },
    ]);
    expect([plan.target.totalMassG, plan.target.lengthMm, plan.predicted.totalMassG]).toEqual([430, 45.25 * 25.4, 321]);
    expect(readOf(wedge, { squaredLoftDeg: exactly(55) })).toEqual(["squaredLoftDeg", "seatedLieDeg"]);
  });

  it("checks a club that is not on record, and changes no parts", () => {
    const plan = plannedAs("check", {}, { club: "7i" as ClubName, reference: null });
    expect(plan.reads).toEqual([
      { quantity: "squaredLoftDeg", onRecord: null },
      { quantity: "seatedLieDeg", onRecord: null },
    ]);
    expect(faultsOf("check", { grip: wish("Heather Soft"), logo: wish("up"), headModel: wish("Cairn"), tipTrimMm: by(1) })).toEqual([
      { code: "stays", kind: "check", quantities: ["grip", "logo", "tipTrimMm"] },
    ]);
  });
});

describe("planService, grind", () => {
  it("has a sole ground by a qualified grinder, bounce wished, no mass promised", () => {
    const plan = plannedAs("grind", { bounceDeg: exactly(8) }, { ...wedge, note: "firm turf" });
    expect(plan).toMatchObject({ bounceBeforeDeg: 10, bounceWantedDeg: 8, grindBefore: "full", grindWanted: null, headMassBeforeG: 300 });
    expect([plan.byQualifiedGrinder, plan.note, plan.version, plan.club]).toEqual([true, "firm turf", 1, "sw"]);
    expect(plan.predicted).toMatchObject({
      squaredLoftDeg: 56,
      seatedLieDeg: 64,
      bounceDeg: 8,
      headMassG: null,
      swingWeightPoints: null,
      totalMassG: null,
    });
    expect(plan.target).toMatchObject({ bounceDeg: 8, headMassG: null, swingWeightPoints: null, totalMassG: null });
  });

  it("takes a name or a note alone, and leaves the bounce to the gauge", () => {
    const plan = plannedAs("grind", { grind: wish("heel-relieved") }, { reference: bareClub("7i", { bounceDeg: 5 }) });
    expect([plan.grindWanted, plan.bounceWantedDeg, plan.target.bounceDeg, plan.predicted.bounceDeg]).toEqual(["heel-relieved", null, null, null]);
    expect(plannedAs("grind", {}, { ...wedge, note: "softer heel" }).bounceBeforeDeg).toBe(10);
    expect(plannedAs("grind", { bounceDeg: exactly(6) }, { club: "lw" as ClubName, reference: null })).toMatchObject({ bounceBeforeDeg: null });
  });

  it("refuses a club that is not ground, nothing asked, and a promise of mass", () => {
    const accepted = ["iron", "wedge"];
    expect(faultsOf("grind", { bounceDeg: exactly(8) })).toEqual([{ code: "wrong-family", kind: "grind", family: "driver", accepted }]);
    expect(faultsOf("grind", {}, wedge)).toEqual([{ code: "nothing-asked", kind: "grind" }]);
    expect(faultsOf("grind", {}, { ...wedge, note: "  " })).toEqual([{ code: "nothing-asked", kind: "grind" }]);
    expect(faultsOf("grind", { bounceDeg: exactly(8), headMassG: exactly(298) }, wedge)).toEqual([
      { code: "stays", kind: "grind", quantities: ["headMassG"] },
    ]);
  });
});

describe("planService, stamp", () => {
  it("stamps the text as written, without the spaces around it", () => {
    const plan = plannedAs("stamp", { stamp: wish("  MT 54 ") }, { reference: someWedge({ stamp: "MT" }) });
    expect([plan.text, plan.before, plan.predicted.squaredLoftDeg]).toEqual(["MT 54", "MT", 56]);
    expect(plannedAs("stamp", { stamp: wish("x".repeat(24)) }, wedge)).toMatchObject({ before: null });
    expect(plannedAs("stamp", { stamp: wish("★".repeat(24)) }, { club: "sw" as ClubName, reference: null }).text).toHaveLength(24);
  });

  it("refuses no text, more than 24 letters, and anything else", () => {
    expect(faultsOf("stamp", { stamp: wish("   ") }, wedge)).toEqual([{ code: "nothing-asked", kind: "stamp" }]);
    expect(faultsOf("stamp", {}, wedge)).toEqual([{ code: "nothing-asked", kind: "stamp" }]);
    expect(faultsOf("stamp", { stamp: wish("𝔸".repeat(25)) }, wedge)).toEqual([{ code: "stamp-too-long", count: 25, max: 24 }]);
    expect(faultsOf("stamp", { stamp: wish("MT"), squaredLoftDeg: by(-1) }, wedge)).toMatchObject([
      { code: "stays", quantities: ["squaredLoftDeg"] },
    ]);
  });
});

describe("planService, repair", () => {
  it("says what is wrong, and reads again what is on record", () => {
    const plan = plannedAs("repair", {}, { note: " rattles ", reference: someClub({ swingWeightPoints: null }) });
    expect(plan.complaint).toBe("rattles");
    expect(plan.reads).toEqual([
      { quantity: "squaredLoftDeg", onRecord: 9.2 },
      { quantity: "soledFaceDeg", onRecord: 0.4 },
      { quantity: "lengthMm", onRecord: 45.25 * 25.4 },
    ]);
    const written = plannedAs("repair", { totalMassG: same, lengthMm: same }, { note: "loose" });
    expect(written.reads.map(({ quantity }) => quantity)).toEqual(["squaredLoftDeg", "soledFaceDeg", "swingWeightPoints", "lengthMm", "totalMassG"]);
    expect(plannedAs("repair", {}, { note: "loose", club: "7i" as ClubName, reference: null }).reads).toEqual([]);
  });

  it("refuses a repair of nothing, and other parts", () => {
    expect(faultsOf("repair", {})).toEqual([{ code: "nothing-asked", kind: "repair" }]);
    expect(faultsOf("repair", { grip: wish("Heather Soft") }, { note: " " })).toEqual([
      { code: "nothing-asked", kind: "repair" },
      { code: "stays", kind: "repair", quantities: ["grip"] },
    ]);
  });
});

describe("planService", () => {
  it.each<[ServiceKind, Parameters<typeof faultsOf>[1]]>([
    ["turn", { sleeve: mark("upright") }],
    ["bend", { squaredLoftDeg: by(-1) }],
    ["stamp", { stamp: wish("MT") }],
  ])("lets a %s name its club by model, stamped loft and shaft, and refuses another", (kind, clauses) => {
    const head = someHeadModel({ makerBendLimitDeg: degrees(2) });
    const named = { ...clauses, headModel: wish("Cairn"), stampedLoftDeg: wish(9), shaft: wish("Dunlin 60 X") };
    expect(faultsOf(kind, named, { head })).toEqual([]);
    const others = { ...clauses, headModel: wish("Tarn"), stampedLoftDeg: wish(10.5), shaft: wish("Curlew 70 S") };
    expect(faultsOf(kind, others, { head })).toEqual([{ code: "stays", kind, quantities: ["headModel", "stampedLoftDeg", "shaft"] }]);
  });

  it("refuses what is written of a club that is not on record but does not name it", () => {
    const clauses = {
      stamp: wish("MT"),
      headModel: wish("Tarn"),
      stampedLoftDeg: wish(56),
      shaft: wish("Curlew"),
      grip: wish("Gorse"),
      lengthMm: exactly(900),
    };
    expect(faultsOf("stamp", clauses, { club: "sw" as ClubName, reference: null })).toEqual([
      { code: "stays", kind: "stamp", quantities: ["grip", "lengthMm"] },
    ]);
  });

  it("takes a wish the club meets already for no wish, and knows of no record of a spine, a ferrule or a line", () => {
    const met = {
      lengthMm: exactly(45.25 * 25.4 + 1e-7),
      wraps: same,
      logo: wish("down" as const),
      rib: wish("none" as const),
      sleeve: mark("standard"),
    };
    expect(faultsOf("stamp", { stamp: wish("MT"), ...met })).toEqual([]);
    const quantities = ["spine", "ferrule", "screw", "melt", "lead", "neck", "line"] as const;
    const unmet = Object.fromEntries(quantities.map((name) => [name, wish("so")]));
    expect(faultsOf("stamp", { stamp: wish("MT"), ...unmet })).toEqual([{ code: "stays", kind: "stamp", quantities }]);
    expect(faultsOf("turn", { sleeve: mark("upright"), lengthMm: exactly(45.25 * 25.4 + 1e-5), stamp: wish("MT"), grind: wish("full") })).toEqual([
      { code: "stays", kind: "turn", quantities: ["lengthMm", "stamp", "grind"] },
    ]);
  });

  const full: ServiceQuestion = {
    ...serviceQuestion("turn", { sleeve: mark("upright"), squaredLoftDeg: exactly(9) }),
    ...{ shaft: someShaft({}), grips: [stocked(someGrip({}))], bends: [{ loftChangeDeg: degrees(1), lieChangeDeg: degrees(0) }] },
  };

  it("refuses every number of its question when it is none", () => {
    for (const place of numbersIn([full])) {
      for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY]) {
        const [question] = withNumberAt([full], place, wrong) as readonly [ServiceQuestion];
        expect(() => planService(question), place.join(".")).toThrow("quantity-out-of-range");
      }
    }
  });

  it.each([
    [{ target: { ...full.target, seatedLieDeg: 81 } }, '"field":"target.seatedLieDeg","unit":"deg"'],
    [{ target: { ...full.target, lengthMm: 100 } }, '"field":"target.lengthMm","unit":"mm"'],
    [{ target: { ...full.target, swingWeightPoints: 41 } }, '"field":"target.swingWeightPoints","unit":"points"'],
    [{ target: { ...full.target, headMassG: 99 } }, '"field":"target.headMassG","unit":"g"'],
    [{ target: { ...full.target, wraps: 21 } }, '"field":"target.wraps","unit":""'],
    [{ reference: someClub({ lengthMm: 10 }) }, '"field":"lengthMm"'],
    [{ allowances: { ...full.allowances, wrapG: -0.1 } }, '"field":"wrapG","unit":"g"'],
    [{ allowances: { ...full.allowances, wrapG: 100.1 } }, '"field":"wrapG"'],
    [{ kind: "polish" as ServiceKind }, '"field":"kind"'],
    [{ hand: "both" as Hand }, '"field":"hand"'],
    [{ club: "chipper" as ClubName }, '"field":"club"'],
  ])("refuses %o", (wrong, said) => {
    expect(() => planService({ ...full, ...wrong } as ServiceQuestion)).toThrow(said);
  });
});

describe("serviceCheck", () => {
  it("hands target, prediction and what is listed to the final check", () => {
    const plan = plannedAs("check", { lengthMm: same });
    expect(serviceCheck(plan)).toEqual({
      kind: "check",
      target: plan.target,
      planned: plan.predicted,
      listed: ["squaredLoftDeg", "soledFaceDeg", "lengthMm"],
      looksWanted: {},
    });
    expect(serviceCheck(plannedAs("repair", {}, { note: "loose", reference: bareClub("7i", { lengthMm: 940 }) })).listed).toEqual(["lengthMm"]);
  });

  it("wants what is set by hand looked at: the mark, the grip's orientation, the stamp", () => {
    const grips = [stocked(someGrip({})), stocked(someGrip({ name: "Gorse Rib", rib: true }))];
    expect(serviceCheck(plannedAs("turn", { sleeve: mark("upright") }))).toMatchObject({ listed: [], looksWanted: { sleeve: "upright" } });
    const round = serviceCheck(plannedAs("regrip", {}, { grips })).looksWanted;
    expect(round).toEqual({ grip: "Gorse Standard Round", rib: "none", logo: "down" });
    const ribbed = serviceCheck(plannedAs("regrip", { grip: wish("Gorse Rib") }, { grips, reference: null, club: "7i" as ClubName })).looksWanted;
    expect(ribbed).toEqual({ grip: "Gorse Rib", rib: "rib" });
    expect(serviceCheck(plannedAs("stamp", { stamp: wish("MT") }, wedge)).looksWanted).toEqual({ stamp: "MT" });
    expect(serviceCheck(plannedAs("bend", { squaredLoftDeg: by(-1) }, wedge)).looksWanted).toEqual({});
    expect(serviceCheck(plannedAs("grind", { bounceDeg: exactly(8) }, wedge)).listed).toEqual([]);
  });
});
