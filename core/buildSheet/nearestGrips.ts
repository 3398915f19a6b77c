import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type Millimetres, millimetres, mmFromInches } from "../quantity/units.ts";
import { nearestRows } from "./nearestRows.ts";
import type { GripModel, Stocked } from "./parts.ts";

/** What counts as one unit of difference between two grips. */
export interface GripTolerances {
  readonly massG: Grams;
  readonly coreMm: Millimetres;
  readonly capMm: Millimetres;
}

/** 2 g, the 0.010 in a grip's size is held to, 1/32 in of length; common practice, no source. */
export const defaultGripTolerances: GripTolerances = { massG: grams(2), coreMm: mmFromInches(0.01), capMm: mmFromInches(1 / 32) };

/** A grip in place of the one wanted: how it differs, its own less the wanted one's. Never the same grip. */
export interface NearGrip {
  readonly row: Stocked<GripModel>;
  readonly differences: {
    readonly massG: Grams;
    readonly coreMm: Millimetres;
    readonly capMm: Millimetres;
    readonly ribDiffers: boolean;
  };
  /** Sum of squared differences, each in units of its tolerance; lower is nearer. */
  readonly score: number;
}

function compared(wanted: GripModel, row: Stocked<GripModel>, tolerances: GripTolerances): NearGrip {
  const { model } = row;
  const massG = grams(model.massG - wanted.massG);
  const coreMm = millimetres(model.coreMm - wanted.coreMm);
  const capMm = millimetres(model.capMm - wanted.capMm);
  const score = (massG / tolerances.massG) ** 2 + (coreMm / tolerances.coreMm) ** 2 + (capMm / tolerances.capMm) ** 2;
  return { row, differences: { massG, coreMm, capMm, ribDiffers: model.rib !== wanted.rib }, score };
}

/**
 * Grips in place of one that cannot be had, the nearest first.
 *
 *     score = (Δm/t_m)² + (Δcore/t_core)² + (Δcap/t_cap)²
 *
 * With the rib as wanted first: a rib is felt before any gram. Shape and rubber are not in it, so the nearest in numbers may feel
 * another grip altogether.
 *
 * @param wanted - m in g, core and cap in mm, with a rib or round
 * @param candidates - where they lie
 * @param tolerances - t_m in g, t_core and t_cap in mm
 * @returns each model once (the player's own bin first), with its differences in g and mm and its place
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @see tests/core/buildSheet/nearestGrips.test.ts: the squared Euclidean distance of mathjs
 */
export function nearestGrips(
  wanted: GripModel,
  candidates: readonly Stocked<GripModel>[],
  tolerances: GripTolerances = defaultGripTolerances,
): readonly NearGrip[] {
  finiteNumbers({ wanted, candidates }, "grips");
  inRange(tolerances.massG, { field: "tolerance of massG", unit: "g", min: 0.01, max: 100 });
  inRange(tolerances.coreMm, { field: "tolerance of coreMm", unit: "mm", min: 0.001, max: 25 });
  inRange(tolerances.capMm, { field: "tolerance of capMm", unit: "mm", min: 0.001, max: 25 });
  const near = candidates.filter(({ free }) => free > 0).map((row) => compared(wanted, row, tolerances));
  return nearestRows(near, ({ differences }) => differences.ribDiffers);
}
