import { describe, expect, it } from "vitest";
import type { Bend } from "../../../core/head/afterBend.ts";
import { bendAllowed } from "../../../core/head/bendAllowed.ts";
import { defaultBendLimits, type HeadConstruction, type HeadMaterial } from "../../../core/head/bendLimits.ts";
import { type Degrees, degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/bendLimits.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

type Head = Parameters<typeof bendAllowed>[0];

const head = (given: Partial<Head> = {}): Head => ({
  material: "carbon steel",
  construction: "forged",
  history: [],
  skilledTechnician: false,
  ...given,
});
const bend = (loft: number, lie = 0): Bend => ({ loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) });

describe(byTable(bendAllowed, "bendLimits", published), () => {
  it.each(published.rows)("$material, $construction, bent $bendDeg°, maker $makerLimitDeg, skill $skilledTechnician: $kind", (row) => {
    const asked = head({
      material: row.material as HeadMaterial,
      construction: row.construction as HeadConstruction,
      makerLimitDeg: row.makerLimitDeg as Degrees | null,
      skilledTechnician: row.skilledTechnician,
    });
    expect(bendAllowed(asked, bend(row.bendDeg)).kind).toBe(row.kind);
    expect(bendAllowed(asked, bend(-row.bendDeg)).kind).toBe(row.kind);
    expect(bendAllowed(asked, bend(0, row.bendDeg)).kind).toBe(row.kind);
  });
});

describe(byLaw(bendAllowed, "there and back is no bend of the metal undone: totals only grow"), () => {
  it("counts each plane's bends without their signs", () => {
    const history = [bend(1, -0.5), bend(-1, 0.25)];
    const answer = bendAllowed(head({ history }), bend(1, 0.25));
    expect(answer).toMatchObject({ kind: "warned", totalLoftDeg: 3, totalLieDeg: 1 });
    expect(answer.reasons).toEqual([{ code: "past-warning", plane: "loft", totalDeg: 3, limitDeg: 2 }]);
  });

  it("asks nothing of a bend of nothing, whatever the head and however often it was bent", () => {
    const tired = head({ material: "titanium", construction: "bonded fairway", history: [bend(5, 5)] });
    expect(bendAllowed(tired, bend(0))).toMatchObject({ kind: "allowed", reasons: [] });
  });
});

