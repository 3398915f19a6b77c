import type { SpecClub } from "../../core/bag/specClub.ts";
import type { HeadModel, MeasuredHead, SleeveModel } from "../../core/buildSheet/parts.ts";
import { bareHeadOf } from "../../core/head/bareHeadOf.ts";
import { NO_TILT } from "../../core/head/sleeveTilt.ts";
import { type Hand, id } from "../../core/kinds.ts";
import { degrees, grams } from "../../core/quantity/units.ts";
import { headBySerial, modelsOf } from "../../db/repositories/stock.ts";
import type { Reader } from "../../db/write.ts";

/** The id of a head that is in no drawer's list: it is never taken from stock. */
const NO_HEAD = id<"head">(0);

/**
 * The head of a club on record: as it was measured bare when it is among the team's own, else brought back to bare from
 * what the gauge read of the club.
 *
 * @returns null when the record does not say enough
 */
export function ownHead(reader: Reader, club: SpecClub | null, hand: Hand): MeasuredHead | null {
  if (club === null) {
    return null;
  }
  const known = club.headSerial === null ? null : headBySerial(reader, club.headSerial);
  if (known !== null) {
    return known;
  }
  const model = modelsOf<HeadModel>(reader, "head").find(({ name }) => name === club.headModel);
  const { squaredLoftDeg, seatedLieDeg, stampedLoftDeg, headMassG } = club;
  if (model === undefined || squaredLoftDeg === null || seatedLieDeg === null || headMassG === null) {
    return null;
  }
  const sleeve = modelsOf<SleeveModel>(reader, "sleeve").find(({ name }) => name === club.sleeveModel);
  const clockDeg = sleeve?.marks.find(({ mark }) => mark === club.sleeveMark)?.clockDeg;
  const reads = {
    squaredLoftDeg: degrees(squaredLoftDeg),
    soledFaceDeg: degrees(club.soledFaceDeg ?? 0),
    seatedLieDeg: degrees(seatedLieDeg),
  };
  const tilt = sleeve === undefined || clockDeg === undefined ? NO_TILT : { tiltDeg: sleeve.tiltDeg, clockDeg };
  return {
    ...bareHeadOf(reads, tilt, hand),
    id: NO_HEAD,
    serial: club.headSerial ?? "unknown",
    model,
    stampedLoftDeg: degrees(stampedLoftDeg ?? squaredLoftDeg),
    bounceDeg: club.bounceDeg === null ? null : degrees(club.bounceDeg),
    massG: grams(headMassG),
    place: "in the club",
    here: true,
  };
}
