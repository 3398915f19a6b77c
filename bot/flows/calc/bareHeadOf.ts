import { attitudeOf, type BareHead } from "../../../core/head/attitudeOf.ts";
import type { SleeveTilt } from "../../../core/head/sleeveTilt.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";

interface Readings {
  readonly squaredLoftDeg: number;
  readonly soledFaceDeg: number;
  readonly seatedLieDeg: number;
}

/** Each round leaves a tenth of what was off: a reading follows its own angle almost one for one. */
const ROUNDS = 25;

/** The bare head that reads so with its shaft leaned by a sleeve: its angles are moved by what is off until nothing is. */
export function bareHeadOf(reads: Readings, tilt: SleeveTilt, hand: Hand): BareHead {
  const first: BareHead = {
    soledLoftDeg: degrees(reads.squaredLoftDeg),
    soledFaceDeg: degrees(reads.soledFaceDeg),
    designLieDeg: degrees(reads.seatedLieDeg),
    hand,
  };
  return Array.from({ length: ROUNDS }).reduce<BareHead>((head) => {
    const got = attitudeOf(head, tilt);
    return {
      soledLoftDeg: degrees(head.soledLoftDeg + reads.squaredLoftDeg - got.squaredLoftDeg),
      soledFaceDeg: degrees(head.soledFaceDeg + reads.soledFaceDeg - got.soledFaceDeg),
      designLieDeg: degrees(head.designLieDeg + reads.seatedLieDeg - got.seatedLieDeg),
      hand,
    };
  }, first);
}
