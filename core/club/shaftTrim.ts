import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Millimetres, millimetres, mmFromInches } from "../quantity/units.ts";

const tips = ["parallel", "taper"] as const;

/** What the cutting of a raw shaft depends on. */
interface RawTip {
  readonly tip: (typeof tips)[number];
  /** The part of the tip of one diameter. */
  readonly parallelTipMm: Millimetres;
  readonly rawLengthMm: Millimetres;
}

/** Why a shaft cannot be cut so. */
export type TrimFault =
  | { readonly code: "shaft-too-short"; readonly rawMm: number; readonly neededMm: number }
  | { readonly code: "tip-section-too-short"; readonly wantedTrimMm: number; readonly allowedTrimMm: number }
  | { readonly code: "taper-not-tip-trimmed"; readonly wantedTrimMm: number };

type ShaftTrim =
  | { readonly kind: "trim"; readonly tipTrimMm: Millimetres; readonly buttTrimMm: Millimetres }
  | { readonly kind: "refused"; readonly faults: readonly TrimFault[] };

/** The least of the parallel tip section that must stay: 1.5 in. */
export const LEAST_PARALLEL_TIP_MM = mmFromInches(1.5);
const LONGEST_MM = 2000;
/** Sums of lengths converted from inches come out so near to each other. */
const ROUNDING_MM = 1e-9;

function tipFaults(shaft: RawTip, tipTrimMm: number, leastParallelTipMm: number): readonly TrimFault[] {
  if (tipTrimMm === 0) {
    return [];
  }
  if (shaft.tip === "taper") {
    return [{ code: "taper-not-tip-trimmed", wantedTrimMm: tipTrimMm }];
  }
  const allowedTrimMm = Math.max(0, shaft.parallelTipMm - leastParallelTipMm);
  return tipTrimMm > allowedTrimMm + ROUNDING_MM ? [{ code: "tip-section-too-short", wantedTrimMm: tipTrimMm, allowedTrimMm }] : [];
}

/**
 * What to cut off a raw shaft: the tip first, the rest off the butt after a dry fit.
 *
 *     butt trim = raw length − tip trim − bare cut
 *
 * A taper tip is never trimmed; a parallel tip keeps its least parallel section. Exact sums.
 *
 * @param shaft - kind of tip, its parallel section and raw length in mm
 * @param tipTrim - off the tip, in mm, zero or more
 * @param bareCut - length wanted, tip to butt, in mm
 * @param leastParallelTip - what must stay of the parallel tip, in mm
 * @returns both trims in mm, or every reason why not
 * @throws {DomainError} `quantity-out-of-range` when a length is impossible
 * @throws {DomainError} `quantity-unreadable` when the kind of tip is not known
 * @see fixtures/published/shaftTrimming.json
 * @see fixtures/published/tipTrims.json
 */
export function shaftTrim(
  shaft: RawTip,
  tipTrim: Millimetres,
  bareCut: Millimetres,
  leastParallelTip: Millimetres = LEAST_PARALLEL_TIP_MM,
): ShaftTrim {
  oneOf(shaft.tip, tips, "tip");
  const rawMm = inRange(shaft.rawLengthMm, { field: "rawLengthMm", unit: "mm", min: 1, max: LONGEST_MM });
  inRange(shaft.parallelTipMm, { field: "parallelTipMm", unit: "mm", min: 0, max: rawMm });
  const tipTrimMm = inRange(tipTrim, { field: "tipTrimMm", unit: "mm", min: 0, max: LONGEST_MM });
  const bareCutMm = inRange(bareCut, { field: "bareCutMm", unit: "mm", min: 1, max: LONGEST_MM });
  const leastMm = inRange(leastParallelTip, { field: "leastParallelTipMm", unit: "mm", min: 0, max: LONGEST_MM });
  const neededMm = tipTrimMm + bareCutMm;
  const tooShort: readonly TrimFault[] = neededMm > rawMm + ROUNDING_MM ? [{ code: "shaft-too-short", rawMm, neededMm }] : [];
  const faults = [...tooShort, ...tipFaults(shaft, tipTrimMm, leastMm)];
  return faults.length > 0
    ? { kind: "refused", faults }
    : { kind: "trim", tipTrimMm: millimetres(tipTrimMm), buttTrimMm: millimetres(Math.max(0, rawMm - neededMm)) };
}
