import type { SpecClub } from "../../../core/bag/specClub.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { headComponent, stagedComponents } from "../../../core/buildSheet/stagedComponents.ts";
import { bareCutLength } from "../../../core/club/bareCutLength.ts";
import { shaftTrim } from "../../../core/club/shaftTrim.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import type { Reader } from "../../../db/write.ts";
import { assumed } from "../../boundary/calc/fields.ts";
import { partsOfRecord } from "./partsOfRecord.ts";
import type { ModelledClub } from "./typedClub.ts";

/** What a club of the record lacks for the sums. */
type Lacking = "head model" | "head mass" | "length" | "shaft model" | "grip model" | "sleeve model" | "a shaft long enough";

type RecordedClub = ({ readonly kind: "modelled" } & ModelledClub) | { readonly kind: "lacking"; readonly lacking: readonly Lacking[] };

/** A club of the record by its parts, as a plan would add them up; or what is not on record. */
export function recordedClub(reader: Reader, club: SpecClub): RecordedClub {
  const { head: headModel, sleeve, shaft, grip } = partsOfRecord(reader, club);
  const { lengthMm, headMassG } = club;
  if (headModel === null || shaft === null || grip === null || lengthMm === null || headMassG === null) {
    const rows: readonly (readonly [unknown, Lacking])[] = [
      [headModel, "head model"],
      [headMassG, "head mass"],
      [lengthMm, "length"],
      [shaft, "shaft model"],
      [grip, "grip model"],
    ];
    return { kind: "lacking", lacking: rows.filter(([value]) => value === null).map(([, what]) => what) };
  }
  if (club.sleeveModel !== null && sleeve === null) return { kind: "lacking", lacking: ["sleeve model"] };
  const bareCutMm = bareCutLength(millimetres(lengthMm), headModel.boreToGroundMm, grip.capMm);
  const trim = shaftTrim(shaft, millimetres(club.tipTrimMm ?? 0), bareCutMm, millimetres(defaultAllowances.leastParallelTipMm));
  if (trim.kind === "refused") return { kind: "lacking", lacking: ["a shaft long enough"] };
  const cut = trimmedShaft(shaft, trim.tipTrimMm, trim.buttTrimMm);
  const around = stagedComponents({ lengthMm, headModel, sleeve, shaft: cut, grip, wraps: club.wraps ?? 0 }, defaultAllowances);
  return {
    kind: "modelled",
    components: [headComponent(lengthMm, headModel, headMassG, defaultAllowances), ...around],
    lengths: { shaftLengthMm: cut.lengthMm, capMm: grip.capMm },
    assumed: [
      assumed("ferrule, glue and tape", "as the shop allows", ""),
      ...(club.tipTrimMm === null ? [assumed("tip trim", 0, "in")] : []),
      ...(club.wraps === null ? [assumed("extra wraps", 0, "")] : []),
    ],
  };
}
