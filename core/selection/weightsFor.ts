import { grams, millimetres, swingWeightPoints } from "../quantity/units.ts";
import { checkWeightQuestion } from "./weightChecks.ts";
import { isMissed, noLoad, reading, weightDeviations, weightGauge } from "./weightLoads.ts";
import type { StockedWeight, WeightAnswer, WeightPlan, WeightQuestion } from "./weightQuestion.ts";
import { weightsOfSet } from "./weightSets.ts";
import { type Dose, type WeightWay, weightStages } from "./weightWays.ts";

/** A way with its rank: the numbers are compared one after the other, lower is better. */
interface RankedWay<W> {
  readonly way: WeightWay<W>;
  readonly rank: readonly number[];
}

const isReached = ({ rank }: RankedWay<unknown>) => rank[0] === 0;

/** Differences below a microgram are roundings. */
const rounded = (value: number) => Math.round(value * 1e6);

function comesBefore(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, index) => value !== other[index]);
  return (one[at] ?? 0) < (other[at] ?? 0);
}

type Gauged = ReturnType<ReturnType<typeof weightGauge>>;

/** Those that reach come first, then the order of the bench, or the smallest miss. */
function ranked<W extends StockedWeight>(way: WeightWay<W>, { reached, miss }: Gauged): RankedWay<W> {
  const { set, melt, tip, lead } = way;
  const parts = set.count + Number(melt !== null) + Number(tip !== null) + Number(lead !== null);
  const means = [rounded(lead?.massG ?? 0), rounded(tip?.massG ?? 0), rounded(melt?.massG ?? 0), parts];
  return { way, rank: reached ? [0, ...means, rounded(miss), set.fromElsewhere] : [1, rounded(miss), ...means, set.fromElsewhere] };
}

/** The best of these ways and the one found before. */
function bestOf<W extends StockedWeight>(ways: Iterable<WeightWay<W>>, gauge: ReturnType<typeof weightGauge>, before: RankedWay<W>): RankedWay<W> {
  let best = before;
  for (const way of ways) {
    const gauged = gauge(way.load);
    const hopeless = !gauged.reached && (isReached(best) || rounded(gauged.miss) > (best.rank[1] ?? 0));
    const next = hopeless ? best : ranked(way, gauged);
    best = comesBefore(next.rank, best.rank) ? next : best;
  }
  return best;
}

/** Nothing added: what every search starts from. */
const bareHead = { set: { massesG: [], massG: 0, count: 0, fromElsewhere: 0 }, melt: null, tip: null, lead: null, load: noLoad };

function planOf<W extends StockedWeight>(question: WeightQuestion<W>, { set, melt, tip, lead, load }: WeightWay<W>): WeightPlan<W> {
  const { head, ports } = question;
  const named = (dose: Dose | null) => (dose === null ? null : { place: dose.place.name, massG: grams(dose.massG) });
  return {
    screws: weightsOfSet(set, question.screws).flatMap((weight, at) => (weight === null ? [] : [{ port: ports[at]?.name ?? "", weight }])),
    melt: named(melt),
    tip,
    lead: named(lead),
    headMassG: grams(reading.headMassG(head, load)),
    swingWeightPoints: head.swingWeightPoints === undefined ? null : swingWeightPoints(reading.swingWeightPoints(head, load)),
    centreBackMm: millimetres(reading.centreBackMm(head, load)),
    centreToeMm: millimetres(reading.centreToeMm(head, load)),
    deviations: weightDeviations(question, load),
  };
}

/**
 * The weights in stock that bring a head to what is wished of it: swing weight, mass, centre of mass.
 *
 *     M' = M + Σ m     p' = p + Σ m·(x − 14 in)/49.6117 g·in     shift = Σ m·d / M'
 *
 * Everything is tried: screws over the ports, melt in steps, one tip weight, lead in one place. Among the ways that
 * come within every tolerance the one that needs least of what the bench does last wins: least lead, then the lightest
 * tip weight, then least melt; among equals the fewest parts, the nearest, the player's own bin. When no way reaches,
 * the one with the smallest Σ (miss/tolerance)² of those tried. Lead is tried as the mass that meets one wish exactly,
 * then at the edges of the tolerances, then all there may be: whether the wishes can be met is exact, the nearest miss
 * of several wishes with lead may be a little nearer. Length and grip are never touched. Point masses; a screw's
 * printed mass is off by up to 0.2 g, its place by 1 mm (common practice, no source).
 *
 * @param question - masses in g, places in mm, swing weight in points (D0 = 0)
 * @returns what goes where with head mass, swing weight and shift of the centre of mass; and what is missed, if anything
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the swing weight to start from is missing
 * @throws {DomainError} `list-of-wrong-size` for more ports, places or masses than can be tried
 */
export function weightsFor<W extends StockedWeight>(question: WeightQuestion<W>): WeightAnswer<W> {
  checkWeightQuestion(question);
  const gauge = weightGauge(question);
  const best = weightStages(question).reduce<RankedWay<W>>(
    (found, ways) => (isReached(found) ? found : bestOf(ways(), gauge, found)),
    ranked<W>(bareHead, gauge(noLoad)),
  );
  const plan = planOf(question, best.way);
  return isReached(best) ? { kind: "reached", plan } : { kind: "nearest", plan, misses: plan.deviations.filter(isMissed) };
}
