import fc from "fast-check";
import { type Id, id } from "../../../core/kinds.ts";
import { NO_HEAD_LOSS } from "../../../core/selection/allotHeads.ts";
import type { HeadsAllotted, HeadWanted } from "../../../core/selection/headWanted.ts";

/** A choice as short as an allotment allows, with a mark to tell two settings of one head apart. */
export interface Choice {
  readonly head: { readonly id: Id<"head"> };
  readonly score: number;
  readonly mark: string;
}

export type Wanted = HeadWanted<string, Choice>;

export const choice = (head: number, score: number, mark = "standard"): Choice => ({ head: { id: id(head) }, score, mark });

/** A club by its name, its weight and its heads, each with its score, best first. */
export const club = (key: string, weight: number, ...heads: readonly (readonly [number, number])[]): Wanted => ({
  key,
  weight,
  choices: heads.map(([head, score]) => choice(head, score)),
});

export const holding = (wanted: Wanted, head: number, score: number): Wanted => ({ ...wanted, held: { headId: id(head), score } });

/** What each club got, as `club head`. */
export const given = ({ allotted }: HeadsAllotted<string, Choice>): readonly string[] =>
  allotted.map(({ key, choice: got }) => `${key} ${got?.head.id ?? "none"}`);

/** The sums an allotment is judged by, the first before the second: clubs that lost a held head, loss, clubs moved, ranks. */
export interface Sums {
  readonly robbed: number;
  readonly loss: number;
  readonly moved: number;
  readonly ranks: number;
}

const isLess = (one: Sums, other: Sums): boolean => {
  const at = (["robbed", "loss", "moved", "ranks"] as const).find((sum) => one[sum] !== other[sum]);
  return at !== undefined && one[at] < other[at];
};

/** What an allotment of whole-number scores comes to, a club that gets none counting as a rank of a million. */
export function sumsOf(wanted: readonly Wanted[], heads: readonly (number | null)[]): Sums {
  return wanted.reduce(
    (sums, { weight, choices, held }, at) => {
      const head = heads[at] ?? null;
      const rank = choices.findIndex((one) => one.head.id === head);
      const score = choices[rank]?.score ?? NO_HEAD_LOSS;
      return {
        robbed: sums.robbed + Number(held != null && head === null),
        loss: sums.loss + weight * (head === held?.headId ? Math.min(score, held.score) : score),
        moved: sums.moved + Number(held != null && head !== held.headId),
        ranks: sums.ranks + (head === null ? 1_000_000 : rank),
      };
    },
    { robbed: 0, loss: 0, moved: 0, ranks: 0 },
  );
}

const mayGet = ({ held }: Wanted, { head, score }: Choice) => held == null || head.id === held.headId || score <= held.score;

/** The least sums of all, found by trying every way to give each club one head or none. */
export function leastSums(wanted: readonly Wanted[]): Sums {
  const tried = (heads: readonly (number | null)[]): Sums => {
    const next = wanted[heads.length];
    if (next === undefined) {
      return sumsOf(wanted, heads);
    }
    const free = next.choices.filter((one) => mayGet(next, one) && !heads.includes(one.head.id));
    return free.map((one) => tried([...heads, one.head.id])).reduce((best, sums) => (isLess(sums, best) ? sums : best), tried([...heads, null]));
  };
  return tried([]);
}

/** The least loss of clubs that hold nothing, club by club over every set of heads that may be gone. */
export function leastLossBySets(wanted: readonly Wanted[]): number {
  const costs = wanted.reduce(
    (byGone, { weight, choices }) => {
      const next = new Map(Array.from(byGone, ([gone, loss]) => [gone, loss + weight * NO_HEAD_LOSS]));
      for (const [gone, loss] of byGone) {
        for (const { head, score } of choices) {
          const then = gone | (1 << head.id);
          if (then !== gone) {
            next.set(then, Math.min(next.get(then) ?? Number.POSITIVE_INFINITY, loss + weight * score));
          }
        }
      }
      return next;
    },
    new Map([[0, 0]]),
  );
  return Math.min(...costs.values());
}

interface Size {
  readonly clubs: number;
  readonly heads: number;
  readonly score: fc.Arbitrary<number>;
  /** Whether some clubs hold a head. */
  readonly held?: boolean;
}

/** Clubs with some of the heads each in a random order of preference, as a ranking by more than the score gives it. */
export function someWanted({ clubs, heads, score, held = false }: Size): fc.Arbitrary<readonly Wanted[]> {
  const headIds = Array.from({ length: heads }, (_, at) => at + 1);
  const one = fc.record({
    weight: fc.integer({ min: 1, max: 4 }),
    heads: fc.shuffledSubarray(headIds),
    scores: fc.array(score, { minLength: heads, maxLength: heads }),
    holds: fc.boolean(),
  });
  return fc.tuple(fc.array(one, { minLength: 1, maxLength: clubs }), fc.shuffledSubarray(headIds, { minLength: heads })).map(([list, shuffled]) =>
    list.map(({ weight, heads: wanted, scores, holds }, at) => {
      const ranked = club(String.fromCharCode(65 + at), weight, ...wanted.map((head, rank) => [head, scores[rank] ?? 0] as const));
      const own = ranked.choices.find(({ head }) => head.id === shuffled[at]);
      return held && holds && own !== undefined ? holding(ranked, own.head.id, own.score) : ranked;
    }),
  );
}
