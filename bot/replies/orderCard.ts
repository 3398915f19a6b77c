import type { Clauses } from "../../core/buildSheet/buildRequest.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { clubsLines } from "./clubsLines.ts";
import { quantityWords } from "./faultWords.ts";
import { orderButtons } from "./orderButtons.ts";
import { orderData } from "./orderData.ts";
import { orderTitle } from "./orderTitle.ts";
import { plural } from "./shown.ts";
import { stateLines } from "./stateLines.ts";
import { stateWords } from "./stateWords.ts";
import { timesLine } from "./timesLine.ts";

/** What a bare number or word was written of; a loft and a length say it themselves. */
const writtenOf: Readonly<Partial<Record<keyof Clauses, string>>> = {
  stampedLoftDeg: "stamped",
  seatedLieDeg: "lie",
  soledFaceDeg: "face",
  bounceDeg: "bounce",
  grind: "grind",
  totalMassG: "total",
  headMassG: "head weight",
  tipTrimMm: "tip",
  stamp: "stamp",
  logo: "logo",
  wraps: "wraps",
};

/** A number alone, or one word: it does not say what it is of. */
const isBare = (text: string): boolean => /^(?:[\d.,/\s]+|\p{L}[\p{L}-]*)$/u.test(text);

/** What was written, and only that; a text to stamp stands in the work itself. */
function wroteLine(facts: OrderFacts): readonly Line[] {
  const written = Object.entries(facts.request.clauses).flatMap(([name, wish]) => {
    const of = writtenOf[name as keyof Clauses];
    const isInTheWork = name === "stamp" && facts.clubs.some(({ service }) => service?.kind === "stamp");
    if (wish === undefined || isInTheWork) return [];
    return [of !== undefined && (isBare(wish.asWritten) || name === "stamp") ? `${of} ${wish.asWritten}` : wish.asWritten];
  });
  const like =
    facts.request.like === null ? [] : [`like ${facts.request.like.from === "order" ? facts.request.like.number : facts.request.like.from}`];
  const all = [...written, ...like];
  return all.length === 0 ? [] : [line(`Wrote ${all.join(", ")}`)];
}

/** What is wrong, or what is ground, stands in the work itself. */
function noteField({ clubs, request: { note } }: OrderFacts): Card["fields"] {
  const isInTheWork = clubs.some(
    ({ service }) => (service?.kind === "repair" && service.complaint === note) || (service?.kind === "grind" && service.note === note),
  );
  return note === null || isInTheWork ? [] : [{ label: "Note", value: line(note) }];
}

/** A trial starts from a shaft the player has played. */
function startWords({ clubs, playedShafts, request }: OrderFacts): string {
  const shaft = clubs[0]?.plan?.shaft?.model.name;
  const isNew = request.purpose === "test" && shaft !== undefined && playedShafts.length > 0 && !playedShafts.includes(shaft);
  return isNew ? ", and starts from a shaft the player has played" : "";
}

/** The order's own post: it is edited in place through the order's life. */
export function orderCard(facts: OrderFacts, now: Instant): Card {
  const { state } = facts;
  const tone = state === "ready" ? "good" : facts.faults.length > 0 || facts.heldReason !== null ? "attention" : "plain";
  const purpose = facts.request.purpose === "gamer" ? "" : `, for ${facts.request.purpose}`;
  const changes = facts.clubs[0]?.plan?.changes ?? [];
  return card({
    kind: `order.${state}`,
    title: `${orderTitle(facts)}${purpose} · ${stateWords[state]}${facts.heldReason === null ? "" : ", held"}`,
    tone,
    lines: [...wroteLine(facts), ...clubsLines(facts), ...timesLine(facts, now), ...stateLines(facts)],
    fields: [
      { label: "Posted by", value: line(facts.postedBy.name) },
      ...(changes.length > 1
        ? [
            {
              label: "Differs from the club it is like",
              value: line(
                `${plural(changes.length, "thing")}: ${changes.map((name) => quantityWords[name] ?? name).join(", ")}. A test says most when one thing changes${startWords(facts)}.`,
              ),
            },
          ]
        : []),
      ...noteField(facts),
    ],
    buttons: orderButtons(facts),
    data: orderData(facts),
  });
}
