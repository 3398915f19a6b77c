import type { SpecClub } from "../bag/specClub.ts";
import { bareHeadOf } from "../head/bareHeadOf.ts";
import { NO_TILT } from "../head/sleeveTilt.ts";
import { type Hand, id } from "../kinds.ts";
import { degrees, grams } from "../quantity/units.ts";
import type { HeadModel, MeasuredHead, SleeveModel } from "./parts.ts";
import { tiltOnRecord } from "./tiltOnRecord.ts";

/** The id of a head that is in no drawer's list: it is never taken from stock. */
const NO_HEAD = id<"head">(0);

/**
 * The head of a club that was never measured bare: what the gauge read of the club, brought back to bare; as if it
 * were bonded where nobody knows how the sleeve stood.
 *
 * @returns null when the record does not say enough
 */
export function headReadOff(club: SpecClub, model: HeadModel, sleeve: SleeveModel | null, hand: Hand): MeasuredHead | null {
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg, stampedLoftDeg, bounceDeg, headMassG } = club;
  if (squaredLoftDeg === null || seatedLieDeg === null || headMassG === null) {
    return null;
  }
  const reads = {
    squaredLoftDeg: degrees(squaredLoftDeg),
    soledFaceDeg: degrees(soledFaceDeg ?? 0),
    seatedLieDeg: degrees(seatedLieDeg),
  };
  return {
    ...bareHeadOf(reads, tiltOnRecord(model, sleeve, club.sleeveMark) ?? NO_TILT, hand),
    id: NO_HEAD,
    serial: club.headSerial ?? "unknown",
    model,
    stampedLoftDeg: degrees(stampedLoftDeg ?? squaredLoftDeg),
    bounceDeg: bounceDeg === null ? null : degrees(bounceDeg),
    massG: grams(headMassG),
    place: "in the club",
    here: true,
  };
}
