import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres, mmFromInches } from "../quantity/units.ts";
import { fromStock, NEAREST_SHOWN, nearestNames } from "./fromStock.ts";
import { type NearGrip, nearestGrips } from "./nearestGrips.ts";
import type { GripModel, Stocked } from "./parts.ts";
import type { Shortage } from "./plan.ts";

/** Which grip goes on. */
export interface GripQuestion {
  readonly grip: string;
  /** Null when nobody minds. */
  readonly rib: boolean | null;
  /** The bare shaft under it. */
  readonly buttDiameterMm: Millimetres;
  /** Layers of tape beyond the mounting tape. */
  readonly wraps: number;
  /** Of one layer; 0.005 in when left out. */
  readonly layerMm?: Millimetres;
  readonly stock: readonly Stocked<GripModel>[];
  /** In other trucks and at home base: named, never taken. */
  readonly elsewhere: readonly Stocked<GripModel>[];
  /** Every model the shop knows, so that the nearest can be told when none of the wanted one is left anywhere. */
  readonly known?: readonly GripModel[];
}

/** Why one of the wanted name that lies here was left there. */
export type GripMisfit = "rib" | "core";

/** No such grip here: where it lies elsewhere, and what is nearest to it. */
export interface GripShortage extends Shortage {
  readonly part: "grip";
  readonly unfit: readonly GripMisfit[];
  readonly elsewhere: readonly Stocked<GripModel>[];
  readonly alike: readonly NearGrip[];
}

export type GripChoice =
  /** `misfit`: the core is not the shaft's, so that the grip comes out off its size; it can be mounted all the same. */
  | {
      readonly kind: "stocked";
      readonly row: Stocked<GripModel>;
      readonly misfit: { readonly coreMm: Millimetres; readonly buttMm: Millimetres } | null;
    }
  | { readonly kind: "short"; readonly shortage: GripShortage };

/** So far off, the rubber of a standard grip comes out 0.010 in off its size: the trade's tolerance. */
export const CORE_TOLERANCE_MM = mmFromInches(0.015);
/** What is under a grip, over its core: beyond these it is not pulled on, or turns. Our estimate, no source. */
export const MOUNTABLE = { least: 0.9, most: 1.3 } as const;
const LAYER_MM = mmFromInches(0.005);
/** Sums of lengths converted from inches come out so near to each other. */
const ROUNDING_MM = 1e-9;

function isMountable({ coreMm }: GripModel, { buttDiameterMm, wraps, layerMm = LAYER_MM }: GripQuestion): boolean {
  const underMm = buttDiameterMm + 2 * wraps * layerMm;
  return underMm >= MOUNTABLE.least * coreMm - ROUNDING_MM && underMm <= MOUNTABLE.most * coreMm + ROUNDING_MM;
}

function misfitsOf(model: GripModel, question: GripQuestion): readonly GripMisfit[] {
  const { rib } = question;
  return [...(rib === null || model.rib === rib ? [] : ["rib" as const]), ...(isMountable(model, question) ? [] : ["core" as const])];
}

function shortageOf(question: GripQuestion): GripShortage {
  const { grip, rib, stock, elsewhere, known = [] } = question;
  const isOfName = ({ model, free }: Stocked<GripModel>) => model.name === grip && free > 0;
  const wanted = [...known, ...[...stock, ...elsewhere].map(({ model }) => model)].find(({ name }) => name === grip);
  const others = (rows: readonly Stocked<GripModel>[]) => rows.filter(({ model }) => model.name !== grip && misfitsOf(model, question).length === 0);
  const alike =
    wanted === undefined ? [] : nearestGrips({ ...wanted, rib: rib ?? wanted.rib }, [...others(stock), ...others(elsewhere)]).slice(0, NEAREST_SHOWN);
  return {
    part: "grip",
    wanted: grip,
    nearest: wanted === undefined ? nearestNames(grip, others(stock)) : alike.map(({ row }) => row.model.name),
    unfit: [...new Set(stock.filter(isOfName).flatMap(({ model }) => misfitsOf(model, question)))],
    elsewhere: elsewhere.filter((row) => isOfName(row) && misfitsOf(row.model, question).length === 0),
    alike,
  };
}

/**
 * Which grip goes on a club: of the name wanted, with the rib as wished, the player's own bin before the rack of this truck.
 *
 *     mountable when 0.9 ≤ (b + 2·n·t)/c ≤ 1.3;   flagged when |b − c| > 0.015 in
 *
 * b butt, c core, n wraps of thickness t. The mounting tape counts in a grip's size, and wraps are wished for, so that the bare butt
 * is held against the core. A core 0.015 in off makes a standard grip 0.010 in off by `gripDiameter`; the limits of mounting are our
 * estimate, no source. Other trucks are named and not taken from.
 *
 * @param question - b and t in mm, n from 0 to 20
 * @returns the grip with its place, flagged when its core is not the shaft's; or why there is none, where it lies elsewhere and what is
 *   nearest
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @see tests/core/buildSheet/chooseGrip.test.ts: the size of `gripDiameter` at the flag's edge
 */
export function chooseGrip(question: GripQuestion): GripChoice {
  finiteNumbers(question, "question");
  const buttMm = millimetres(inRange(question.buttDiameterMm, { field: "buttDiameterMm", unit: "mm", min: 5, max: 50 }));
  inRange(question.wraps, { field: "wraps", unit: "layers", min: 0, max: 20 });
  inRange(question.layerMm ?? LAYER_MM, { field: "layerMm", unit: "mm", min: 0.001, max: 5 });
  const fitting = question.stock.filter(({ model }) => misfitsOf(model, question).length === 0);
  const row = fromStock(fitting, question.grip);
  if (row === null) {
    return { kind: "short", shortage: shortageOf(question) };
  }
  const { coreMm } = row.model;
  const isOff = Math.abs(buttMm - coreMm) > CORE_TOLERANCE_MM + ROUNDING_MM;
  return { kind: "stocked", row, misfit: isOff ? { coreMm, buttMm } : null };
}
