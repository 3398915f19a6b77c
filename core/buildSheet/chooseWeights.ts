import type { Stocked, WeightModel } from "./parts.ts";

/** So many of one weight from one place. */
interface ChosenWeight {
  readonly model: WeightModel;
  readonly placeId: Stocked<WeightModel>["placeId"];
  readonly count: number;
}

/** Removable weights that go on together. */
export interface WeightSet {
  readonly massG: number;
  readonly weights: readonly ChosenWeight[];
}

/** Past so many kinds in stock the lightest-first list is cut, so that the work stays bounded. */
const MOST_KINDS = 40;

const count = (set: WeightSet) => set.weights.reduce((total, weight) => total + weight.count, 0);

const stockOrder = (one: Stocked<WeightModel>, other: Stocked<WeightModel>) =>
  Number(other.inPlayersBin) - Number(one.inPlayersBin) ||
  one.model.massG - other.model.massG ||
  one.model.id - other.model.id ||
  one.placeId - other.placeId;

/** Every set of weights in stock that the ports of a head take, the empty one first, fewest parts first. */
export function weightSets(stock: readonly Stocked<WeightModel>[], ports: number): readonly WeightSet[] {
  const kinds = stock
    .filter(({ free }) => free > 0)
    .sort(stockOrder)
    .slice(0, MOST_KINDS);
  const sets = kinds.reduce<readonly WeightSet[]>(
    (found, { model, placeId, free }) =>
      found.flatMap((set) =>
        Array.from({ length: Math.min(free, ports - count(set)) + 1 }, (_, taken) =>
          taken === 0 ? set : { massG: set.massG + taken * model.massG, weights: [...set.weights, { model, placeId, count: taken }] },
        ),
      ),
    [{ massG: 0, weights: [] }],
  );
  return [...sets].sort((one, other) => count(one) - count(other));
}

/**
 * The set that brings a head to its mass: the fewest parts that come within the tolerance, and of those the nearest.
 * When none does, the heaviest that is not too heavy, since lead can make up what is left over.
 *
 * @param sets - fewest parts first
 * @param missingG - what the bare head lacks, in g; negative when it is too heavy
 * @param toleranceG - how near is near enough, in g
 * @returns the set; the empty one when nothing comes nearer
 */
export function chooseWeights(sets: readonly WeightSet[], missingG: number, toleranceG: number): WeightSet {
  const offG = (set: WeightSet) => Math.abs(set.massG - missingG);
  const fewest = sets.find((set) => offG(set) <= toleranceG + 1e-9);
  const eligible = sets.filter((set) => (fewest === undefined ? set.massG <= missingG : count(set) === count(fewest)));
  return eligible.reduce<WeightSet>((best, set) => (offG(set) < offG(best) - 1e-9 ? set : best), fewest ?? { massG: 0, weights: [] });
}
