import { type AskedQuantity, type Bound, type HeadQuestion, leavesOutPutters, type Unread } from "../../boundary/stock/findQuestion.ts";
import { shownName } from "../../boundary/stock/stockKnown.ts";
import type { Card, Json, Line } from "../../chat/types.ts";
import type { FoundHead, FoundHeads } from "../../operations/findStockHeads.ts";
import { card, line } from "../card.ts";
import { clubWords, plural, shown } from "../shown.ts";
import { unreadLines } from "./unreadLines.ts";

const MOST_HEADS = 15;

const names: Readonly<Record<AskedQuantity, string>> = {
  squaredLoftDeg: "true",
  seatedLieDeg: "lie",
  soledFaceDeg: "face",
  bounceDeg: "bounce",
  massG: "g",
};

const plain = (value: number): string => String(Math.round(value * 1000) / 1000);

function boundWords(bound: Bound): string {
  const name = names[bound.quantity];
  if (bound.kind === "near") return `nearest to ${plain(bound.value)} ${name}`;
  const { min, max, includesEnds } = bound;
  if (min !== null && max !== null) return `${plain(min)} to ${plain(max)} ${name}`;
  const over = includesEnds ? "at least" : "over";
  const under = includesEnds ? "at most" : "under";
  return `${min === null ? under : over} ${plain(min ?? max ?? 0)} ${name}`;
}

/** The question as it was understood. */
function questionWords(question: HeadQuestion): string {
  const { models, family, club, hand, grind, stampedLoftDeg, serial, place, bounds } = question;
  const parts = [
    ...(models === null ? [] : [models.map(shownName).join(" or ")]),
    ...(club === null ? [] : [clubWords(club.name)]),
    ...(family === null ? [] : [family]),
    ...(grind === null ? [] : [grind]),
    ...(stampedLoftDeg === null ? [] : [`stamped ${shown.stamp(stampedLoftDeg)}`]),
    ...(serial === null ? [] : [`serial ${serial}`]),
    ...bounds.map(boundWords),
    ...(hand === null ? [] : [`${hand} hand`]),
    ...(place === null ? [] : [`in ${place.shown}`]),
    ...(leavesOutPutters(question) ? ["putters left out"] : []),
  ];
  return parts.length === 0 ? "" : `: ${parts.join(", ")}`;
}

const readsOf = ({ squaredLoftDeg, sleeved }: FoundHead): string =>
  squaredLoftDeg === null ? "true unknown: no sleeve on record fits it" : `true ${shown.angle(squaredLoftDeg)}${sleeved ? " at standard" : ""}`;

function headLine(head: FoundHead): Line {
  const { serial, model, hand, grind, stampedLoftDeg, soledFaceDeg, seatedLieDeg, bounceDeg, massG, place, truck, orderNumber } = head;
  const values = [
    `stamped ${shown.stamp(stampedLoftDeg)}`,
    readsOf(head),
    ...(soledFaceDeg === null ? [] : [shown.face(soledFaceDeg)]),
    ...(seatedLieDeg === null ? [] : [`lie ${shown.angle(seatedLieDeg)}`]),
    ...(bounceDeg === null ? [] : [`bounce ${shown.angle(bounceDeg)}${grind === null ? "" : ` ${grind}`}`]),
    shown.mass(massG),
    truck === null ? place : `${place}, truck ${truck}`,
  ];
  return line(
    { strong: serial },
    ` ${model}${hand === "left" ? " LH" : ""} ${values.join(", ")}`,
    ...(orderNumber === null ? [] : [", ", { strong: `held by order ${orderNumber}` }]),
  );
}

const headData = ({ family: _family, sleeved: _sleeved, ...head }: FoundHead): Json => ({ ...head });

/** The heads found, this truck's first; when there are none, the nearest. */
export function foundHeadsCard(question: HeadQuestion, { heads, nearest }: FoundHeads, unread: readonly Unread[]): Card {
  const listed = heads.slice(0, MOST_HEADS);
  const moreCount = heads.length - listed.length;
  const asked = questionWords(question);
  return card({
    kind: "stock.heads",
    title: heads.length === 0 ? `No head${asked}` : `${plural(heads.length, "head")}${asked}`,
    tone: heads.length === 0 || unread.length > 0 ? "attention" : "plain",
    lines: [
      ...unreadLines(unread),
      ...listed.map(headLine),
      ...(moreCount > 0 ? [line(`and ${moreCount} more`)] : []),
      ...(heads.length > 0 ? [] : nearest.length === 0 ? [line("No head lies anywhere on record.")] : [line("Nearest:"), ...nearest.map(headLine)]),
    ],
    data: { headCount: heads.length, moreCount, heads: listed.map(headData), nearest: nearest.map(headData) },
  });
}
