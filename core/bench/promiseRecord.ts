import type { Instant } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type ShareInterval, wilsonInterval } from "./wilsonInterval.ts";

/** What was said of an order, and when the club was in hand. */
export interface PromiseKept {
  readonly promiseAt: Instant;
  /** The time met half the time, where one was said. */
  readonly likelyAt: Instant | null;
  readonly inHandAt: Instant;
}

export interface PromiseRecord<Row extends PromiseKept = PromiseKept> {
  readonly count: number;
  /** In hand by the minute of the promise. */
  readonly keptCount: number;
  /** Share kept, and the 90 % interval of it; null without a promise that came due. */
  readonly coverage: number | null;
  readonly coverageInterval: ShareInterval | null;
  /** Minutes in hand before the promise, below 0 after it: what a tenth, half and nine tenths of them do not exceed. */
  readonly earlyMin: { readonly tenth: number; readonly median: number; readonly nineTenths: number } | null;
  /** Mean pinball loss in minutes of the likely times at 0.5 and of the promises at 0.9: the smaller, the sharper. */
  readonly likelyLossMin: number | null;
  readonly promiseLossMin: number | null;
  /** Promises missed, the furthest first. */
  readonly misses: readonly { readonly row: Row; readonly lateMin: number }[];
}

const MS_PER_MIN = 60_000;
const CONFIDENCE = 0.9;
const MOST_ROWS = 100_000;

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** Loss of a forecast quantile: short of what came it costs `share` a minute, past it the rest. */
const pinball = (lateMin: number, share: number): number => Math.max(share * lateMin, (share - 1) * lateMin);

/** Linear between the two neighbours in order. */
function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const [low = 0, high = low] = [sorted[Math.floor(at)], sorted[Math.ceil(at)]];
  return low + (at - Math.floor(at)) * (high - low);
}

function checked(row: PromiseKept): void {
  for (const [field, at] of Object.entries({ promiseAt: row.promiseAt, inHandAt: row.inHandAt, likelyAt: row.likelyAt })) {
    if (at !== null) inRange(at, { field, unit: "epoch-ms", min: 0, max: Number.MAX_SAFE_INTEGER });
  }
}

/**
 * Promised against kept: how often a club was in hand by its promise, how early, and how far the misses were.
 *
 *     coverage = kept / all;   loss of a quantile q at share τ: max( τ·(t − q), (τ − 1)·(t − q) )
 *
 * A promise is meant to be met nine times in ten. Its interval is Wilson's at 90 %. Quantiles are linear between neighbours in order.
 *
 * @param rows - promises that came due, times in epoch ms; further fields of a row come back with its miss
 * @returns counts, shares of 1, minutes
 * @throws {DomainError} `quantity-out-of-range` when a time is not finite or before 1970
 * @see fixtures/published/scoreIntervals.json
 */
export function promiseRecord<Row extends PromiseKept>(rows: readonly Row[]): PromiseRecord<Row> {
  listOf(rows, { field: "rows", min: 0, max: MOST_ROWS }).forEach(checked);
  const late = rows.map((row) => ({ row, lateMin: (row.inHandAt - row.promiseAt) / MS_PER_MIN }));
  const misses = late.filter(({ lateMin }) => lateMin > 0).toSorted((a, b) => b.lateMin - a.lateMin);
  const early = late.map(({ lateMin }) => 0 - lateMin).toSorted((a, b) => a - b);
  const keptCount = rows.length - misses.length;
  const likely = rows.flatMap(({ likelyAt, inHandAt }) => (likelyAt === null ? [] : [(inHandAt - likelyAt) / MS_PER_MIN]));
  return {
    count: rows.length,
    keptCount,
    coverage: rows.length === 0 ? null : keptCount / rows.length,
    coverageInterval: rows.length === 0 ? null : wilsonInterval(keptCount, rows.length, CONFIDENCE),
    earlyMin: rows.length === 0 ? null : { tenth: quantile(early, 0.1), median: quantile(early, 0.5), nineTenths: quantile(early, 0.9) },
    likelyLossMin: mean(likely.map((lateMin) => pinball(lateMin, 0.5))),
    promiseLossMin: mean(late.map(({ lateMin }) => pinball(lateMin, 0.9))),
    misses,
  };
}
