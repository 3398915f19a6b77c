import fc from "fast-check";
import { add, bignumber, cos, cosh, det, multiply, sin, sinh, subtract, unaryMinus } from "mathjs";
import { describe, expect, it } from "vitest";
import { cantileverRoot } from "../../../core/club/cantileverRoot.ts";
import { clampedShaftFrequency } from "../../../core/club/clampedShaftFrequency.ts";
import { exactShaftFrequency } from "../../../core/club/exactShaftFrequency.ts";
import { scaledFrequency } from "../../../core/club/scaledFrequency.ts";
import { stiffnessFromFrequency } from "../../../core/club/stiffnessFromFrequency.ts";
import { grams, millimetres, mmFromInches, newtonSquareMetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/cantileverTipMass.json" with { type: "json" };
import tapered from "../../../fixtures/published/taperedBeam.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { ritzSign } from "./beams.ts";
import { expectBounds } from "./refusals.ts";
import { expectReadingBounds, expectSetUpBounds, someReading, someSetUp } from "./someReading.ts";

/** A shaft whose part past a clamp of 127 mm is as long and as heavy as asked. */
const withFree = (freeLengthMm: number, freeMassG: number, stiffness = 50) => ({
  lengthMm: millimetres(freeLengthMm + 127),
  massG: grams((freeMassG * (freeLengthMm + 127)) / freeLengthMm),
  bendingStiffnessNm2: newtonSquareMetres(stiffness),
});

const anyFree = fc.record({
  lengthMm: fc.double({ min: 600, max: 1100, noNaN: true }),
  massG: fc.double({ min: 35, max: 120, noNaN: true }),
  stiffness: fc.double({ min: 5, max: 200, noNaN: true }),
  tipMassG: fc.double({ min: 10, max: 400, noNaN: true }),
});

describe(byTable(cantileverRoot, "cantileverTipMass", published), () => {
  it.each(published.roots)("is $root at a mass ratio of $massRatio", ({ massRatio, root }) => {
    expect(Math.abs(cantileverRoot(massRatio) - root)).toBeLessThan(published.tolerance.root);
  });
});

describe(byTable(exactShaftFrequency, "cantileverTipMass", published), () => {
  it.each(published.rows)("reads $exactCpm cpm at a stiffness of $bendingStiffnessNm2 N·m²", ({ bendingStiffnessNm2, exactCpm }) => {
    const shaft = withFree(published.freeLengthMm, published.freeMassG, bendingStiffnessNm2);
    const setUp = someSetUp({ tipMassG: grams(published.tipMassG) });
    expect(Math.abs(exactShaftFrequency(shaft, setUp).cpm - exactCpm)).toBeLessThan(published.tolerance.cpm);
    expect(exactShaftFrequency(shaft, setUp).setUp).toBe(setUp);
  });
});

describe(byTable(clampedShaftFrequency, "cantileverTipMass", published), () => {
  it.each(published.rows)("reads $rayleighCpm cpm at a stiffness of $bendingStiffnessNm2 N·m²", ({ bendingStiffnessNm2, rayleighCpm }) => {
    const shaft = withFree(published.freeLengthMm, published.freeMassG, bendingStiffnessNm2);
    const setUp = someSetUp({ tipMassG: grams(published.tipMassG) });
    expect(Math.abs(clampedShaftFrequency(shaft, setUp).cpm - rayleighCpm)).toBeLessThan(published.tolerance.cpm);
    expect(clampedShaftFrequency(shaft, setUp).setUp).toBe(setUp);
  });
});

describe(byTable(stiffnessFromFrequency, "cantileverTipMass", published), () => {
  it.each(published.rows)("finds $bendingStiffnessNm2 N·m² in $exactCpm cpm", ({ bendingStiffnessNm2, exactCpm }) => {
    const reading = someReading(exactCpm, { tipMassG: grams(published.tipMassG) });
    const found = stiffnessFromFrequency(reading, withFree(published.freeLengthMm, published.freeMassG));
    /** Stiffness goes with the square of the frequency. */
    expect(Math.abs(found / bendingStiffnessNm2 - 1)).toBeLessThan((2 * published.tolerance.cpm) / exactCpm);
  });
});

describe(byTable(scaledFrequency, "taperedBeam", tapered), () => {
  it("gains 5.1 cpm of 260 by half an inch, as the uniform power law says", () => {
    const { readCpm, tipMassG, tipMassBeyondTipMm, rawIn, buttTrimIn, rawMassG } = tapered.clubs.driver;
    const cutIn = rawIn - buttTrimIn;
    const shaft = { lengthMm: mmFromInches(cutIn), massG: grams((rawMassG * cutIn) / rawIn) };
    const reading = someReading(readCpm, { tipMassG: grams(tipMassG), tipMassBeyondTipMm: millimetres(tipMassBeyondTipMm) });
    const to = { lengthMm: mmFromInches(cutIn - tapered.uniformLaw.shorterIn), tipMassG: grams(tipMassG) };
    const gained = scaledFrequency(reading, shaft, to).cpm - readCpm;
    expect(Math.abs(gained - tapered.uniformLaw.effectCpm)).toBeLessThan(tapered.tolerance.uniformLawCpm);
  });
});

/** The conditions at the tip for w = A(cos − cosh) + B(sin − sinh), moment none and shear that of the mass; zero at a root. */
function tipConditions(beta: number, massRatio: number): number {
  const b = bignumber(beta);
  const mub = multiply(bignumber(massRatio), b);
  const [c, s, ch, sh] = [cos(b), sin(b), cosh(b), sinh(b)];
  return Number(
    det([
      [unaryMinus(add(c, ch)), unaryMinus(add(s, sh))],
      [add(subtract(s, sh), multiply(mub, subtract(c, ch))), add(unaryMinus(add(c, ch)), multiply(mub, subtract(s, sh)))],
    ] as never),
  );
}

describe(byLibrary(cantileverRoot, "mathjs", "the determinant of the conditions at the tip, in 64 digits, turns its sign there"), () => {
  it("holds the root within 1e-12", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (massRatio) => {
        const root = cantileverRoot(massRatio);
        expect(tipConditions(root * (1 - 1e-12), massRatio)).toBeGreaterThan(0);
        expect(tipConditions(root * (1 + 1e-12), massRatio)).toBeLessThan(0);
        expect(tipConditions(root / 2, massRatio)).toBeGreaterThan(0);
      }),
      { numRuns: 40 },
    );
  });
});

