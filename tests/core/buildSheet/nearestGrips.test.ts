import fc from "fast-check";
import { distance } from "mathjs";
import { describe, expect, it } from "vitest";
import { defaultGripTolerances, type GripTolerances, nearestGrips } from "../../../core/buildSheet/nearestGrips.ts";
import { id } from "../../../core/kinds.ts";
import { byLaw, byLibrary } from "../../support/checkOf.ts";
import { someGrip, stocked } from "./someParts.ts";

const wanted = someGrip({ name: "Gorse Standard", massG: 50, coreMm: 15.24, capMm: 3.2, rib: true });
const named = (name: string, given: Parameters<typeof someGrip>[0] = {}) => someGrip({ ...wanted, name, ...given });
const names = (near: ReturnType<typeof nearestGrips>) => near.map(({ row }) => row.model.name);

const anyGrip = fc
  .record({
    massG: fc.double({ min: 25, max: 110, noNaN: true }),
    coreMm: fc.double({ min: 14, max: 16, noNaN: true }),
    capMm: fc.double({ min: 2, max: 6, noNaN: true }),
  })
  .map((given) => named("other", given));

describe(byLibrary(nearestGrips, "mathjs", "the squared Euclidean distance of mass, core and cap, each in its tolerances"), () => {
  it("scores any grip so", () => {
    const { massG, coreMm, capMm } = defaultGripTolerances;
    fc.assert(
      fc.property(anyGrip, (model) => {
        const point = (of: typeof model) => [of.massG / massG, of.coreMm / coreMm, of.capMm / capMm];
        const [near] = nearestGrips(wanted, [stocked(model)]);
        const expected = Number(distance(point(wanted), point(model))) ** 2;
        expect(near?.score).toBeCloseTo(expected, 7);
      }),
    );
  });
});

describe(byLaw(nearestGrips, "a grip is nearest to itself, and a difference taken the other way round is its negative"), () => {
  it("puts the wanted one first, with no difference", () => {
    const [first] = nearestGrips(wanted, [stocked(named("lighter", { massG: 49 })), stocked(wanted)]);
    expect(first).toEqual({ row: stocked(wanted), score: 0, differences: { massG: 0, coreMm: 0, capMm: 0, ribDiffers: false } });
  });

  it("tells one's own less the wanted one's", () => {
    const other = named("Heather", { massG: 48, coreMm: 15, capMm: 4.2, rib: false });
    const [there] = nearestGrips(wanted, [stocked(other)]);
    const [back] = nearestGrips(other, [stocked(wanted)]);
    expect(there?.differences).toMatchObject({ massG: -2, coreMm: expect.closeTo(-0.24, 9), capMm: expect.closeTo(1, 9), ribDiffers: true });
    expect(back?.differences).toMatchObject({ massG: 2, coreMm: expect.closeTo(0.24, 9), capMm: expect.closeTo(-1, 9), ribDiffers: true });
  });
});

describe("nearestGrips", () => {
  it("sorts by score, the wrong rib last however near, nothing that is gone", () => {
    const stock = [
      stocked(named("round", { rib: false })),
      stocked(named("heavy", { massG: 58 })),
      stocked(named("near", { massG: 51 })),
      stocked(named("gone"), { free: 0 }),
    ];
    expect(names(nearestGrips(wanted, stock))).toEqual(["near", "heavy", "round"]);
    expect(nearestGrips(wanted, [])).toEqual([]);
  });

  it("names each model once, in the player's own bin when it lies there", () => {
    const stock = [stocked(named("other"), { place: "rack" }), stocked(named("other"), { place: "bin", placeId: id(9), inPlayersBin: true })];
    expect(nearestGrips(wanted, stock).map(({ row }) => row.place)).toEqual(["bin"]);
  });

  it.each<Partial<Record<keyof GripTolerances, number>>>([{ massG: 0 }, { coreMm: 0 }, { capMm: 0 }, { massG: 101 }, { coreMm: Number.NaN }])(
    "refuses a tolerance of %o",
    (given) => {
      expect(() => nearestGrips(wanted, [], { ...defaultGripTolerances, ...given } as GripTolerances)).toThrow("quantity-out-of-range");
    },
  );

  it("refuses a grip of no mass at all", () => {
    expect(() => nearestGrips({ ...wanted, massG: Number.NaN as typeof wanted.massG }, [])).toThrow("quantity-out-of-range");
    expect(() => nearestGrips(wanted, [stocked(named("other", { capMm: Number.POSITIVE_INFINITY }))])).toThrow("quantity-out-of-range");
  });
});
