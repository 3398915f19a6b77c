import { DomainError } from "../errors.ts";
import { millimetres } from "../quantity/units.ts";
import { loadAt, loadSum, massesThatHit, noLoad, targetShares, tipLoad, type WeightLoad } from "./weightLoads.ts";
import type { StockedWeight, WeightPlace, WeightQuestion } from "./weightQuestion.ts";
import { type WeightSet, weightSets, weightsOfSet } from "./weightSets.ts";

export interface Dose {
  readonly place: WeightPlace;
  readonly massG: number;
}

/** One way to do it. */
export interface WeightWay<W> {
  readonly set: WeightSet;
  readonly melt: Dose | null;
  readonly tip: W | null;
  readonly lead: Dose | null;
  readonly load: WeightLoad;
}

const LEAST_LEAD_G = 1e-9;
/** Ports times melt times tip weights: more would keep everybody waiting for seconds. */
const MOST_WAYS = 500_000;

/** No melt, then every dose at every place. */
function meltDoses({ melt }: WeightQuestion<StockedWeight>): readonly (Dose | null)[] {
  if (melt === undefined) {
    return [null];
  }
  const steps = Array.from({ length: Math.floor(melt.mostG / melt.stepG + 1e-9) }, (_, step) => (step + 1) * melt.stepG);
  return [null, ...melt.places.flatMap((place) => steps.map((massG) => ({ place, massG })))];
}

/** No tip weight, then one of every mass, the player's own first. */
function tipWeights<W extends StockedWeight>({ tip }: WeightQuestion<W>): readonly (W | null)[] {
  if (tip === undefined) {
    return [null];
  }
  const light = tip.stock.filter(({ massG }) => massG <= tip.mostG);
  const place = { name: "tip", fromCapMm: tip.fromCapMm, backMm: millimetres(0), toeMm: millimetres(0) };
  return weightSets(light, [place]).map((set) => weightsOfSet(set, light)[0] ?? null);
}

/** So much lead at one place as a load calls for. */
interface LeadTrial {
  readonly place: WeightPlace;
  readonly massOn: (load: WeightLoad) => number;
}

/** Lead in one place: as much as brings one of the aims to a target, or as much as may go on. */
function leadTrials(question: WeightQuestion<StockedWeight>, shares: readonly number[]): readonly LeadTrial[] {
  const { places, mostG } = question.lead ?? { places: [], mostG: 0 };
  return places.flatMap((place) => [...massesThatHit(question, place, shares), () => mostG].map((massOn) => ({ place, massOn })));
}

/**
 * Every way, in stages: screws alone, with melt, with a tip weight, with lead (to a target, then to the edge
 * of a tolerance, where only that meets two wishes), each without what the stages before have tried.
 */
export function weightStages<W extends StockedWeight>(question: WeightQuestion<W>): readonly (() => Generator<WeightWay<W>>)[] {
  const { screws, ports, tip: shaftTip } = question;
  const loads = ports.map((port) => new Map([0, ...screws.map(({ massG }) => massG)].map((massG) => [massG, loadAt(port, massG)])));
  const sets = weightSets(screws, ports).map((set) => ({
    set,
    load: set.massesG.reduce((sum, massG, at) => loadSum(sum, loads[at]?.get(massG) ?? noLoad), noLoad),
  }));
  const mostLeadG = question.lead?.mostG ?? 0;
  const [melts, tips] = [meltDoses(question), tipWeights(question)];
  const count = sets.length * melts.length * tips.length;
  if (count > MOST_WAYS) {
    throw new DomainError("list-of-wrong-size", { field: "waysToTry", count, min: 1, max: MOST_WAYS });
  }
  function* waysWith(
    meltsTried: readonly (Dose | null)[],
    tipsTried: readonly (W | null)[],
    trials: readonly LeadTrial[] | null,
  ): Generator<WeightWay<W>> {
    for (const melt of meltsTried) {
      for (const tip of tipsTried) {
        const meltLoad = melt === null ? noLoad : loadAt(melt.place, melt.massG);
        const extra = tip === null || shaftTip === undefined ? meltLoad : loadSum(meltLoad, tipLoad(shaftTip.fromCapMm, tip.massG));
        for (const { set, load: setLoad } of sets) {
          const load = loadSum(setLoad, extra);
          if (trials === null) {
            yield { set, melt, tip, lead: null, load };
            continue;
          }
          for (const { place, massOn } of trials) {
            const massG = massOn(load);
            if (massG > LEAST_LEAD_G && massG <= mostLeadG) {
              yield { set, melt, tip, lead: { place, massG }, load: loadSum(load, loadAt(place, massG)) };
            }
          }
        }
      }
    }
  }
  return [
    () => waysWith([null], [null], null),
    () => waysWith(melts.slice(1), [null], null),
    () => waysWith(melts, tips.slice(1), null),
    () => waysWith(melts, tips, leadTrials(question, targetShares.exact)),
    () => waysWith(melts, tips, leadTrials(question, targetShares.edges)),
  ];
}
