import { type CalcFault, needed } from "../../boundary/calc/fields.ts";
import { gripFields, gripText } from "../../boundary/calc/gripFields.ts";
import { readCalc } from "../../boundary/calc/readCalc.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { gripReply } from "../../replies/calc/gripCard.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findClub } from "./findClub.ts";
import { type GripInputs, type GripValues, gripInputs } from "./gripInputs.ts";
import { gripSums } from "./gripSums.ts";
import { namedParts } from "./namedParts.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { partsOfRecord } from "./partsOfRecord.ts";

const EXAMPLE = "core 580, butt 600, layers 1";

export const grip = defineCalcView({
  name: "grip",
  summary: "size under each hand, layers of tape for a size",
  takes: [
    "core and butt: 580, .580, .580 in or 14.7 mm; butt at 6 where the shaft is thinner under the lower hand",
    "layers 1, or upper 1, lower 3; tape 5 (thousandths a layer); a size to reach: +1/32, standard, midsize or size .930",
    "nominal 900 (the grip's own size at 2 in), nominal at 6; ladies; left or right hand",
    "By name: gorse standard, dunlin 60 x; or a club of the record: oxtoby driver +1/32",
  ],
  examples: [EXAMPLE, "core 600, butt 600, +1/32", "gorse standard, butt 600, upper 1, lower 3, left", "oxtoby driver +1/32"],
  answer: (text, context) => {
    const parts = namedParts(text, context);
    const question = readCalc(gripText(parts.rest), gripFields, { players: namedPlayers(context) });
    const found = question.club === null || question.faults.length > 0 ? null : findClub(question.club, context);
    if (found?.kind === "refused") return found.reply;
    const known = found === null ? null : context.read((reader) => partsOfRecord(reader, found.club));
    const from = { head: null, shaft: parts.shaft ?? known?.shaft ?? null, grip: parts.grip ?? known?.grip ?? null };
    const { values } = question;
    const inputs = gripInputs(values, from, found);
    const read = [...(found === null ? [] : [found.input]), ...parts.understood, ...question.understood];
    const misread = [...parts.faults, ...question.faults];
    const faults = misread.length > 0 ? misread : impossible(values, inputs);
    const { coreMm, shaftMm } = inputs;
    if (faults.length > 0 || coreMm === null || shaftMm.upper === null || shaftMm.lower === null) {
      return calcFaultsReply("grip", faults, read, EXAMPLE);
    }
    return gripReply({
      named: found?.shown ?? null,
      inputs: [...read, ...inputs.assumed],
      coreMm,
      shaftAt2InMm: shaftMm.upper,
      shaftAt6InMm: shaftMm.lower,
      knowsLowerNominal: inputs.knowsLowerNominal,
      ...gripSums(inputs, coreMm, { upper: shaftMm.upper, lower: shaftMm.lower }),
    });
  },
});

/** What is missing or cannot be, all at once. */
function impossible({ size, diameter, ...values }: GripValues, { coreMm, shaftMm, nominalMm, wantedMm }: GripInputs): readonly CalcFault[] {
  const saysLayers = values.layers !== undefined || values.upper !== undefined || values.lower !== undefined;
  const thinnest = Math.min(nominalMm.upper, nominalMm.lower);
  return [
    ...(coreMm === null ? [needed("core (580, .580 or 14.7 mm), or a grip by name")] : []),
    ...(shaftMm.upper === null ? [needed("butt (600, .600 or 15.2 mm), or a shaft by name")] : []),
    ...(size !== undefined && diameter !== undefined ? [needed("one size, not two")] : []),
    ...(wantedMm !== null && saysLayers ? [needed("layers or a size to reach, not both")] : []),
    ...(coreMm !== null && coreMm >= thinnest ? [needed("a nominal size above the core")] : []),
  ];
}
