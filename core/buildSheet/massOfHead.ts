import type { Allowances } from "./allowances.ts";
import { chooseWeights } from "./chooseWeights.ts";
import type { Stocked, WeightModel } from "./parts.ts";

interface HeadMassPlan {
  readonly weights: ReturnType<typeof chooseWeights>["weights"];
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
export function massOfHead(bareG: number, aim: HeadMassAim | null, stock: readonly Stocked<WeightModel>[], ports: number): HeadMassPlan {
  return aim === null ? { weights: [], leadG: 0, massG: bareG } : chooseWeights(bareG, aim, stock, ports);
}
