import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GripWall, gripDiameter, unstretchedRubber } from "../../../core/club/gripDiameter.ts";
import { inchesFromMm, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/gripBuildUp.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const rigid: GripWall = { kind: "rigid" };
const wallOf = (kind: string): GripWall => (kind === "rigid" ? rigid : unstretchedRubber);
const gripIn = (nominal: number, core: number, shaft: number) => ({
  nominalMm: mmFromInches(nominal),
  coreMm: mmFromInches(core),
  shaftMm: mmFromInches(shaft),
});
const tapeIn = (layers: number, layerIn: number) => ({ layers, layerMm: mmFromInches(layerIn) });

describe(byTable(gripDiameter, "gripBuildUp", published), () => {
  it.each(published.rows)("is $diameterIn in: $wall wall, core $coreIn on $shaftIn in, $layers layers", (row) => {
    const fitted = gripDiameter(gripIn(row.nominalIn, row.coreIn, row.shaftIn), tapeIn(row.layers, row.layerIn), wallOf(row.wall));
    expect(Math.abs(inchesFromMm(fitted) - row.diameterIn)).toBeLessThan(published.tolerance.diameterIn);
  });

  it.each(published.published)("lies near the disputed $diameterIn in: $of", ({ coreIn, layers, diameterIn }) => {
    const fitted = gripDiameter(gripIn(0.9, coreIn, 0.6), tapeIn(layers, 0.005));
    expect(Math.abs(inchesFromMm(fitted) - diameterIn)).toBeLessThan(published.tolerance.publishedIn);
  });

  it("gets thinner by one 64th when it is stretched by three quarters of an inch", () => {
    const { nominalIn, boreIn, gripLengthIn, stretchedByIn, diameterIn } = published.stretch;
    const wall: GripWall = { kind: "rubber", stretchFactor: (gripLengthIn + stretchedByIn) / gripLengthIn };
    const fitted = gripDiameter(gripIn(nominalIn, boreIn, boreIn), tapeIn(0, 0.005), wall);
    expect(Math.abs(inchesFromMm(fitted) - diameterIn)).toBeLessThan(published.tolerance.stretchIn);
  });
});

const someGrip = fc
  .tuple(
    fc.double({ min: 0.56, max: 0.62, noNaN: true }),
    fc.double({ min: 0, max: 0.05, noNaN: true }),
    fc.double({ min: 0.8, max: 1.1, noNaN: true }),
  )
  .map(([core, over, nominal]) => gripIn(nominal, core, core + over));
const someTape = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.double({ min: 0.002, max: 0.01, noNaN: true })).map(([n, t]) => tapeIn(n, t));

describe(byLaw(gripDiameter, "rubber keeps its volume: the ring around the tape has the area it was moulded with"), () => {
  it("holds for any core, shaft, tape and stretch", () => {
    fc.assert(
      fc.property(someGrip, someTape, fc.double({ min: 0.9, max: 1.2, noNaN: true }), (grip, tape, stretchFactor) => {
        const fitted = gripDiameter(grip, tape, { kind: "rubber", stretchFactor });
        const ring = (outer: number, inner: number) => (Math.PI / 4) * (outer ** 2 - inner ** 2);
        const under = grip.shaftMm + 2 * tape.layers * tape.layerMm;
        expect(ring(fitted, under) * stretchFactor).toBeCloseTo(ring(grip.nominalMm, grip.coreMm), 6);
      }),
    );
  });
});

describe(byLaw(gripDiameter, "built up, rubber is never thicker than a rigid wall; unbuilt, both are nominal"), () => {
  it("holds over any thicker shaft", () => {
    fc.assert(
      fc.property(someGrip, someTape, (grip, tape) => {
        expect(gripDiameter(grip, tape)).toBeLessThanOrEqual(gripDiameter(grip, tape, rigid) + 1e-9);
        const fitting = { ...grip, shaftMm: grip.coreMm };
        expect(gripDiameter(fitting, { ...tape, layers: 0 })).toBeCloseTo(grip.nominalMm, 9);
        expect(gripDiameter(fitting, { ...tape, layers: 0 }, rigid)).toBeCloseTo(grip.nominalMm, 9);
      }),
    );
  });
});

describe("gripDiameter", () => {
  const grip = gripIn(0.9, 0.6, 0.6);
  const tape = tapeIn(2, 0.005);
  const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 100.1];

  it.each(["nominalMm", "coreMm", "shaftMm"].flatMap((field) => bad.map((value) => ({ field, value }))))("refuses a $field of $value", (row) => {
    expect(() => gripDiameter({ ...grip, [row.field]: row.value }, tape)).toThrow("quantity-out-of-range");
  });

  it.each([
    ["layers", -0.1],
    ["layers", 100.1],
    ["layers", Number.NaN],
    ["layerMm", 0],
    ["layerMm", 5.1],
    ["layerMm", Number.POSITIVE_INFINITY],
  ])("refuses %s of %d", (field, value) => {
    expect(() => gripDiameter(grip, { ...tape, [field]: value })).toThrow(field);
  });

  it.each([0.49, 2.01, Number.NaN])("refuses a stretch factor of %d", (stretchFactor) => {
    expect(() => gripDiameter(grip, tape, { kind: "rubber", stretchFactor })).toThrow("stretchFactor");
  });

  it("takes a part of a layer: half of one on a rigid wall is half the step", () => {
    const rigid = (layers: number) => gripDiameter(grip, tapeIn(layers, 0.005), { kind: "rigid" });
    expect(rigid(2.5) - rigid(2)).toBeCloseTo((rigid(3) - rigid(2)) / 2, 12);
  });

  it("takes the ends of every range", () => {
    expect(
      gripDiameter({ nominalMm: millimetres(1), coreMm: millimetres(1), shaftMm: millimetres(100) }, { layers: 100, layerMm: millimetres(5) }),
    ).toBe(1100);
    expect(() => gripDiameter(grip, tape, { kind: "rubber", stretchFactor: 0.5 })).not.toThrow();
    expect(() => gripDiameter(grip, tape, { kind: "rubber", stretchFactor: 2 })).not.toThrow();
  });

  it("refuses a core wider than the grip, and a wall of another kind", () => {
    expect(() => gripDiameter({ ...grip, coreMm: mmFromInches(0.91) }, tape)).toThrow("nominalMm");
    expect(() => gripDiameter(grip, tape, { kind: "foam" } as never)).toThrow("quantity-unreadable");
  });
});
