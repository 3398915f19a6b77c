import type { ClubName, Instant } from "../kinds.ts";

/**
 * One club of a player's bag as last left on the gauge. Null is unknown: an outside club may have a loft and a length
 * and nothing more. Angles in degrees: `squaredLoftDeg` with the face square at seated lie, `soledFaceDeg` sole flat
 * and open positive. Lengths in mm (60° plane to the end of the cap), masses in g, swing weight in points (D0 = 0).
 */
export interface SpecClub {
  readonly club: ClubName;
  /** A club of another maker: measured and listed all the same. */
  readonly outside: boolean;
  readonly headModel: string | null;
  readonly headSerial: string | null;
  readonly stampedLoftDeg: number | null;
  readonly squaredLoftDeg: number | null;
  readonly soledFaceDeg: number | null;
  readonly seatedLieDeg: number | null;
  readonly bounceDeg: number | null;
  readonly grind: string | null;
  readonly sleeveModel: string | null;
  readonly sleeveMark: string | null;
  readonly lengthMm: number | null;
  readonly swingWeightPoints: number | null;
  readonly totalMassG: number | null;
  readonly headMassG: number | null;
  readonly shaftModel: string | null;
  readonly tipTrimMm: number | null;
  readonly logo: "up" | "down" | null;
  readonly gripModel: string | null;
  readonly rib: boolean | null;
  readonly wraps: number | null;
  readonly stamp: string | null;
  readonly note: string | null;
  readonly measuredAt: Instant | null;
  readonly gauge: string | null;
  /** What only a backup, a build or a complaint is measured in; left out it was not. */
  readonly balancePointMm?: number | null;
  readonly inertiaKgCm2?: number | null;
  readonly frequencyCpm?: number | null;
  /** Machine, clamp length, tip mass, grip on or off: without it a frequency compares with nothing. */
  readonly frequencySetUp?: string | null;
  /** Outer diameter of the grip, 2 and 6 in below the cap. */
  readonly gripAt2InMm?: number | null;
  readonly gripAt6InMm?: number | null;
  readonly offsetMm?: number | null;
}

/** A player's bag as published: the live spec is the newest version. */
export interface Bag {
  readonly version: 1;
  readonly clubs: readonly SpecClub[];
  /** Finished twins that wait in a drawer with the player's name. */
  readonly backups: readonly SpecClub[];
}
