import { NO_TILT, type SleeveTilt } from "../head/sleeveTilt.ts";
import type { HeadModel, SleeveModel } from "./parts.ts";

/** How the sleeve leans the shaft at the mark a club was played at; null when nobody knows. */
export function tiltOnRecord({ sleeveFamily }: HeadModel, sleeve: SleeveModel | null, mark: string | null): SleeveTilt | null {
  const clockDeg = sleeve?.marks.find((printed) => printed.mark === mark)?.clockDeg;
  if (sleeve === null || clockDeg === undefined) {
    return sleeveFamily === null ? NO_TILT : null;
  }
  return { tiltDeg: sleeve.tiltDeg, clockDeg };
}
