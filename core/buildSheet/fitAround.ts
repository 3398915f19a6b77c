import { bareCutLength } from "../club/bareCutLength.ts";
import type { StagedComponent } from "../club/clubParts.ts";
import { headMassForSwingWeight } from "../club/headMassForSwingWeight.ts";
import { gramsPerPoint } from "../club/massAtPosition.ts";
import { shaftTrim } from "../club/shaftTrim.ts";
import { type TrimmedShaft, trimmedShaft } from "../club/trimmedShaft.ts";
import { millimetres, swingWeightPoints } from "../quantity/units.ts";
import type { Allowances } from "./allowances.ts";
import { type HeadMassAim, headMassAim } from "./massOfHead.ts";
import type { GripModel, HeadModel, ShaftModel, SleeveModel } from "./parts.ts";
import type { PlanFault, Target } from "./plan.ts";
import { headFromCapMm, stagedComponents } from "./stagedComponents.ts";

/** A shaft cut for a head of one model, with everything that goes around that head. */
export interface Fit {
  readonly kind: "fit";
  readonly tipTrimMm: number;
  readonly buttTrimMm: number;
  readonly bareCutMm: number;
  readonly shaft: TrimmedShaft;
  readonly around: readonly StagedComponent[];
  readonly headMassWantedG: number | null;
  readonly aim: HeadMassAim | null;
}

interface FitQuestion {
  readonly target: Target;
  readonly lengthMm: number;
  readonly shaft: ShaftModel;
  readonly grip: GripModel;
  readonly allowances: Allowances;
}

/** Cuts the shaft for a head model and its sleeve, and says what the head must weigh; or why the shaft cannot be cut so. */
export function fitAround(
  question: FitQuestion,
  headModel: HeadModel,
  sleeve: SleeveModel | null,
): Fit | { readonly kind: "refused"; readonly faults: readonly PlanFault[] } {
  const { target, lengthMm, grip, allowances } = question;
  const bareCutMm = bareCutLength(millimetres(lengthMm), millimetres(headModel.boreToGroundMm), millimetres(grip.capMm));
  const trim = shaftTrim(question.shaft, millimetres(target.tipTrimMm ?? 0), bareCutMm, millimetres(allowances.leastParallelTipMm));
  if (trim.kind === "refused") {
    return trim;
  }
  const shaft = trimmedShaft(question.shaft, millimetres(trim.tipTrimMm), millimetres(trim.buttTrimMm));
  const around = stagedComponents({ lengthMm, headModel, sleeve, shaft, grip, wraps: target.wraps ?? 0 }, allowances);
  const at = headFromCapMm(lengthMm, headModel);
  const wished = target.swingWeightPoints;
  const headMassWantedG = wished === null ? null : headMassForSwingWeight(swingWeightPoints(wished), at, around);
  const forSwingWeight = headMassWantedG === null ? null : { wantedG: headMassWantedG, gramsPerPoint: gramsPerPoint(at) };
  const { tipTrimMm, buttTrimMm } = trim;
  const aim = headMassAim(target.headMassG, forSwingWeight, allowances);
  return { kind: "fit", tipTrimMm, buttTrimMm, bareCutMm, shaft, around, headMassWantedG, aim };
}
