import type { WeightSet } from "./weightSets.ts";

/** A mass that removable weights in stock can add, and the fewest of them that do. */
export interface AddableMass {
  readonly massG: number;
  readonly count: number;
}

/** The mass a head should have, and what removable weights may add to it. */
export interface MassWish {
  readonly wantedG: number;
  readonly addable: readonly AddableMass[];
  /** As near as this the fewest weights win; left out, the nearest mass does. */
  readonly toleranceG?: number;
}

/** The mass a head should have, and how near it comes with weights. */
export interface MassReached {
  readonly wantedG: number;
  readonly gotG: number;
  /** Weights, and one more where lead must make up for what they leave. */
  readonly addedCount: number;
}

/** Every mass that so many ways to fill the ports come to, each by its fewest weights. */
export function addableMasses(sets: readonly WeightSet[]): readonly AddableMass[] {
  const fewest = new Map<number, number>();
  for (const { massG, count } of sets) {
    fewest.set(massG, Math.min(count, fewest.get(massG) ?? count));
  }
  return [...fewest].map(([massG, count]) => ({ massG, count }));
}

const SLACK_G = 1e-9;
const NOTHING: AddableMass = { massG: 0, count: 0 };

/** How near a head comes with weights that do not make it too heavy; the tolerance is for a wish that has none. */
export function massReached(headMassG: number, { wantedG, addable, toleranceG }: MassWish, usualToleranceG: number): MassReached {
  const nearG = toleranceG ?? usualToleranceG;
  const enoughG = toleranceG ?? 0;
  let best = NOTHING;
  let bestOffG = Math.abs(headMassG - wantedG);
  for (const added of addable) {
    const offG = Math.abs(headMassG + added.massG - wantedG);
    const isTooHeavy = headMassG + added.massG > wantedG + nearG + SLACK_G;
    const [off, bestOff] = [Math.max(offG, enoughG), Math.max(bestOffG, enoughG)];
    const isFewer = added.count < best.count || (added.count === best.count && offG < bestOffG - SLACK_G);
    if (!isTooHeavy && (off < bestOff - SLACK_G || (off <= bestOff + SLACK_G && isFewer))) {
      best = added;
      bestOffG = offG;
    }
  }
  const gotG = headMassG + best.massG;
  return { wantedG, gotG, addedCount: best.count + Number(gotG < wantedG - nearG - SLACK_G) };
}
