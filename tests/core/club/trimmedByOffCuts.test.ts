import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { trimmedByOffCuts } from "../../../core/club/trimmedByOffCuts.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { grams, millimetres } from "../../../core/quantity/units.ts";
import { byLaw } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const raw = { rawLengthMm: millimetres(1000), rawMassG: grams(100), balanceFromTipMm: millimetres(520) };
const piece = (lengthMm: number, massG: number) => ({ lengthMm: millimetres(lengthMm), massG: grams(massG) });

describe(byLaw(trimmedByOffCuts, "pieces of an even shaft, weighed and balanced, leave what the integrals leave"), () => {
  it("agrees with the trimmed shaft to 1e-9", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 380, max: 620, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 120, noNaN: true }),
        (balanceMm, tipMm, buttMm) => {
          const shaft = { ...raw, balanceFromTipMm: millimetres(balanceMm) };
          const [tip, butt] = [
            trimmedShaft(shaft, millimetres(0), millimetres(1000 - tipMm)),
            trimmedShaft(shaft, millimetres(1000 - buttMm), millimetres(0)),
          ];
          const left = trimmedByOffCuts(shaft, { tip, butt });
          const wanted = trimmedShaft(shaft, millimetres(tipMm), millimetres(buttMm));
          expect(left.lengthMm).toBeCloseTo(wanted.lengthMm, 9);
          expect(left.massG).toBeCloseTo(wanted.massG, 9);
          expect(left.balanceFromTipMm).toBeCloseTo(wanted.balanceFromTipMm, 8);
          expect(left.balanceFromButtMm).toBeCloseTo(wanted.balanceFromButtMm, 8);
          expect(left.ownInertiaKgCm2).toBeCloseTo(wanted.ownInertiaKgCm2, 8);
        },
      ),
    );
  });
});

describe(byLaw(trimmedByOffCuts, "mass and moment of the pieces and of what is left make up the raw shaft"), () => {
  it("keeps mass and moment with a heavy butt piece, taken at its middle or balanced", () => {
    const butt = piece(50, 12);
    const middle = trimmedByOffCuts(raw, { tip: piece(20, 1.5), butt });
    expect(middle.massG).toBeCloseTo(86.5, 9);
    expect(middle.lengthMm).toBeCloseTo(930, 9);
    expect(1.5 * 10 + 12 * 975 + middle.massG * (20 + middle.balanceFromTipMm)).toBeCloseTo(100 * 520, 6);
    const balanced = trimmedByOffCuts(raw, { tip: piece(20, 1.5), butt: { ...butt, balanceFromTipMm: millimetres(40) } });
    expect(1.5 * 10 + 12 * 990 + balanced.massG * (20 + balanced.balanceFromTipMm)).toBeCloseTo(100 * 520, 6);
  });

  it("leaves a shaft as it is when nothing was cut", () => {
    const left = trimmedByOffCuts(raw, { tip: null, butt: null });
    expect([left.lengthMm, left.massG, left.balanceFromTipMm]).toEqual([1000, expect.closeTo(100, 9), expect.closeTo(520, 9)]);
  });
});

describe("trimmedByOffCuts", () => {
  it.each(["tip", "butt"] as const)("refuses a %s piece that cannot be", (which) => {
    const cut = (given: object) => trimmedByOffCuts(raw, { tip: null, butt: null, [which]: { ...piece(20, 2), ...given } });
    expectBounds((lengthMm) => cut({ lengthMm }), { lowest: 1e-6, step: 0.1 });
    expect(() => cut({ lengthMm: 0 })).toThrow(`${which} lengthMm`);
    expectBounds((massG) => cut({ massG }), { lowest: 0, step: 0.1 });
    expectBounds((balanceFromTipMm) => cut({ balanceFromTipMm }), { lowest: 0, highest: 20, step: 0.1 });
  });

  it("refuses pieces that leave no shaft or no mass", () => {
    expect(() => trimmedByOffCuts(raw, { tip: piece(500, 40), butt: piece(499.5, 40) })).toThrow(/trimmedLengthMm/);
    expect(() => trimmedByOffCuts(raw, { tip: piece(20, 50), butt: piece(20, 50) })).toThrow(/trimmedMassG/);
  });

  it("refuses a raw shaft that cannot be", () => {
    expectBounds((mm) => trimmedByOffCuts({ ...raw, rawLengthMm: millimetres(mm) }, { tip: null, butt: null }), { highest: 1500, step: 600 });
    expectBounds((g) => trimmedByOffCuts({ ...raw, rawMassG: grams(g) }, { tip: null, butt: null }), { highest: 500, step: 0.1 });
    expect(() => trimmedByOffCuts({ ...raw, balanceFromTipMm: millimetres(Number.NaN) }, { tip: null, butt: null })).toThrow("quantity-out-of-range");
    expect(() => trimmedByOffCuts({ ...raw, balanceFromTipMm: millimetres(700) }, { tip: null, butt: null })).toThrow("balance-outside-model");
  });

  it("refuses to call what is left even when its balance lies outside the middle third", () => {
    expect(() => trimmedByOffCuts(raw, { tip: piece(20, 2), butt: piece(20, 40) })).toThrow("balance-outside-model");
  });
});
