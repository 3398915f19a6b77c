import { LEAST_PARALLEL_TIP_MM } from "../club/shaftTrim.ts";
import type { ClubFamily } from "../kinds.ts";

/**
 * Small masses and places a plan counts on that nobody wrote. Shop data: a setting may replace any of it. Masses in g,
 * lengths in mm, inertia in kg·cm².
 */
export interface Allowances {
  /** Ferrule and glue of a shaft bonded into the hosel, and of one bonded into a sleeve. */
  readonly bondedFerruleAndGlueG: number;
  readonly sleevedFerruleAndGlueG: number;
  /** Their centre, and the sleeve's, up the shaft from the bottom of the bore. */
  readonly ferruleAndGlueAboveBoreMm: number;
  readonly sleeveAboveBoreMm: number;
  /** The mounting tape under every grip, one more full wrap, and where their centre lies. */
  readonly tapeG: number;
  readonly wrapG: number;
  readonly tapeFromCapMm: number;
  /** Radius of gyration of a grip about its own centre, crosswise. */
  readonly gripGyrationMm: number;
  /** Inertia of the head about its centre, and how far its centre lies from the shaft axis. */
  readonly headOwnInertiaKgCm2: Readonly<Record<ClubFamily, number>>;
  readonly headFromAxisMm: Readonly<Record<ClubFamily, number>>;
  /** How many removable weights a head takes; their centre is taken at the head's own. */
  readonly weightPorts: Readonly<Record<ClubFamily, number>>;
  /** The least of the parallel tip section that must stay after tip trimming: 1.5 in. */
  readonly leastParallelTipMm: number;
  /** A wished swing weight is met within so many points. */
  readonly swingWeightPoints: number;
  /** A wished head mass is met within so many grams. */
  readonly headMassG: number;
}

/** Common practice, no source; the shop weighs its own and changes them. */
export const defaultAllowances: Allowances = {
  bondedFerruleAndGlueG: 2.5,
  sleevedFerruleAndGlueG: 2,
  ferruleAndGlueAboveBoreMm: 35,
  sleeveAboveBoreMm: 25.4,
  tapeG: 3,
  wrapG: 1.5,
  tapeFromCapMm: 127,
  gripGyrationMm: 76.2,
  headOwnInertiaKgCm2: { driver: 5, fairway: 3, hybrid: 3, iron: 3, wedge: 3, putter: 5 },
  headFromAxisMm: { driver: 40, fairway: 36, hybrid: 36, iron: 36, wedge: 36, putter: 36 },
  weightPorts: { driver: 2, fairway: 1, hybrid: 1, iron: 0, wedge: 0, putter: 2 },
  leastParallelTipMm: LEAST_PARALLEL_TIP_MM,
  swingWeightPoints: 0.5,
  headMassG: 0.5,
};
