import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frequencyDifference } from "../../../core/club/frequencyDifference.ts";
import { sameSetUp } from "../../../core/club/sameSetUp.ts";
import { degrees, grams, kilogramSquareCentimetres, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/frequencySetUps.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { expectReadingBounds, expectSetUpBounds, someReading, someSetUp } from "./someReading.ts";

const anySetUp = fc
  .record({
    clampMm: fc.constantFrom(127, 127.9, 63.5),
    tipMassG: fc.constantFrom(200, 200.4, 205),
    gripOn: fc.boolean(),
    planeDeg: fc.constantFrom(0, 4, 90, 178),
  })
  .map(({ clampMm, tipMassG, gripOn, planeDeg }) => ({
    clampMm: millimetres(clampMm),
    tipMassG: grams(tipMassG),
    gripOn,
    planeDeg: degrees(planeDeg),
  }));

const changes = published.rows.map(({ change, differs, one, other }) => {
  const setUp = (given: typeof one) => someSetUp({ clampMm: millimetres(given.clampMm), planeDeg: degrees(given.planeDeg) });
  return { change, differs, one: setUp(one), other: setUp(other) };
});

describe(byTable(sameSetUp, "frequencySetUps", published), () => {
  it.each(changes)("refuses $change", ({ differs, one, other }) => {
    expect(sameSetUp(one, other)).toEqual({ kind: "refused", differs: [differs] });
  });
});

describe(byTable(frequencyDifference, "frequencySetUps", published), () => {
  it.each(changes)("refuses to compare over $change", ({ differs, one, other }) => {
    expect(frequencyDifference({ ...someReading(255), setUp: one }, { ...someReading(250), setUp: other })).toEqual({
      kind: "refused",
      differs: [differs],
    });
  });
});

describe(byLaw(sameSetUp, "does not depend on which is named first"), () => {
  it("says the same both ways round", () => {
    fc.assert(
      fc.property(anySetUp, anySetUp, (one, other) => {
        expect(sameSetUp(one, other)).toEqual(sameSetUp(other, one));
      }),
    );
  });
});

describe(byLaw(frequencyDifference, "turns its sign with the order"), () => {
  it("is what one is above the other", () => {
    expect(frequencyDifference(someReading(255), someReading(250))).toEqual({ kind: "compared", differenceCpm: 5 });
    expect(frequencyDifference(someReading(250), someReading(255))).toEqual({ kind: "compared", differenceCpm: -5 });
  });
});

describe("sameSetUp", () => {
  it.each([
    ["clampMm", { clampMm: millimetres(128) }, { clampMm: millimetres(128.1) }],
    ["tipMassG", { tipMassG: grams(200.5) }, { tipMassG: grams(200.6) }],
    ["gripOn", { gripOn: false }, { gripOn: true }],
    ["planeDeg", { planeDeg: degrees(15) }, { planeDeg: degrees(15.1) }],
    ["tipMassBeyondTipMm", { tipMassBeyondTipMm: millimetres(20) }, { tipMassBeyondTipMm: millimetres(20.1) }],
    ["tipMassInertiaKgCm2", { tipMassInertiaKgCm2: kilogramSquareCentimetres(4) }, { tipMassInertiaKgCm2: kilogramSquareCentimetres(4.1) }],
  ])("lets a little through and no more: %s", (field, near, far) => {
    const setUp = {
      ...someSetUp(),
      planeDeg: degrees(10),
      tipMassBeyondTipMm: millimetres(19),
      tipMassInertiaKgCm2: kilogramSquareCentimetres(3),
    };
    expect(sameSetUp(setUp, { ...setUp, ...near })).toEqual({ kind: "same" });
    expect(sameSetUp(setUp, { ...setUp, ...far })).toEqual({ kind: "refused", differs: [field] });
  });

  it("names everything that differs", () => {
    const other = someSetUp({ clampMm: millimetres(63.5), tipMassG: grams(255), gripOn: true, planeDeg: degrees(90) });
    expect(sameSetUp(someSetUp(), other)).toEqual({ kind: "refused", differs: ["clampMm", "tipMassG", "gripOn", "planeDeg"] });
  });

  it("takes planes half a turn apart for one, and a plane noted once only for another", () => {
    const plane = (deg: number) => someSetUp({ planeDeg: degrees(deg) });
    expect(sameSetUp(plane(2), plane(178))).toEqual({ kind: "same" });
    expect(sameSetUp(plane(0), someSetUp())).toEqual({ kind: "refused", differs: ["planeDeg"] });
    expect(sameSetUp(someSetUp(), plane(0))).toEqual({ kind: "refused", differs: ["planeDeg"] });
    expect(sameSetUp(someSetUp(), someSetUp())).toEqual({ kind: "same" });
  });

  it("does not miss a detail of the tip mass that one side did not note", () => {
    const noted = someSetUp({ tipMassBeyondTipMm: millimetres(19), tipMassInertiaKgCm2: kilogramSquareCentimetres(4) });
    expect(sameSetUp(noted, someSetUp())).toEqual({ kind: "same" });
    expect(sameSetUp(someSetUp(), noted)).toEqual({ kind: "same" });
  });

  it("refuses a set-up that cannot be, on either side", () => {
    expectSetUpBounds((setUp) => sameSetUp(setUp, someSetUp()));
    expectSetUpBounds((setUp) => sameSetUp(someSetUp(), setUp));
  });
});

describe("frequencyDifference", () => {
  it("refuses a reading that cannot be, on either side", () => {
    expectReadingBounds((reading) => frequencyDifference(reading, someReading(250)));
    expectReadingBounds((reading) => frequencyDifference(someReading(250), reading));
  });
});
