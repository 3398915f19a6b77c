import { describe, expect, it } from "vitest";
import { gripBuildUp } from "../../../core/club/gripBuildUp.ts";
import { gripHand, gripMeasuredAt } from "../../../core/club/gripHand.ts";
import { type GripSizeName, type GripStandard, gripSize, gripSizeNames } from "../../../core/club/gripSize.ts";
import type { Hand } from "../../../core/kinds.ts";
import { inchesFromMm, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/gripBuildUp.json" with { type: "json" };
import sizes from "../../../fixtures/published/gripSizes.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";

const builtIn = (layers: number) => ({
  nominalMm: mmFromInches(0.9),
  coreMm: mmFromInches(0.6),
  shaftMm: mmFromInches(0.6),
  layers,
  layerMm: mmFromInches(0.005),
});

describe(byTable(gripBuildUp, "gripBuildUp", published), () => {
  const twoLayers = published.rows.filter(({ layers, coreIn }) => layers === 2 && coreIn === 0.6);

  it.each(twoLayers)("builds only the lower hand up to $diameterIn in: $wall wall, two layers", ({ wall, diameterIn }) => {
    const places = { upper: builtIn(0), lower: builtIn(2) };
    const { upper, lower } = gripBuildUp(places, "left", wall === "rigid" ? { kind: "rigid" } : undefined);
    expect([upper.hand, lower.hand]).toEqual(["right", "left"]);
    expect(upper.diameterMm).toBeCloseTo(22.86, 9);
    expect(upper.overMm).toBeCloseTo(0, 9);
    expect(Math.abs(inchesFromMm(lower.diameterMm) - diameterIn)).toBeLessThan(published.tolerance.diameterIn);
    expect(lower.overMm).toBeCloseTo(lower.diameterMm - 22.86, 9);
  });
});

describe(byTable(gripHand, "gripSizes", sizes), () => {
  it.each(sizes.hands)("the $place hand of a $player-hander is the $hand", ({ player, place, hand }) => {
    expect(gripHand(player as Hand, place as "upper" | "lower")).toBe(hand);
  });
});

describe(byTable(gripSize, "gripSizes", sizes), () => {
  it.each(sizes.rows)("$standard $size is $diameterIn in", ({ standard, size, diameterIn }) => {
    const inches = inchesFromMm(gripSize(size as GripSizeName, standard as GripStandard));
    expect(inches - diameterIn).toBeGreaterThanOrEqual(-1e-12);
    expect(inches - diameterIn).toBeLessThan(sizes.tolerance.diameterIn);
  });
});

describe("gripBuildUp", () => {
  it("refuses a number that is none under either hand, and a player of no hand", () => {
    expect(() => gripBuildUp({ upper: builtIn(Number.NaN), lower: builtIn(0) }, "left")).toThrow("layers");
    expect(() => gripBuildUp({ upper: builtIn(0), lower: builtIn(Number.NaN) }, "left")).toThrow("layers");
    expect(() => gripBuildUp({ upper: builtIn(0), lower: builtIn(0) }, "both" as Hand)).toThrow("player");
  });
});

describe("gripHand", () => {
  it("measures at 2 and 6 in below the cap, and refuses another place", () => {
    expect(gripMeasuredAt).toEqual({ upper: mmFromInches(2), lower: mmFromInches(6) });
    expect(() => gripHand("left", "middle" as "upper")).toThrow("place");
  });
});

describe("gripSize", () => {
  it("is men's when nothing is said, one 64th under for the size below standard, and refuses other words", () => {
    expect(gripSize("-1/64")).toBeCloseTo((0.9 - 1 / 64) * 25.4, 9);
    expect(gripSizeNames).toEqual(["-1/64", "standard", "+1/64", "+1/32", "+3/64", "+1/16", "+1/8"]);
    expect(() => gripSize("+1/2" as GripSizeName)).toThrow("size");
    expect(() => gripSize("standard", "giants" as GripStandard)).toThrow("standard");
  });
});
