import type { ShaftModel } from "./parts.ts";
import type { PlanFault } from "./plan.ts";

type TrimFault = Extract<PlanFault, { code: "shaft-too-short" | "tip-section-too-short" | "taper-not-tip-trimmed" }>;

type Trim =
  | { readonly kind: "trim"; readonly tipTrimMm: number; readonly buttTrimMm: number }
  | { readonly kind: "refused"; readonly faults: readonly TrimFault[] };

function tipFaults(shaft: ShaftModel, tipTrimMm: number, leastParallelTipMm: number): readonly TrimFault[] {
  if (tipTrimMm <= 0) {
    return [];
  }
  if (shaft.tip === "taper") {
    return [{ code: "taper-not-tip-trimmed", wantedTrimMm: tipTrimMm }];
  }
  const allowedTrimMm = Math.max(0, shaft.parallelTipMm - leastParallelTipMm);
  return tipTrimMm > allowedTrimMm + 1e-9 ? [{ code: "tip-section-too-short", wantedTrimMm: tipTrimMm, allowedTrimMm }] : [];
}

/**
 * What to cut off a raw shaft: the tip first, the rest off the butt.
 *
 *     butt trim = raw length − tip trim − bare cut
 *
 * A taper tip is never trimmed; a parallel tip keeps its least parallel section.
 *
 * @param shaft - raw, lengths in mm
 * @param tipTrimMm - off the tip, in mm, zero or more
 * @param bareCutMm - length wanted, tip to butt, in mm
 * @param leastParallelTipMm - what must stay of the parallel tip, in mm
 * @returns both trims in mm, or every reason why not
 * @see fixtures/published/shaftTrimming.json
 */
export function trimFor(shaft: ShaftModel, tipTrimMm: number, bareCutMm: number, leastParallelTipMm: number): Trim {
  const neededMm = tipTrimMm + bareCutMm;
  const tooShort: readonly TrimFault[] = neededMm > shaft.rawLengthMm + 1e-9 ? [{ code: "shaft-too-short", rawMm: shaft.rawLengthMm, neededMm }] : [];
  const faults = [...tooShort, ...tipFaults(shaft, tipTrimMm, leastParallelTipMm)];
  return faults.length > 0 ? { kind: "refused", faults } : { kind: "trim", tipTrimMm, buttTrimMm: Math.max(0, shaft.rawLengthMm - neededMm) };
}
