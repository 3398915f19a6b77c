import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactShaftFrequency } from "../../../core/club/exactShaftFrequency.ts";
import { BUTT_TO_TIP_STIFFNESS, frequencyAfterTrim } from "../../../core/club/frequencyAfterTrim.ts";
import { type TaperedShaft, taperedBeamFrequency } from "../../../core/club/taperedBeamFrequency.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches, newtonSquareMetres } from "../../../core/quantity/units.ts";
import setUps from "../../../fixtures/published/frequencySetUps.json" with { type: "json" };
import published from "../../../fixtures/published/taperedBeam.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { type Beam, ritzSign, shootingSign } from "./beams.ts";
import { expectBounds } from "./refusals.ts";
import { expectReadingBounds, expectSetUpBounds, someReading, someSetUp } from "./someReading.ts";

type Club = (typeof published.clubs)["driver"];
type Row = Pick<(typeof published.rows)[number], "tipMoreIn" | "buttMoreIn" | "massMoreG" | "clampIn">;

const clubOf = (name: string): Club => (name === "driver" ? published.clubs.driver : published.clubs.iron);

const shaftOf = (club: Club) => ({
  rawLengthMm: mmFromInches(club.rawIn),
  rawMassG: grams(club.rawMassG),
  balanceFromTipMm: mmFromInches(club.rawIn / 2),
  cut: { tipTrimMm: mmFromInches(club.tipTrimIn), buttTrimMm: mmFromInches(club.buttTrimIn) },
});

const readingOf = (club: Club) =>
  someReading(club.readCpm, {
    clampMm: mmFromInches(published.clampIn),
    tipMassG: grams(club.tipMassG),
    tipMassBeyondTipMm: millimetres(club.tipMassBeyondTipMm),
  });

const nextOf = (club: Club, row: Row) => ({
  tipTrimMm: mmFromInches(club.tipTrimIn + row.tipMoreIn),
  buttTrimMm: mmFromInches(club.buttTrimIn + row.buttMoreIn),
  tipMassG: grams(club.tipMassG + row.massMoreG),
  clampMm: mmFromInches(row.clampIn),
});

const effect = (club: Club, row: Row) => frequencyAfterTrim(readingOf(club), shaftOf(club), nextOf(club, row)).cpm - club.readCpm;

const someTaper = (given: Partial<TaperedShaft> = {}): TaperedShaft => ({
  lengthMm: millimetres(1100),
  massG: grams(62),
  balanceFromTipMm: millimetres(570),
  tipStiffnessNm2: newtonSquareMetres(18),
  buttStiffnessNm2: newtonSquareMetres(72),
  ...given,
});

const anyTaper = fc.record({
  lengthMm: fc.double({ min: 850, max: 1150, noNaN: true }),
  massG: fc.double({ min: 45, max: 120, noNaN: true }),
  balanceShare: fc.double({ min: 0.45, max: 0.56, noNaN: true }),
  tipStiffness: fc.double({ min: 8, max: 40, noNaN: true }),
  ratio: fc.double({ min: 1, max: 5, noNaN: true }),
  tipMassG: fc.double({ min: 150, max: 320, noNaN: true }),
  beyondMm: fc.double({ min: -10, max: 50, noNaN: true }),
  inertia: fc.double({ min: 0, max: 8, noNaN: true }),
});

/** A shaft with its set-up, and the same as a plain beam in SI units. */
function both(some: Parameters<Parameters<typeof anyTaper.map>[0]>[0]) {
  const { lengthMm: L, massG: m } = some;
  const freeMm = L - 127;
  const butt = some.tipStiffness * some.ratio;
  const [slope, middle] = [(12 * m * (some.balanceShare - 0.5)) / L ** 2, m / L];
  const density = (fromTipMm: number) => middle + slope * (fromTipMm - L / 2);
  const shaft = someTaper({
    lengthMm: millimetres(L),
    massG: grams(m),
    balanceFromTipMm: millimetres(some.balanceShare * L),
    tipStiffnessNm2: newtonSquareMetres(some.tipStiffness),
    buttStiffnessNm2: newtonSquareMetres(butt),
  });
  const setUp = someSetUp({
    tipMassG: grams(some.tipMassG),
    tipMassBeyondTipMm: millimetres(some.beyondMm),
    tipMassInertiaKgCm2: kilogramSquareCentimetres(some.inertia),
  });
  const beam: Beam = {
    lengthM: freeMm / 1000,
    stiffness: [some.tipStiffness + ((butt - some.tipStiffness) * freeMm) / L, some.tipStiffness],
    density: [density(freeMm), density(0)],
    tipMassKg: some.tipMassG / 1000,
    beyondM: some.beyondMm / 1000,
    inertiaKgM2: some.inertia / 1e4,
  };
  return { shaft, setUp, beam };
}

const radiansASecond = (cpm: number) => (cpm * 2 * Math.PI) / 60;