describe("bendAllowed", () => {
  it.each([
    [2, "allowed"],
    [2.01, "warned"],
    [4, "warned"],
    [4.01, "blocked"],
  ])("reads %d° in all as %s", (totalDeg, kind) => {
    expect(bendAllowed(head(), bend(totalDeg)).kind).toBe(kind);
    expect(bendAllowed(head({ history: [bend(-1)] }), bend(totalDeg - 1)).kind).toBe(kind);
  });

  it("adds tenths of a degree without tripping over their last digit", () => {
    expect(bendAllowed(head({ history: Array.from({ length: 19 }, () => bend(0.1)) }), bend(0.1)).kind).toBe("allowed");
    expect(bendAllowed(head({ history: Array.from({ length: 39 }, () => bend(0.1)) }), bend(0.1)).kind).toBe("warned");
  });

  it("leaves a plane that is not bent this time out of the reasons", () => {
    expect(bendAllowed(head({ history: [bend(4, 0)] }), bend(0, 1))).toMatchObject({ kind: "allowed", totalLoftDeg: 4, totalLieDeg: 1 });
    expect(bendAllowed(head({ history: [bend(0, 4)] }), bend(1, 0))).toMatchObject({ kind: "allowed", totalLoftDeg: 1, totalLieDeg: 4 });
  });

  it("gives every reason, with the limit each one broke", () => {
    const wood = head({ material: "titanium", construction: "bonded fairway", history: [bend(0, 0.5)] });
    expect(bendAllowed(wood, bend(1.5, 0.25))).toEqual({
      kind: "blocked",
      reasons: [
        { code: "maker-does-not-allow" },
        { code: "needs-skill" },
        { code: "past-limit", plane: "loft", totalDeg: 1.5, limitDeg: 1 },
        { code: "past-warning", plane: "lie", totalDeg: 0.75, limitDeg: 0 },
      ],
      limits: { warnAboveDeg: 0, blockAboveDeg: 1, onlyIfMakerAllows: true, needsSkill: true },
      totalLoftDeg: 1.5,
      totalLieDeg: 0.75,
    });
  });

  it("lets the maker's limit narrow the rule and never widen it", () => {
    expect(bendAllowed(head({ makerLimitDeg: degrees(1) }), bend(1.5))).toMatchObject({
      kind: "blocked",
      limits: { warnAboveDeg: 1, blockAboveDeg: 1 },
    });
    expect(bendAllowed(head({ makerLimitDeg: degrees(9) }), bend(5)).kind).toBe("blocked");
    expect(bendAllowed(head({ makerLimitDeg: degrees(0) }), bend(0, 0.5)).kind).toBe("blocked");
    expect(bendAllowed(head({ material: "titanium", makerLimitDeg: degrees(0) }), bend(1)).reasons[0]).toEqual({ code: "maker-does-not-allow" });
  });

  it("takes other limits than the shop's defaults", () => {
    const forged = { ...defaultBendLimits.byConstruction.forged, warnAboveDeg: degrees(0.5), blockAboveDeg: degrees(1) };
    const limits = { ...defaultBendLimits, byConstruction: { ...defaultBendLimits.byConstruction, forged } };
    expect(bendAllowed(head(), bend(0.75), limits).kind).toBe("warned");
    expect(bendAllowed(head(), bend(1.25), limits).kind).toBe("blocked");
  });

  it.each(["warnAboveDeg", "blockAboveDeg"])("refuses a %s below 0, past 20 or no number", (field) => {
    const of = (value: number) => () => {
      const hollow = { ...defaultBendLimits.byConstruction.hollow, [field]: value };
      return bendAllowed(head(), bend(1), { ...defaultBendLimits, byConstruction: { ...defaultBendLimits.byConstruction, hollow } });
    };
    expect(of(0)).not.toThrow();
    expect(of(20)).not.toThrow();
    for (const wrong of [-0.001, 20.001, Number.NaN]) {
      expect(of(wrong)).toThrow(`"field":"${field}"`);
    }
    const other = { ...defaultBendLimits.byMaterial.other, [field]: Number.NaN };
    const limits = { ...defaultBendLimits, byMaterial: { ...defaultBendLimits.byMaterial, other } };
    expect(() => bendAllowed(head(), bend(1), limits)).toThrow(`"field":"${field}"`);
  });

  it("refuses a maker's limit that is none, bends that are none and words it does not know", () => {
    for (const wrong of [-0.001, 20.001, Number.NaN]) {
      expect(() => bendAllowed(head({ makerLimitDeg: degrees(wrong) }), bend(1))).toThrow('"field":"makerLimitDeg"');
    }
    expect(bendAllowed(head({ makerLimitDeg: degrees(20) }), bend(1)).kind).toBe("allowed");
    expect(() => bendAllowed(head({ history: [bend(Number.NaN)] }), bend(1))).toThrow('"field":"loftChangeDeg"');
    expect(() => bendAllowed(head(), bend(1, Number.NaN))).toThrow('"field":"lieChangeDeg"');
    expect(() => bendAllowed(head({ material: "glass" as HeadMaterial }), bend(1))).toThrow('"field":"material"');
    expect(() => bendAllowed(head({ construction: "woven" as HeadConstruction }), bend(1))).toThrow('"field":"construction"');
  });

  it("takes a history of 200 bends and refuses one more", () => {
    const many = (count: number) => head({ history: Array.from({ length: count }, () => bend(0)) });
    expect(() => bendAllowed(many(200), bend(1))).not.toThrow();
    expect(() => bendAllowed(many(201), bend(1))).toThrow("list-of-wrong-size");
  });
});
