import { aimOfLieError } from "../../../core/head/aimOfLieError.ts";
import { sidewaysAt } from "../../../core/head/sidewaysAt.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import { aimFields } from "../../boundary/calc/aimFields.ts";
import { assumed, needed, onRecord, type Understood } from "../../boundary/calc/fields.ts";
import { type CalcQuestion, readCalc } from "../../boundary/calc/readCalc.ts";
import type { Reply } from "../../chat/types.ts";
import { type AimFacts, aimInputs, aimReply } from "../../replies/calc/aimCard.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findClub } from "./findClub.ts";
import { namedPlayers } from "./namedPlayers.ts";

type Question = CalcQuestion<typeof aimFields>;

const EXAMPLE = "loft 46, lie 4 upright, 120 yd";
const USUAL_DISTANCE = { value: 100, unit: "yd", mm: 91_440 } as const;
const MM_PER_METRE = 1000;
const ONE_DEGREE = degrees(1);

export const aim = defineCalcView({
  name: "aim",
  summary: "where the face looks when the lie is off",
  takes: [
    "loft: squared. lie: how far it lies off at impact, 4 upright or 2 flat. A distance: 120 yd, 110 m",
    "hand left or right. Or a club of the record: oxtoby 7i, lie 2 upright",
  ],
  examples: [EXAMPLE, "loft 34 lie 2 flat 155 yd left hand", "oxtoby 7i, lie 1 upright, 160 yd"],
  answer: (text, context) => {
    const question = readCalc(text, aimFields, { players: namedPlayers(context) });
    const { club, values, faults, understood } = question;
    const missing = [
      ...(values["squared loft"] === undefined && club === null ? ["loft, or a club of the record"] : []),
      ...(values["lie error"] === undefined ? ["lie, such as 2 upright"] : []),
    ];
    if (faults.length > 0 || missing.length > 0) {
      return calcFaultsReply("aim", faults.length > 0 ? faults : missing.map(needed), aimInputs(understood), EXAMPLE);
    }
    const found = club === null ? null : findClub(club, context);
    if (found?.kind === "refused") return found.reply;
    const loft = values["squared loft"]?.value ?? found?.club.squaredLoftDeg ?? null;
    const inputs = found === null ? understood : [found.input, ...understood];
    if (loft === null) return calcFaultsReply("aim", [needed("loft: none on record")], inputs, EXAMPLE);
    return answered(question, { named: found?.shown ?? null, inputs, hand: values.hand ?? found?.hand ?? null, loft });
  },
});

interface Known {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly hand: Hand | null;
  readonly loft: number;
}

function distanceOf({ values }: Question): { readonly mm: number; readonly unit: "yd" | "m" } {
  const { distance } = values;
  if (distance === undefined) return USUAL_DISTANCE;
  return { mm: distance.value * MM_PER_METRE, unit: distance.unit === "m" ? "m" : "yd" };
}

function answered(question: Question, { named, inputs, hand, loft }: Known): Reply {
  const { values } = question;
  const clubHand = hand ?? "right";
  const written = values["lie error"];
  const lieErrorDeg = written?.value ?? 0;
  const { mm, unit } = distanceOf(question);
  const at = (errorDeg: number) => aimOfLieError(degrees(loft), degrees(errorDeg), clubHand);
  const besideMm = (errorDeg: number) => sidewaysAt(millimetres(mm), at(errorDeg).aimLeftDeg);
  const facts: AimFacts = {
    named,
    inputs: [
      ...inputs,
      ...(values["squared loft"] === undefined ? [onRecord("squared loft", loft, "°")] : []),
      ...(written === undefined || written.change || written.value === 0 ? [] : [assumed("it lies", "upright", "")]),
      ...(values.distance === undefined ? [assumed("distance", USUAL_DISTANCE.value, USUAL_DISTANCE.unit)] : []),
      ...(hand === null ? [assumed("hand", clubHand, "")] : []),
    ],
    hand: clubHand,
    squaredLoftDeg: loft,
    lieErrorDeg,
    aim: at(lieErrorDeg),
    distance: { mm, unit, sidewaysLeftMm: besideMm(lieErrorDeg), perDegreeMm: Math.abs(besideMm(ONE_DEGREE)) },
  };
  return aimReply(facts);
}
