import type { Grams, Millimetres, SwingWeightPoints } from "../quantity/units.ts";

/** A place on a head, seen from the bare head's centre of mass: behind it and towards the toe are positive. */
export interface WeightPlace {
  readonly name: string;
  readonly fromCapMm: Millimetres;
  readonly backMm: Millimetres;
  readonly toeMm: Millimetres;
}

/** So many weights of one kind in one place. */
export interface StockedWeight {
  readonly name: string;
  readonly massG: Grams;
  readonly place: string;
  /** Of two of the same mass, the one in the player's bin goes first. */
  readonly inPlayersBin: boolean;
  readonly free: number;
}

interface Aim<Q extends number> {
  readonly wanted: Q;
  readonly tolerance: Q;
}

/** What is wished, as far as anything is. Centre of mass as its shift from the bare head's. */
export interface WeightAims {
  readonly swingWeightPoints?: Aim<SwingWeightPoints>;
  readonly headMassG?: Aim<Grams>;
  readonly centreBackMm?: Aim<Millimetres>;
  readonly centreToeMm?: Aim<Millimetres>;
}

/** What may be put on a bare head, and what for. What is left out is not allowed. */
export interface WeightQuestion<W extends StockedWeight> {
  /** The bare head, and the swing weight of the club with nothing added to it. */
  readonly head: { readonly massG: Grams; readonly swingWeightPoints?: SwingWeightPoints };
  readonly aims: WeightAims;
  readonly ports: readonly WeightPlace[];
  readonly screws: readonly W[];
  /** In one place, in steps. It cannot be taken out again: only when it was wished. */
  readonly melt?: { readonly places: readonly WeightPlace[]; readonly stepG: Grams; readonly mostG: Grams };
  /** One, before bonding. It sits in the shaft: it moves the swing weight and is no part of the head. */
  readonly tip?: { readonly fromCapMm: Millimetres; readonly stock: readonly W[]; readonly mostG: Grams };
  /** In one place. */
  readonly lead?: { readonly places: readonly WeightPlace[]; readonly mostG: Grams };
}

/** Common practice, no source: a heavier slug stresses the tip of the shaft. */
export const MOST_TIP_WEIGHT_G = 8;

export interface WeightDeviation {
  readonly quantity: keyof WeightAims;
  readonly wanted: number;
  readonly got: number;
  readonly tolerance: number;
}

/** What goes where, and what comes of it. */
export interface WeightPlan<W extends StockedWeight> {
  readonly screws: readonly { readonly port: string; readonly weight: W }[];
  readonly melt: { readonly place: string; readonly massG: Grams } | null;
  readonly tip: W | null;
  readonly lead: { readonly place: string; readonly massG: Grams } | null;
  readonly headMassG: Grams;
  /** Null when the club's was not known before. */
  readonly swingWeightPoints: SwingWeightPoints | null;
  readonly centreBackMm: Millimetres;
  readonly centreToeMm: Millimetres;
  /** One for every aim, also where it is met. */
  readonly deviations: readonly WeightDeviation[];
}

/** Every aim within its tolerance; or the nearest there is, with the aims it misses. */
export type WeightAnswer<W extends StockedWeight> =
  | { readonly kind: "reached"; readonly plan: WeightPlan<W> }
  | { readonly kind: "nearest"; readonly plan: WeightPlan<W>; readonly misses: readonly WeightDeviation[] };