describe(byLibrary(exactShaftFrequency, "mathjs", "the determinant of Ritz's method with polynomials, in 64 digits, turns its sign there"), () => {
  it("is held within 1e-9, the mass at the tip", () => {
    fc.assert(
      fc.property(anyFree, ({ lengthMm, massG, stiffness, tipMassG }) => {
        const density = massG / lengthMm;
        const beam = {
          lengthM: lengthMm / 1000,
          stiffness: [stiffness, stiffness],
          density: [density, density],
          tipMassKg: tipMassG / 1000,
          beyondM: 0,
          inertiaKgM2: 0,
        } as const;
        const { cpm } = exactShaftFrequency(withFree(lengthMm, massG, stiffness), someSetUp({ tipMassG: grams(tipMassG) }));
        const omega = (cpm * 2 * Math.PI) / 60;
        expect(ritzSign(beam, omega / 3)).toBe(1);
        expect(ritzSign(beam, omega * (1 - 1e-9))).toBe(1);
        expect(ritzSign(beam, omega * (1 + 1e-9))).toBe(-1);
      }),
      { numRuns: 25 },
    );
  });
});

describe.each([
  ["exact", exactShaftFrequency],
  ["Rayleigh", clampedShaftFrequency],
] as const)("%s", (_, frequency) => {
  describe(byLaw(frequency, "twice the free length, all masses kept, divides it by √8; four times the stiffness doubles it"), () => {
    it("scales", () => {
      fc.assert(
        fc.property(anyFree, ({ lengthMm, massG, stiffness, tipMassG }) => {
          const setUp = someSetUp({ tipMassG: grams(tipMassG) });
          const { cpm } = frequency(withFree(lengthMm / 2, massG, stiffness), setUp);
          expect(frequency(withFree(lengthMm, massG, stiffness), setUp).cpm * Math.sqrt(8)).toBeCloseTo(cpm, 8);
          expect(frequency(withFree(lengthMm / 2, massG, stiffness * 4), setUp).cpm).toBeCloseTo(2 * cpm, 8);
        }),
      );
    });
  });

  describe(byLaw(frequency, "with all but no mass of its own the shaft is a spring of 3·EI/L³; more head mass lowers it"), () => {
    it("nears the spring from below and falls with the head", () => {
      const read = (massG: number, tipMassG: number) => frequency(withFree(1000, massG), someSetUp({ tipMassG: grams(tipMassG) })).cpm;
      const spring = (60 / (2 * Math.PI)) * Math.sqrt((3 * 50) / 0.2);
      expect(Math.abs(read(0.1, 200) / spring - 1)).toBeLessThan(1e-4);
      expect(read(0.1, 200)).toBeLessThan(spring);
      expect(read(60, 202)).toBeLessThan(read(60, 200));
    });
  });

  describe(`${frequency.name}, refusals`, () => {
    it("counts the free length to the centre of the tip mass", () => {
      const shaft = withFree(1000, 60);
      const beyond = frequency(shaft, someSetUp({ tipMassBeyondTipMm: millimetres(20) })).cpm;
      expect(beyond).toBeCloseTo(frequency({ ...withFree(1020, 60), bendingStiffnessNm2: shaft.bendingStiffnessNm2 }, someSetUp()).cpm, 9);
    });

    it("refuses a shaft or a set-up that cannot be", () => {
      const shaft = withFree(1000, 60);
      expectBounds((ei) => frequency({ ...shaft, bendingStiffnessNm2: newtonSquareMetres(ei) }, someSetUp()), {
        lowest: 1e-3,
        highest: 1e5,
        step: 1e-4,
      });
      expectBounds((g) => frequency({ ...shaft, massG: grams(g) }, someSetUp()), { lowest: 0.1, highest: 500, step: 0.01 });
      expectBounds((mm) => frequency({ ...shaft, lengthMm: millimetres(mm) }, someSetUp()), { lowest: 128, highest: 2000, step: 0.1 });
      expectSetUpBounds((setUp) => frequency(shaft, setUp));
    });

    it("refuses a free length of less than 1 mm, with the tip mass or without", () => {
      const short = { ...withFree(1000, 60), lengthMm: millimetres(227) };
      const at = (mm: number) => frequency(short, someSetUp({ tipMassBeyondTipMm: millimetres(mm) }));
      expect(() => at(-99)).not.toThrow();
      expect(() => at(-99.1)).toThrow("quantity-out-of-range");
      const bare = { ...short, lengthMm: millimetres(1) };
      expect(() => frequency(bare, someSetUp({ clampMm: millimetres(0) }))).not.toThrow();
      expect(() => frequency({ ...bare, lengthMm: millimetres(0.9) }, someSetUp({ clampMm: millimetres(0) }))).toThrow(/"lengthMm"/);
    });
  });
});

