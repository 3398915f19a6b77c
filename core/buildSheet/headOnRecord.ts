import type { SpecClub } from "../bag/specClub.ts";
import { attitudeOf } from "../head/attitudeOf.ts";
import { bareHeadOf } from "../head/bareHeadOf.ts";
import { NO_TILT } from "../head/sleeveTilt.ts";
import { degrees, grams } from "../quantity/units.ts";
import type { MeasuredHead, SleeveModel } from "./parts.ts";

/** How the sleeve leans the shaft as the club was played; null when nobody knows. */
function tiltOnRecord(head: MeasuredHead, sleeve: SleeveModel | null, mark: string | null) {
  const clockDeg = sleeve?.marks.find((printed) => printed.mark === mark)?.clockDeg;
  if (sleeve === null || clockDeg === undefined) {
    return head.model.sleeveFamily === null ? NO_TILT : null;
  }
  return { tiltDeg: sleeve.tiltDeg, clockDeg };
}

/**
 * A club's own head as the record has it, bends and weights on it included: what was read of the club decides over what
 * the head was measured before it was built, where the mark it was played at is known.
 */
export function headOnRecord(head: MeasuredHead, reference: SpecClub | null, sleeve: SleeveModel | null): MeasuredHead {
  if (reference === null) {
    return head;
  }
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg, bounceDeg, headMassG } = reference;
  const worn = {
    ...head,
    bounceDeg: bounceDeg === null ? head.bounceDeg : degrees(bounceDeg),
    massG: headMassG === null ? head.massG : grams(headMassG),
  };
  const tilt = tiltOnRecord(head, sleeve, reference.sleeveMark);
  if (tilt === null) {
    return worn;
  }
  const bare = attitudeOf(head, tilt);
  const reads = {
    squaredLoftDeg: degrees(squaredLoftDeg ?? bare.squaredLoftDeg),
    soledFaceDeg: degrees(soledFaceDeg ?? bare.soledFaceDeg),
    seatedLieDeg: degrees(seatedLieDeg ?? bare.seatedLieDeg),
  };
  return { ...worn, ...bareHeadOf(reads, tilt, head.hand) };
}
