import { describe, expect, it } from "vitest";
import { type BoreClass, boreClasses, boreToGround } from "../../../core/club/boreToGround.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/boreToGround.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const hosel = (hoselMm: number, depthMm: number) =>
  boreToGround({ kind: "hosel", hoselLengthMm: millimetres(hoselMm), insertionDepthMm: millimetres(depthMm) });

describe(byTable(boreToGround, "boreToGround", published), () => {
  it.each(published.hosels)("is $boreIn in where a hosel of $hoselLengthIn in takes $insertionDepthIn in", (row) => {
    const boreMm = hosel(mmFromInches(row.hoselLengthIn), mmFromInches(row.insertionDepthIn));
    expect(Math.abs(boreMm / 25.4 - row.boreIn)).toBeLessThan(published.tolerance);
  });

  it.each(published.classes)("is $boreIn in in the class $boreClass", ({ boreClass, boreIn }) => {
    const boreMm = boreToGround({ kind: "class", boreClass: boreClass as BoreClass });
    expect(Math.abs(boreMm / 25.4 - boreIn)).toBeLessThan(published.tolerance);
  });

  it("names every class there is", () => {
    expect(published.classes.map(({ boreClass }) => boreClass)).toEqual(boreClasses);
  });
});

describe("boreToGround", () => {
  it("takes the measured stop of a sleeve as it is", () => {
    expect(boreToGround({ kind: "sleeve", stopToGroundMm: millimetres(33.4) })).toBe(33.4);
  });

  it("lets a shaft through to the ground line and not below it", () => {
    expect(hosel(60, 60)).toBe(0);
    expect(() => hosel(60, 60.1)).toThrow("quantity-out-of-range");
  });

  it("refuses a length that cannot be", () => {
    expectBounds((mm) => hosel(mm, 0), { lowest: 0, highest: 200, step: 0.1 });
    expectBounds((mm) => hosel(200, mm), { lowest: 0, highest: 200, step: 0.1 });
    expectBounds((mm) => boreToGround({ kind: "sleeve", stopToGroundMm: millimetres(mm) }), { lowest: 0, highest: 200, step: 0.1 });
  });

  it("refuses a kind or a class it does not know", () => {
    expect(() => boreToGround({ kind: "socket" } as never)).toThrow('quantity-unreadable {"field":"kind","written":"socket"');
    expect(() => boreToGround({ kind: "class", boreClass: "deep" as BoreClass })).toThrow("quantity-unreadable");
  });
});
