/** What an order wishes of a head; what it does not name is left out. */
export interface HeadWish {
  readonly player: string;
  readonly hand: string;
  readonly headModel: string;
  readonly grind?: string | null;
  readonly stampedLoftDeg?: number | null;
  readonly squaredLoftDeg?: number | null;
  readonly soledFaceDeg?: number | null;
  readonly seatedLieDeg?: number | null;
  readonly bounceDeg?: number | null;
  readonly sleeveMark?: string | null;
  /** The mark that wins among equals, where it is not the sleeve's standard. */
  readonly preferredMark?: string | null;
  readonly mass?: { readonly wantedG: number; readonly toleranceG: number } | null;
}

/** How far off counts as one: the documented defaults. */
export const ONE = { loftDeg: 0.25, faceDeg: 0.5, lieDeg: 0.5, bounceDeg: 1, massG: 2 };

/** In how many of its tolerances; what was never measured is one off. */
export const offBy = (got: number | null, wanted: number | null | undefined, one: number): number =>
  wanted == null ? 0 : got === null ? 1 : (got - wanted) / one;
