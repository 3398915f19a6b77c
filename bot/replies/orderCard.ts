import { kindsOnExistingClub } from "../../core/buildSheet/buildRequest.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Action, Button, Card, Json, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { faultWords, quantityWords } from "./faultWords.ts";
import { clubWords, plural, shown, timeText } from "./shown.ts";

export const stateWords: Readonly<Record<OrderFacts["state"], string>> = {
  draft: "draft",
  confirmed: "confirmed",
  building: "building",
  finalCheck: "final check",
  ready: "ready",
  outWithPlayer: "out with player",
  closed: "closed",
  withdrawn: "withdrawn",
};

/** `57 OXTOBY RH driver`: what every card about an order begins with. */
export function orderTitle(facts: OrderFacts): string {
  const family = facts.player.split(" ").at(-1) ?? facts.player;
  const kind = facts.kind === "build" ? "" : ` ${facts.kind}`;
  const clubs = facts.request.clubs.map(clubWords).join(" ");
  const count = facts.request.count > 1 ? ` ×${facts.request.count}` : "";
  return `${facts.number} ${family.toUpperCase()} ${facts.hand === "left" ? "LH" : "RH"}${kind} ${clubs}${count}`;
}

/** What was written, and only that. */
function wroteLine(facts: OrderFacts): Line {
  const written = Object.values(facts.request.clauses).flatMap((wish) => (wish === undefined ? [] : [wish.asWritten]));
  const like =
    facts.request.like === null ? [] : [`like ${facts.request.like.from === "order" ? facts.request.like.number : facts.request.like.from}`];
  const all = [...written, ...like];
  return line(all.length === 0 ? "Wrote no values" : `Wrote ${all.join(", ")}`);
}

/** The head chosen: stamped and true are never left to be mixed up. */
function headLine(club: ClubFacts, plan: ClubPlan): Line {
  const { head, attitude, mark } = plan.choice;
  const set = mark === null ? "bonded" : mark;
  return line(
    `Head ${head.serial} ${club.headShown ?? ""} stamped ${shown.stamp(head.stampedLoftDeg)}, ${head.place}, ${set}: true ${shown.angle(attitude.squaredLoftDeg)} / ${shown.face(attitude.soledFaceDeg)}`,
  );
}

function partsLine(plan: ClubPlan): readonly Line[] {
  const shaft =
    plan.shaft === null
      ? []
      : [`${plan.shaft.model.name}${plan.tipTrimMm ? ` tip ${shown.length(plan.tipTrimMm)}` : ""}${plan.logo === null ? "" : `, logo ${plan.logo}`}`];
  const grip = plan.grip === null ? [] : [`${plan.grip.model.name}${plan.wraps > 0 ? ` +${plan.wraps}` : ""}`];
  return shaft.length + grip.length === 0 ? [] : [line([...shaft, ...grip].join("; "))];
}

function predictedLine(plan: ClubPlan): readonly Line[] {
  const { lengthMm, swingWeightPoints, totalMassG } = plan.predicted;
  const parts = [
    ...(lengthMm === null ? [] : [shown.length(lengthMm)]),
    ...(swingWeightPoints === null ? [] : [shown.swing(swingWeightPoints)]),
    ...(totalMassG === null ? [] : [shown.mass(totalMassG)]),
    ...plan.weights.map(({ model, count }) => `${count > 1 ? `${count} × ` : ""}${model.name}`),
    ...(plan.leadG >= 0.25 ? [`lead ${shown.mass(plan.leadG)}`] : []),
  ];
  return parts.length === 0 ? [] : [line(`Comes to ${parts.join(", ")}`)];
}

function missLines(plan: ClubPlan): readonly Line[] {
  const words: Readonly<Record<string, string>> = {
    squaredLoftDeg: "true loft",
    soledFaceDeg: "face",
    seatedLieDeg: "lie",
    headMassG: "head mass",
    swingWeightPoints: "swing weight",
    bounceDeg: "bounce",
  };
  return plan.choice.misses.map((miss) =>
    line(`Nearest misses ${words[miss.quantity] ?? miss.quantity} by ${shown.angle(Math.abs(miss.got - miss.wanted))}`),
  );
}

const clubLines = (club: ClubFacts): readonly Line[] =>
  club.plan === null ? [] : [...partsLine(club.plan), headLine(club, club.plan), ...predictedLine(club.plan), ...missLines(club.plan)];

function timesLine(facts: OrderFacts, now: Instant): readonly Line[] {
  const { likelyAt, promiseAt, playableAt, zone, byAt } = facts;
  if (["closed", "withdrawn", "outWithPlayer"].includes(facts.state)) {
    return [];
  }
  if (promiseAt === null) {
    const awaits = facts.request.broughtBy !== null && facts.request.broughtBy !== "inTruck";
    return [
      line(
        facts.heldReason !== null ? "No time while held" : awaits ? "No time before the club is in the truck" : "No promise before the truck leaves",
      ),
    ];
  }
  const late = byAt !== null && promiseAt > byAt ? `, after your ${timeText(byAt, now, zone)}` : "";
  const playable = playableAt !== null && playableAt > promiseAt ? `, full swings ${timeText(playableAt, now, zone)}` : "";
  const likely = likelyAt === null ? "" : `In hand ${timeText(likelyAt, now, zone)}, `;
  return [line(`${likely}promise ${timeText(promiseAt, now, zone)}${late}${playable}`)];
}

