import { performance } from "node:perf_hooks";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { MeasuredHead } from "../../core/buildSheet/parts.ts";
import type { HeadChoice } from "../../core/buildSheet/plan.ts";
import { attitudeOf } from "../../core/head/attitudeOf.ts";
import { degrees } from "../../core/quantity/units.ts";
import { allotHeads, NO_HEAD_LOSS } from "../../core/selection/allotHeads.ts";
import { chooseHeads } from "../../core/selection/chooseHeads.ts";
import type { HeadWanted } from "../../core/selection/headWanted.ts";
import { defaultSelectionTolerances as tolerances } from "../../core/selection/selectionTolerances.ts";
import { someHead, someSleeve, someTarget } from "../core/buildSheet/someParts.ts";

const ROUNDS = 9;
const LONG_ROUNDS = 3;
const MARKS = 12;

const generator = xoroshiro128plus(20270503);
/** A reading of a gauge, in tenths. */
const tenths = (from: number, to: number) => uniformInt(generator, from * 10, to * 10) / 10;

/** The answer of some work, and the median of its rounds in milliseconds, after one to warm up. */
function run<T>(work: () => T, rounds = ROUNDS): { readonly answer: T; readonly ms: number } {
  const answer = work();
  const times = Array.from({ length: rounds }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return { answer, ms: times.sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? Number.NaN };
}

const seconds = (ms: number) => `${(ms / 1000).toFixed(4)} s`;

function report(name: string, ours: number, plain: { readonly name: string; readonly ms: number }, agree: boolean): void {
  console.log(
    `${name}: ${seconds(ours)}, ${plain.name} ${seconds(plain.ms)}, ratio ${(plain.ms / ours).toFixed(2)}; ${agree ? "they agree" : "THEY DO NOT AGREE"}`,
  );
  if (!agree) {
    process.exitCode = 1;
  }
}

const inventedHead = (_: unknown, at: number): MeasuredHead =>
  someHead({
    serial: String(10_000 + at),
    soledLoftDeg: tenths(8, 11.5),
    soledFaceDeg: tenths(-1.5, 1.5),
    designLieDeg: tenths(57, 59),
    massG: tenths(194, 204),
  });

const sleeves = [1, 1.5, 2].map((tiltDeg) =>
  someSleeve({
    name: `Loft sleeve ${tiltDeg}`,
    tiltDeg,
    marks: Array.from({ length: MARKS }, (_, at) => ({ mark: at === 9 ? "standard" : `mark ${at}`, clockDeg: degrees((360 / MARKS) * at) })),
  }),
);

interface Wish {
  readonly squaredLoftDeg: number;
  readonly soledFaceDeg: number;
}

type Found = readonly [band: number, turned: number, misses: number, score: number];

const isBefore = (one: Found, other: Found) => {
  const at = one.findIndex((value, index) => Math.abs(value - (other[index] ?? 0)) > 1e-9);
  return at !== -1 && (one[at] ?? 0) < (other[at] ?? 0);
};

/** The best of every head at every mark of every sleeve, one after the other. */
function bestByTrying(heads: readonly MeasuredHead[], wish: Wish): Found {
  let best: Found = [Number.POSITIVE_INFINITY, 0, 0, 0];
  for (const head of heads) {
    for (const { tiltDeg, marks, standardMark } of sleeves) {
      for (const { mark, clockDeg } of marks) {
        const got = attitudeOf(head, { tiltDeg, clockDeg });
        const loft = (got.squaredLoftDeg - wish.squaredLoftDeg) / tolerances.squaredLoftDeg;
        const face = (got.soledFaceDeg - wish.soledFaceDeg) / tolerances.soledFaceDeg;
        const score = loft ** 2 + face ** 2;
        const misses = [loft, face].filter((off) => Math.abs(off) > 1 + 1e-9).length;
        const found: Found = [Math.floor(score / tolerances.scoreBand + 1e-9), Number(mark !== standardMark), misses, score];
        best = isBefore(found, best) ? found : best;
      }
    }
  }
  return best;
}

type Wanted = HeadWanted<number>;

/** What each club loses by each head, every head of the drawers at every club; the last columns are no head. */
function lossTable(wanted: readonly Wanted[]): readonly Float64Array[] {
  const columns = new Map<number, number>();
  for (const { choices } of wanted) {
    for (const { head } of choices) {
      columns.set(head.id, columns.get(head.id) ?? columns.size);
    }
  }
  return wanted.map(({ weight, choices }) => {
    const none = weight * NO_HEAD_LOSS;
    const row = new Float64Array(columns.size + wanted.length).fill(none);
    for (const { head, score } of choices) {
      const at = columns.get(head.id) ?? -1;
      row[at] = row[at] === none ? weight * score : (row[at] ?? none);
    }
    return row;
  });
}

/** The least loss found by giving each club every head in turn. */
function leastByTrying(table: readonly Float64Array[], club: number, taken: ReadonlySet<number>): number {
  const row = table[club];
  return row === undefined
    ? 0
    : row.reduce(
        (least, loss, at) =>
          taken.has(at) || loss >= least ? least : Math.min(least, loss + leastByTrying(table, club + 1, new Set([...taken, at]))),
        Number.POSITIVE_INFINITY,
      );
}

/** Where the shortest way from a club that waits to a free column leads, and what every column costs to reach. */
function shortestWay(table: readonly Float64Array[], holders: Int32Array, prices: Float64Array, gains: Float64Array, club: number) {
  const reached = new Float64Array(prices.length).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(prices.length).fill(-1);
  const done: number[] = [];
  const isDone = new Uint8Array(prices.length);
  let [last, row, cost] = [-1, club, 0];
  for (;;) {
    let next = -1;
    for (let at = 0; at < prices.length; at += 1) {
      if (isDone[at] === 0) {
        const through = cost + (table[row]?.[at] ?? 0) - (gains[row] ?? 0) - (prices[at] ?? 0);
        if (through < (reached[at] ?? 0)) {
          reached[at] = through;
          from[at] = last;
        }
        next = next === -1 || (reached[at] ?? 0) < (reached[next] ?? 0) ? at : next;
      }
    }
    isDone[next] = 1;
    [last, row, cost] = [next, holders[next] ?? -1, reached[next] ?? 0];
    if (row === -1) {
      return { end: next, cost, reached, from, done };
    }
    done.push(next);
  }
}

/** The least loss by successive shortest ways with potentials, over every column. */
function leastByShortestWays(table: readonly Float64Array[]): number {
  const columns = table[0]?.length ?? 0;
  const holders = new Int32Array(columns).fill(-1);
  const prices = new Float64Array(columns);
  const gains = new Float64Array(table.length);
  for (let club = 0; club < table.length; club += 1) {
    const { end, cost, reached, from, done } = shortestWay(table, holders, prices, gains, club);
    gains[club] = (gains[club] ?? 0) + cost;
    for (const at of done) {
      const spared = cost - (reached[at] ?? 0);
      prices[at] = (prices[at] ?? 0) - spared;
      gains[holders[at] ?? -1] = (gains[holders[at] ?? -1] ?? 0) + spared;
    }
    for (let at = end; at !== -1; at = from[at] ?? -1) {
      const before = from[at] ?? -1;
      holders[at] = before === -1 ? club : (holders[before] ?? -1);
    }
  }
  return holders.reduce((sum, club, at) => sum + (table[club]?.[at] ?? 0), 0);
}

const isNear = (one: number, other: number) => Math.abs(one - other) <= 1e-7 + 1e-12 * Math.abs(other);

function wantedOf(count: number, heads: readonly MeasuredHead[]): readonly Wanted[] {
  return Array.from({ length: count }, (_, key) => {
    const wish = { squaredLoftDeg: 9 + 0.25 * uniformInt(generator, 0, 4), soledFaceDeg: 0.5 * uniformInt(generator, 0, 1) };
    const choices: readonly HeadChoice[] = chooseHeads({ target: someTarget(wish), heads, sleeves: sleeves.slice(0, 1), tolerances });
    return { key, weight: uniformInt(generator, 1, 5), choices };
  });
}

function rankingTimes(): void {
  const heads = Array.from({ length: 20_000 }, inventedHead);
  const wish = { squaredLoftDeg: 9.25, soledFaceDeg: 0.5 };
  const ours = run(() => chooseHeads({ target: someTarget(wish), heads, sleeves, tolerances }), LONG_ROUNDS);
  const plain = run(() => bestByTrying(heads, wish), LONG_ROUNDS);
  const first = ours.answer[0];
  const agree = first !== undefined && isNear(first.score, plain.answer[3]) && Number(first.mark !== "standard") === plain.answer[1];
  report(`20,000 heads, 3 sleeves, ${MARKS} marks, all ranked`, ours.ms, { name: "plain loop for the best only", ms: plain.ms }, agree);
}

function smallAllotments(): void {
  const cases = Array.from({ length: 20 }, () => wantedOf(6, Array.from({ length: 9 }, inventedHead)));
  const ours = run(() => cases.map((wanted) => allotHeads(wanted).loss));
  const plain = run(() => cases.map((wanted) => leastByTrying(lossTable(wanted), 0, new Set())));
  const agree = ours.answer.every((loss, at) => isNear(loss, plain.answer[at] ?? Number.NaN));
  report(`${cases.length} times 6 orders over 9 heads`, ours.ms, { name: "every allotment tried", ms: plain.ms }, agree);
}

function largeAllotment(): void {
  const wanted = wantedOf(40, Array.from({ length: 2000 }, inventedHead));
  const ours = run(() => allotHeads(wanted).loss);
  const plain = run(() => leastByShortestWays(lossTable(wanted)));
  const choices = wanted.reduce((sum, one) => sum + one.choices.length, 0).toLocaleString("en");
  const name = "plain shortest ways over all heads";
  report(`40 orders over 2,000 heads, ${choices} choices read`, ours.ms, { name, ms: plain.ms }, isNear(ours.answer, plain.answer));
}

smallAllotments();
largeAllotment();
rankingTimes();
