import type { CheckedQuantity } from "../../core/bag/checkTolerances.ts";
import { mustBeMeasured } from "../../core/buildSheet/mustBeMeasured.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { serviceCheck } from "../../core/buildSheet/serviceCheck.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Button, Card, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { bendWords } from "./bendWords.ts";
import { brokenLines } from "./brokenLines.ts";
import { card, line } from "./card.ts";
import { cautionLine } from "./cautionLine.ts";
import { checkLines, checkWord, foundLines } from "./checkLines.ts";
import { orderData } from "./orderData.ts";
import { orderTitle } from "./orderTitle.ts";
import { dryWords, gripWords, headWords, LEAST_LEAD_G, leadWords, settingWords, shaftWords, tipWords, weightWords } from "./partWords.ts";
import { pressButtons, pressOn } from "./pressButtons.ts";
import { serviceLines, serviceShort } from "./serviceLines.ts";
import { sheetName, shown, timeText } from "./shown.ts";
import { stateWords } from "./stateWords.ts";
import { clubField, handsWords, underWayLines } from "./underWayLines.ts";

function builtLines(club: ClubFacts, plan: ClubPlan): readonly Line[] {
  return [
    ...(plan.bareCutMm === null ? [] : [line({ strong: `Bare cut ${shown.both(plan.bareCutMm)}` })]),
    ...(plan.tipTrimMm === null ? [] : [line(`Tip ${tipWords(plan, shown.both)}`)]),
    ...(plan.dryTargetPoints === null ? [] : [line({ strong: `Dry swing weight ${shown.swing(plan.dryTargetPoints)}` }, `, ${dryWords}`)]),
    line(settingWords(plan)),
    line(`Head ${headWords(club, plan)}`),
    ...(plan.shaft === null ? [] : [line(`Shaft ${shaftWords(plan.shaft, plan.piece)}`)]),
    ...(plan.grip === null ? [] : [line(`Grip ${gripWords(plan.grip, plan.wraps)}`)]),
    ...plan.weights.map((weight) => line(weightWords(weight))),
    ...(plan.leadG >= LEAST_LEAD_G ? [line(`Lead ${leadWords(plan.leadG)}`)] : []),
  ];
}

/** One line a club of many: bare cut, tip, dry target, head, setting. */
function shortLine(club: ClubFacts): Line {
  const { plan, service } = club;
  const name = { strong: sheetName(club) };
  if (plan === null) {
    return line(name, ` ${service === null ? "no plan" : serviceShort(service)}`);
  }
  const parts = [
    ...(plan.bareCutMm === null ? [] : [`cut ${shown.both(plan.bareCutMm)}`]),
    ...(plan.tipTrimMm === null ? [] : [`tip ${tipWords(plan, shown.length)}`]),
    ...(plan.dryTargetPoints === null ? [] : [`dry ${shown.swing(plan.dryTargetPoints)}`]),
    `head ${plan.choice.head.serial} ${plan.choice.head.place}${bendWords(plan.choice)}`,
    ...(plan.choice.mark === null ? [] : [plan.choice.mark]),
  ];
  return line(name, ` ${parts.join(", ")}`);
}

/** A sheet whose order is no longer to be built: what a technician does about it. */
function stoppedLines({ state }: OrderFacts): readonly Line[] {
  switch (state) {
    case "draft":
      return [line({ strong: "Stop: its rep changes it. Cut and glue nothing before the next Go" })];
    case "withdrawn":
      return [line({ strong: "Stop: withdrawn" })];
    default:
      return [];
  }
}

function workLines(facts: OrderFacts): readonly Line[] {
  const { clubs } = facts;
  const [only, ...others] = clubs;
  if (only !== undefined && others.length === 0) {
    return only.plan !== null ? builtLines(only, only.plan) : only.service !== null ? serviceLines(only.service) : brokenLines(facts, only);
  }
  const shared = [
    ...new Set(clubs.flatMap(({ plan }) => (plan?.shaft == null || plan.grip === null ? [] : [`${plan.shaft.model.name}; ${plan.grip.model.name}`]))),
  ];
  const isCheck = clubs.some(({ service }) => service?.kind === "check");
  return [
    ...(isCheck ? [line("Read as found > as left; on record:")] : []),
    ...(shared.length === 1 ? [line(`All: ${shared[0]}`)] : []),
    ...clubs.map(shortLine),
  ];
}

