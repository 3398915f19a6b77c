import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Line, Reply } from "../chat/types.ts";
import type { Lacking } from "../operations/lackingAt.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { OrderTimes } from "../operations/orderTimes.ts";
import type { ReadySlip } from "../operations/readySlips.ts";
import { card, line, note } from "./card.ts";
import { lackingWords } from "./lackingWords.ts";
import { orderTitle } from "./orderTitle.ts";
import { clubWords, plural, timeText } from "./shown.ts";

type ShownSlip = Omit<ReadySlip, "order"> & { readonly facts: OrderFacts };

/** What an order that is not posted yet would bring about. */
export interface ReadyFacts extends OrderTimes {
  readonly request: BuildRequest;
  readonly player: string;
  readonly zone: string;
  readonly byAt: Instant | null;
  readonly chance: number | null;
  readonly awaitsClub: boolean;
  /** Nobody at the bench, or nobody with a skill it asks for. */
  readonly lacking: readonly Lacking[];
  /** Something of it cannot be built as asked; its times are those of its route. */
  readonly cannotYet: boolean;
  readonly slips: readonly ShownSlip[];
  /** The same put first in line, where the deadline is tight. */
  readonly first: (OrderTimes & { readonly chance: number | null; readonly slips: readonly ShownSlip[] }) | null;
}

export const readyHint = (text: string): Reply =>
  note(
    "refusal",
    `Not read: ${text.trim() === "" ? "of whom and what" : text.trim()}`,
    "attention",
    "Write for instance: /ready oxtoby driver by 14:30, or /ready regrip toll 7i",
  );

/** A chance as people say it: 19 in 20, 9 in 10, as good as none. */
function chanceWords(chance: number): string {
  if (chance >= 0.97) return "as good as certain";
  if (chance < 0.03) return "as good as none";
  if (chance >= 0.93) return "19 in 20";
  return `about ${Math.min(9, Math.max(1, Math.round(chance * 10)))} in 10`;
}

const MS_PER_MIN = 60_000;

function slipLine({ facts, beforeAt, afterAt, missesAt }: ShownSlip, now: Instant): Line {
  const at = (time: Instant): string => timeText(time, now, facts.zone);
  const moved =
    afterAt === null
      ? "not before the truck leaves"
      : beforeAt === null
        ? `now ${at(afterAt)}`
        : `${afterAt > beforeAt ? "+" : "−"}${plural(Math.round(Math.abs(afterAt - beforeAt) / MS_PER_MIN), "minute")}, ${at(beforeAt)} > ${at(afterAt)}`;
  return line({ strong: orderTitle(facts) }, ` ${moved}${missesAt === null ? "" : `; past its ${at(missesAt)}`}`);
}

function slipLines(slips: readonly ShownSlip[], now: Instant): readonly Line[] {
  const later = slips.filter(({ beforeAt, afterAt }) => afterAt === null || (beforeAt !== null && afterAt > beforeAt));
  return later.length === 0
    ? [line("Nobody slips by it")]
    : [line(`Slips by it: ${plural(later.length, "order")}`), ...later.map((slip) => slipLine(slip, now))];
}

function timesText({ likelyAt, promiseAt, playableAt }: OrderTimes, now: Instant, { zone, lacking }: ReadyFacts): string {
  if (promiseAt === null) return lackingWords(lacking) ?? "No promise before the truck leaves";
  const likely = likelyAt === null ? "" : `In hand ${timeText(likelyAt, now, zone)}, `;
  return `${likely}promise ${timeText(promiseAt, now, zone)}${playableAt !== null && playableAt > promiseAt ? `, full swings ${timeText(playableAt, now, zone)}` : ""}`;
}

const slipData = (slips: readonly ShownSlip[]) => slips.map(({ facts, beforeAt, afterAt }) => ({ orderNumber: facts.number, beforeAt, afterAt }));
const percent = (chance: number | null): number | null => (chance === null ? null : chance * 100);

function firstLines(facts: ReadyFacts, now: Instant): readonly Line[] {
  const { first, byAt, zone } = facts;
  if (first === null || byAt === null) return [];
  const chance = first.chance === null ? "" : `; by ${timeText(byAt, now, zone)} ${chanceWords(first.chance)}`;
  return [line({ strong: "Put first in line: " }, `${timesText(first, now, facts)}${chance}`), ...slipLines(first.slips, now)];
}

/** Times, chance, and who would slip. */
export function readyCard(facts: ReadyFacts, now: Instant): Card {
  const { request, player, zone, byAt, chance } = facts;
  const by = byAt === null || chance === null ? [] : [line({ strong: `By ${timeText(byAt, now, zone)}: ${chanceWords(chance)}` })];
  return card({
    kind: "ready",
    title: `${player}, ${request.kind === "build" ? "" : `${request.kind} `}${request.clubs.map(clubWords).join(", ")}: if it were posted now`,
    tone: chance !== null && chance < 0.5 ? "attention" : "plain",
    lines: [
      line(`${timesText(facts, now, facts)}${facts.awaitsClub ? ", were the club in the truck now" : ""}`),
      ...by,
      ...(facts.cannotYet ? [line("Something of it is short or still to be said: the post will tell. The times are those of its steps.")] : []),
      ...slipLines(facts.slips, now),
      ...firstLines(facts, now),
    ],
    data: {
      likelyAt: facts.likelyAt,
      promiseAt: facts.promiseAt,
      playableAt: facts.playableAt,
      byAt,
      chancePct: percent(chance),
      slips: slipData(facts.slips),
      first:
        facts.first === null
          ? null
          : { promiseAt: facts.first.promiseAt, chancePct: percent(facts.first.chance), slips: slipData(facts.first.slips) },
    },
  });
}
