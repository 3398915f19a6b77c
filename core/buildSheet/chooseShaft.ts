import { type ClubFamily, clubFamilies } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import type { Millimetres } from "../quantity/units.ts";
import { NEAREST_SHOWN, nearestNames } from "./fromStock.ts";
import { type NearShaft, nearestShafts, tipDiffers } from "./nearestShafts.ts";
import type { ShaftModel, ShaftPiece, Stocked } from "./parts.ts";
import { isSleeved, pieceFit, type ShaftWork } from "./pieceFit.ts";
import type { Shortage } from "./plan.ts";

/** Which shaft to build from. */
export interface ShaftQuestion extends ShaftWork {
  readonly shaft: string;
  /** The kind of club it is for; null when it may be any. */
  readonly family: ClubFamily | null;
  /** A gamer gets a used shaft only when no other is here. */
  readonly forGamer: boolean;
  /** What the tip has to go into, when that is known: a sleeve's or hosel's bore. */
  readonly bore?: Pick<ShaftModel, "tip" | "tipDiameterMm"> | null;
  readonly stock: readonly Stocked<ShaftModel>[];
  readonly pieces: readonly ShaftPiece[];
  /** In other trucks and at home base: named, never taken. */
  readonly elsewhere: readonly Stocked<ShaftModel>[];
  /** Every model the shop knows, so that the nearest can be told when none of the wanted one is left anywhere. */
  readonly known?: readonly ShaftModel[];
}

/** Why one of the wanted name that lies here was left there. */
export type ShaftMisfit = "family" | "tip" | "sleeve" | "logo" | "tipTrim" | "length";

/** No such shaft here: where it lies elsewhere, and what is nearest to it. */
export interface ShaftShortage extends Shortage {
  readonly part: "shaft";
  readonly unfit: readonly ShaftMisfit[];
  readonly elsewhere: readonly Stocked<ShaftModel>[];
  readonly alike: readonly NearShaft[];
}

export type ShaftChoice =
  | { readonly kind: "raw"; readonly row: Stocked<ShaftModel> }
  /** With what is still to be cut off it. */
  | { readonly kind: "piece"; readonly piece: ShaftPiece; readonly tipTrimMm: Millimetres; readonly buttTrimMm: Millimetres }
  | { readonly kind: "short"; readonly shortage: ShaftShortage };

type Taken = Exclude<ShaftChoice, { readonly kind: "short" }>;

const LONGEST_MM = 2000;
/** Sums of lengths converted from inches come out so near to each other. */
const ROUNDING_MM = 1e-9;

/** From what saves most work to what a player likes least. A shaft tipped by less may yet be wanted as it is: raw before it. */
const readiness = { sleeved: 0, tipped: 1, raw: 2, tippedByLess: 3, used: 4 } as const;

function readinessOf(taken: Taken): number {
  if (taken.kind === "raw") {
    return readiness.raw;
  }
  if (taken.piece.state === "used") {
    return readiness.used;
  }
  return isSleeved(taken.piece) ? readiness.sleeved : taken.tipTrimMm > 0 ? readiness.tippedByLess : readiness.tipped;
}

/** What decides between two, first things first. */
function orderOf(taken: Taken, forGamer: boolean): readonly number[] {
  const { inPlayersBin, placeId, id } = taken.kind === "raw" ? { ...taken.row, id: 0 } : taken.piece;
  const ready = readinessOf(taken);
  return [Number(forGamer && ready === readiness.used), Number(!inPlayersBin), ready, placeId, id];
}

function earlier(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
}

/** What is against a model, however its shafts are prepared. */
function modelMisfits(model: ShaftModel, { family, bore = null }: ShaftQuestion): readonly ShaftMisfit[] {
  const isForOther = family !== null && !model.forFamilies.includes(family);
  const isOtherTip = bore !== null && (model.tip !== bore.tip || tipDiffers(model, bore));
  return [...(isForOther ? ["family" as const] : []), ...(isOtherTip ? ["tip" as const] : [])];
}

