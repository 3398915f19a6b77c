import type { Bend } from "../head/afterBend.ts";
import { type Degrees, degrees } from "../quantity/units.ts";

/** How far a head is bent in both planes together. */
export const bentDeg = ({ bend }: { readonly bend: Bend | null }): Degrees =>
  degrees(bend === null ? 0 : Math.abs(bend.loftChangeDeg) + Math.abs(bend.lieChangeDeg));
