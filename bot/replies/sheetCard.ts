import type { Instant } from "../../core/kinds.ts";
import type { Button, Card, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { cautionLine } from "./cautionLine.ts";
import { checkLines } from "./checkLines.ts";
import { orderData, orderTitle, stateWords } from "./orderCard.ts";
import { clubWords, shown, timeText } from "./shown.ts";

function cutLines(club: ClubFacts): readonly Line[] {
  const { plan } = club;
  if (plan === null) {
    return [];
  }
  const { choice } = plan;
  return [
    ...(plan.bareCutMm === null ? [] : [line({ strong: `Bare cut ${shown.both(plan.bareCutMm)}` })]),
    ...(plan.tipTrimMm === null ? [] : [line(`Tip ${plan.tipTrimMm > 0 ? shown.both(plan.tipTrimMm) : "none"}`)]),
    ...(plan.dryTargetPoints === null
      ? []
      : [line({ strong: `Dry swing weight ${shown.swing(plan.dryTargetPoints)}` }, ", head on, no grip or tape")]),
    line(`Logo ${plan.logo ?? "as he plays it: ask"}; sleeve ${choice.mark ?? "none, bonded"}`),
    line(`Head ${choice.head.serial} ${club.headShown ?? ""}, ${choice.head.place}, ${shown.mass(choice.head.massG)}`),
    ...(plan.shaft === null ? [] : [line(`Shaft ${plan.shaft.model.name}, ${plan.shaft.place}`)]),
    ...(plan.grip === null ? [] : [line(`Grip ${plan.grip.model.name}${plan.wraps > 0 ? `, ${plan.wraps} more under it` : ""}, ${plan.grip.place}`)]),
    ...plan.weights.map(({ model, count }) => line(`${count} × ${model.name}`)),
    ...(plan.leadG >= 0.25 ? [line(`Lead ${shown.mass(plan.leadG)} left over`)] : []),
  ];
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
  const glues = facts.clubs.some((club) => club.steps.some((step) => step.kind === "bondSet" && step.state === "todo"));
  if (facts.state === "confirmed") {
    return [act("Start", "step start", "main")];
  }
  return facts.state === "building"
    ? [...(glues ? [act("Glue on", "step glue", "main")] : []), act("Done", "step done", glues ? "plain" : "main")]
    : [];
}

/** The technician's card: bare cut, tip, dry target, orientation and setting first. */
export function sheetCard(facts: OrderFacts, now: Instant): Card {
  const checks = facts.clubs.flatMap((club) => (club.check === null ? [] : checkLines(club.check)));
  const ask =
    facts.state === "finalCheck" && facts.heldReason === null
      ? [line(`Type what the gauge says: measured ${facts.number} loft … face … swing … length …`)]
      : [];
  const due = facts.byAt === null ? "" : `, by ${timeText(facts.byAt, now, facts.zone)}`;
  return card({
    kind: "sheet",
    title: `${orderTitle(facts)} · sheet · ${stateWords[facts.state]}${facts.heldReason === null ? "" : `, held: ${facts.heldReason}`}${due}`,
    lines: [...facts.clubs.flatMap(cutLines), ...checks, ...cautionLine(facts), ...ask],
    fields: facts.clubs.map((club) => ({
      label: clubWords(club.club),
      value: line(`${club.steps.filter((step) => step.state === "done").length} of ${club.steps.length} steps done`),
    })),
    buttons: buttonsOf(facts),
    data: {
      ...orderData(facts),
      bareCutMm: facts.clubs[0]?.plan?.bareCutMm ?? null,
      tipTrimMm: facts.clubs[0]?.plan?.tipTrimMm ?? null,
      dryTargetPoints: facts.clubs[0]?.plan?.dryTargetPoints ?? null,
    },
  });
}