/** Everything of the wanted name that lies here, as it would be taken, or why not. */
function candidates(question: ShaftQuestion): readonly (Taken | { readonly kind: "unfit"; readonly reasons: readonly ShaftMisfit[] })[] {
  const ofPiece = (piece: ShaftPiece) => {
    const misfits = modelMisfits(piece.model, question);
    const fit = pieceFit(piece, question);
    if (fit.kind === "unfit" || misfits.length > 0) {
      return { kind: "unfit" as const, reasons: [...misfits, ...(fit.kind === "unfit" ? fit.reasons : [])] };
    }
    return { kind: "piece" as const, piece, tipTrimMm: fit.tipTrimMm, buttTrimMm: fit.buttTrimMm };
  };
  const ofRow = (row: Stocked<ShaftModel>) => {
    const reasons = modelMisfits(row.model, question);
    return reasons.length > 0 ? { kind: "unfit" as const, reasons } : { kind: "raw" as const, row };
  };
  const isWanted = ({ model }: { readonly model: ShaftModel }) => model.name === question.shaft;
  return [...question.stock.filter((row) => isWanted(row) && row.free > 0).map(ofRow), ...question.pieces.filter(isWanted).map(ofPiece)];
}

function shortageOf(question: ShaftQuestion, unfit: readonly ShaftMisfit[]): ShaftShortage {
  const { shaft, family, stock, pieces, elsewhere, known = [], tipTrimMm, bareCutMm } = question;
  const wanted = [...known, ...[...stock, ...elsewhere, ...pieces].map(({ model }) => model)].find(({ name }) => name === shaft);
  const isOther = ({ model }: Stocked<ShaftModel>) => model.name !== shaft && modelMisfits(model, question).length === 0;
  const isLongEnough = ({ model }: Stocked<ShaftModel>) => model.rawLengthMm >= tipTrimMm + bareCutMm - ROUNDING_MM;
  const others = (rows: readonly Stocked<ShaftModel>[]) => rows.filter((row) => isOther(row) && isLongEnough(row));
  const alike = wanted === undefined ? [] : nearestShafts(wanted, family, [...others(stock), ...others(elsewhere)]).slice(0, NEAREST_SHOWN);
  return {
    part: "shaft",
    wanted: shaft,
    nearest: wanted === undefined ? nearestNames(shaft, others(stock)) : alike.map(({ row }) => row.model.name),
    unfit: [...new Set(unfit)],
    elsewhere: elsewhere.filter(({ model, free }) => model.name === shaft && free > 0 && modelMisfits(model, question).length === 0),
    alike,
  };
}

function checked(question: ShaftQuestion): ShaftQuestion {
  const { sleeve, logo, family } = finiteNumbers(question, "question");
  inRange(question.tipTrimMm, { field: "tipTrimMm", unit: "mm", min: 0, max: LONGEST_MM });
  inRange(question.bareCutMm, { field: "bareCutMm", unit: "mm", min: 1, max: LONGEST_MM });
  inRange(question.leastParallelTipMm ?? 0, { field: "leastParallelTipMm", unit: "mm", min: 0, max: LONGEST_MM });
  oneOf(question.hand, ["left", "right"], "hand");
  oneOf(logo ?? "up", ["up", "down"], "logo");
  oneOf(family ?? "driver", clubFamilies, "family");
  if (sleeve !== null) {
    oneOf(
      sleeve.mark,
      sleeve.model.marks.map(({ mark }) => mark),
      "mark",
    );
  }
  return question;
}

/**
 * Which shaft a club is built from: raw from a bin or the rack, or one that was prepared before.
 *
 * The player's own bin comes before the rack of this truck whatever lies there, as the trade has it; other trucks are named and
 * not taken from. Within one place what saves most work comes first: on the sleeve wanted, tipped as wanted, raw, tipped by less, used.
 * A gamer gets a used shaft only when there is no other. A prepared one must fit: as much off the tip within 1/16 in, or less
 * while no sleeve is on; long enough; the same sleeve, and the logo right at the mark the club is built at. Whether a raw one can
 * be cut so says `shaftTrim`. Common practice, no source.
 *
 * @param question - lengths in mm; `sleeve` with its mark, or null when bonded into the hosel
 * @returns the shaft, a prepared one with what is still to be cut off it in mm; or why there is none, where it lies elsewhere and
 *   what is nearest
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @throws {DomainError} `quantity-unreadable` when the family or the hand is unknown or the mark is not the sleeve's
 * @see tests/core/buildSheet/chooseShaft.test.ts: what trying every order of the stock finds
 */
export function chooseShaft(question: ShaftQuestion): ShaftChoice {
  const all = candidates(checked(question));
  const [first, ...others] = all.flatMap((one) => (one.kind === "unfit" ? [] : [one]));
  if (first === undefined) {
    const unfit = all.flatMap((one) => (one.kind === "unfit" ? one.reasons : []));
    return { kind: "short", shortage: shortageOf(question, unfit) };
  }
  const order = (taken: Taken) => orderOf(taken, question.forGamer);
  return others.reduce<Taken>((best, one) => (earlier(order(one), order(best)) < 0 ? one : best), first);
}
