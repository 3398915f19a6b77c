import fc from "fast-check";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import type { ClubFamily } from "../../../core/kinds.ts";
import { clubFamilies } from "../../../core/kinds.ts";
import { degrees, kilogramSquareCentimetres, millimetres } from "../../../core/quantity/units.ts";
import type { ClubFacts } from "../../../core/rules/clubFacts.ts";
import { clubFindings } from "../../../core/rules/clubFindings.ts";
import { equipmentRules } from "../../../core/rules/equipmentRules.ts";
import type { LocalRule } from "../../../core/rules/ruleTypes.ts";
import { localRules } from "../../../core/rules/ruleTypes.ts";
import { cubicCentimetres, microseconds, shoreA, shoreD, squareMillimetres } from "../../../core/rules/ruleUnits.ts";
import published from "../../../fixtures/published/equipmentRules.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";

interface PublishedLimit {
  readonly code: string;
  readonly family: string;
  readonly fact: string;
  readonly side: string;
  readonly limit: number;
  readonly unit: string;
  readonly step: number;
  readonly rule: string;
  readonly exclusive?: boolean;
  readonly tolerance?: number;
  readonly fromMemory?: string;
  readonly adopted?: readonly string[];
  readonly also?: object;
}

/** From the units of the rules to those of the gauges, with nothing of the project. */
const factor: Readonly<Record<string, number>> = { in: 25.4, in2: 645.16, gcm2: 0.001 };

const limits: readonly PublishedLimit[] = published.rows;

const clubWith = (row: Pick<PublishedLimit, "family" | "also">, extra: object): ClubFacts => ({
  ...row.also,
  ...extra,
  family: row.family as ClubFamily,
});
const adoptedOf = (row: { readonly adopted?: readonly string[] }) => (row.adopted ?? []) as readonly LocalRule[];
const found = (row: PublishedLimit, inItsUnit: number) =>
  clubFindings(clubWith(row, { [row.fact]: inItsUnit * (factor[row.unit] ?? 1) }), adoptedOf(row)).findings.find(({ code }) => code === row.code);
const outwards = ({ side }: PublishedLimit) => (side === "max" ? 1 : -1);

describe(byTable(clubFindings, "equipmentRules", published), () => {
  it.each(limits)("holds $code of a $family to $limit $unit ($side)", (row) => {
    const past = row.limit + outwards(row) * row.step;
    expect(found(row, past)?.rule).toBe(row.rule);
    expect(found(row, row.limit - outwards(row) * row.step)).toBeUndefined();
    expect(found(row, row.limit) === undefined).toBe(row.exclusive !== true);
  });

  it.each(limits)("tells for $code the side's limit, the tolerance and what is from memory", (row) => {
    const finding = found(row, row.limit + outwards(row) * row.step);
    const scale = factor[row.unit] ?? 1;
    expect(finding?.severity).toBe("warning");
    expect(finding?.edition).toBe(finding?.source.edition);
    expect(finding?.withinTestTolerance).toBe(row.tolerance !== undefined);
    expect(finding?.fromMemory).toBe(row.fromMemory ?? (row.code === "lengthLocal" ? "tolerance" : null));
    if (finding?.quantity === row.fact) {
      expect(finding.measured).toBeCloseTo((row.limit + outwards(row) * row.step) * scale, 9);
      expect(finding.limit).toBeCloseTo(row.limit * scale, 9);
    }
    if (row.tolerance === undefined) expect(finding?.tolerance).toBeNull();
    else expect(finding?.tolerance).toBeCloseTo(row.tolerance * scale, 9);
  });

  it.each(limits.filter(({ tolerance }) => tolerance !== undefined))("knows where the test tolerance of $code ends", (row) => {
    const end = row.limit + outwards(row) * (row.tolerance ?? 0);
    expect(found(row, end)?.withinTestTolerance).toBe(true);
    expect(found(row, end + outwards(row) * row.step)?.withinTestTolerance).toBe(false);
  });

  it.each(published.yesNo)("finds $code of a $family when $observation is $breaks", (row) => {
    const codes = (seen: boolean) => clubFindings(clubWith(row, { [row.observation]: seen }), adoptedOf(row)).findings;
    expect(codes(row.breaks)).toMatchObject([
      {
        code: row.code,
        rule: row.rule,
        quantity: row.observation,
        measured: row.breaks,
        limit: !row.breaks,
        unit: "",
        tolerance: null,
        withinTestTolerance: false,
        severity: "warning",
        fromMemory: null,
      },
    ]);
    expect(codes(!row.breaks)).toEqual([]);
  });

  it("has every rule of the table in the fixture", () => {
    const inFixture = new Set([...limits, ...published.yesNo].map(({ code }) => code));
    expect(new Set([...equipmentRules.limits, ...equipmentRules.yesNo].map(({ code }) => code))).toEqual(inFixture);
  });
});

