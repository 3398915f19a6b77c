import type { Attitude } from "../../../core/head/attitude.ts";
import type { AttitudeWish } from "../../../core/head/nearestMark.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { type CalcFault, needed, type WrittenNumber } from "../../boundary/calc/fields.ts";
import type { SleeveWishWords } from "../../boundary/calc/readSleeve.ts";

type Wished =
  | { readonly kind: "wish"; readonly wish: AttitudeWish /** Only a change was wished, so the lie is to stay. */; readonly keepsLie: boolean }
  | { readonly kind: "faults"; readonly faults: readonly CalcFault[] };

/** What the club should read; changes are from what it reads as it stands, and leave the lie as it is unless it is wished. */
export function sleeveWish({ values }: SleeveWishWords, now: Attitude): Wished {
  const { "squared loft": loft, lie, "soled face": face, "face by": faceBy } = values;
  const from = (written: WrittenNumber, nowDeg: number) => degrees(written.change ? nowDeg + written.value : written.value);
  const soledFaceDeg = face === undefined ? (faceBy === undefined ? null : degrees(now.soledFaceDeg + faceBy.value)) : degrees(face.value);
  const keepsLie = lie === undefined && (loft?.change === true || faceBy !== undefined);
  const wish: AttitudeWish = {
    ...(loft === undefined ? {} : { squaredLoftDeg: from(loft, now.squaredLoftDeg) }),
    ...(soledFaceDeg === null ? {} : { soledFaceDeg }),
    ...(lie === undefined ? (keepsLie ? { seatedLieDeg: now.seatedLieDeg } : {}) : { seatedLieDeg: from(lie, now.seatedLieDeg) }),
  };
  if (Object.keys(wish).length === 0) return { kind: "faults", faults: [needed("what is wanted: want 10 true, want face 1 open")] };
  return { kind: "wish", wish, keepsLie };
}
