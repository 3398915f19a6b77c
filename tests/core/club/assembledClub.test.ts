import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { headMassForSwingWeight } from "../../../core/club/headMassForSwingWeight.ts";
import { inchOuncesFromPoints } from "../../../core/quantity/swingWeightScale.ts";
import { mmFromInches, swingWeightPoints } from "../../../core/quantity/units.ts";
import measured from "../../../fixtures/published/measuredSwingWeights.json" with { type: "json" };
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };

fc.configureGlobal({ seed: 20270503 });

const componentsOf = (parts: readonly (readonly (string | number)[])[]) =>
  parts.map(([name, massG, fromCapIn]) => ({ name: String(name), massG: Number(massG), fromCapMm: mmFromInches(Number(fromCapIn)) }));

const someClub = fc.array(
  fc.record({
    name: fc.constant("part"),
    massG: fc.double({ min: 0.5, max: 200, noNaN: true }),
    fromCapMm: fc.double({ min: 0, max: 1300, noNaN: true }),
  }),
  { minLength: 1, maxLength: 8 },
);

describe(`assembledClub (${worked.source})`, () => {
  it.each(worked.rows)("sums the $club", (row) => {
    const club = assembledClub(componentsOf(row.parts));
    expect(club.totalMassG).toBeCloseTo(row.totalMassG, 9);
    expect(Math.abs(club.balancePointMm / 25.4 - row.balancePointIn)).toBeLessThan(worked.tolerance.balancePointIn);
    expect(Math.abs(club.swingWeightPoints - row.swingWeightPoints)).toBeLessThan(worked.tolerance.points);
    expect(Math.abs(club.inertiaKgCm2 - row.inertiaKgCm2)).toBeLessThan(worked.tolerance.inertiaKgCm2);
  });

  it.each(worked.rows)("adds the own inertia of shaft, head and grip of the $club", (row) => {
    const own: Record<string, (massG: number) => number> = {
      shaft: (massG) => (massG * (row.shaftLengthIn * 2.54) ** 2) / 12_000,
      head: (massG) => row.headOwnInertiaKgCm2 + (massG * row.headFromAxisCm ** 2) / 1000,
      grip: (massG) => (massG * 7.62 ** 2) / 1000,
    };
    const club = assembledClub(componentsOf(row.parts).map((part) => ({ ...part, ownInertiaKgCm2: own[part.name]?.(part.massG) ?? 0 })));
    expect(Math.abs(club.inertiaKgCm2 - row.withOwnInertiaKgCm2)).toBeLessThan(worked.tolerance.withOwnInertiaKgCm2);
  });
});

describe(`assembledClub (${measured.source})`, () => {
  it("gives the moment of a club of 349.8 g that balances at 824 mm", () => {
    const { totalMassG, balancePointMm, momentNm } = measured.moment;
    const inchOunces = inchOuncesFromPoints(assembledClub([{ name: "club", massG: totalMassG, fromCapMm: balancePointMm }]).swingWeightPoints);
    const newtonMetres = inchOunces * 0.028349523125 * 9.80665 * 0.0254;
    expect(Math.abs(newtonMetres / momentNm - 1)).toBeLessThan(measured.tolerance.momentFraction);
  });

  it.each(measured.rows)("reads $points points at $totalMassG g and $balancePointIn in", (row) => {
    const club = assembledClub([{ name: "club", massG: row.totalMassG, fromCapMm: mmFromInches(row.balancePointIn) }]);
    expect(Math.abs(club.swingWeightPoints - row.points)).toBeLessThan(measured.tolerance.points);
  });
});

describe("assembledClub", () => {
  it("does not depend on the order of the parts", () => {
    fc.assert(
      fc.property(someClub, (parts) => {
        expect(assembledClub([...parts].reverse()).swingWeightPoints).toBeCloseTo(assembledClub(parts).swingWeightPoints, 9);
      }),
    );
  });

  it("agrees with one mass at the balance point, in everything but inertia (parallel axes: never less)", () => {
    fc.assert(
      fc.property(someClub, (parts) => {
        const club = assembledClub(parts);
        const lump = assembledClub([{ name: "lump", massG: club.totalMassG, fromCapMm: club.balancePointMm }]);
        expect(lump.swingWeightPoints).toBeCloseTo(club.swingWeightPoints, 6);
        expect(club.inertiaKgCm2).toBeGreaterThanOrEqual(lump.inertiaKgCm2 - 1e-6);
      }),
    );
  });

  it.each([
    ["a mass that is no number", { massG: Number.NaN, fromCapMm: 100 }],
    ["a mass below nothing", { massG: -1, fromCapMm: 100 }],
    ["a place above the cap", { massG: 1, fromCapMm: -1 }],
    ["an infinite place", { massG: 1, fromCapMm: Number.POSITIVE_INFINITY }],
    ["a club without mass", { massG: 0, fromCapMm: 100 }],
  ])("refuses %s", (_, part) => {
    expect(() => assembledClub([{ name: "part", ...part }])).toThrow("quantity-out-of-range");
  });
});

describe(`headMassForSwingWeight (${worked.source})`, () => {
  const iron = componentsOf(worked.rows[1]?.parts ?? []).filter(({ name }) => name !== "head");

  it.each(worked.ironHeadMasses)("asks $headMassG g of the 7-iron for $wantedPoints points", ({ wantedPoints, headMassG }) => {
    const mass = headMassForSwingWeight(swingWeightPoints(wantedPoints), mmFromInches(36.85), iron);
    expect(Math.abs(mass - headMassG)).toBeLessThan(worked.tolerance.headMassG);
  });

  it("puts the club at the swing weight it was asked for", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 12, noNaN: true }), fc.double({ min: 850, max: 1150, noNaN: true }), (points, at) => {
        const massG = headMassForSwingWeight(swingWeightPoints(points), mmFromInches(at / 25.4), iron);
        expect(assembledClub([...iron, { name: "head", massG, fromCapMm: at }]).swingWeightPoints).toBeCloseTo(points, 6);
      }),
    );
  });

  it("refuses a head that is not past the fulcrum", () => {
    expect(() => headMassForSwingWeight(swingWeightPoints(2), mmFromInches(14), iron)).toThrow("quantity-out-of-range");
  });
});
