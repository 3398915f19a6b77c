import { inRange } from "../quantity/inRange.ts";
import { cyclesPerMinute, type Grams, type Millimetres, newtonSquareMetres } from "../quantity/units.ts";
import { checkedReading, type FrequencyReading, type FrequencySetUp } from "./frequencySetUp.ts";
import type { RawShaft } from "./linearDensity.ts";
import { type TaperedShaft, taperedBeamFrequency } from "./taperedBeamFrequency.ts";
import { trimmedShaft } from "./trimmedShaft.ts";

/** How a raw shaft is cut. */
interface ShaftCut {
  readonly tipTrimMm: Millimetres;
  readonly buttTrimMm: Millimetres;
}

/** A shaft cut in another way, and what else is to change. */
interface NextCut extends ShaftCut {
  readonly tipMassG?: Grams;
  readonly clampMm?: Millimetres;
}

/** A raw shaft with the cut it was read at. */
interface ReadShaft extends RawShaft {
  readonly cut: ShaftCut;
  /** EI at the butt of the raw shaft over EI at its tip; `BUTT_TO_TIP_STIFFNESS` when left out. */
  readonly buttToTipStiffness?: number;
}

/** How much stiffer the butt of a raw shaft is than its tip: between three and five times ("Length and Tip Trimming"). */
export const BUTT_TO_TIP_STIFFNESS = 4;

/** The shaft as cut, with a stiffness of 1 N·m² at the tip of the raw shaft. */
function shaped(raw: RawShaft, cut: ShaftCut, buttToTip: number): TaperedShaft {
  const { lengthMm, massG, balanceFromTipMm } = trimmedShaft(raw, cut.tipTrimMm, cut.buttTrimMm);
  const stiffnessAt = (fromRawTipMm: number) => newtonSquareMetres(1 + ((buttToTip - 1) * fromRawTipMm) / raw.rawLengthMm);
  return {
    lengthMm,
    massG,
    balanceFromTipMm,
    tipStiffnessNm2: stiffnessAt(cut.tipTrimMm),
    buttStiffnessNm2: stiffnessAt(cut.tipTrimMm + lengthMm),
  };
}

/**
 * What a shaft will read after another cut, with another head or in another clamp, from what it read.
 *
 *     f₂ = f₁ · φ(cut₂, set-up₂) / φ(cut₁, set-up₁)
 *
 * φ is `taperedBeamFrequency` of the raw shaft's even taper; its stiffness drops out, for f grows with √EI. Good to 1 cpm for
 * what the model holds: ±2 g of head, ±1 in of cut. A taper of 3 or 5 in place of 4 moves ½ in off the butt by 0.2 cpm, 1 in between tip and butt by 0.6.
 *
 * @param reading - f₁ in cpm with its set-up
 * @param shaft - raw length and balance in mm, mass in g, the trims it was read at in mm, taper of stiffness
 * @param next - the trims to predict for, off the same raw shaft, in mm; tip mass in g and clamp in mm when they change
 * @returns f₂ in cpm, with its set-up
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing of the shaft is free
 * @throws {DomainError} `balance-outside-model` when the balance is not in the middle third of the shaft
 * @see fixtures/published/taperedBeam.json
 */
export function frequencyAfterTrim(reading: FrequencyReading, shaft: ReadShaft, next: NextCut): FrequencyReading {
  const { cpm, setUp } = checkedReading(reading);
  const buttToTip = inRange(shaft.buttToTipStiffness ?? BUTT_TO_TIP_STIFFNESS, { field: "buttToTipStiffness", unit: "", min: 0.5, max: 20 });
  const nextSetUp: FrequencySetUp = { ...setUp, tipMassG: next.tipMassG ?? setUp.tipMassG, clampMm: next.clampMm ?? setUp.clampMm };
  const before = taperedBeamFrequency(shaped(shaft, shaft.cut, buttToTip), setUp);
  const after = taperedBeamFrequency(shaped(shaft, next, buttToTip), nextSetUp);
  return { cpm: cyclesPerMinute((cpm * after.cpm) / before.cpm), setUp: nextSetUp };
}
