import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { GripPlace } from "../../../core/club/gripHand.ts";
import { gripSize } from "../../../core/club/gripSize.ts";
import type { Hand } from "../../../core/kinds.ts";
import { type Millimetres, MM_PER_INCH, millimetres } from "../../../core/quantity/units.ts";
import { assumed, type Understood, type ValuesOf } from "../../boundary/calc/fields.ts";
import type { gripFields } from "../../boundary/calc/gripFields.ts";
import type { PartsOfRecord } from "./partsOfRecord.ts";

export type GripValues = ValuesOf<typeof gripFields>;

/** A grip at either place, as far as anything says it; what nobody says is assumed. */
export interface GripInputs {
  readonly coreMm: Millimetres | null;
  readonly shaftMm: Readonly<Record<GripPlace, Millimetres | null>>;
  readonly nominalMm: Readonly<Record<GripPlace, Millimetres>>;
  /** What the grip measures under the lower hand is told only of some. */
  readonly knowsLowerNominal: boolean;
  readonly layers: Readonly<Record<GripPlace, number>>;
  readonly layerMm: Millimetres;
  readonly tapeLengthMm: Millimetres;
  readonly capMm: Millimetres;
  readonly hand: Hand;
  readonly wantedMm: Millimetres | null;
  readonly assumed: readonly Understood[];
}

const LAYER_IN = 0.005;
const TAPE_LENGTH_IN = 10;
const CAP_IN = 0.125;
const inMm = (inches: number): Millimetres => millimetres(inches * MM_PER_INCH);

/** Puts together a grip, its shaft and its tape: as written, else of the parts named, else of the club on record. */
export function gripInputs(
  values: GripValues,
  { grip, shaft }: Omit<PartsOfRecord, "sleeve">,
  record: { readonly club: SpecClub; readonly hand: Hand } | null,
): GripInputs {
  const { core, butt, nominal, tape, cap, size, diameter } = values;
  const kind = values.kind ?? "mens";
  const coreMm = core?.value ?? grip?.coreMm ?? null;
  const shaftMm = butt?.value ?? shaft?.buttDiameterMm ?? null;
  const lowerShaftMm = values["butt at 6"]?.value ?? shaftMm;
  const nominalMm = nominal?.value ?? gripSize("standard", kind);
  const lowerNominalMm = values["nominal at 6"]?.value;
  const both = values.layers?.value ?? record?.club.wraps ?? null;
  const hand = values.hand ?? record?.hand ?? null;
  const asked = size === undefined ? diameter?.value : gripSize(size, kind);
  const saysLayers = both !== null || (values.upper !== undefined && values.lower !== undefined);
  return {
    coreMm: coreMm === null ? null : millimetres(coreMm),
    shaftMm: { upper: shaftMm === null ? null : millimetres(shaftMm), lower: lowerShaftMm === null ? null : millimetres(lowerShaftMm) },
    nominalMm: { upper: millimetres(nominalMm), lower: millimetres(lowerNominalMm ?? nominalMm) },
    knowsLowerNominal: lowerNominalMm !== undefined,
    layers: { upper: values.upper?.value ?? both ?? 0, lower: values.lower?.value ?? both ?? 0 },
    layerMm: millimetres(tape?.value ?? inMm(LAYER_IN)),
    tapeLengthMm: millimetres(values["tape length"]?.value ?? inMm(TAPE_LENGTH_IN)),
    capMm: millimetres(cap?.value ?? grip?.capMm ?? inMm(CAP_IN)),
    hand: hand ?? "right",
    wantedMm: asked === undefined ? null : millimetres(asked),
    assumed: [
      ...(nominal === undefined ? [assumed("nominal", kind === "mens" ? ".900" : ".850", "in")] : []),
      ...(values["butt at 6"] === undefined ? [assumed("butt", "straight under the grip", "")] : []),
      ...(asked === undefined && !saysLayers ? [assumed("layers", values.layers?.value ?? 0, "where none are told")] : []),
      ...(tape === undefined ? [assumed("tape", ".005", "in a layer")] : []),
      ...(hand === null ? [assumed("hand", "right", "")] : []),
    ],
  };
}
