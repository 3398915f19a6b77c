import { describe, expect, it } from "vitest";
import { bendAllowed } from "../../../core/head/bendAllowed.ts";
import { bendLeft } from "../../../core/head/bendLeft.ts";
import { degrees } from "../../../core/quantity/units.ts";

type Made = Parameters<typeof bendLeft>[0];

const made = (given: Partial<Made>): Made => ({
  material: "carbon steel",
  construction: "forged",
  history: [],
  makerLimitDeg: null,
  skilledTechnician: false,
  ...given,
});
const bend = (loft: number, lie: number) => ({ loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) });
const nothing = { leftDeg: 0, unwarnedDeg: 0 };

describe("bendLeft (by hand)", () => {
  it("leaves 4° in each plane of a head never bent, the first 2 unwarned", () => {
    expect(bendLeft(made({}))).toEqual({ loft: { leftDeg: 4, unwarnedDeg: 2 }, lie: { leftDeg: 4, unwarnedDeg: 2 } });
  });

  it("takes off every bend there and back, plane by plane", () => {
    const { loft, lie } = bendLeft(made({ history: [bend(1, -0.5), bend(-1.5, 0)] }));
    expect([loft.leftDeg, loft.unwarnedDeg, lie.leftDeg, lie.unwarnedDeg]).toEqual([1.5, 0, 3.5, 1.5].map((left) => expect.closeTo(left, 12)));
  });

  it("leaves nothing below 0", () => {
    expect(bendLeft(made({ history: [bend(5, 0)] })).loft).toEqual(nothing);
  });

  it.each<[string, Partial<Made>, number]>([
    ["a hollow head of which its maker says nothing", { construction: "hollow" }, 0],
    ["a hollow head whose maker allows 3°", { construction: "hollow", makerLimitDeg: degrees(3) }, 3],
    ["a bonded fairway wood without the skill", { construction: "bonded fairway", makerLimitDeg: degrees(3) }, 0],
    ["a bonded fairway wood with the skill", { construction: "bonded fairway", makerLimitDeg: degrees(3), skilledTechnician: true }, 1],
    ["17-4 stainless", { material: "17-4 stainless" }, 2],
    ["a maker's narrower word", { makerLimitDeg: degrees(0.05) }, 0.05],
  ])("leaves of %s %d°", (_, given, leftDeg) => {
    expect(bendLeft(made(given)).loft.leftDeg).toBeCloseTo(leftDeg, 12);
  });

  it("says the same as asking for the bend itself", () => {
    const head = made({ history: [bend(0.7, 0)], material: "431 stainless" });
    const { leftDeg, unwarnedDeg } = bendLeft(head).loft;
    expect(["allowed", "warned"].map((_, at) => bendAllowed(head, bend(at === 0 ? unwarnedDeg : leftDeg, 0)).kind)).toEqual(["allowed", "warned"]);
    expect(bendAllowed(head, bend(leftDeg + 0.001, 0)).kind).toBe("blocked");
    expect(bendAllowed(head, bend(-unwarnedDeg - 0.001, 0)).kind).toBe("warned");
  });
});