describe(byTable(frequencyAfterTrim, "taperedBeam", published), () => {
  it.each(published.rows)("moves a $club by $effectCpm cpm with $change", ({ club, effectCpm, ...row }) => {
    expect(Math.abs(effect(clubOf(club), row) - effectCpm)).toBeLessThan(published.tolerance.modelCpm);
  });

  it("takes a butt three to five times as stiff as the tip", () => {
    expect(BUTT_TO_TIP_STIFFNESS).toBeGreaterThanOrEqual(published.buttToTipStiffness.least);
    expect(BUTT_TO_TIP_STIFFNESS).toBeLessThanOrEqual(published.buttToTipStiffness.most);
  });

  it("spaces irons by four to five cpm a club when each is tipped half an inch more", () => {
    const { club, minCpm, maxCpm, tipMoreIn, massMoreG } = published.setSpacing;
    const spacing = effect(clubOf(club), { tipMoreIn, buttMoreIn: 0, massMoreG, clampIn: published.clampIn });
    expect(spacing).toBeGreaterThan(minCpm);
    expect(spacing).toBeLessThan(maxCpm);
  });
});

describe(byTable(taperedBeamFrequency, "frequencySetUps", setUps), () => {
  it("reads higher in a clamp of 5 in than in one of 2.5 in", () => {
    const read = (clampIn: number) => taperedBeamFrequency(someTaper(), someSetUp({ clampMm: mmFromInches(clampIn) })).cpm;
    expect(read(setUps.clampsIn.higher)).toBeGreaterThan(read(setUps.clampsIn.lower));
  });
});

describe(byLibrary(taperedBeamFrequency, "mathjs", "determinants of Ritz's method with polynomials, and of Runge–Kutta shooting"), () => {
  it.each([
    ["Ritz's method", ritzSign],
    ["shooting", shootingSign],
  ] as const)("is held within 2e-8 by %s for any taper, any offset and inertia of the head", (_, sign) => {
    fc.assert(
      fc.property(anyTaper, (some) => {
        const { shaft, setUp, beam } = both(some);
        const omega = radiansASecond(taperedBeamFrequency(shaft, setUp).cpm);
        expect(sign(beam, omega / 3)).toBe(1);
        expect(sign(beam, omega * (1 - 2e-8))).toBe(1);
        expect(sign(beam, omega * (1 + 2e-8))).toBe(-1);
      }),
      { numRuns: 25 },
    );
  });
});

describe(byLaw(taperedBeamFrequency, "without taper it is the exact root of the uniform beam"), () => {
  it.each([0, 60, 200, 400])("agrees to 1e-8 with a tip mass of %d g", (tipMassG) => {
    const even = someTaper({ balanceFromTipMm: millimetres(550), buttStiffnessNm2: newtonSquareMetres(18) });
    const setUp = someSetUp({ tipMassG: grams(tipMassG) });
    const exact = exactShaftFrequency({ lengthMm: even.lengthMm, massG: even.massG, bendingStiffnessNm2: newtonSquareMetres(18) }, setUp);
    const tapered = taperedBeamFrequency(even, setUp);
    expect(Math.abs(tapered.cpm / exact.cpm - 1)).toBeLessThan(1e-8);
    expect(tapered.setUp).toBe(setUp);
  });
});

describe(byLaw(taperedBeamFrequency, "grows with the root of the stiffness, falls with the head's mass, reach and inertia"), () => {
  it("doubles with four times the stiffness", () => {
    const four = someTaper({ tipStiffnessNm2: newtonSquareMetres(72), buttStiffnessNm2: newtonSquareMetres(288) });
    expect(taperedBeamFrequency(four, someSetUp()).cpm / taperedBeamFrequency(someTaper(), someSetUp()).cpm).toBeCloseTo(2, 7);
  });

  it.each([
    ["a heavier head", { tipMassG: grams(202) }],
    ["a head farther past the tip", { tipMassBeyondTipMm: millimetres(5) }],
    ["a head with inertia", { tipMassInertiaKgCm2: kilogramSquareCentimetres(4) }],
    ["a shorter clamp", { clampMm: millimetres(120) }],
  ])("is lower with %s", (_, given) => {
    expect(taperedBeamFrequency(someTaper(), someSetUp(given)).cpm).toBeLessThan(taperedBeamFrequency(someTaper(), someSetUp()).cpm - 0.1);
  });
});

describe(byLaw(frequencyAfterTrim, "trimming nothing changes nothing, and there and back again is nothing"), () => {
  it("keeps the reading and its set-up", () => {
    const reading = readingOf(published.clubs.driver);
    const shaft = shaftOf(published.clubs.driver);
    expect(frequencyAfterTrim(reading, shaft, shaft.cut)).toEqual({ cpm: expect.closeTo(260, 9), setUp: reading.setUp });
    const next = { tipTrimMm: millimetres(12), buttTrimMm: millimetres(80), tipMassG: grams(205), clampMm: millimetres(100) };
    const there = frequencyAfterTrim(reading, shaft, next);
    expect(there.setUp).toEqual({ ...reading.setUp, tipMassG: 205, clampMm: 100 });
    const back = frequencyAfterTrim(there, { ...shaft, cut: next }, { ...shaft.cut, tipMassG: grams(200), clampMm: millimetres(127) });
    expect(back.cpm).toBeCloseTo(260, 6);
  });
});

