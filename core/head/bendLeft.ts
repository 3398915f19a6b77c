import { type Degrees, degrees } from "../quantity/units.ts";
import { bendAllowed } from "./bendAllowed.ts";
import type { BendLimits } from "./bendLimits.ts";

/** How far one plane may still be bent, either way. */
interface PlaneLeft {
  readonly leftDeg: Degrees;
  /** As far as this it is not even warned of. */
  readonly unwarnedDeg: Degrees;
}

/** How far a head may still be bent. */
export interface BendLeft {
  readonly loft: PlaneLeft;
  readonly lie: PlaneLeft;
}

const nothingLeft: PlaneLeft = { leftDeg: degrees(0), unwarnedDeg: degrees(0) };
export const NO_BEND_LEFT: BendLeft = { loft: nothingLeft, lie: nothingLeft };

/** Any bend at all: whether a head bears one does not depend on how far it goes. */
const PROBE_DEG = degrees(0.125);

/** What all its past bends leave of the limits that apply to a head; nothing where no bend at all is allowed. */
export function bendLeft(head: Parameters<typeof bendAllowed>[0], limits?: BendLimits): BendLeft {
  const { reasons, limits: apply, totalLoftDeg, totalLieDeg } = bendAllowed(head, { loftChangeDeg: PROBE_DEG, lieChangeDeg: PROBE_DEG }, limits);
  if (reasons.some(({ code }) => code === "maker-does-not-allow" || code === "needs-skill")) {
    return NO_BEND_LEFT;
  }
  const left = (limitDeg: number, totalDeg: number) => degrees(Math.max(0, limitDeg - (totalDeg - PROBE_DEG)));
  const plane = (totalDeg: number): PlaneLeft => ({ leftDeg: left(apply.blockAboveDeg, totalDeg), unwarnedDeg: left(apply.warnAboveDeg, totalDeg) });
  return { loft: plane(totalLoftDeg), lie: plane(totalLieDeg) };
}
