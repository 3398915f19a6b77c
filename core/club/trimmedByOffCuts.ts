import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type Millimetres, millimetres } from "../quantity/units.ts";
import { linearDensity, type RawShaft } from "./linearDensity.ts";
import { type TrimmedShaft, trimmedShaft } from "./trimmedShaft.ts";

/** A piece cut off and weighed. */
interface OffCut {
  readonly lengthMm: Millimetres;
  readonly massG: Grams;
  /** Where the piece balances, from its own tip end; left out it is taken at its middle. */
  readonly balanceFromTipMm?: Millimetres;
}

interface OffCuts {
  /** Null when nothing was cut there. */
  readonly tip: OffCut | null;
  readonly butt: OffCut | null;
}

interface Piece {
  readonly lengthMm: number;
  readonly massG: number;
  readonly centreMm: number;
}

function checked(offCut: OffCut | null, which: "tip" | "butt"): Piece {
  if (offCut === null) {
    return { lengthMm: 0, massG: 0, centreMm: 0 };
  }
  const lengthMm = inRange(offCut.lengthMm, { field: `${which} lengthMm`, unit: "mm", min: Number.MIN_VALUE, max: 2000 });
  const massG = inRange(offCut.massG, { field: `${which} massG`, unit: "g", min: 0, max: 500 });
  const middleMm = lengthMm / 2;
  const centreMm = inRange(offCut.balanceFromTipMm ?? middleMm, { field: `${which} balanceFromTipMm`, unit: "mm", min: 0, max: lengthMm });
  return { lengthMm, massG, centreMm };
}

/**
 * Mass and balance of a trimmed shaft from the pieces cut off it, weighed: for stepped steel and counterweighted butts.
 *
 *     m' = m − m_t − m_b
 *     B' = (m·B − m_t·x_t − m_b·(L − l_b + x_b)) / m' − l_t,   x from a piece's own tip end
 *
 * Mass is exact to the scale. A piece that was not balanced is taken at its middle; where density changes evenly that is
 * off by a sixth of its length at most, so 2 in of 3 g off a shaft of 60 g move B' by 0.5 mm. A piece that holds a plug or
 * a weight has to be balanced. Only the own inertia still takes an even change of density in what is left.
 *
 * @param raw - L and B (from the tip) in mm, m in g, before trimming, on the same scale
 * @param offCuts - lengths in mm, masses in g and, when measured, balance in mm
 * @returns length, mass, balance from either end in mm and inertia about its own centre in kg·cm²
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing is left
 * @throws {DomainError} `balance-outside-model` when a balance, before or after, is not in the middle third of its shaft
 * @see tests/core/club/trimmedByOffCuts.test.ts: mass and moment kept, and the integrals of `trimmedShaft`
 */
export function trimmedByOffCuts(raw: RawShaft, offCuts: OffCuts): TrimmedShaft {
  linearDensity(raw);
  const [tip, butt] = [checked(offCuts.tip, "tip"), checked(offCuts.butt, "butt")];
  const lengthMm = inRange(raw.rawLengthMm - tip.lengthMm - butt.lengthMm, { field: "trimmedLengthMm", unit: "mm", min: 1 });
  const massG = inRange(raw.rawMassG - tip.massG - butt.massG, { field: "trimmedMassG", unit: "g", min: Number.MIN_VALUE });
  const buttCentreMm = raw.rawLengthMm - butt.lengthMm + butt.centreMm;
  const momentGramMm = raw.rawMassG * raw.balanceFromTipMm - tip.massG * tip.centreMm - butt.massG * buttCentreMm;
  const left = {
    rawLengthMm: millimetres(lengthMm),
    rawMassG: grams(massG),
    balanceFromTipMm: millimetres(momentGramMm / massG - tip.lengthMm),
  };
  return trimmedShaft(left, millimetres(0), millimetres(0));
}
