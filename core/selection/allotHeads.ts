import { munkres } from "munkres";
import type { HeadChoice } from "../buildSheet/plan.ts";
import { listOf } from "../quantity/listOf.ts";
import { type HeadInReach, headsInReach, inLossUnits } from "./headsInReach.ts";
import type { HeadsAllotted, HeadWanted, ScoredHead } from "./headWanted.ts";
import { headsThatMatter, rivalClubs } from "./rivalClubs.ts";

/** What a club without a head costs, as a score: a thousand times the furthest head. */
export const NO_HEAD_LOSS = 1e9;

const MOST_CLUBS = 1000;
const MOST_CHOICES = 1_000_000;
/** More than any of the numbers below comes to, summed over all clubs. */
const DIGIT = 1n << 96n;

interface Club<C> {
  readonly at: number;
  readonly headIds: readonly number[];
  readonly inReach: readonly HeadInReach<C>[];
  /** Its costs of each of these heads, and of none. */
  readonly costs: ReadonlyMap<number, bigint>;
  readonly costOfNone: bigint;
}

/** One whole number that compares as the numbers do, the first before the second and so on; its sums do too. */
const asOne = (digits: readonly number[]): bigint => digits.reduce((sum, digit) => sum * DIGIT + BigInt(digit), 0n);

function clubOf<K, C extends ScoredHead>(wanted: HeadWanted<K, C>, at: number, count: number): Club<C> {
  listOf(wanted.choices, { field: "choices", min: 0, max: MOST_CHOICES });
  const inReach = headsInReach(wanted, count);
  const isHeld = Number((wanted.held ?? null) !== null);
  const cost = (isLeft: number, loss: number, isMoved: number, rank: number) =>
    asOne([isLeft, inLossUnits(loss), isMoved, rank, rank * (count - at)]);
  return {
    at,
    headIds: inReach.map(({ choice }) => choice.head.id),
    inReach,
    costs: new Map(inReach.map(({ choice, loss, moved, rank }) => [choice.head.id, cost(0, loss, Number(moved), rank)])),
    costOfNone: cost(isHeld, wanted.weight * NO_HEAD_LOSS, isHeld, MOST_CHOICES),
  };
}

/**
 * What each club of a group gets. A head that a club may not get costs it what none does: whoever ends there is without,
 * and has taken it from nobody, as every club has a column to end in.
 */
function allottedIn<C extends ScoredHead>(group: readonly Club<C>[]): readonly (readonly [number, HeadInReach<C> | null])[] {
  const heads = [...headsThatMatter(group)];
  const columns: readonly (number | undefined)[] = Array.from({ length: Math.max(heads.length, group.length) }, (_, at) => heads[at]);
  const costs = group.map((club) => columns.map((headId) => (headId === undefined ? undefined : club.costs.get(headId)) ?? club.costOfNone));
  const columnOf = new Map(munkres(costs));
  return group.map(({ at, inReach }, row) => {
    const headId = columns[columnOf.get(row) ?? -1];
    return [at, inReach.find(({ choice }) => choice.head.id === headId) ?? null];
  });
}

/**
 * The heads for all open clubs together: each head goes to one club at most, at the least total loss.
 *
 *     loss = Σ weight · score, with NO_HEAD_LOSS for the score of a club that gets none
 *
 * An assignment problem, solved exactly on losses rounded to 1e-9, so that the total is the least to 1e-9 a club. As
 * many clubs as can be get a head, and where not all do the heaviest, as long as Σ weight · score over all clubs stays
 * below NO_HEAD_LOSS times the least weight: 40 clubs with weights from 1 to 100 and scores up to 250,000, 500
 * tolerances off.
 *
 * A club that holds a head of a confirmed sheet gets one whose score is no higher than the one held, to 1e-9, and before
 * any other club is served; its own, when among the choices, it may always keep, at the score held if that is the
 * lower. It gets none only when its own is not among its choices or is held by another club too.
 *
 * Among equal losses most clubs keep the head they hold, then the ranks add up to the least, then the earlier club in
 * the list has the better rank. The order of the clubs changes none of these sums, and nothing at all where only one
 * allotment has the least loss; that of the stock changes nothing, as it does not change the choices.
 *
 * @param wanted - at most 1,000 clubs; weights from 0.001 to 1000, scores from 0 to a million, no unit
 * @returns what each club gets, in the order of the list, and the total loss, no unit
 * @throws {DomainError} `quantity-out-of-range` when a weight or a score is impossible
 * @throws {DomainError} `list-of-wrong-size` past 1,000 clubs, or 1,000,000 choices of one
 */
export function allotHeads<K, C extends ScoredHead = HeadChoice>(wanted: readonly HeadWanted<K, C>[]): HeadsAllotted<K, C> {
  listOf(wanted, { field: "wanted", min: 0, max: MOST_CLUBS });
  const clubs = wanted.map((club, at) => clubOf(club, at, wanted.length));
  const heads = new Map(rivalClubs(clubs).flatMap(allottedIn));
  const loss = wanted.reduce((sum, { weight }, at) => sum + (heads.get(at)?.loss ?? weight * NO_HEAD_LOSS), 0);
  const allotted = wanted.map(({ key }, at) => ({ key, choice: heads.get(at)?.choice ?? null, rank: heads.get(at)?.rank ?? null }));
  return { allotted, loss };
}