function stateLines(facts: OrderFacts): readonly Line[] {
  const held = facts.heldReason === null ? [] : [line(`Held: ${facts.heldReason}`)];
  const taken = facts.takenBy === null ? [] : [line(`Taken by ${facts.takenBy}${facts.answer === null ? "; in the bag?" : `; ${facts.answer}`}`)];
  const bring =
    facts.request.broughtBy === null || facts.request.broughtBy === "inTruck"
      ? []
      : [line(`${facts.request.broughtBy} brings the club; the clock starts when it is in the truck`)];
  const isUnsaid = facts.state === "draft" && facts.request.broughtBy === null && kindsOnExistingClub.includes(facts.kind);
  const who = isUnsaid ? [line("Who brings the club? The clock starts when it is in the truck")] : [];
  const owed =
    facts.state === "ready" || facts.state === "finalCheck"
      ? facts.owed.map((row) => line(`Owed on the ${clubWords(row.club)}: stamp ${row.text}`))
      : [];
  const several =
    facts.request.count > 1 && facts.state === "draft" ? [line(`One sheet is made: send an order for each of the ${facts.request.count}`)] : [];
  return [...held, ...bring, ...who, ...several, ...taken, ...owed];
}

function buttonsOf(facts: OrderFacts, canGo: boolean): readonly Button[] {
  const act = (label: string, command: string, argument?: string, weight: Button["weight"] = "plain"): Button => {
    const action: Action = { command, subject: `order:${facts.order}`, version: facts.version, ...(argument === undefined ? {} : { argument }) };
    return { label, action, weight };
  };
  switch (facts.state) {
    case "draft":
      return [
        ...(canGo ? [act("Go", "order confirm", undefined, "main")] : []),
        act("Change", "order change"),
        act("Other heads", "order heads"),
        act("Drop", "order drop", undefined, "grave"),
      ];
    case "confirmed":
    case "building":
    case "finalCheck":
      return [
        facts.heldReason === null ? act("Hold", "order hold") : act("Resume", "order resume", undefined, "main"),
        act("Scratch", "order scratch", undefined, "grave"),
      ];
    case "ready":
      return ["player", "caddie", "locker", "courier"].map((taker) => act(`To ${taker}`, "order handover", taker));
    case "outWithPlayer":
      return ["in the bag", "backup", "testing", "coming back"].map((answer) =>
        act(answer[0]?.toUpperCase() + answer.slice(1), "order bag", answer, answer === "in the bag" ? "main" : "plain"),
      );
    default:
      return [];
  }
}

/** Every number the card shows, unrounded. */
export function orderData(facts: OrderFacts): Readonly<Record<string, Json>> {
  const plan = facts.clubs[0]?.plan ?? null;
  return {
    orderNumber: facts.number,
    orderId: facts.order,
    orderVersion: facts.version,
    state: facts.state,
    likelyAt: facts.likelyAt,
    promiseAt: facts.promiseAt,
    playableAt: facts.playableAt,
    byAt: facts.byAt,
    ...(plan === null
      ? {}
      : {
          headSerial: plan.choice.head.serial,
          squaredLoftDeg: plan.choice.attitude.squaredLoftDeg,
          soledFaceDeg: plan.choice.attitude.soledFaceDeg,
          seatedLieDeg: plan.choice.attitude.seatedLieDeg,
          headMassG: plan.choice.head.massG,
          lengthMm: plan.predicted.lengthMm,
          swingWeightPoints: plan.predicted.swingWeightPoints,
          totalMassG: plan.predicted.totalMassG,
          balancePointMm: plan.predicted.balancePointMm,
          inertiaKgCm2: plan.predicted.inertiaKgCm2,
        }),
  };
}

/** The order's own post: it is edited in place through the order's life. */
export function orderCard(facts: OrderFacts, now: Instant): Card {
  const { state } = facts;
  const faults = facts.faults.map(faultWords);
  const tone = state === "ready" ? "good" : faults.length > 0 || facts.heldReason !== null ? "attention" : "plain";
  const purpose = facts.request.purpose === "gamer" ? "" : `, for ${facts.request.purpose}`;
  const changes = facts.clubs[0]?.plan?.changes ?? [];
  return card({
    kind: `order.${state}`,
    title: `${orderTitle(facts)}${purpose} · ${stateWords[state]}${facts.heldReason === null ? "" : ", held"}`,
    tone,
    lines: [wroteLine(facts), ...facts.clubs.flatMap(clubLines), ...faults.map((text) => line(text)), ...timesLine(facts, now), ...stateLines(facts)],
    fields: [
      { label: "Posted by", value: line(facts.postedBy.name) },
      ...(changes.length > 1
        ? [
            {
              label: "Differs from the club it is like",
              value: line(
                `${plural(changes.length, "thing")}: ${changes.map((name) => quantityWords[name] ?? name).join(", ")}. A test says most when one thing changes.`,
              ),
            },
          ]
        : []),
      ...(facts.request.note === null ? [] : [{ label: "Note", value: line(facts.request.note) }]),
    ],
    buttons: buttonsOf(facts, faults.length === 0),
    data: orderData(facts),
  });
}