describe(byLaw(clubFindings, "the longer of two clubs is never found in fewer limits of length"), () => {
  const upTo = (max: number) => fc.double({ min: 457.2, max, noNaN: true });

  it("holds for every family and choice of local rules", () => {
    fc.assert(
      fc.property(fc.constantFrom(...clubFamilies), fc.subarray([...localRules]), upTo(2000), upTo(500), (family, adopted, mm, more) => {
        const count = (lengthMm: number) => clubFindings({ family, lengthMm: millimetres(lengthMm) }, adopted).findings.length;
        expect(count(mm + more)).toBeGreaterThanOrEqual(count(mm));
      }),
    );
  });
});

describe(byLibrary(clubFindings, "mathjs", "inches and square inches converted by its units, a hair to either side"), () => {
  it.each([
    ["lengthMost", "driver", "lengthMm", "48 inch to mm"],
    ["woodHeelToToe", "driver", "headHeelToToeMm", "5 inch to mm"],
    ["punchMarkArea", "iron", "punchMarkAreaMm2", "0.0044 sqin to mm^2"],
    ["grooveEdgeRound", "iron", "grooveEdgeRadiusMm", "0.02 inch to mm"],
  ] as const)("finds %s of a %s only past %s = %s", (code, family, fact, converted) => {
    const limit: number = evaluate(`number(${converted.replace(" to ", ", ")})`);
    const codes = (value: number) => clubFindings({ family, [fact]: value }, []).findings.map((one) => one.code);
    expect(codes(limit)).not.toContain(code);
    expect(codes(limit + 0.5e-9)).not.toContain(code);
    expect(codes(limit + 3e-9)).toContain(code);
  });
});

