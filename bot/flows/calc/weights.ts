import { pointsOfMass } from "../../../core/club/massAtPosition.ts";
import { grams, millimetres } from "../../../core/quantity/units.ts";
import { leadTapeLength, leadTapeMass } from "../../../core/selection/leadTape.ts";
import type { StockedWeight } from "../../../core/selection/weightQuestion.ts";
import { weightsFor } from "../../../core/selection/weightsFor.ts";
import { assumed, type CalcFault, needed } from "../../boundary/calc/fields.ts";
import { readCalc } from "../../boundary/calc/readCalc.ts";
import { weightsFields, weightsText } from "../../boundary/calc/weightsFields.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { leadReply } from "../../replies/calc/leadCard.ts";
import { weightsReply } from "../../replies/calc/weightsCard.ts";
import { type ClubToWeigh, clubToWeigh, type WeightsQuestion, type WeightsValues } from "./clubToWeigh.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { leadTapeOf } from "./leadTapeOf.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { typicalPlaces } from "./pointsWish.ts";
import { portNames } from "./weightPorts.ts";
import { stockedScrews, typedWeights } from "./weightStock.ts";
import { USUAL_LEAD_G, weightsAsked } from "./weightsAsked.ts";

const EXAMPLE = "swing d3, head 196 at 44.5, now d0, screws 2 2 4 6 8 10 12, ports 2";
/** More masses than these in four ports would be slow. */
const MOST_MASSES = 16;

export const weights = defineCalcView({
  name: "weights",
  summary: "screws, tip weight, lead for a swing weight",
  takes: [
    "Wishes: swing d3, +2 points, head 200 (g), back 1, forward 1, toe 1 or heel 1 (mm of the head's centre)",
    "The club: one of the record (oxtoby driver), or head 196 at 44.5 with now d0 or its shaft, grip and other parts",
    "ports 2, or where they lie in mm from the head's centre: rear port 55, front port 20, toe port, heel port. screws in 4 4: what is in it",
    "screws 2 2 4 6; left out, the truck's. tip weights 2 4 (before bonding), melt 4 (at most), lead 6 (at most), no lead",
    "Lead alone: lead 2 or lead 4 1/2 in; roll 4.6 and roll length 10 for a weighed roll",
  ],
  examples: [
    EXAMPLE,
    "oxtoby driver swing d4",
    "oxtoby driver +2 points",
    "head 196 at 44.5, head 200, rear port 55, front port 20, back 1",
    "lead 2",
    "lead 4 1/2 in",
  ],
  answer: (text, context) => {
    const question = readCalc(weightsText(text), weightsFields, { players: namedPlayers(context), otherParts: true });
    const { values, faults, understood } = question;
    if (faults.length > 0) return calcFaultsReply("weights", faults, understood, EXAMPLE);
    const isLeadAlone = !hasAim(values) && (values.lead !== undefined || values["lead length"] !== undefined);
    const found = clubToWeigh(question, context);
    if (found.kind === "refused") return found.reply;
    const club = found.kind === "club" ? found.club : null;
    if (isLeadAlone) return leadAlone(question, club);
    const screws = values.screws === undefined ? stockedScrews(club?.player ?? null, context) : typedWeights(values.screws, "screw");
    const missing = missingIn(values, club, screws);
    if (club === null || screws === null || missing.length > 0) return calcFaultsReply("weights", missing, club?.inputs ?? understood, EXAMPLE);
    return answered(question, club, screws);
  },
});

const hasAim = ({ swing, points, back, forward, toe, heel, ...values }: WeightsValues): boolean =>
  [swing, points, values["head mass"], back, forward, toe, heel].some((aim) => aim !== undefined);

/** What is missing, all at once. */
function missingIn(values: WeightsValues, club: ClubToWeigh | null, screws: readonly StockedWeight[] | null): readonly CalcFault[] {
  const movesCentre = [values.back, values.forward, values.toe, values.heel].some((aim) => aim !== undefined);
  const wants = (is: boolean, what: string): readonly CalcFault[] => (is ? [needed(what)] : []);
  return [
    ...wants(!hasAim(values), "a wish: swing d3, +2 points, head 200, back 1 or toe 1"),
    ...wants(values.swing !== undefined && values.points !== undefined, "a swing weight or points, not both"),
    ...wants(club === null, "the club: oxtoby driver, or head 196 at 44.5"),
    ...wants(
      club !== null && (values.swing ?? values.points) !== undefined && club.swingWeightPoints === null,
      "now (what it reads, such as now d0), or its shaft and grip",
    ),
    ...wants(club !== null && club.headMassG < 1, "screws in that weigh less than the head"),
    ...wants(screws === null, "screws, such as screws 2 4 6: no truck's stock is open to you here"),
    ...wants(new Set(screws?.map(({ massG }) => massG)).size > MOST_MASSES, `${MOST_MASSES} different screws at most`),
    ...wants(
      movesCentre && portNames.every((name) => values[name] === undefined),
      "where the ports lie: rear port 55, front port 20 (mm from the centre)",
    ),
    ...wants(values.back !== undefined && values.forward !== undefined, "back or forward, not both"),
    ...wants(values.toe !== undefined && values.heel !== undefined, "toe or heel, not both"),
  ];
}

function answered({ values }: WeightsQuestion, club: ClubToWeigh, screws: readonly StockedWeight[]): Reply {
  const asked = weightsAsked(values, club, screws);
  const answer = weightsFor(asked);
  const { lead } = answer.plan;
  const { tape, assumed: counted } = leadTapeOf(values);
  const limits = values.lead === undefined && values.without === undefined ? [assumed("lead up to", USUAL_LEAD_G, "g")] : [];
  const stock = values.screws === undefined ? [assumed("screws", "of this truck", "")] : [];
  return weightsReply({
    named: club.named,
    inputs: [...club.inputs, ...stock, ...limits, ...(lead === null ? [] : counted)],
    answer,
    before: { headMassG: club.headMassG, swingWeightPoints: club.swingWeightPoints },
    screws: [...asked.screws].sort((one, other) => one.massG - other.massG),
    leadLengthMm: lead === null ? null : leadTapeLength(lead.massG, tape),
  });
}

/** Lead by mass or length, on the club named or else the usual ones. */
function leadAlone({ values, understood }: WeightsQuestion, club: ClubToWeigh | null): Reply {
  const { tape, assumed: counted } = leadTapeOf(values);
  const length = values["lead length"];
  const leadG = length === undefined ? grams(values.lead?.value ?? 0) : leadTapeMass(millimetres(length.value), tape);
  const usual = Object.entries(typicalPlaces).map(([name, { headFromCapMm }]) => ({ name, at: headFromCapMm }));
  const clubs = club === null ? usual : [{ name: club.named ?? "This head", at: club.headFromCapMm }];
  return leadReply({
    inputs: [...understood, ...counted, ...(club === null ? usual.map(({ name }) => assumed("a usual", name, "")) : [])],
    leadG,
    leadLengthMm: length?.value ?? leadTapeLength(leadG, tape),
    clubs: clubs.map(({ name, at }) => ({ name, points: pointsOfMass(leadG, at) })),
  });
}
