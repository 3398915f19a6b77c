import type { Card, Json, Line } from "../chat/types.ts";
import type { PromiseRecordFacts } from "../operations/promiseRecord.ts";
import { card, line } from "./card.ts";
import { plural } from "./shown.ts";

type Record = PromiseRecordFacts["all"];

const MOST_MISSES = 3;
const percent = (share: number): string => `${Math.round(share * 100)} %`;
const minutes = (min: number): string => plural(Math.round(min), "minute");

const keptWords = ({ keptCount, count }: Record): string => `${keptCount} of ${count} kept`;

/** How early half of them were at least, or how late. */
function earlyWords({ earlyMin, count }: Record): string {
  const median = Math.round(earlyMin?.median ?? 0);
  const early = median === 0 ? "to the minute" : `${minutes(Math.abs(median))} ${median > 0 ? "early" : "late"}`;
  return count === 1 ? early : `half of them ${early}${median === 0 ? "" : " or more"}`;
}

/** What so few can say of all: nine in ten were meant. */
const intervalWords = ({ coverageInterval: between }: Record): string =>
  between === null ? "" : `the share may be ${percent(between.low)} to ${percent(between.high)}, 90 % is meant`;

function missLines({ misses }: Record): readonly Line[] {
  const worst = misses.slice(0, MOST_MISSES).map(({ row, lateMin }) => `${row.orderNumber} by ${minutes(Math.max(1, lateMin))}`);
  return worst.length === 0
    ? []
    : [line(`Missed: ${worst.join(", ")}${misses.length > MOST_MISSES ? `, and ${misses.length - MOST_MISSES} less` : ""}`)];
}

function openLines({ openCount, overdueCount, heldCount }: PromiseRecordFacts): readonly Line[] {
  const open =
    openCount === 0 ? [] : [`${openCount} open${overdueCount === 0 ? "" : `, ${overdueCount} past ${overdueCount === 1 ? "its" : "their"} promise`}`];
  const held = heldCount === 0 ? [] : [`${heldCount} held or without ${heldCount === 1 ? "its" : "their"} club`];
  return open.length + held.length === 0 ? [] : [line(`Not counted yet: ${[...open, ...held].join("; ")}`)];
}

function recordData(record: Record): Json {
  return {
    promiseCount: record.count,
    keptCount: record.keptCount,
    coveragePct: record.coverage === null ? null : record.coverage * 100,
    coverageLowPct: record.coverageInterval === null ? null : record.coverageInterval.low * 100,
    coverageHighPct: record.coverageInterval === null ? null : record.coverageInterval.high * 100,
    earlyTenthMin: record.earlyMin?.tenth ?? null,
    earlyMedianMin: record.earlyMin?.median ?? null,
    earlyNineTenthsMin: record.earlyMin?.nineTenths ?? null,
    likelyLossMin: record.likelyLossMin,
    promiseLossMin: record.promiseLossMin,
    misses: record.misses.map(({ row, lateMin }) => ({ orderNumber: row.orderNumber, week: row.week, lateMin })),
  };
}

/** What was promised against what was kept, week by week. */
export function recordCard(facts: PromiseRecordFacts): Card {
  const { all, weeks } = facts;
  const several = weeks.length > 1;
  const data = {
    all: recordData(all),
    weeks: weeks.map(({ week, record }) => ({ week, record: recordData(record) })),
    openCount: facts.openCount,
    overdueCount: facts.overdueCount,
    heldCount: facts.heldCount,
  };
  if (all.count === 0) {
    return card({ kind: "bench.record", title: "No promise has come due yet", lines: openLines(facts), data });
  }
  return card({
    kind: "bench.record",
    title: `Promises: ${keptWords(all)}`,
    lines: [
      ...weeks.flatMap(({ week, record }) => [
        line({ strong: week }, `: ${several ? `${keptWords(record)}, ` : ""}${earlyWords(record)}`),
        ...missLines(record),
      ]),
      line(`By ${plural(all.count, "promise")} ${intervalWords(all)}`),
      ...openLines(facts),
    ],
    fields: [
      {
        label: "How sharp",
        value: line(
          `Off by ${(all.likelyLossMin ?? 0).toFixed(1)} for the likely time, ${(all.promiseLossMin ?? 0).toFixed(1)} for the promise (mean pinball loss, min)`,
        ),
      },
    ],
    data,
  });
}
