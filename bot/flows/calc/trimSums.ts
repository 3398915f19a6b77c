import { bareCutLength } from "../../../core/club/bareCutLength.ts";
import { exactShaftFrequency } from "../../../core/club/exactShaftFrequency.ts";
import { frequencyAfterTrim } from "../../../core/club/frequencyAfterTrim.ts";
import type { FrequencySetUp } from "../../../core/club/frequencySetUp.ts";
import { shaftTrim } from "../../../core/club/shaftTrim.ts";
import { trimmedByOffCuts } from "../../../core/club/trimmedByOffCuts.ts";
import { type TrimmedShaft, trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { cyclesPerMinute, grams, millimetres, newtonSquareMetres } from "../../../core/quantity/units.ts";
import type { TrimFacts } from "../../replies/calc/trimCard.ts";
import { leastParallelTip, type TrimInputs, type TrimValues } from "./trimInputs.ts";

type Cut = Pick<TrimInputs, "tip" | "parallelTipMm">;

/** A parallel section nobody told of is taken to be long enough. */
const trimOf = ({ tip, parallelTipMm }: Cut, rawMm: number, tipTrimMm: number, bareCutMm: number) =>
  shaftTrim(
    { tip, rawLengthMm: millimetres(rawMm), parallelTipMm: millimetres(parallelTipMm ?? tipTrimMm + leastParallelTip) },
    millimetres(tipTrimMm),
    millimetres(bareCutMm),
    leastParallelTip,
  );

const setUpOf = ({ clampMm, tipMassG }: TrimInputs): FrequencySetUp => ({
  clampMm: millimetres(clampMm),
  tipMassG: grams(tipMassG ?? 0),
  gripOn: false,
});

const rawOf = ({ rawMm, rawMassG, balanceFromTipMm }: TrimInputs) =>
  rawMm === null || rawMassG === null || balanceFromTipMm === null
    ? null
    : { rawLengthMm: millimetres(rawMm), rawMassG: grams(rawMassG), balanceFromTipMm: millimetres(balanceFromTipMm) };

type Trim = Extract<ReturnType<typeof shaftTrim>, { kind: "trim" }>;

function trimmed(values: TrimValues, inputs: TrimInputs, { tipTrimMm, buttTrimMm }: Trim): TrimmedShaft | null {
  const raw = rawOf(inputs);
  if (raw === null) return null;
  const [tipPiece, buttPiece] = [values["tip piece"], values["butt piece"]];
  if (tipPiece === undefined && buttPiece === undefined) return trimmedShaft(raw, tipTrimMm, buttTrimMm);
  return trimmedByOffCuts(raw, {
    tip: tipPiece === undefined || tipTrimMm === 0 ? null : { lengthMm: tipTrimMm, massG: grams(tipPiece.value) },
    butt: buttPiece === undefined || buttTrimMm === 0 ? null : { lengthMm: buttTrimMm, massG: grams(buttPiece.value) },
  });
}

/** The cut the frequency was read at; null when the shaft could not have been cut so. */
export function readCut(inputs: TrimInputs, boreMm: number) {
  const { rawMm, readLengthMm, readTipMm, capMm } = inputs;
  if (rawMm === null) return null;
  const atMm = readLengthMm === null ? rawMm - readTipMm : bareCutLength(millimetres(readLengthMm), millimetres(boreMm), millimetres(capMm));
  const trim = trimOf({ ...inputs, parallelTipMm: null }, rawMm, readTipMm, atMm);
  return trim.kind === "trim" ? trim : null;
}

function frequency(values: TrimValues, inputs: TrimInputs, boreMm: number, trim: Trim, shaft: TrimmedShaft): TrimFacts["frequency"] {
  const setUp = setUpOf(inputs);
  const [raw, cut] = [rawOf(inputs), readCut(inputs, boreMm)];
  const { cpm, ei } = values;
  return {
    setUp,
    read:
      cpm === undefined || raw === null || cut === null
        ? null
        : {
            beforeCpm: cpm.value,
            tipTrimMm: cut.tipTrimMm,
            buttTrimMm: cut.buttTrimMm,
            afterCpm: frequencyAfterTrim({ cpm: cyclesPerMinute(cpm.value), setUp }, { ...raw, cut }, trim).cpm,
          },
    uniformCpm:
      ei === undefined
        ? null
        : exactShaftFrequency({ lengthMm: shaft.lengthMm, massG: shaft.massG, bendingStiffnessNm2: newtonSquareMetres(ei.value) }, setUp).cpm,
  };
}

/** What to cut, what is left, and what it will read; length and bore must be known. */
export function trimSums(
  values: TrimValues,
  inputs: TrimInputs,
  lengthMm: number,
  boreMm: number,
): Pick<TrimFacts, "bareCutMm" | "trim" | "shaft" | "frequency"> {
  const bareCutMm = bareCutLength(millimetres(lengthMm), millimetres(boreMm), millimetres(inputs.capMm));
  const trim = inputs.rawMm === null ? null : trimOf(inputs, inputs.rawMm, inputs.tipTrimMm, bareCutMm);
  if (trim === null || trim.kind === "refused") return { bareCutMm, trim, shaft: null, frequency: null };
  const shaft = trimmed(values, inputs, trim);
  const asksFrequency = values.cpm !== undefined || values.ei !== undefined;
  return { bareCutMm, trim, shaft, frequency: shaft === null || !asksFrequency ? null : frequency(values, inputs, boreMm, trim, shaft) };
}
