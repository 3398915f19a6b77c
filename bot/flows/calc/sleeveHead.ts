import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { BareHead } from "../../../core/head/attitudeOf.ts";
import { bareHeadOf } from "../../../core/head/bareHeadOf.ts";
import { NO_TILT, type SleeveTilt } from "../../../core/head/sleeveTilt.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { assumed, onRecord, type Understood } from "../../boundary/calc/fields.ts";
import type { SleeveWords } from "../../boundary/calc/readSleeve.ts";

export interface SleeveHead {
  readonly head: BareHead;
  readonly inputs: readonly Understood[];
}

const USUAL_LIE_DEG = 58;

/** The head as typed; what nobody wrote is a usual driver's. Null without its loft. */
export function typedHead({ values }: SleeveWords): SleeveHead | null {
  const { "soled loft": loft, "soled face": face, "design lie": lie, hand } = values;
  if (loft === undefined) return null;
  return {
    head: {
      soledLoftDeg: degrees(loft.value),
      soledFaceDeg: degrees(face?.value ?? 0),
      designLieDeg: degrees(lie?.value ?? USUAL_LIE_DEG),
      hand: hand ?? "right",
    },
    inputs: [
      ...(face === undefined ? [assumed("soled face", "square", "")] : []),
      ...(lie === undefined ? [assumed("design lie", USUAL_LIE_DEG, "°")] : []),
      ...(hand === undefined ? [assumed("hand", "right", "")] : []),
    ],
  };
}

/** The head of a club of the record, from what the gauge read of it at its mark. Null when no loft is on record. */
export function recordedHead(club: SpecClub, hand: Hand, tilt: SleeveTilt | null): SleeveHead | null {
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg } = club;
  if (squaredLoftDeg === null) return null;
  const reads = {
    squaredLoftDeg: degrees(squaredLoftDeg),
    soledFaceDeg: degrees(soledFaceDeg ?? 0),
    seatedLieDeg: degrees(seatedLieDeg ?? USUAL_LIE_DEG),
  };
  const row = (name: string, value: number | null, otherwise: number) =>
    value === null ? assumed(name, otherwise, "°") : onRecord(`${name} on record`, value, "°");
  return {
    head: bareHeadOf(reads, tilt ?? NO_TILT, hand),
    inputs: [
      row("squared loft", squaredLoftDeg, 0),
      row("soled face", soledFaceDeg, 0),
      row("lie", seatedLieDeg, USUAL_LIE_DEG),
      onRecord("hand", hand, ""),
    ],
  };
}