describe(byLaw(frequencyAfterTrim, "without taper, tip and butt are one, and the change is that of the exact root"), () => {
  it("does not care which end is cut", () => {
    const { cut, ...raw } = shaftOf(published.clubs.driver);
    const reading = someReading(260);
    const even = { ...raw, cut, buttToTipStiffness: 1 };
    const tip = frequencyAfterTrim(reading, even, { ...cut, tipTrimMm: mmFromInches(1) });
    const butt = frequencyAfterTrim(reading, even, { ...cut, buttTrimMm: millimetres(cut.buttTrimMm + 25.4) });
    const exact = (lengthMm: number) =>
      exactShaftFrequency(
        {
          lengthMm: millimetres(lengthMm),
          massG: grams((raw.rawMassG * lengthMm) / raw.rawLengthMm),
          bendingStiffnessNm2: newtonSquareMetres(50),
        },
        someSetUp(),
      ).cpm;
    const lengthMm = raw.rawLengthMm - cut.buttTrimMm;
    expect(tip.cpm).toBeCloseTo(butt.cpm, 6);
    expect(butt.cpm).toBeCloseTo((260 * exact(lengthMm - 25.4)) / exact(lengthMm), 6);
  });

  it("takes a taper of 4 when none is told", () => {
    const shaft = shaftOf(published.clubs.driver);
    const next = nextOf(published.clubs.driver, { tipMoreIn: 1, buttMoreIn: -1, massMoreG: 0, clampIn: 5 });
    const reading = readingOf(published.clubs.driver);
    expect(frequencyAfterTrim(reading, shaft, next)).toEqual(frequencyAfterTrim(reading, { ...shaft, buttToTipStiffness: 4 }, next));
  });
});

describe("taperedBeamFrequency", () => {
  it("refuses a shaft or a set-up that cannot be", () => {
    const read = (given: Partial<TaperedShaft>) => taperedBeamFrequency(someTaper(given), someSetUp());
    const half = (mm: number) => read({ lengthMm: millimetres(mm), balanceFromTipMm: millimetres(mm / 2) });
    expectBounds(half, { lowest: 128, highest: 2000, step: 0.1 });
    expectBounds((g) => read({ massG: grams(g) }), { lowest: 1e-3, highest: 500, step: 0.1 });
    expectBounds((mm) => read({ balanceFromTipMm: millimetres(mm) }), { step: 0.1 });
    expectBounds((ei) => read({ tipStiffnessNm2: newtonSquareMetres(ei) }), { lowest: 1e-3, highest: 1e5, step: 1e-4 });
    expectBounds((ei) => read({ buttStiffnessNm2: newtonSquareMetres(ei) }), { lowest: 1e-3, highest: 1e5, step: 1e-4 });
    expectSetUpBounds((setUp) => taperedBeamFrequency(someTaper(), setUp));
  });
});

describe("frequencyAfterTrim", () => {
  const shaft = shaftOf(published.clubs.driver);
  const predict = (given: object, next: object = {}) => frequencyAfterTrim(someReading(260), { ...shaft, ...given }, { ...shaft.cut, ...next });

  it("refuses a reading that cannot be", () => {
    expectReadingBounds((reading) => frequencyAfterTrim(reading, shaft, shaft.cut));
  });

  it("refuses a shaft that cannot be", () => {
    expectBounds((rawLengthMm) => predict({ rawLengthMm, balanceFromTipMm: rawLengthMm / 2 }), { highest: 2000, step: 0.1 });
    expectBounds((rawMassG) => predict({ rawMassG }), { lowest: 1e-3, highest: 500, step: 0.1 });
    expectBounds((balanceFromTipMm) => predict({ balanceFromTipMm }), { step: 0.1 });
    expectBounds((tipTrimMm) => predict({ cut: { ...shaft.cut, tipTrimMm } }), { lowest: 0, step: 0.1 });
    expectBounds((buttTrimMm) => predict({ cut: { ...shaft.cut, buttTrimMm } }), { lowest: 0, step: 0.1 });
    expectBounds((buttToTipStiffness) => predict({ buttToTipStiffness }), { lowest: 0.5, highest: 20, step: 0.1 });
  });

  it("refuses an aim that cannot be", () => {
    expectBounds((tipTrimMm) => predict({}, { tipTrimMm }), { lowest: 0, step: 0.1 });
    expectBounds((buttTrimMm) => predict({}, { buttTrimMm }), { lowest: 0, step: 0.1 });
    expectBounds((tipMassG) => predict({}, { tipMassG }), { lowest: 0, highest: 2000, step: 0.1 });
    expectBounds((clampMm) => predict({}, { clampMm }), { lowest: 0, highest: 500, step: 0.1 });
  });
});
