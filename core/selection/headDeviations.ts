import type { MeasuredHead } from "../buildSheet/parts.ts";
import type { Deviation, Target } from "../buildSheet/plan.ts";
import type { Attitude } from "../head/attitude.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** The mass a head should have, and the sums of removable weights that may be screwed to it. */
export interface MassWish {
  readonly wantedG: number;
  readonly addableG: readonly number[];
}

/** The mass a head should have, and the nearest it comes with weights. */
export interface MassReached {
  readonly wantedG: number;
  readonly gotG: number;
}

/** The nearest a head comes with weights that do not make it too heavy. */
export function massReached(headMassG: number, { wantedG, addableG }: MassWish, toleranceG: number): MassReached {
  const offG = (addedG: number) => Math.abs(headMassG + addedG - wantedG);
  const tooHeavy = (addedG: number) => headMassG + addedG > wantedG + toleranceG;
  const addedG = addableG.reduce((best, added) => (!tooHeavy(added) && offG(added) < offG(best) ? added : best), 0);
  return { wantedG, gotG: headMassG + addedG };
}

/** A head as it would be set. */
interface SetHead {
  readonly head: MeasuredHead;
  readonly attitude: Attitude;
  /** Its squared loft at the standard mark. */
  readonly standardLoftDeg: number;
}

/**
 * How far a head is from everything wished about it. A stamp alone is wished as the loft it says; where the mark is
 * written too, the turn away from standard is on purpose and the loft at standard is what should say so.
 */
export function headDeviations(
  target: Target,
  { head, attitude, standardLoftDeg }: SetHead,
  mass: MassReached | null,
  tolerances: SelectionTolerances,
): readonly Deviation[] {
  const stampOnly = target.squaredLoftDeg === null;
  const compared = [
    {
      quantity: "squaredLoftDeg",
      wanted: stampOnly ? target.stampedLoftDeg : target.squaredLoftDeg,
      got: stampOnly && target.sleeveMark !== null ? standardLoftDeg : attitude.squaredLoftDeg,
    },
    { quantity: "soledFaceDeg", wanted: target.soledFaceDeg, got: attitude.soledFaceDeg },
    { quantity: "seatedLieDeg", wanted: target.seatedLieDeg, got: attitude.seatedLieDeg },
    { quantity: "bounceDeg", wanted: target.bounceDeg, got: head.bounceDeg },
    { quantity: "headMassG", wanted: mass?.wantedG ?? null, got: mass?.gotG ?? null },
  ] as const;
  return compared.flatMap(({ quantity, wanted, got }) =>
    wanted === null || got === null ? [] : [{ quantity, wanted, got, tolerance: tolerances[quantity] }],
  );
}
