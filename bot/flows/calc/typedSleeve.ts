import { clockInHand, onClock } from "../../../core/head/clock.ts";
import type { Sleeve, SleevePiece } from "../../../core/head/sleeve.ts";
import { tiltFromRating } from "../../../core/head/tiltFromRating.ts";
import type { Hand } from "../../../core/kinds.ts";
import { type Degrees, degrees } from "../../../core/quantity/units.ts";
import { assumed, type Understood } from "../../boundary/calc/fields.ts";
import type { SleeveWords } from "../../boundary/calc/readSleeve.ts";
import { leanWords } from "../../replies/calc/leanWords.ts";

export interface TypedSleeve {
  readonly sleeve: Sleeve;
  readonly assumed: readonly Understood[];
}

const eighths = [0, 45, 90, 135, 180, 225, 270, 315];

/** A sleeve without printed marks, at the eight directions a shaft can lean, each called by what it does in this hand. */
export function typedSleeve({ values }: SleeveWords, designLieDeg: Degrees, hand: Hand): TypedSleeve | null {
  const { tilt, rated, ring, clock } = values;
  if (tilt === undefined && rated === undefined) return null;
  const ratedTilt = rated === undefined ? null : tiltFromRating(degrees(rated.value), "squared-loft", designLieDeg);
  const tiltDeg = ratedTilt ?? degrees(tilt?.value ?? 0);
  const piece = (deg: Degrees, called: (lean: string) => string): SleevePiece => ({
    tiltDeg: deg,
    marks: eighths.map((clockDeg) => ({ mark: called(leanWords(clockInHand(clockDeg, hand))), clockDeg: degrees(clockDeg) })),
  });
  const fromRating = ratedTilt === null ? [] : [assumed("rated is loft taken off, so tilt", ratedTilt.toFixed(2), "°")];
  if (ring !== undefined) {
    const sleeve = {
      ring: piece(degrees(ring.value), (lean) => `ring ${lean},`),
      sleeve: piece(tiltDeg, (lean) => `sleeve ${lean}`),
      standardMark: "ring flat, sleeve upright",
    };
    return { sleeve, assumed: [...fromRating, assumed("standard", sleeve.standardMark, "")] };
  }
  const { standard = "flat" } = values;
  const whole = piece(tiltDeg, (lean) => lean);
  const isPrinted = clock === undefined || whole.marks.some(({ clockDeg }) => clockDeg === onClock(clock.value));
  const between = isPrinted ? [] : [{ mark: `near ${leanWords(clockInHand(clock?.value ?? 0, hand))}`, clockDeg: degrees(clock?.value ?? 0) }];
  return {
    sleeve: { ...whole, marks: [...whole.marks, ...between], standardMark: standard },
    assumed: [...fromRating, ...(values.standard === undefined ? [assumed("standard", standard, "")] : [])],
  };
}
