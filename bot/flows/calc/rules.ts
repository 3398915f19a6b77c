import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { HeadModel } from "../../../core/buildSheet/parts.ts";
import { clubFamily } from "../../../core/kinds.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import { bagFindings } from "../../../core/rules/bagFindings.ts";
import type { ClubFacts } from "../../../core/rules/clubFacts.ts";
import { clubFindings } from "../../../core/rules/clubFindings.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import type { Reader } from "../../../db/write.ts";
import { assumed, needed, type Understood } from "../../boundary/calc/fields.ts";
import { type RulesQuestion, type RulesSubject, readRules } from "../../boundary/calc/readRules.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { rulesReply } from "../../replies/calc/rulesCard.ts";
import { clubWords } from "../../replies/shown.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findBag } from "./findBag.ts";
import { findClub } from "./findClub.ts";
import { namedPlayers } from "./namedPlayers.ts";

type Subject<K extends RulesSubject["kind"]> = Extract<RulesSubject, { kind: K }>;

const EXAMPLE = "driver length 46.5, lie 58, volume 462, ct 240, inertia 5950, local rule 46";

export const rules = defineCalcView({
  name: "rules",
  summary: "a club or bag against the Equipment Rules",
  takes: [
    "A club and what was measured: length, loft, lie, volume, ct (µs), inertia (g·cm²), grip length, rib, groove width and more",
    "What was seen, by yes or no: adjustable, by hand, two grips, round grip, lead changed",
    "Or a club or a bag of the record: oxtoby driver, oxtoby. Optional rules where the committee has them: local rule 46, local rule list, local rule grooves",
  ],
  examples: [EXAMPLE, "putter loft 4 lie 70", "oxtoby driver, local rule 46", "oxtoby"],
  answer: (text, context) => {
    const question = readRules(text, namedPlayers(context));
    const { subject, facts, faults, understood } = question;
    const isOfNobody = subject?.kind === "bag" && Object.keys(facts).length > 0;
    const isBlank = subject?.kind === "typed" && faults.length === 0 && Object.keys(facts).length === 0;
    const lacking = [
      ...(isOfNobody ? [needed("the club these values are of, such as oxtoby driver")] : []),
      ...(isBlank ? [needed("what was measured, such as length 46.5")] : []),
    ];
    if (subject === null || faults.length + lacking.length > 0) return calcFaultsReply("rules", [...faults, ...lacking], understood, EXAMPLE);
    switch (subject.kind) {
      case "typed":
        return ofTyped(subject, question, context);
      case "club":
        return ofClub(subject, question, context);
      case "bag":
        return ofBag(subject, question, context);
    }
  },
});

const inputsOf = (named: Understood, { understood, adopted }: RulesQuestion): readonly Understood[] => [
  named,
  ...understood,
  ...(adopted.length === 0 ? [assumed("no local rule", "", "")] : []),
];

const plainInput = (written: string): Understood => ({ name: "", values: [{ written, unit: "" }], between: ",", assumed: false });

function ofTyped({ family, shown }: Subject<"typed">, question: RulesQuestion, { actor }: Context): Reply {
  const facts: ClubFacts = { ...question.facts, family };
  const club = { shown, facts, ...clubFindings(facts, question.adopted) };
  const named = clubWords(shown);
  return rulesReply({ named, inputs: inputsOf(plainInput(named), question), unit: actor.lengthUnit, bagFindings: [], clubs: [club] });
}

/** What was typed of a club of the record goes before what is on record. */
function ofClub({ ref }: Subject<"club">, question: RulesQuestion, context: Context): Reply {
  const found = findClub(ref, context);
  if (found.kind === "refused") return found.reply;
  const recorded = context.read((reader) => recordedFacts(reader, found.club));
  const facts: ClubFacts = { ...recorded, ...question.facts };
  const club = { shown: found.club.club, facts, ...clubFindings(facts, question.adopted) };
  const inputs = inputsOf(plainInput(found.shown), question);
  return rulesReply({ named: found.shown, inputs, unit: context.actor.lengthUnit, bagFindings: [], clubs: [club] });
}

function ofBag({ ref }: Subject<"bag">, question: RulesQuestion, context: Context): Reply {
  const bag = findBag(ref, context);
  if (bag.kind === "refused") return bag.reply;
  const facts = context.read((reader) => bag.clubs.map((club) => recordedFacts(reader, club)));
  const { findings, clubs } = bagFindings(facts, question.adopted);
  return rulesReply({
    named: `${bag.shown}, ${ref.part}`,
    inputs: inputsOf(bag.input, question),
    unit: context.actor.lengthUnit,
    bagFindings: findings,
    clubs: bag.clubs.flatMap(({ club }, index) => {
      const [known, found] = [facts[index], clubs[index]];
      return known === undefined || found === undefined ? [] : [{ shown: club, facts: known, ...found }];
    }),
  });
}

/** What the record says of a club; a sleeve or none is known of our own clubs only. */
function recordedFacts(reader: Reader, club: SpecClub): ClubFacts {
  const model = modelsOf<HeadModel>(reader, "head").find(({ name }) => name === club.headModel);
  const { lengthMm, squaredLoftDeg, seatedLieDeg } = club;
  return {
    family: clubFamily(club.club) ?? "iron",
    lengthMm: lengthMm === null ? null : millimetres(lengthMm),
    squaredLoftDeg: squaredLoftDeg === null ? null : degrees(squaredLoftDeg),
    seatedLieDeg: seatedLieDeg === null ? null : degrees(seatedLieDeg),
    adjustable: club.outside ? null : club.sleeveModel !== null,
    onDriverList: model?.listedForPlay ?? null,
  };
}
