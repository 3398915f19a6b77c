import fc from "fast-check";
import { bignumber, evaluate, type MathNumericType } from "mathjs";
import { describe, expect, it } from "vitest";
import { type GripWall, gripDiameter } from "../../../core/club/gripDiameter.ts";
import { gripLayersForSize } from "../../../core/club/gripLayersForSize.ts";
import { type GripSizeName, gripSize } from "../../../core/club/gripSize.ts";
import { type Millimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/gripBuildUp.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";

const standard = { nominalMm: mmFromInches(0.9), coreMm: mmFromInches(0.6), shaftMm: mmFromInches(0.6) };
const rigid: GripWall = { kind: "rigid" };

function reached(wanted: Millimetres, layer: Millimetres, wall?: GripWall, grip = standard) {
  const answer = gripLayersForSize(grip, wanted, layer, wall);
  if (answer.kind === "refused") {
    throw new Error(`too thick by ${answer.tooThickMm}`);
  }
  return answer;
}

describe(byTable(gripLayersForSize, "gripBuildUp", published), () => {
  it.each(published.layers)("needs $layers layers of $layerIn in for $size", ({ size, layerIn, layers }) => {
    const { exactLayers } = reached(gripSize(size as GripSizeName), mmFromInches(layerIn));
    expect(Math.abs(exactLayers - layers)).toBeLessThan(published.tolerance.layers);
  });
});

/** Sixty halvings of the layers between none and a hundred, in 40 digits. */
function layersByHalving(outer: number, core: number, shaft: number, wanted: number, layer: number): number {
  const scope = { outer: bignumber(outer), core: bignumber(core), shaft: bignumber(shaft), wanted: bignumber(wanted), layer: bignumber(layer) };
  const tooThin = (n: MathNumericType) => evaluate("sqrt(outer^2 - core^2 + (shaft + 2 * n * layer)^2) < wanted", { ...scope, n }) === true;
  return Number(
    Array.from({ length: 60 }).reduce<readonly [MathNumericType, MathNumericType]>(
      ([low, high]) => {
        const middle = evaluate("(low + high) / 2", { low, high });
        return tooThin(middle) ? [middle, high] : [low, middle];
      },
      [bignumber(0), bignumber(100)],
    )[0],
  );
}

describe(byLibrary(gripLayersForSize, "mathjs", "the root of the rubber model by halving in big numbers"), () => {
  it.each([
    [22.86, 15.24, 15.24, 23.5, 0.127],
    [22.86, 14.732, 15.24, 24.4475, 0.19],
    [21.59, 14.224, 15.5, 23, 0.1],
  ])("finds the layers of a %d mm grip, core %d on %d, for %d mm by %d", (outer, core, shaft, wanted, layer) => {
    const grip = { nominalMm: millimetres(outer), coreMm: millimetres(core), shaftMm: millimetres(shaft) };
    const { exactLayers } = reached(millimetres(wanted), millimetres(layer), undefined, grip);
    expect(exactLayers / layersByHalving(outer, core, shaft, wanted, layer)).toBeCloseTo(1, 9);
  });
});

describe(byLaw(gripLayersForSize, "so many layers measure the wanted diameter, and no other whole number of them comes nearer"), () => {
  it("holds for either wall", () => {
    const walls = fc.constantFrom<GripWall>(rigid, { kind: "rubber", stretchFactor: 1 }, { kind: "rubber", stretchFactor: 1.05 });
    fc.assert(
      fc.property(
        walls,
        fc.double({ min: 0.9, max: 1, noNaN: true }),
        fc.double({ min: 0.004, max: 0.01, noNaN: true }),
        (wall, wantedIn, layerIn) => {
          const [wanted, layerMm] = [mmFromInches(wantedIn), mmFromInches(layerIn)];
          const { exactLayers, wholeLayers, wholeDiameterMm } = reached(wanted, layerMm, wall);
          const measures = (layers: number) => gripDiameter(standard, { layers, layerMm }, wall);
          expect(measures(exactLayers)).toBeCloseTo(wanted, 9);
          expect(wholeDiameterMm).toBe(measures(wholeLayers));
          const off = Array.from({ length: 40 }, (_, layers) => Math.abs(measures(layers) - wanted));
          expect(Math.abs(wholeDiameterMm - wanted)).toBeLessThanOrEqual(Math.min(...off) + 1e-3);
        },
      ),
    );
  });
});

describe("gripLayersForSize", () => {
  it("needs none for the nominal size, and says by how much a grip is too thick", () => {
    expect(reached(mmFromInches(0.9), mmFromInches(0.005))).toMatchObject({ exactLayers: 0, wholeLayers: 0 });
    const answer = gripLayersForSize(standard, mmFromInches(0.885), mmFromInches(0.005), rigid);
    expect(answer.kind === "refused" ? answer.tooThickMm : 0).toBeCloseTo(0.381, 9);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 0.9, 100.1])("refuses a wanted diameter of %d mm", (wantedMm) => {
    expect(() => gripLayersForSize(standard, millimetres(wantedMm), millimetres(0.127))).toThrow("wantedMm");
  });

  it.each<GripWall>([rigid, { kind: "rubber", stretchFactor: 1 }])(
    "takes a wanted diameter that 100 layers make, and refuses a thicker one: $kind",
    (wall) => {
      const layer = millimetres(0.05);
      const thickest = gripDiameter(standard, { layers: 100, layerMm: layer }, wall);
      expect(reached(thickest, layer, wall).wholeLayers).toBe(100);
      expect(() => reached(millimetres(thickest + 1e-6), layer, wall)).toThrow('quantity-out-of-range {"field":"wantedMm","unit":"mm"');
    },
  );

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 0])("refuses a layer of %d mm", (layerMm) => {
    expect(() => gripLayersForSize(standard, millimetres(24), millimetres(layerMm))).toThrow("layerMm");
  });

  it("refuses a grip that cannot be", () => {
    expect(() => gripLayersForSize({ ...standard, coreMm: Number.NaN as Millimetres }, millimetres(24), millimetres(0.127))).toThrow("coreMm");
  });
});