describe(byLaw(clampedShaftFrequency, "reads above the exact root, the less the heavier the head: 1.5 %, 0.05 %, 0.01 %"), () => {
  it.each([
    [0, 0.014, 0.0155],
    [60, 0.0004, 0.0006],
    [180, 0.00005, 0.0001],
  ])("with %d g on 60 g of shaft", (tipMassG, least, most) => {
    const [shaft, setUp] = [withFree(1000, 60), someSetUp({ tipMassG: grams(tipMassG) })];
    const above = clampedShaftFrequency(shaft, setUp).cpm / exactShaftFrequency(shaft, setUp).cpm - 1;
    expect(above).toBeGreaterThan(least);
    expect(above).toBeLessThan(most);
  });
});

describe(byLaw(stiffnessFromFrequency, "undoes the exact frequency"), () => {
  it("finds back the stiffness", () => {
    fc.assert(
      fc.property(anyFree, ({ lengthMm, massG, stiffness, tipMassG }) => {
        const shaft = withFree(lengthMm, massG, stiffness);
        const reading = exactShaftFrequency(shaft, someSetUp({ tipMassG: grams(tipMassG), tipMassBeyondTipMm: millimetres(19) }));
        expect(Math.abs(stiffnessFromFrequency(reading, shaft) / stiffness - 1)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe(byLaw(scaledFrequency, "stays where nothing changes, and follows Rayleigh where only the head does"), () => {
  it("goes with the head as Rayleigh's formula does, and comes back", () => {
    fc.assert(
      fc.property(anyFree, fc.double({ min: 10, max: 400, noNaN: true }), ({ lengthMm, massG, stiffness, tipMassG }, nextG) => {
        const shaft = withFree(lengthMm, massG, stiffness);
        const reading = clampedShaftFrequency(shaft, someSetUp({ tipMassG: grams(tipMassG) }));
        const next = scaledFrequency(reading, shaft, { lengthMm: shaft.lengthMm, tipMassG: grams(nextG) });
        expect(next.cpm).toBeCloseTo(clampedShaftFrequency(shaft, someSetUp({ tipMassG: grams(nextG) })).cpm, 8);
        expect(next.setUp).toEqual(someSetUp({ tipMassG: grams(nextG) }));
        expect(scaledFrequency(reading, shaft, { lengthMm: shaft.lengthMm, tipMassG: grams(tipMassG) }).cpm).toBeCloseTo(reading.cpm, 9);
      }),
    );
  });

  it("divides by √8 for twice the free length", () => {
    const shaft = withFree(500, 60);
    expect(scaledFrequency(someReading(800), shaft, { lengthMm: millimetres(1127), tipMassG: grams(200) }).cpm).toBeCloseTo(800 / Math.sqrt(8), 9);
  });
});

describe("cantileverRoot", () => {
  it("refuses a mass ratio that cannot be", () => {
    expectBounds(cantileverRoot, { lowest: 0, highest: 1e5, step: 0.1 });
  });
});

describe("stiffnessFromFrequency", () => {
  it("refuses a reading or a shaft that cannot be", () => {
    const shaft = withFree(1000, 60);
    expectReadingBounds((reading) => stiffnessFromFrequency(reading, shaft));
    expectBounds((g) => stiffnessFromFrequency(someReading(250), { ...shaft, massG: grams(g) }), { lowest: 0.1, highest: 500, step: 0.01 });
    expectBounds((mm) => stiffnessFromFrequency(someReading(250), { ...shaft, lengthMm: millimetres(mm) }), {
      lowest: 128,
      highest: 2000,
      step: 0.1,
    });
  });
});

describe("scaledFrequency", () => {
  it("refuses a reading, a shaft or an aim that cannot be", () => {
    const shaft = withFree(1000, 60);
    const to = { lengthMm: shaft.lengthMm, tipMassG: grams(205) };
    expectReadingBounds((reading) => scaledFrequency(reading, shaft, to));
    expectBounds((g) => scaledFrequency(someReading(250), { ...shaft, massG: grams(g) }, to), { lowest: 0.1, highest: 500, step: 0.01 });
    expectBounds((mm) => scaledFrequency(someReading(250), { ...shaft, lengthMm: millimetres(mm) }, to), { lowest: 128, highest: 2000, step: 0.1 });
    expectBounds((mm) => scaledFrequency(someReading(250), shaft, { ...to, lengthMm: millimetres(mm) }), { lowest: 128, highest: 2000, step: 0.1 });
    expectBounds((g) => scaledFrequency(someReading(250), shaft, { ...to, tipMassG: grams(g) }), { lowest: 0, highest: 2000, step: 0.1 });
  });
});
