import type { MeasuredHead } from "../buildSheet/parts.ts";
import type { Bend } from "../head/afterBend.ts";
import type { Attitude } from "../head/attitude.ts";
import { type BendLeft, bendLeft, NO_BEND_LEFT } from "../head/bendLeft.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { headToBend } from "./headToBend.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** What a trained gauge cannot tell: a bend so small is not made. */
const LEAST_BEND_DEG = 0.125;
/** No head is bent farther at once, whatever its maker allows. */
const FARTHEST_BEND_DEG = 10;
const SLACK_DEG = 1e-9;

/** What of a wish a bend can bring nearer. */
export interface BendWish {
  readonly squaredLoftDeg: number | null;
  readonly seatedLieDeg: number | null;
  readonly bounceDeg: number | null;
}

/** A head as it will be left. */
export interface LeftHead {
  readonly attitude: Attitude;
  readonly bounceDeg: Degrees | null;
  readonly bend: Bend | null;
  /** Past the warning, not past the limit. */
  readonly bendWarned: boolean;
}

interface Off {
  readonly wanted: number | null;
  readonly got: number | null;
  readonly tolerance: number;
}

/** The bend of one plane that leaves the smallest sum of squared deviations, as far as it may go. */
function planeBend(offs: readonly Off[], leftDeg: number): Degrees {
  let [pull, weight] = [0, 0];
  for (const { wanted, got, tolerance } of offs) {
    if (wanted !== null && got !== null) {
      pull += (wanted - got) / tolerance ** 2;
      weight += 1 / tolerance ** 2;
    }
  }
  const mostDeg = Math.min(leftDeg, FARTHEST_BEND_DEG);
  const bendDeg = weight === 0 ? 0 : Math.min(mostDeg, Math.max(-mostDeg, pull / weight));
  return degrees(Math.abs(bendDeg) <= LEAST_BEND_DEG + SLACK_DEG ? 0 : bendDeg);
}

const isWarned = (left: BendLeft, { loftChangeDeg, lieChangeDeg }: Bend): boolean =>
  Math.abs(loftChangeDeg) > left.loft.unwarnedDeg + SLACK_DEG || Math.abs(lieChangeDeg) > left.lie.unwarnedDeg + SLACK_DEG;

/**
 * A head without a sleeve, bent as near to the wish as its limits let it.
 *
 *     loft plane: least ((l + d − L)/t_l)² + ((b + d − B)/t_b)², |d| no more than is left     lie likewise, by itself
 *
 * Bounce goes with the loft one for one; without a wished loft the loft stays. In closed form, as the sum is a parabola
 * in d. A bend that no gauge can tell is not made.
 */
export function bestBend(
  head: MeasuredHead,
  bare: Attitude,
  wish: BendWish,
  how: { readonly tolerances: SelectionTolerances; readonly skilledTechnician: boolean },
): LeftHead {
  const made = headToBend(head, how.skilledTechnician);
  const left = made === null ? NO_BEND_LEFT : bendLeft(made);
  const { tolerances } = how;
  const loft = { wanted: wish.squaredLoftDeg, got: bare.squaredLoftDeg, tolerance: tolerances.squaredLoftDeg };
  const bounce = { wanted: wish.bounceDeg, got: head.bounceDeg, tolerance: tolerances.bounceDeg };
  const lie = { wanted: wish.seatedLieDeg, got: bare.seatedLieDeg, tolerance: tolerances.seatedLieDeg };
  const bend = {
    loftChangeDeg: wish.squaredLoftDeg === null ? degrees(0) : planeBend([loft, bounce], left.loft.leftDeg),
    lieChangeDeg: planeBend([lie], left.lie.leftDeg),
  };
  if (bend.loftChangeDeg === 0 && bend.lieChangeDeg === 0) {
    return { attitude: bare, bounceDeg: head.bounceDeg, bend: null, bendWarned: false };
  }
  return {
    attitude: {
      squaredLoftDeg: degrees(bare.squaredLoftDeg + bend.loftChangeDeg),
      squaredLoftAtDesignLieDeg: degrees(bare.squaredLoftAtDesignLieDeg + bend.loftChangeDeg),
      soledFaceDeg: bare.soledFaceDeg,
      seatedLieDeg: degrees(bare.seatedLieDeg + bend.lieChangeDeg),
    },
    bounceDeg: head.bounceDeg === null ? null : degrees(head.bounceDeg + bend.loftChangeDeg),
    bend,
    bendWarned: isWarned(left, bend),
  };
}
