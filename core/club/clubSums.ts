import { FULCRUM_MM } from "../quantity/swingWeightScale.ts";
import type { ClubComponent } from "./clubComponent.ts";

/** What a change to a club may leave as it is: its swing weight, or its inertia about the butt with or without the parts' own. */
export const keptQuantities = ["swing-weight", "inertia", "point-inertia"] as const;
export type KeptQuantity = (typeof keptQuantities)[number];

/** A component without its mass. */
export type ComponentPlace = Omit<ClubComponent, "massG">;

/** Every sum over a club's parts is linear in their masses: worth a gram by the place, and what a part adds by itself. */
interface ClubSum {
  readonly perGram: (place: ComponentPlace) => number;
  readonly own: (place: ComponentPlace) => number;
}

export const GRAM_SQUARE_MM_PER_KG_SQUARE_CM = 1e5;

const clubSums: Readonly<Record<KeptQuantity, ClubSum>> = {
  /** g·mm about the fulcrum of the 14-inch scale. */
  "swing-weight": { perGram: ({ fromCapMm }) => fromCapMm - FULCRUM_MM, own: () => 0 },
  /** kg·cm² about the end of the cap. */
  inertia: {
    perGram: ({ fromCapMm, fromAxisMm = 0 }) => (fromCapMm ** 2 + fromAxisMm ** 2) / GRAM_SQUARE_MM_PER_KG_SQUARE_CM,
    own: ({ ownInertiaKgCm2 = 0 }) => ownInertiaKgCm2,
  },
  "point-inertia": { perGram: ({ fromCapMm }) => fromCapMm ** 2 / GRAM_SQUARE_MM_PER_KG_SQUARE_CM, own: () => 0 },
};

/** The sum over all parts; a part taken off counts with a mass below 0. */
export function clubSum(kept: KeptQuantity, parts: readonly ClubComponent[]): number {
  const { perGram, own } = clubSums[kept];
  return parts.reduce((total, part) => total + part.massG * perGram(part) + own(part), 0);
}

/** The mass at a place that brings the sum to a value, the other parts being what they are. */
export function massForClubSum(kept: KeptQuantity, wanted: number, at: ComponentPlace, others: readonly ClubComponent[]): number {
  const { perGram, own } = clubSums[kept];
  return (wanted - own(at) - clubSum(kept, others)) / perGram(at);
}
