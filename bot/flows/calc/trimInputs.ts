import type { SpecClub } from "../../../core/bag/specClub.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { boreToGround } from "../../../core/club/boreToGround.ts";
import { type Millimetres, MM_PER_INCH, millimetres } from "../../../core/quantity/units.ts";
import { assumed, type Understood, type ValuesOf, type WrittenNumber } from "../../boundary/calc/fields.ts";
import type { trimFields } from "../../boundary/calc/trimFields.ts";
import type { PartsOfRecord } from "./partsOfRecord.ts";

export type TrimValues = ValuesOf<typeof trimFields>;

/** What is known of a cut: as written, else of the parts named, else of the club on record; null when nothing says it. */
export interface TrimInputs {
  readonly lengthMm: number | null;
  readonly boreMm: Millimetres | null;
  readonly capMm: number;
  readonly tipTrimMm: number;
  readonly rawMm: number | null;
  readonly rawMassG: number | null;
  readonly balanceFromTipMm: number | null;
  readonly tip: "parallel" | "taper";
  /** Null when it is not known and so not checked. */
  readonly parallelTipMm: number | null;
  readonly tipMassG: number | null;
  readonly clampMm: number;
  /** The cut a frequency was read at: tip trim and playing length, null for a raw shaft. */
  readonly readTipMm: number;
  readonly readLengthMm: number | null;
  readonly assumed: readonly Understood[];
}

const CAP_IN = 0.125;
const CLAMP_IN = 5;

function boreOf({ bore, hosel, insertion, ...values }: TrimValues, { head }: Omit<PartsOfRecord, "sleeve">): Millimetres | null {
  if (bore !== undefined) return boreToGround({ kind: "sleeve", stopToGroundMm: millimetres(bore.value) });
  if (hosel !== undefined && insertion !== undefined) {
    return boreToGround({ kind: "hosel", hoselLengthMm: millimetres(hosel.value), insertionDepthMm: millimetres(insertion.value) });
  }
  const boreClass = values["bore class"];
  return boreClass !== undefined ? boreToGround({ kind: "class", boreClass }) : (head?.boreToGroundMm ?? null);
}

/** A value as written, or the standing one changed by it. */
const changed = (written: WrittenNumber | undefined, standing: number | null): number | null =>
  written?.change === true ? (standing === null ? null : standing + written.value) : (written?.value ?? standing);

/** Puts together what a cut depends on; `club` is the one on record the question is about, another shaft does not take over its cut. */
export function trimInputs(values: TrimValues, parts: Omit<PartsOfRecord, "sleeve">, club: SpecClub | null, keepsShaft: boolean): TrimInputs {
  const cut = keepsShaft ? club : null;
  const { shaft, grip } = parts;
  const capMm = values.cap?.value ?? grip?.capMm ?? null;
  const tipTrimMm = values.tip === undefined ? (cut?.tipTrimMm ?? null) : changed(values.tip, cut?.tipTrimMm ?? 0);
  const parallelTipMm = values.parallel?.value ?? shaft?.parallelTipMm ?? null;
  const tip = values["shaft tip"] ?? shaft?.tip ?? null;
  const hasFrequency = values.cpm !== undefined || values.ei !== undefined;
  const readTipMm = values["read tip"]?.value ?? cut?.tipTrimMm ?? 0;
  const readLengthMm = values["read length"]?.value ?? cut?.lengthMm ?? null;
  return {
    lengthMm: changed(values.length, club?.lengthMm ?? null),
    boreMm: boreOf(values, parts),
    capMm: capMm ?? CAP_IN * MM_PER_INCH,
    tipTrimMm: tipTrimMm ?? 0,
    rawMm: values.raw?.value ?? shaft?.rawLengthMm ?? null,
    rawMassG: values.mass?.value ?? shaft?.rawMassG ?? null,
    balanceFromTipMm: values.balance?.value ?? shaft?.balanceFromTipMm ?? null,
    tip: tip ?? "parallel",
    parallelTipMm: tip === "taper" ? (parallelTipMm ?? 0) : parallelTipMm,
    tipMassG: values["tip mass"]?.value ?? club?.headMassG ?? null,
    clampMm: values.clamp?.value ?? CLAMP_IN * MM_PER_INCH,
    readTipMm,
    readLengthMm,
    assumed: [
      ...(capMm === null ? [assumed("cap", "1/8", "in")] : []),
      ...(tipTrimMm === null ? [assumed("tip", 0, "in")] : []),
      ...(tip === null && (tipTrimMm ?? 0) > 0 ? [assumed("shaft tip", "parallel", "")] : []),
      ...(hasFrequency && values.clamp === undefined ? [assumed("clamp", CLAMP_IN, "in")] : []),
      ...(values.cpm !== undefined && readLengthMm === null && values["read tip"] === undefined ? [assumed("read on", "the raw shaft", "")] : []),
    ],
  };
}

/** The least of the parallel tip that must stay. */
export const leastParallelTip: Millimetres = millimetres(defaultAllowances.leastParallelTipMm);
