import { assembledClub } from "../../../core/club/assembledClub.ts";
import { sensitivities } from "../../../core/club/sensitivities.ts";
import { assumed, needed, type Understood } from "../../boundary/calc/fields.ts";
import { type CalcQuestion, readCalc } from "../../boundary/calc/readCalc.ts";
import { swingFields, swingText } from "../../boundary/calc/swingFields.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { type SwingFacts, swingReply } from "../../replies/calc/swingCard.ts";
import { typicalPointsReply } from "../../replies/calc/typicalPointsReply.ts";
import { asBuiltClub } from "./asBuiltClub.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { modelOfRecord } from "./modelOfRecord.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { pointsWish, typicalPlaces, weightPlaces } from "./pointsWish.ts";
import { type ModelledClub, typedClub } from "./typedClub.ts";

type Question = CalcQuestion<typeof swingFields>;

const PARTS = "head 200 at 44.5, shaft 60 at 21, grip 50 at 4.25, sleeve 6.5 at 42.75, epoxy 2 at 42.4, tape 3 at 5";

export const swing = defineCalcView({
  name: "swing",
  summary: "swing weight, balance, inertia; weight for points",
  takes: [
    "Parts: a name, grams, at inches from the end of the cap; oz and mm too. Head, shaft, grip and any other",
    "Or a club of the record: oxtoby driver, oxtoby driver backup, order 57",
    "With either or alone: +2 points; with either: to d4. Also cut (bare shaft length) and cap (its thickness)",
  ],
  examples: [PARTS, "oxtoby driver", "oxtoby driver +2 points", "oxtoby driver to d4", "2 more points"],
  answer: (text, context) => {
    const question = readCalc(swingText(text), swingFields, { players: namedPlayers(context), otherParts: true });
    const { club, parts, values, faults, understood } = question;
    const isEmpty = club === null && parts.length === 0 && values.points === undefined && values.to === undefined;
    if (faults.length > 0 || isEmpty) {
      return calcFaultsReply("swing", isEmpty && faults.length === 0 ? [needed("parts, a club or points")] : faults, understood, PARTS);
    }
    if (values.to !== undefined && values.points !== undefined) {
      return calcFaultsReply("swing", [needed("points or a swing weight to reach, not both")], understood, PARTS);
    }
    if (club !== null) return ofRecord(question, club, context);
    if (values.to !== undefined && parts.length === 0) {
      return calcFaultsReply("swing", [needed("the club: oxtoby driver, or its parts")], understood, PARTS);
    }
    return parts.length === 0 ? ofTypicalClubs(question) : swingReply(factsOf(typedClub(parts, values), question, context));
  },
});

function ofRecord(question: Question, ref: NonNullable<Question["club"]>, context: Context): Reply {
  const model = modelOfRecord("swing", ref, question.understood, context);
  if (model.kind === "refused") return model.reply;
  const { swingWeightPoints, totalMassG, measuredAt } = model.found.club;
  return swingReply({
    ...factsOf(model, question, context, swingWeightPoints),
    named: model.found.shown,
    inputs: model.inputs,
    recorded: { swingWeightPoints, totalMassG, isMeasured: measuredAt !== null },
  });
}

/** A swing weight to reach is so far from what the record says, without it from what the parts add up to. */
function factsOf(
  { components, lengths, assumed: counted }: ModelledClub,
  { values, understood }: Question,
  { actor }: Context,
  standing: number | null = null,
): SwingFacts {
  const built = asBuiltClub(components, lengths);
  const head = components.find(({ name }) => name === "head");
  const places = head === undefined ? null : weightPlaces(head, lengths);
  const club = assembledClub(components);
  const points = values.points?.value ?? (values.to === undefined ? null : values.to.value - (standing ?? club.swingWeightPoints));
  return {
    named: null,
    unit: actor.lengthUnit,
    inputs: [...understood, ...counted],
    club,
    parts: components,
    effects:
      built === null || places === null
        ? null
        : sensitivities(built, { tipWeightFromCapMm: places.tipFromCapMm, buttWeightFromCapMm: places.buttFromCapMm }),
    wish: points === null || places === null ? null : pointsWish(points, places),
    recorded: null,
  };
}

function ofTypicalClubs({ values, understood }: Question): Reply {
  const points = values.points?.value ?? 0;
  const clubs = Object.entries(typicalPlaces).map(([name, places]) => ({ name, wish: pointsWish(points, places) }));
  const counted: readonly Understood[] = clubs.map(({ name }) => assumed("a usual", name, ""));
  return typicalPointsReply([...understood, ...counted], clubs);
}