describe("clubFindings", () => {
  const codesOf = (club: ClubFacts, adopted: readonly LocalRule[] = []) => clubFindings(club, adopted).findings.map(({ code }) => code);
  const mm = millimetres;

  it("leaves long putters alone, whatever is adopted", () => {
    expect(codesOf({ family: "putter", lengthMm: mm(1300) }, localRules)).toEqual([]);
  });

  it.each(["driver", "fairway", "hybrid", "iron", "wedge"] as const)("finds a %s of 48.5 in twice where 46 in is adopted, else once", (family) => {
    const club = { family, lengthMm: mm(48.5 * 25.4) };
    expect(codesOf(club, ["G-10"])).toEqual(["lengthMost", "lengthLocal"]);
    expect(codesOf(club, ["G-1", "G-2"])).toEqual(["lengthMost"]);
  });

  it("finds 46.01 in under the local rule although the test would forgive it", () => {
    const [finding] = clubFindings({ family: "driver", lengthMm: mm(46.01 * 25.4) }, ["G-10"]).findings;
    expect(finding).toMatchObject({ code: "lengthLocal", unit: "mm", withinTestTolerance: true, source: { opened: false } });
    expect(finding?.limit).toBeCloseTo(1168.4, 9);
  });

  it.each([
    ["driver", ["woodHeelToToe", "woodSoleToCrown", "woodVolume", "headInertia"]],
    ["fairway", ["woodHeelToToe", "woodSoleToCrown", "woodVolume", "headInertia"]],
    ["hybrid", ["woodHeelToToe", "woodSoleToCrown", "woodVolume", "headInertia"]],
    ["iron", []],
    ["wedge", []],
    ["putter", ["putterHeelToToe", "putterHeight"]],
  ] as const)("holds a huge head to what is asked of a %s", (family, wanted) => {
    const head = {
      headHeelToToeMm: mm(200),
      headSoleToCrownMm: mm(90),
      headVolumeCm3: cubicCentimetres(600),
      headInertiaKgCm2: kilogramSquareCentimetres(8),
    };
    expect([...codesOf({ family, ...head })].sort()).toEqual([...wanted].sort());
  });

  it.each([
    ["driver", ["faceTime", "faceTimeDamaged"]],
    ["fairway", ["faceTime"]],
    ["hybrid", ["faceTime"]],
    ["iron", ["ironFaceTime"]],
    ["wedge", ["ironFaceTime"]],
    ["putter", []],
  ] as const)("asks the face time of a strong %s", (family, wanted) => {
    expect(codesOf({ family, faceTimeUs: microseconds(300), squaredLoftDeg: degrees(9) })).toEqual(wanted);
  });

  it("asks the face time of an iron up to a loft of 35°, and not past it", () => {
    const iron = (loft: number) => codesOf({ family: "iron", faceTimeUs: microseconds(250), squaredLoftDeg: degrees(loft) });
    expect(iron(35)).toEqual(["ironFaceTime"]);
    expect(iron(35.01)).toEqual([]);
  });

  it("cannot ask the face time of an iron without a loft, and says so", () => {
    const got = clubFindings({ family: "iron", faceTimeUs: microseconds(250) }, []);
    expect(got.findings).toEqual([]);
    expect(got.notChecked).toContain("faceTimeUs");
    expect(clubFindings({ family: "iron", faceTimeUs: microseconds(250), squaredLoftDeg: degrees(40) }, []).notChecked).not.toContain("faceTimeUs");
  });

  it("asks the edges of grooves from a loft of 25° on", () => {
    const iron = (loft: number) => codesOf({ family: "iron", grooveEdgeRadiusMm: mm(0.1), squaredLoftDeg: degrees(loft) });
    expect(iron(25)).toEqual(["grooveEdgeSharp"]);
    expect(iron(24.99)).toEqual([]);
  });

  const sharp = {
    grooveEdgeRadiusMm: mm(0.1),
    squaredLoftDeg: degrees(56),
    grooveWidthMm: mm(0.8),
    grooveSeparationMm: mm(2.5),
    grooveAreaMm2: squareMillimetres(0.4),
  };

  it.each([
    ["driver", []],
    ["fairway", ["grooveArea", "grooveEdgeSharp"]],
    ["hybrid", ["grooveArea", "grooveEdgeSharp"]],
    ["iron", ["grooveArea", "grooveEdgeSharp"]],
    ["wedge", ["grooveArea", "grooveEdgeSharp"]],
    ["putter", ["putterLoft"]],
  ] as const)("asks area and edges of grooves of a %s", (family, wanted) => {
    expect(codesOf({ family, ...sharp })).toEqual(wanted);
  });

  it("leaves the grooves of a club made before 2010, unless the committee has adopted the specification", () => {
    const old = { family: "wedge", ...sharp, madeBefore2010: true, markings2010: false } as const;
    expect(codesOf(old)).toEqual([]);
    expect(codesOf(old, ["G-2"])).toEqual(["markings2010"]);
    expect(codesOf({ ...old, madeBefore2010: false })).toEqual(["grooveArea", "grooveEdgeSharp"]);
  });

  it.each([
    ["driver", "G-1", ["driverList"]],
    ["fairway", "G-1", []],
    ["putter", "G-1", []],
    ["driver", "G-2", []],
    ["fairway", "G-2", ["markings2010"]],
    ["hybrid", "G-2", ["markings2010"]],
    ["iron", "G-2", ["markings2010"]],
    ["putter", "G-2", []],
    ["iron", "G-10", []],
  ] as const)("asks of a %s under %s what that rule says", (family, rule, wanted) => {
    expect(codesOf({ family, onDriverList: false, markings2010: false }, [rule])).toEqual(wanted);
  });

  it("exempts a driver head made before 1999 from the list", () => {
    expect(codesOf({ family: "driver", onDriverList: false, madeBefore1999: true }, ["G-1"])).toEqual([]);
  });

  it("asks of a putter's two grips their gap and the upper one's length in place of one grip's length", () => {
    const grips = { gripLengthMm: mm(150), twoGripGapMm: mm(30), twoGripUpperLengthMm: mm(120), twoGripsRound: false };
    expect(codesOf({ family: "putter", ...grips, twoGrips: true })).toEqual(["twoGripGap", "twoGripUpperLength", "twoGripsRound"]);
    expect(codesOf({ family: "putter", ...grips, twoGrips: false })).toEqual(["gripLength"]);
    expect(codesOf({ family: "putter", ...grips })).toEqual(["gripLength"]);
    expect(codesOf({ family: "iron", ...grips, twoGrips: true })).toEqual(["oneGrip"]);
  });

  it("leaves a putter its grip that is not round and its shaft fixed anywhere", () => {
    expect(codesOf({ family: "putter", gripRound: false, attachedAtHeel: false, gripOutOfRoundMm: mm(12) })).toEqual([]);
  });

  it("leaves the markings of a putter's face, hard by its own scale", () => {
    const face = {
      grooveWidthMm: mm(1.2),
      grooveDepthMm: mm(0.9),
      grooveSeparationMm: mm(1.2),
      grooveEdgeRadiusMm: mm(0.6),
      punchMarkAreaMm2: squareMillimetres(5),
      punchMarkSpacingMm: mm(1),
      punchMarkDepthMm: mm(2),
      centreDesignSideMm: mm(20),
      sideMarkingFromCentreMm: mm(5),
      faceHardnessShoreD: shoreD(40),
      faceHardnessShoreA: shoreA(90),
    };
    expect(codesOf({ family: "putter", ...face })).toEqual([]);
    expect(codesOf({ family: "driver", ...face, faceHardnessShoreA: shoreA(10) })).toEqual([
      "faceHardness",
      "grooveWidth",
      "grooveDepth",
      "grooveSeparation",
      "grooveSeparationInWidths",
      "grooveEdgeRound",
      "punchMarkArea",
      "punchMarkSpacing",
      "punchMarkDepth",
      "centreDesign",
      "markingEncroachment",
    ]);
  });

  it("asks nothing of adjustment where there is none", () => {
    const loose = { adjustableWithoutTool: true, adjustablePartsLoose: true, settingOutsideRules: true, settingChangedInRound: true };
    expect(codesOf({ family: "driver", ...loose, adjustable: false })).toEqual([]);
    expect(codesOf({ family: "driver", ...loose, adjustable: true })).toHaveLength(4);
  });

  it("names each quantity that was not measured once, and only those asked of such a club", () => {
    const { notChecked, findings, ruledBy } = clubFindings({ family: "putter", lengthMm: mm(860), seatedLieDeg: degrees(70), neckLengthMm: null }, [
      "G-1",
    ]);
    expect(findings).toEqual([]);
    expect(ruledBy).toBe("governingBodiesOnly");
    expect(notChecked).toEqual([
      "shaftForwardLeanDeg",
      "shaftBendAboveSoleMm",
      "neckLengthMm",
      "squaredLoftDeg",
      "gripLengthMm",
      "gripWidestMm",
      "headWidthLessDepthMm",
      "headHeelToToeMm",
      "faceShareOfDepth",
      "faceShareOfWidth",
      "headSoleToCrownMm",
      "insertProudMm",
      "faceHardnessShoreA",
      "grooveWidthMm",
      "grooveDepthMm",
      "leadChangedInRound",
      "shaftBendsAlike",
      "shaftTwistsAlike",
      "gripBulgeOrWaist",
    ]);
  });

  it.each([
    ["no depth", { headHeelToToeMm: mm(120) }],
    ["a depth of null", { headHeelToToeMm: mm(120), headFaceToBackMm: null }],
    ["no width", { headFaceToBackMm: mm(110) }],
    ["a width of null", { headFaceToBackMm: mm(110), headHeelToToeMm: null }],
  ])("names a reckoned quantity that wants one of its readings: %s", (_, head) => {
    const got = clubFindings({ family: "driver", ...head }, []);
    expect(got.findings).toEqual([]);
    expect(got.notChecked).toContain("headWidthLessDepthMm");
  });

  it("finds a head as deep as it is wide, with no tolerance to be within", () => {
    const [finding] = clubFindings({ family: "iron", headHeelToToeMm: mm(80), headFaceToBackMm: mm(80) }, []).findings;
    expect(finding).toMatchObject({ code: "headWiderThanDeep", measured: 0, limit: 0, unit: "mm", withinTestTolerance: false });
  });

  it("names grooves once although three rules ask their width", () => {
    const { notChecked } = clubFindings({ family: "wedge" }, []);
    expect(notChecked.filter((quantity) => quantity === "grooveEdgeRadiusMm")).toHaveLength(1);
    expect(notChecked).toContain("grooveSeparationLessThreeWidthsMm");
  });

  it.each([
    ["a length that is no number", { lengthMm: mm(Number.NaN) }, "lengthMm"],
    ["an infinite head", { headHeelToToeMm: mm(Number.POSITIVE_INFINITY) }, "headHeelToToeMm"],
    ["a grip of no width", { gripWidestMm: mm(0) }, "gripWidestMm"],
    ["a groove of no width", { grooveWidthMm: mm(0) }, "grooveWidthMm"],
    ["a hardness of 101", { faceHardnessShoreD: shoreD(101) }, "faceHardnessShoreD"],
  ])("refuses %s", (_, wrong, field) => {
    expect(() => clubFindings({ family: "iron", ...wrong }, [])).toThrow(`"field":"${field}"`);
  });

  it("refuses an unknown family, an unknown local rule and more local rules than there are", () => {
    expect(() => clubFindings({ family: "broom" as ClubFamily }, [])).toThrow('quantity-unreadable {"field":"family"');
    expect(() => clubFindings({ family: "iron" }, ["G-9" as LocalRule])).toThrow('quantity-unreadable {"field":"localRules"');
    expect(() => clubFindings({ family: "iron" }, ["G-1", "G-2", "G-10", "G-1"])).toThrow('list-of-wrong-size {"field":"localRules"');
  });
});
