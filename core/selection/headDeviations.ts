import type { Deviation, Target } from "../buildSheet/plan.ts";
import type { Attitude } from "../head/attitude.ts";
import type { MassReached } from "./massReached.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** A head as it would be left. */
export interface SetHead {
  readonly attitude: Attitude;
  readonly bounceDeg: number | null;
  /** Its squared loft at the standard mark. */
  readonly standardLoftDeg: number;
  /** Null where no mass is wished. */
  readonly mass: MassReached | null;
}

/** One thing wished of a head, and where to read it. */
export interface Wished {
  readonly quantity: Deviation["quantity"];
  readonly tolerance: number;
  readonly wanted: (set: SetHead) => number | null;
  readonly got: (set: SetHead) => number | null;
}

/**
 * What is compared between heads. A stamp alone is wished as the loft it says; where the mark is written too, the turn
 * away from standard is on purpose and the loft at standard is what should say so.
 */
export function wishedOf(target: Target, tolerances: SelectionTolerances): readonly Wished[] {
  const { squaredLoftDeg, stampedLoftDeg, soledFaceDeg, seatedLieDeg, bounceDeg, sleeveMark } = target;
  const atStandard = squaredLoftDeg === null && sleeveMark !== null;
  const wished = (quantity: keyof SelectionTolerances & Deviation["quantity"], wanted: number | null, got: Wished["got"]): readonly Wished[] =>
    wanted === null ? [] : [{ quantity, tolerance: tolerances[quantity], wanted: () => wanted, got }];
  return [
    ...wished("squaredLoftDeg", squaredLoftDeg ?? stampedLoftDeg, (set) => (atStandard ? set.standardLoftDeg : set.attitude.squaredLoftDeg)),
    ...wished("soledFaceDeg", soledFaceDeg, (set) => set.attitude.soledFaceDeg),
    ...wished("seatedLieDeg", seatedLieDeg, (set) => set.attitude.seatedLieDeg),
    ...wished("bounceDeg", bounceDeg, (set) => set.bounceDeg),
    {
      quantity: "headMassG",
      tolerance: tolerances.headMassG,
      wanted: ({ mass }) => mass?.wantedG ?? null,
      got: ({ mass }) => mass?.gotG ?? null,
    },
  ];
}

/** One tolerance, and what no sum of roundings makes more of it. */
const ONE_TOLERANCE = 1 + 1e-9;

/** Whether a deviation is larger than its tolerance. */
export const isMiss = ({ wanted, got, tolerance }: Deviation): boolean => Math.abs(got - wanted) / tolerance > ONE_TOLERANCE;

/** How far a head is from everything wished that can be read of it. */
export function headDeviations(wished: readonly Wished[], set: SetHead): readonly Deviation[] {
  return wished.flatMap(({ quantity, tolerance, ...of }) => {
    const [wanted, got] = [of.wanted(set), of.got(set)];
    return wanted === null || got === null ? [] : [{ quantity, wanted, got, tolerance }];
  });
}

/** The sum of squared deviations and the number of misses: what ranking thousands of settings needs of the same. */
export function headScore(wished: readonly Wished[], set: SetHead): { readonly score: number; readonly missCount: number } {
  let score = 0;
  let missCount = 0;
  for (const wish of wished) {
    const wanted = wish.wanted(set);
    const got = wish.got(set);
    if (wanted !== null) {
      /** A bounce that was wished and never measured counts as one tolerance off. */
      const off = got === null ? 1 : (got - wanted) / wish.tolerance;
      score += off ** 2;
      missCount += Number(Math.abs(off) > ONE_TOLERANCE);
    }
  }
  return { score, missCount };
}
