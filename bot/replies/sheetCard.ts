import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { clubFamily, type Instant } from "../../core/kinds.ts";
import type { Button, Card, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { bendWords } from "./bendWords.ts";
import { brokenLines } from "./brokenLines.ts";
import { card, line } from "./card.ts";
import { cautionLine } from "./cautionLine.ts";
import { checkLines, foundLines } from "./checkLines.ts";
import { orderData, orderTitle, stateWords } from "./orderCard.ts";
import { serviceLines, serviceShort } from "./serviceLines.ts";
import { sheetName, shown, timeText } from "./shown.ts";

const LEAST_LEAD_G = 0.25;

/** Setting and orientation: what is set by hand and cannot be seen once the glue has set. */
export function settingWords(plan: ClubPlan): string {
  const rib = plan.grip === null ? "" : plan.grip.model.rib ? ", rib in line" : ", no rib";
  return `Sleeve ${plan.choice.mark ?? "none, bonded"}; logo ${plan.logo ?? "as he plays it: ask"}${rib}`;
}

function builtLines(club: ClubFacts, plan: ClubPlan): readonly Line[] {
  const { choice } = plan;
  return [
    ...(plan.bareCutMm === null ? [] : [line({ strong: `Bare cut ${shown.both(plan.bareCutMm)}` })]),
    ...(plan.tipTrimMm === null ? [] : [line(`Tip ${plan.tipTrimMm > 0 ? shown.both(plan.tipTrimMm) : "none"}`)]),
    ...(plan.dryTargetPoints === null
      ? []
      : [line({ strong: `Dry swing weight ${shown.swing(plan.dryTargetPoints)}` }, ", head on, no grip or tape")]),
    line(settingWords(plan)),
    line(`Head ${choice.head.serial} ${club.headShown ?? ""}, ${choice.head.place}, ${shown.mass(choice.head.massG)}${bendWords(choice)}`),
    ...(plan.shaft === null
      ? []
      : [line(`Shaft ${plan.shaft.model.name}${plan.piece === null ? "" : `, ${plan.piece.state} already`}, ${plan.shaft.place}`)]),
    ...(plan.grip === null ? [] : [line(`Grip ${plan.grip.model.name}${plan.wraps > 0 ? `, ${plan.wraps} more under it` : ""}, ${plan.grip.place}`)]),
    ...plan.weights.map(({ model, count }) => line(`${count} × ${model.name}`)),
    ...(plan.leadG >= LEAST_LEAD_G ? [line(`Lead ${shown.mass(plan.leadG)} left over`)] : []),
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
    ...(plan.tipTrimMm === null ? [] : [`tip ${plan.tipTrimMm > 0 ? shown.length(plan.tipTrimMm) : "none"}`]),
    ...(plan.dryTargetPoints === null ? [] : [`dry ${shown.swing(plan.dryTargetPoints)}`]),
    `head ${plan.choice.head.serial} ${plan.choice.head.place}${bendWords(plan.choice)}`,
    ...(plan.choice.mark === null ? [] : [plan.choice.mark]),
  ];
  return line(name, ` ${parts.join(", ")}`);
}

function workLines({ clubs }: OrderFacts): readonly Line[] {
  const [only, ...others] = clubs;
  if (only !== undefined && others.length === 0) {
    return only.plan !== null ? builtLines(only, only.plan) : only.service !== null ? serviceLines(only.service) : brokenLines(only);
  }
  const shared = [
    ...new Set(clubs.flatMap(({ plan }) => (plan?.shaft == null || plan.grip === null ? [] : [`${plan.shaft.model.name}; ${plan.grip.model.name}`]))),
  ];
  return [...(shared.length === 1 ? [line(`All: ${shared[0]}`)] : []), ...clubs.map(shortLine)];
}

function checksOf(facts: OrderFacts): readonly Line[] {
  const several = facts.clubs.length > 1;
  return facts.clubs.flatMap((club) => {
    const lines = [...foundLines(club), ...(club.check === null ? [] : checkLines(club.check))];
    return several ? lines.map((spans) => line({ strong: `${sheetName(club)} ` }, ...spans)) : lines;
  });
}

/** What the technician types: of the only club its values, of several each by its name. */
function askLines(facts: OrderFacts): readonly Line[] {
  const [first, second] = facts.clubs;
  if (facts.state !== "finalCheck" || facts.heldReason !== null || first === undefined) {
    return [];
  }
  const family = clubFamily(first.club);
  const values =
    family === "driver" || family === "fairway" || family === "hybrid" ? "loft … face … swing … length …" : "loft … lie … swing … length …";
  const example = second === undefined ? values : `${sheetName(first)} loft … lie …, ${sheetName(second)} loft … lie …`;
  return [line(`Type what the gauge says: measured ${facts.number} ${example}`)];
}

function buttonsOf(facts: OrderFacts): readonly Button[] {
  const act = (label: string, command: string, weight: Button["weight"] = "plain"): Button => ({
    label,
    weight,
    action: { command, subject: `order:${facts.order}`, version: facts.version },
  });
  if (facts.heldReason !== null) {
    return [];
  }
  const print = act("Print", "order print");
  const glues = facts.clubs.some((club) => club.steps.some((step) => step.kind === "bondSet" && step.state === "todo"));
  const looks = facts.clubs.some(({ looksWanted }) => Object.keys(looksWanted).length > 0);
  switch (facts.state) {
    case "confirmed":
      return [
        ...(facts.awaitsClub ? [act("In the truck", "order arrived", "main")] : []),
        act("Start", "step start", facts.awaitsClub ? "plain" : "main"),
        print,
      ];
    case "building":
      return [...(glues ? [act("Glue on", "step glue", "main")] : []), act("Done", "step done", glues ? "plain" : "main"), print];
    case "finalCheck":
      return [...(looks ? [act("Looks as written", "order looks", "main")] : []), print];
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
    title: `${orderTitle(facts)} · sheet · ${stateWords[facts.state]}${facts.heldReason === null ? "" : `, held: ${facts.heldReason}`}${due}`,
    lines: [...workLines(facts), ...checksOf(facts), ...cautionLine(facts), ...askLines(facts)],
    fields: facts.clubs.map((club) => ({
      label: sheetName(club),
      value: line(`${club.steps.filter((step) => step.state === "done").length} of ${club.steps.length} steps done`),
    })),
    buttons: buttonsOf(facts),
    data: {
      ...orderData(facts),
      bareCutMm: first?.plan?.bareCutMm ?? null,
      tipTrimMm: first?.plan?.tipTrimMm ?? null,
      dryTargetPoints: first?.plan?.dryTargetPoints ?? null,
    },
  });
}
