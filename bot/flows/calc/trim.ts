import { type CalcFault, needed } from "../../boundary/calc/fields.ts";
import { readCalc } from "../../boundary/calc/readCalc.ts";
import { trimFields, trimText } from "../../boundary/calc/trimFields.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { trimReply } from "../../replies/calc/trimCard.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findClub } from "./findClub.ts";
import { namedParts } from "./namedParts.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { partsOfRecord } from "./partsOfRecord.ts";
import { type TrimInputs, type TrimValues, trimInputs } from "./trimInputs.ts";
import { readCut, trimSums } from "./trimSums.ts";

const EXAMPLE = "length 45, bore 1.25, cap 1/8, raw 46, tip 1/2, mass 65, balance 24";

export const trim = defineCalcView({
  name: "trim",
  summary: "bare cut, tip and butt trim, frequency after it",
  takes: [
    "length (playing); bore (to ground, or a sleeve's stop; blind, through; or hosel and insertion); cap",
    "The raw shaft: raw, tip (off the tip), mass, balance (from the tip), parallel (its section) or taper; or by name: dunlin 60 x",
    "Weighed off-cuts in place of even density: tip piece 2.1, butt piece 3.4 (g)",
    "Frequency: cpm 260 with tip mass 200 and clamp 5; read on the raw shaft, or at read length 45, read tip 1/2. Or ei 50 (N·m²)",
    "A club of the record: oxtoby driver, length 45 1/4 or 1/2 shorter, tip 1/2 more",
  ],
  examples: [
    EXAMPLE,
    "oxtoby driver, length 45 1/4",
    "oxtoby driver 1/2 shorter",
    "dunlin 60 x, length 45, bore 1.25, tip 1/2",
    `${EXAMPLE}, cpm 245, tip mass 200, clamp 5`,
  ],
  answer: (text, context) => {
    const parts = namedParts(text, context);
    const question = readCalc(trimText(parts.rest), trimFields, { players: namedPlayers(context) });
    const found = question.club === null || question.faults.length > 0 ? null : findClub(question.club, context);
    if (found?.kind === "refused") return found.reply;
    const club = found?.club ?? null;
    const known = club === null ? null : context.read((reader) => partsOfRecord(reader, club));
    const from = { head: parts.head ?? known?.head ?? null, shaft: parts.shaft ?? known?.shaft ?? null, grip: parts.grip ?? known?.grip ?? null };
    const read = [...(found === null ? [] : [found.input]), ...parts.understood, ...question.understood];
    const { values } = question;
    const misread = [...parts.faults, ...question.faults, ...contradictions(values)];
    if (misread.length > 0) return calcFaultsReply("trim", misread, read, EXAMPLE);
    const inputs = trimInputs(values, from, club, parts.shaft === null);
    const faults = impossible(values, inputs);
    const { lengthMm, boreMm } = inputs;
    if (faults.length > 0 || lengthMm === null || boreMm === null) return calcFaultsReply("trim", faults, read, EXAMPLE);
    const builtMm = parts.shaft === null ? (club?.lengthMm ?? null) : null;
    return trimReply({
      named: found?.shown ?? null,
      inputs: [...read, ...inputs.assumed],
      unit: context.actor.lengthUnit,
      lengthMm,
      boreToGroundMm: boreMm,
      capMm: inputs.capMm,
      tipTrimMm: inputs.tipTrimMm,
      raw: { rawLengthMm: inputs.rawMm, rawMassG: inputs.rawMassG, rawBalanceFromTipMm: inputs.balanceFromTipMm },
      hasKnownRaw: from.shaft !== null,
      parallelTipMm: inputs.parallelTipMm,
      shorterThanBuiltMm: builtMm === null ? null : builtMm - lengthMm,
      ...trimSums(values, inputs, lengthMm, boreMm),
    });
  },
});

/** Two ways to say where the shaft stops cannot both be. */
function contradictions({ bore, hosel, insertion, ...values }: TrimValues): readonly CalcFault[] {
  const ways = [bore, values["bore class"], hosel ?? insertion].filter((way) => way !== undefined);
  const halves = (hosel === undefined) !== (insertion === undefined);
  const isBelow = hosel !== undefined && insertion !== undefined && insertion.value > hosel.value;
  return [
    ...(ways.length > 1 ? [needed("one of bore, bore class, or hosel with insertion")] : []),
    ...(halves ? [needed(hosel === undefined ? "hosel, its length to the ground line" : "insertion, how deep the shaft goes in")] : []),
    ...(isBelow ? [needed("an insertion no deeper than the hosel is long")] : []),
  ];
}

const mmRange = (name: string, min: number, max: number, written: number): CalcFault => ({
  word: `${name} ${Math.round(written)} mm`,
  accepted: { kind: "range", name, min: Math.ceil(min), max: Math.floor(max), unit: "mm" },
  guess: null,
});

/** What is missing or cannot be, all at once. */
function impossible(values: TrimValues, inputs: TrimInputs): readonly CalcFault[] {
  const { rawMm, rawMassG, balanceFromTipMm } = inputs;
  const needsShaft = values.cpm !== undefined || values.ei !== undefined || values["tip piece"] !== undefined || values["butt piece"] !== undefined;
  const asksFrequency = values.cpm !== undefined || values.ei !== undefined;
  const isPartial = (rawMassG === null) !== (balanceFromTipMm === null) || needsShaft;
  const isOff = rawMm !== null && balanceFromTipMm !== null && (balanceFromTipMm <= rawMm / 3 || balanceFromTipMm >= (2 * rawMm) / 3);
  return [
    ...(inputs.lengthMm === null
      ? [needed(values.length?.change === true ? "a club of the record whose length to change" : "length (playing length)")]
      : []),
    ...(inputs.tipTrimMm < 0 ? [needed("a tip trim of 0 or more: what is cut off stays off")] : []),
    ...(inputs.boreMm === null ? [needed("bore (to ground), or a head by name")] : []),
    ...(rawMm === null && (needsShaft || rawMassG !== null || balanceFromTipMm !== null) ? [needed("raw (its length)")] : []),
    ...(isPartial && rawMassG === null ? [needed("mass (of the raw shaft)")] : []),
    ...(isPartial && balanceFromTipMm === null ? [needed("balance (of the raw shaft, from the tip)")] : []),
    ...(asksFrequency && inputs.tipMassG === null ? [needed("tip mass (the head or test mass of the reading)")] : []),
    ...(values["tip piece"] !== undefined && inputs.tipTrimMm === 0 ? [needed("tip (how much came off with the piece)")] : []),
    ...(values.cpm !== undefined && rawMm !== null && inputs.boreMm !== null && readCut(inputs, inputs.boreMm) === null
      ? [needed("a read length that the raw shaft allows")]
      : []),
    ...(isOff && rawMm !== null ? [mmRange("balance", rawMm / 3, (2 * rawMm) / 3, balanceFromTipMm ?? 0)] : []),
  ];
}
