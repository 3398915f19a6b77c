import type { Card, Line } from "../chat/types.ts";
import type { PromiseFacts } from "../operations/promiseFacts.ts";
import { card, line } from "./card.ts";
import { plural } from "./shown.ts";

type Kept = PromiseFacts["all"];

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const MOST_MISSES = 3;

function keptLine({ count, keptCount, coverage, coverageInterval }: Kept): string {
  const range = coverageInterval === null ? "" : ` (between ${percent(coverageInterval.low)} and ${percent(coverageInterval.high)})`;
  return `${keptCount} of ${plural(count, "promise")} kept, ${percent(coverage ?? 0)}${range}; meant: 90 %`;
}

function earlyLine({ earlyMin }: Kept): readonly Line[] {
  if (earlyMin === null) return [];
  const half = Math.round(earlyMin.median);
  return [
    line(half >= 0 ? `Half are in hand ${plural(half, "minute")} or more before the promise` : `Half are ${plural(-half, "minute")} late or more`),
  ];
}

const missLines = ({ misses }: Kept): readonly Line[] =>
  misses
    .slice(0, MOST_MISSES)
    .map(({ row, lateMin }) => line(`Missed: ${row.number} (${row.event}) by ${plural(Math.max(1, Math.round(lateMin)), "minute")}`));

/** What was promised and what was kept. */
export function recordCard({ all, weeks, openCount }: PromiseFacts): Card {
  const open = openCount === 0 ? [] : [line(`${plural(openCount, "promise")} not due yet or not in hand`)];
  return card({
    kind: "bench.record",
    title: all.count === 0 ? "No promise has come due yet" : "Promised and kept",
    tone: all.coverage !== null && all.coverageInterval !== null && all.coverageInterval.high < 0.9 ? "attention" : "plain",
    lines: all.count === 0 ? open : [line(keptLine(all)), ...earlyLine(all), ...missLines(all), ...open],
    fields: weeks.length < 2 ? [] : weeks.map(({ event, record }) => ({ label: event, value: line(keptLine(record)) })),
    data: {
      promiseCount: all.count,
      keptCount: all.keptCount,
      coveragePct: all.coverage === null ? null : all.coverage * 100,
      coverageLowPct: all.coverageInterval === null ? null : all.coverageInterval.low * 100,
      coverageHighPct: all.coverageInterval === null ? null : all.coverageInterval.high * 100,
      earlyMedianMin: all.earlyMin?.median ?? null,
      likelyLossMin: all.likelyLossMin,
      promiseLossMin: all.promiseLossMin,
      openCount,
      misses: all.misses.map(({ row, lateMin }) => ({ orderNumber: row.number, lateMin })),
    },
  });
}
