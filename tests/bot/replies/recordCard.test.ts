import { describe, expect, it } from "vitest";
import type { PromiseRecordFacts } from "../../../bot/operations/promiseRecord.ts";
import { recordCard } from "../../../bot/replies/recordCard.ts";
import { promiseRecord } from "../../../core/bench/promiseRecord.ts";
import { instant } from "../../../core/kinds.ts";
import { cardText } from "../../support/readCard.ts";

const MIN = 60_000;
const PROMISED = 1_000_000 * MIN;

/** Promises of a week by the minutes they were missed, below 0 kept. */
const weekOf = (week: string, late: readonly number[]) =>
  late.map((minutes, at) => ({
    promiseAt: instant(PROMISED),
    likelyAt: instant(PROMISED - 5 * MIN),
    inHandAt: instant(PROMISED + minutes * MIN),
    orderNumber: 41 + at,
    week,
  }));

const factsOf = (weeks: Readonly<Record<string, readonly number[]>>, open: Partial<PromiseRecordFacts> = {}): PromiseRecordFacts => {
  const rows = Object.entries(weeks).map(([week, late]) => ({ week, rows: weekOf(week, late) }));
  return {
    all: promiseRecord(rows.flatMap((one) => one.rows)),
    weeks: rows.map((one) => ({ week: one.week, record: promiseRecord(one.rows) })),
    openCount: 0,
    overdueCount: 0,
    heldCount: 0,
    ...open,
  };
};

describe("recordCard", () => {
  it("says of one promise how early it was kept", () => {
    const text = cardText(recordCard(factsOf({ "Saltpan Open": [-4] })));
    expect(text).toContain("Promises: 1 of 1 kept\nSaltpan Open: 4 minutes early\nBy 1 promise the share may be ");
    expect(text).not.toContain("Missed");
  });

  it("names the worst misses and counts the rest", () => {
    const text = cardText(recordCard(factsOf({ "Saltpan Open": [-4, 12, 1, 3, 7] })));
    expect(text).toContain("Promises: 1 of 5 kept");
    expect(text).toContain("half of them 3 minutes late or more");
    expect(text).toContain("Missed: 42 by 12 minutes, 45 by 7 minutes, 44 by 3 minutes, and 1 less");
  });

  it("keeps weeks apart, and says to the minute", () => {
    const text = cardText(recordCard(factsOf({ "Saltpan Open": [0], "Fogbell Trophy": [-2, -1] })));
    expect(text).toContain("Saltpan Open: 1 of 1 kept, to the minute");
    expect(text).toContain("Fogbell Trophy: 2 of 2 kept, half of them 2 minutes early or more");
    expect(text).toContain("Promises: 3 of 3 kept");
  });

  it("tells what is not counted yet", () => {
    const text = cardText(recordCard(factsOf({}, { openCount: 2, overdueCount: 1, heldCount: 1 })));
    expect(text).toBe("No promise has come due yet\nNot counted yet: 2 open, 1 past its promise; 1 held or without its club");
  });
});
