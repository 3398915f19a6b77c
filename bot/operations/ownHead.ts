import type { SpecClub } from "../../core/bag/specClub.ts";
import { headReadOff } from "../../core/buildSheet/headReadOff.ts";
import type { HeadModel, MeasuredHead, SleeveModel } from "../../core/buildSheet/parts.ts";
import type { Hand } from "../../core/kinds.ts";
import { headBySerial } from "../../db/repositories/heads.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import type { Reader } from "../../db/write.ts";

/**
 * The head of a club on record: as it was measured bare when it is among the team's own, else as the gauge read it on
 * the club.
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
  const sleeve = modelsOf<SleeveModel>(reader, "sleeve").find(({ name }) => name === club.sleeveModel) ?? null;
  return model === undefined ? null : headReadOff(club, model, sleeve, hand);
}