function checksOf(facts: OrderFacts): readonly Line[] {
  const several = facts.clubs.length > 1;
  return facts.clubs.flatMap((club) => {
    const lines = [...foundLines(club), ...(club.check === null ? [] : checkLines(club.check))];
    return several ? lines.map((spans) => line({ strong: `${sheetName(club)} ` }, ...spans)) : lines;
  });
}

const typedAs: Readonly<Record<string, string>> = { gripAt2InMm: "at2", gripAt6InMm: "at6", headMassG: "headweight" };

/** What one club is to be measured in, as it is typed: `loft … face …`. */
function valuesOf(facts: OrderFacts, club: ClubFacts): string {
  const { service } = club;
  const check = service === null ? null : serviceCheck(service);
  const wanted = (quantity: CheckedQuantity): boolean => check !== null && (check.planned[quantity] ?? null) !== null;
  return mustBeMeasured(facts.kind, club.club, { listed: check?.listed ?? [], wanted })
    .map((quantity) => `${typedAs[quantity] ?? checkWord(quantity)} …`)
    .join(" ");
}

/** What the technician types: of the only club its values, of several each by its name. */
function askLines(facts: OrderFacts): readonly Line[] {
  const [first, second] = facts.clubs;
  if (facts.state !== "finalCheck" || facts.heldReason !== null || first === undefined) {
    return [];
  }
  const values = [first, ...(second === undefined ? [] : [second])].map((club) => ({ club, values: valuesOf(facts, club) }));
  const typed = values.filter((one) => one.values !== "").map((one) => (second === undefined ? one.values : `${sheetName(one.club)} ${one.values}`));
  return typed.length === 0 ? [] : [line(`Type what the gauge says: measured ${facts.number} ${typed.join(", ")}`)];
}

/** Looked at, and as written. */
const seenAs = (check: ClubFacts["check"], look: string): boolean => check?.looks.some((row) => row.look === look && row.verdict === "same") ?? false;

function buttonsOf(facts: OrderFacts): readonly Button[] {
  const act = pressOn(facts);
  const presses = pressButtons(facts, act);
  if (facts.heldReason !== null) {
    return [];
  }
  const print = act("Print", "order print");
  switch (facts.state) {
    case "confirmed":
      return [...(facts.awaitsClub ? [act("In the truck", "order arrived", "main")] : []), ...presses, print];
    case "building":
      return [...presses, print];
    case "finalCheck": {
      const looks = facts.clubs.some(({ looksWanted, check }) => Object.keys(looksWanted).some((look) => !seenAs(check, look)));
      return [...(looks ? [act("Looks as written", "order looks", facts.atBench.resting === null ? "main" : "plain")] : []), ...presses, print];
    }
    default:
      return [];
  }
}

/** The technician's card: bare cut, tip, dry target, orientation and setting first. */
export function sheetCard(facts: OrderFacts, now: Instant): Card {
  const due = facts.byAt === null ? "" : `, by ${timeText(facts.byAt, now, facts.zone)}`;
  const [first] = facts.clubs;
  return card({
    kind: "sheet",
    title: `${orderTitle(facts)} · sheet · ${stateWords[facts.state]}${handsWords(facts)}${facts.heldReason === null ? "" : `, held: ${facts.heldReason}`}${due}`,
    lines: [...stoppedLines(facts), ...underWayLines(facts, now), ...workLines(facts), ...checksOf(facts), ...cautionLine(facts), ...askLines(facts)],
    fields: facts.clubs.map((club) => clubField(facts, club, now)),
    buttons: buttonsOf(facts),
    data: {
      ...orderData(facts),
      bareCutMm: first?.plan?.bareCutMm ?? null,
      tipTrimMm: first?.plan?.tipTrimMm ?? null,
      dryTargetPoints: first?.plan?.dryTargetPoints ?? null,
    },
  });
}
