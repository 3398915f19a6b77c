import type { SpecClub } from "../bag/specClub.ts";
import { attitudeOf } from "../head/attitudeOf.ts";
import { bareHeadOf } from "../head/bareHeadOf.ts";
import { degrees, grams } from "../quantity/units.ts";
import type { MeasuredHead, SleeveModel } from "./parts.ts";
import { tiltOnRecord } from "./tiltOnRecord.ts";

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
  const tilt = tiltOnRecord(head.model, sleeve, reference.sleeveMark);
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
