import { type Degrees, degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";

/** A bore tilted against its sleeve's axis. The clock tells where the grip end leans in a right-handed head: 0 to the target, 90 upright. */
export interface SleeveTilt {
  readonly tiltDeg: Degrees;
  readonly clockDeg: Degrees;
}

export const NO_TILT: SleeveTilt = { tiltDeg: degrees(0), clockDeg: degrees(0) };

/** The same tilt, refused when one of its angles is impossible. */
export function checkedTilt(tilt: SleeveTilt): SleeveTilt {
  angleInRange(tilt.tiltDeg, "tilt", "tiltDeg");
  angleInRange(tilt.clockDeg, "clock", "clockDeg");
  return tilt;
}
