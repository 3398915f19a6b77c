/** How far from the wish counts as one unit when heads are compared. Shop data: a setting may replace it. */
export interface SelectionTolerances {
  readonly squaredLoftDeg: number;
  readonly soledFaceDeg: number;
  readonly seatedLieDeg: number;
  readonly bounceDeg: number;
  readonly headMassG: number;
  /**
   * Scores in the same band of this width are equally good, and the standard mark wins. The default is what a trained
   * gauge cannot tell apart: a loft 1/8° off, half of its tolerance, scores a quarter.
   */
  readonly scoreBand: number;
}

/** Common practice, no source; the band rests on a gauge repeatability of ±1/8°. */
export const defaultSelectionTolerances: SelectionTolerances = {
  squaredLoftDeg: 0.25,
  soledFaceDeg: 0.5,
  seatedLieDeg: 0.5,
  bounceDeg: 1,
  headMassG: 2,
  scoreBand: 0.25,
};
