import { pointsOfMass } from "../club/massAtPosition.ts";
import { grams, type Millimetres } from "../quantity/units.ts";
import type { StockedWeight, WeightAims, WeightDeviation, WeightPlace, WeightQuestion } from "./weightQuestion.ts";

/** What something adds to a head and to the club. All of it simply adds up. */
export interface WeightLoad {
  readonly headMassG: number;
  readonly points: number;
  readonly backGramMm: number;
  readonly toeGramMm: number;
}

export const noLoad: WeightLoad = { headMassG: 0, points: 0, backGramMm: 0, toeGramMm: 0 };

export const loadAt = (place: WeightPlace, massG: number): WeightLoad => ({
  headMassG: massG,
  points: pointsOfMass(grams(massG), place.fromCapMm),
  backGramMm: massG * place.backMm,
  toeGramMm: massG * place.toeMm,
});

/** In the shaft: the head does not get heavier. */
export const tipLoad = (fromCapMm: Millimetres, massG: number): WeightLoad => ({ ...noLoad, points: pointsOfMass(grams(massG), fromCapMm) });

export const loadSum = (one: WeightLoad, other: WeightLoad): WeightLoad => ({
  headMassG: one.headMassG + other.headMassG,
  points: one.points + other.points,
  backGramMm: one.backGramMm + other.backGramMm,
  toeGramMm: one.toeGramMm + other.toeGramMm,
});

type Head = WeightQuestion<StockedWeight>["head"];

/** What the gauge says of the head and the club with a load on. */
export const reading = {
  swingWeightPoints: (head: Head, load: WeightLoad) => (head.swingWeightPoints ?? 0) + load.points,
  headMassG: (head: Head, load: WeightLoad) => head.massG + load.headMassG,
  centreBackMm: (head: Head, load: WeightLoad) => load.backGramMm / (head.massG + load.headMassG),
  centreToeMm: (head: Head, load: WeightLoad) => load.toeGramMm / (head.massG + load.headMassG),
};

const quantities = Object.keys(reading) as readonly (keyof WeightAims)[];

/** How far the loaded head is from each aim. */
export function weightDeviations({ head, aims }: WeightQuestion<StockedWeight>, load: WeightLoad): readonly WeightDeviation[] {
  return quantities.flatMap((quantity) => {
    const aim = aims[quantity];
    return aim === undefined ? [] : [{ quantity, wanted: aim.wanted, got: reading[quantity](head, load), tolerance: aim.tolerance }];
  });
}

export const isMissed = ({ wanted, got, tolerance }: WeightDeviation): boolean => Math.abs(got - wanted) > tolerance + 1e-9;

/** How near a loaded head comes: Σ (miss/tolerance)², and whether every aim is within its tolerance. */
export function weightGauge(question: WeightQuestion<StockedWeight>): (load: WeightLoad) => { readonly reached: boolean; readonly miss: number } {
  const { head } = question;
  const aims = weightDeviations(question, noLoad).map((aim) => ({ ...aim, read: reading[aim.quantity], unit: Math.max(aim.tolerance, 1e-3) }));
  return (load) => {
    let reached = true;
    let miss = 0;
    for (const { wanted, tolerance, read, unit } of aims) {
      const off = read(head, load) - wanted;
      reached &&= Math.abs(off) <= tolerance + 1e-9;
      miss += (off / unit) ** 2;
    }
    return { reached, miss };
  };
}

/** Exactly what is wished; or either edge of what is tolerated. */
export const targetShares = { exact: [0], edges: [-1, 1] } as const;

/**
 * The masses at a place that bring one aim or another to its target; not finite where none does.
 *
 *     m = (w − got) / (gain a gram)     centre of mass: m = (w·M − Σ mᵢ·dᵢ) / (d − w)     w = wanted + share · tolerance
 */
export function massesThatHit(
  { head, aims }: WeightQuestion<StockedWeight>,
  place: WeightPlace,
  shares: readonly number[],
): readonly ((load: WeightLoad) => number)[] {
  const pointsAGram = pointsOfMass(grams(1), place.fromCapMm);
  const massFor: Readonly<Record<keyof WeightAims, (wanted: number, load: WeightLoad) => number>> = {
    swingWeightPoints: (wanted, load) => (wanted - reading.swingWeightPoints(head, load)) / pointsAGram,
    headMassG: (wanted, load) => wanted - reading.headMassG(head, load),
    centreBackMm: (wanted, load) => (wanted * reading.headMassG(head, load) - load.backGramMm) / (place.backMm - wanted),
    centreToeMm: (wanted, load) => (wanted * reading.headMassG(head, load) - load.toeGramMm) / (place.toeMm - wanted),
  };
  return quantities.flatMap((quantity) => {
    const aim = aims[quantity];
    return aim === undefined ? [] : shares.map((share) => (load: WeightLoad) => massFor[quantity](aim.wanted + share * aim.tolerance, load));
  });
}
