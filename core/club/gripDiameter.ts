import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";

/** A grip and what it is pulled over, at one place below the cap. */
export interface GripAtPlace {
  /** Outer diameter of the grip there on a shaft as thick as its core. */
  readonly nominalMm: Millimetres;
  /** Bore of the grip there before it is fitted. */
  readonly coreMm: Millimetres;
  /** The bare shaft there. */
  readonly shaftMm: Millimetres;
}

/** Tape under the grip beyond the mounting tape, which is counted in the nominal size. */
export interface TapeLayers {
  readonly layers: number;
  readonly layerMm: Millimetres;
}

/** How a grip gives way; a stretch factor is its length when fitted over its length before. */
export type GripWall = { readonly kind: "rubber"; readonly stretchFactor: number } | { readonly kind: "rigid" };

/** Rubber keeps its volume: the wall gets thinner over a thicker shaft. */
export const unstretchedRubber: GripWall = { kind: "rubber", stretchFactor: 1 };

const WIDEST_MM = 100;
/** More tape than any grip is built up with. */
export const MOST_LAYERS = 100;

/** The three diameters, each one possible. */
export function checkedGrip(grip: GripAtPlace, wall: GripWall): { readonly nominalMm: number; readonly coreMm: number; readonly shaftMm: number } {
  oneOf(wall.kind, ["rubber", "rigid"], "wall");
  const coreMm = inRange(grip.coreMm, { field: "coreMm", unit: "mm", min: 1, max: WIDEST_MM });
  const nominalMm = inRange(grip.nominalMm, { field: "nominalMm", unit: "mm", min: coreMm, max: WIDEST_MM });
  const shaftMm = inRange(grip.shaftMm, { field: "shaftMm", unit: "mm", min: 1, max: WIDEST_MM });
  if (wall.kind === "rubber") {
    inRange(wall.stretchFactor, { field: "stretchFactor", unit: "", min: 0.5, max: 2 });
  }
  return { nominalMm, coreMm, shaftMm };
}

/**
 * Outer diameter of a fitted grip at one place.
 *
 *     rubber: D = √( (D₀² − c²)/s + (b + 2·n·t)² )     rigid: D = D₀ + (b − c) + 2·n·t
 *
 * D₀ nominal outer diameter, c core, b shaft, n layers of thickness t, s stretch. Rubber of constant volume is the
 * default; a wall that keeps its thickness is the upper limit. For a 0.580 in core on 0.600 in the models say
 * +0.013 and +0.020 in, published charts 0.015 to 0.020: tape, glue and the mould decide, so the final caliper
 * reading wins. A bench agrees to 0.005 in.
 *
 * @param grip - D₀, c and b in mm
 * @param tape - n from 0 to 100, any part of a layer too: the mean where a wrap overlaps; t in mm
 * @param wall - the model, with s for rubber
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/gripBuildUp.json
 */
export function gripDiameter(grip: GripAtPlace, tape: TapeLayers, wall: GripWall = unstretchedRubber): Millimetres {
  const { nominalMm, coreMm, shaftMm } = checkedGrip(grip, wall);
  const layers = inRange(tape.layers, { field: "layers", unit: "layers", min: 0, max: MOST_LAYERS });
  const under = shaftMm + 2 * layers * inRange(tape.layerMm, { field: "layerMm", unit: "mm", min: 0.001, max: 5 });
  return millimetres(
    wall.kind === "rigid" ? nominalMm - coreMm + under : Math.sqrt((nominalMm ** 2 - coreMm ** 2) / wall.stretchFactor + under ** 2),
  );
}
