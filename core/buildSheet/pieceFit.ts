import { LEAST_PARALLEL_TIP_MM } from "../club/shaftTrim.ts";
import { graphicsAfterTurn, type Logo } from "../head/graphicsAfterTurn.ts";
import { turnOfShaft } from "../head/turnOfShaft.ts";
import type { Hand } from "../kinds.ts";
import { type Millimetres, millimetres, mmFromInches } from "../quantity/units.ts";
import type { ShaftPiece, SleeveModel } from "./parts.ts";

/** How a shaft is to be cut and bonded. */
export interface ShaftWork {
  readonly hand: Hand;
  /** Off the tip of the raw shaft, in all. */
  readonly tipTrimMm: Millimetres;
  /** From tip to butt in the finished club. */
  readonly bareCutMm: Millimetres;
  /** What must stay of a parallel tip; 1.5 in when left out. */
  readonly leastParallelTipMm?: Millimetres;
  /** Null when the shaft is bonded into the hosel. */
  readonly sleeve: { readonly model: SleeveModel; readonly mark: string } | null;
  /** Null when nobody minds. */
  readonly logo: Logo | null;
}

type PieceMisfit = "sleeve" | "logo" | "tipTrim" | "length";

type PieceFit =
  | { readonly kind: "fits"; readonly tipTrimMm: Millimetres; readonly buttTrimMm: Millimetres }
  | { readonly kind: "unfit"; readonly reasons: readonly PieceMisfit[] };

/** A tip trim is met within 1/16 in, as a length is; common practice, no source. */
const SAME_TRIM_MM = mmFromInches(1 / 16);
const ROUNDING_MM = 1e-9;

export const isSleeved = ({ state, sleeve }: ShaftPiece): boolean => state === "sleeved" || sleeve !== null;

const hasSameTrim = (piece: ShaftPiece, tipTrimMm: number) => Math.abs(piece.tipTrimMm - tipTrimMm) <= SAME_TRIM_MM + ROUNDING_MM;

/** What is still to come off the tip: nothing when it is near enough, below 0 when too much is off already. */
const tipLeftMm = (piece: ShaftPiece, tipTrimMm: number): number => (hasSameTrim(piece, tipTrimMm) ? 0 : tipTrimMm - piece.tipTrimMm);

/** What a sleeve on the shaft stands in the way of: it is neither turned on the shaft nor taken off to trim the tip. */
function sleevedMisfits(piece: ShaftPiece, { sleeve, logo, hand, tipTrimMm }: ShaftWork): readonly PieceMisfit[] {
  const trim = hasSameTrim(piece, tipTrimMm) ? [] : ["tipTrim" as const];
  if (sleeve === null || piece.sleeve?.id !== sleeve.model.id) {
    return ["sleeve", ...trim];
  }
  const { onClockDeg } = turnOfShaft(sleeve.model.standardMark, sleeve.mark, sleeve.model, hand);
  const atMark = piece.logo === null ? null : graphicsAfterTurn({ logo: piece.logo, ribClockDeg: null, spineClockDeg: null }, onClockDeg).logo;
  return logo === null || atMark === logo ? trim : ["logo", ...trim];
}

/** More can come off a bare tip, as far as its kind allows; nothing can be put back. */
function bareMisfits(piece: ShaftPiece, { tipTrimMm, leastParallelTipMm = LEAST_PARALLEL_TIP_MM }: ShaftWork): readonly PieceMisfit[] {
  const leftMm = tipLeftMm(piece, tipTrimMm);
  const { tip, parallelTipMm } = piece.model;
  const isTooShort = leftMm > 0 && (tip === "taper" || tipTrimMm > parallelTipMm - leastParallelTipMm + ROUNDING_MM);
  return leftMm < 0 || isTooShort ? ["tipTrim"] : [];
}

/** Whether a prepared shaft can become the one wanted, and what is still to be cut; or everything that is against it. */
export function pieceFit(piece: ShaftPiece, work: ShaftWork): PieceFit {
  const misfits = isSleeved(piece) ? sleevedMisfits(piece, work) : bareMisfits(piece, work);
  const tipTrimMm = tipLeftMm(piece, work.tipTrimMm);
  const lengthMm = piece.cutLengthMm ?? piece.model.rawLengthMm - piece.tipTrimMm;
  const buttTrimMm = lengthMm - Math.max(0, tipTrimMm) - work.bareCutMm;
  const reasons = [...misfits, ...(buttTrimMm < -ROUNDING_MM ? ["length" as const] : [])];
  return reasons.length > 0
    ? { kind: "unfit", reasons }
    : { kind: "fits", tipTrimMm: millimetres(tipTrimMm), buttTrimMm: millimetres(Math.max(0, buttTrimMm)) };
}
