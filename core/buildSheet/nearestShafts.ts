import { type ClubFamily, clubFamilies } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type CyclesPerMinute, cyclesPerMinute, type Grams, grams, type Millimetres, millimetres } from "../quantity/units.ts";
import { nearestRows } from "./nearestRows.ts";
import type { ShaftModel, Stocked } from "./parts.ts";

/** What counts as one unit of difference between two shafts. */
export interface ShaftTolerances {
  readonly massG: Grams;
  readonly balanceMm: Millimetres;
  readonly frequencyCpm: CyclesPerMinute;
}

/** Common practice, no source: what a player is said to notice. */
export const defaultShaftTolerances: ShaftTolerances = { massG: grams(2), balanceMm: millimetres(10), frequencyCpm: cyclesPerMinute(3) };

/** From one flex letter to the next, about 10 cpm: counted only where a shaft was never read. */
export const FLEX_STEP_CPM = 10;

/** Tips nearer than this go into the same bore; common practice, no source. */
export const SAME_TIP_MM = 0.15;

const flexes: readonly string[] = ["R", "S", "X"];

/** A shaft in place of the one wanted: how it differs, its own less the wanted one's. Never the same shaft. */
export interface NearShaft {
  readonly row: Stocked<ShaftModel>;
  readonly differences: {
    readonly massG: Grams;
    readonly balanceMm: Millimetres;
    /** Null when one of the two was never read. */
    readonly frequencyCpm: CyclesPerMinute | null;
    readonly flexDiffers: boolean;
    /** Of another diameter: it does not go into the same bore. */
    readonly tipDiffers: boolean;
  };
  /** Sum of squared differences, each in units of its tolerance; lower is nearer. */
  readonly score: number;
}

export const tipDiffers = (one: ShaftModel, other: { readonly tipDiameterMm: Millimetres }): boolean =>
  Math.abs(one.tipDiameterMm - other.tipDiameterMm) > SAME_TIP_MM;

/** What the letters let expect: a step a letter, one step where a letter is not known. */
function expectedCpm(wanted: ShaftModel, model: ShaftModel): number {
  const [from, to] = [flexes.indexOf(wanted.flex), flexes.indexOf(model.flex)];
  const steps = from < 0 || to < 0 ? Number(wanted.flex !== model.flex) : to - from;
  return steps * FLEX_STEP_CPM;
}

function compared(wanted: ShaftModel, row: Stocked<ShaftModel>, tolerances: ShaftTolerances): NearShaft {
  const { model } = row;
  const massG = grams(model.rawMassG - wanted.rawMassG);
  const balanceMm = millimetres(model.balanceFromTipMm - wanted.balanceFromTipMm);
  const [wantedCpm, modelCpm] = [wanted.frequencyCpm ?? null, model.frequencyCpm ?? null];
  const frequencyCpm = wantedCpm === null || modelCpm === null ? null : cyclesPerMinute(modelCpm - wantedCpm);
  const score =
    (massG / tolerances.massG) ** 2 +
    (balanceMm / tolerances.balanceMm) ** 2 +
    ((frequencyCpm ?? expectedCpm(wanted, model)) / tolerances.frequencyCpm) ** 2;
  const flexDiffers = model.flex !== wanted.flex;
  return { row, differences: { massG, balanceMm, frequencyCpm, flexDiffers, tipDiffers: tipDiffers(model, wanted) }, score };
}

/**
 * Shafts in place of one that cannot be had, the nearest first.
 *
 *     score = (Δm/t_m)² + (ΔB/t_B)² + (Δf/t_f)²
 *
 * Raw shafts, B from the tip. Only those made for the same kind of club, with the same kind of tip; those whose tip goes
 * into the same bore come first. Where one was never read, Δf is taken as 10 cpm a letter of flex (a rule of thumb: no
 * standard says what a letter is) and told as unknown. No shaft of another model plays the same: that is said with it.
 *
 * @param wanted - m in g, B in mm, f in cpm
 * @param family - the club it is for; null when any of the wanted one's will do
 * @param candidates - where they lie
 * @param tolerances - t_m in g, t_B in mm, t_f in cpm
 * @returns each model once (the player's own bin first), with its differences in g, mm, cpm and its place
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be, `quantity-unreadable` when the family is unknown
 * @see tests/core/buildSheet/nearestShafts.test.ts: the squared Euclidean distance of mathjs
 */
export function nearestShafts(
  wanted: ShaftModel,
  family: ClubFamily | null,
  candidates: readonly Stocked<ShaftModel>[],
  tolerances: ShaftTolerances = defaultShaftTolerances,
): readonly NearShaft[] {
  finiteNumbers({ wanted, candidates }, "shafts");
  inRange(tolerances.massG, { field: "tolerance of massG", unit: "g", min: 0.01, max: 100 });
  inRange(tolerances.balanceMm, { field: "tolerance of balanceMm", unit: "mm", min: 0.01, max: 1000 });
  inRange(tolerances.frequencyCpm, { field: "tolerance of frequencyCpm", unit: "cpm", min: 0.01, max: 1000 });
  const families = family === null ? wanted.forFamilies : [oneOf(family, clubFamilies, "family")];
  const near = candidates
    .filter(({ model, free }) => free > 0 && model.tip === wanted.tip && families.some((one) => model.forFamilies.includes(one)))
    .map((row) => compared(wanted, row, tolerances));
  return nearestRows(near, ({ differences }) => differences.tipDiffers);
}
