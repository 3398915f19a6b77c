import { inRange } from "../quantity/inRange.ts";
import type { HeadWanted, ScoredHead } from "./headWanted.ts";

/** A head that a club may get. */
export interface HeadInReach<C> {
  readonly choice: C;
  readonly rank: number;
  readonly loss: number;
  readonly moved: boolean;
}

/** Losses nearer to each other than half of it are one. */
const LOSS_UNIT = 1e-9;
/** A head is no further off than the one held, roundings aside. */
const ROUNDING = 1e-9;
const SCORE = { field: "score", unit: "", min: 0, max: 1e6 };
const WEIGHT = { field: "weight", unit: "", min: 1e-3, max: 1e3 };

/** A loss as a whole number, so that sums are exact and equal ones are the same. */
export const inLossUnits = (loss: number): number => Math.round(loss / LOSS_UNIT);

/** Each head once, at its first setting that is near, or else at its first of all. */
function firstSettings<C extends ScoredHead>(choices: readonly C[], isNear: (choice: C) => boolean) {
  const first = new Map<number, { readonly choice: C; readonly rank: number }>();
  for (const choice of choices) {
    inRange(choice.score, SCORE);
    const known = first.get(choice.head.id);
    if (known === undefined || (!isNear(known.choice) && isNear(choice))) {
      first.set(choice.head.id, { choice, rank: known?.rank ?? first.size });
    }
  }
  return [...first.values()];
}

/** The highest of the so many lowest numbers; past every number when there are fewer. */
const highestOfLowest = (most: number, numbers: readonly number[]) => Float64Array.from(numbers).sort()[most - 1] ?? Number.POSITIVE_INFINITY;

/** The best so many heads a club may get, each once, the one it would rather have first. */
export function headsInReach<K, C extends ScoredHead>({ weight, choices, held = null }: HeadWanted<K, C>, most: number): readonly HeadInReach<C>[] {
  inRange(weight, WEIGHT);
  const limit = held === null ? SCORE.max : inRange(held.score, { ...SCORE, field: "held.score" }) + ROUNDING;
  const isNear = (choice: C) => choice.score <= limit;
  const isHeld = (choice: C) => choice.head.id === held?.headId;
  /** Only the head held may be past the limit: it is kept as it was. */
  const lossOf = (choice: C) => weight * (held === null || isNear(choice) ? choice.score : held.score);
  const inReach = firstSettings(choices, isNear).filter(({ choice }) => isNear(choice) || isHeld(choice));
  const losses = inReach.map(({ choice }) => lossOf(choice));
  const highest = inLossUnits(highestOfLowest(most, losses));
  return inReach
    .filter(({ choice }) => inLossUnits(lossOf(choice)) <= highest)
    .map(({ choice, rank }) => ({ choice, rank, loss: lossOf(choice), moved: held !== null && !isHeld(choice) }))
    .sort((one, other) => inLossUnits(one.loss) - inLossUnits(other.loss) || Number(one.moved) - Number(other.moved) || one.rank - other.rank)
    .slice(0, most);
}
