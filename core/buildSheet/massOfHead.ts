import type { Allowances } from "./allowances.ts";
import { chooseWeights, type WeightSet } from "./chooseWeights.ts";

interface HeadMassPlan {
  readonly weights: WeightSet["weights"];
  /** What is still missing after the weights, to be made up with lead; 0 when the wish is met or the head is too heavy. */
  readonly leadG: number;
  /** Head, weights and lead together. */
  readonly massG: number;
}

/** The head mass to aim at and how near is near enough. */
export interface HeadMassAim {
  readonly wantedG: number;
  readonly toleranceG: number;
}

/** A written head mass decides over the swing weight; both in g. */
export function headMassAim(
  writtenG: number | null,
  forSwingWeight: { readonly wantedG: number; readonly gramsPerPoint: number } | null,
  allowances: Allowances,
): HeadMassAim | null {
  if (writtenG !== null) {
    return { wantedG: writtenG, toleranceG: allowances.headMassG };
  }
  return forSwingWeight === null
    ? null
    : { wantedG: forSwingWeight.wantedG, toleranceG: allowances.swingWeightPoints * forSwingWeight.gramsPerPoint };
}

/** Weights, then lead for what is left over. */
export function massOfHead(bareG: number, aim: HeadMassAim | null, sets: readonly WeightSet[]): HeadMassPlan {
  if (aim === null) {
    return { weights: [], leadG: 0, massG: bareG };
  }
  const set = chooseWeights(sets, aim.wantedG - bareG, aim.toleranceG);
  const missingG = aim.wantedG - bareG - set.massG;
  const leadG = missingG > aim.toleranceG + 1e-9 ? missingG : 0;
  return { weights: set.weights, leadG, massG: bareG + set.massG + leadG };
}
