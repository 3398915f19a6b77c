import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Millimetres, millimetres, mmFromInches } from "../quantity/units.ts";

/** How deep a hosel is bored, by the trade's names. */
export const boreClasses = ["through", "blind", "to ground 1.0", "to ground 1.5"] as const;
export type BoreClass = (typeof boreClasses)[number];

/** Nominal: 0, ½, 1 and 1½ in. A measured head goes before its class. */
const nominalByClass: Readonly<Record<BoreClass, Millimetres>> = {
  through: millimetres(0),
  blind: mmFromInches(0.5),
  "to ground 1.0": mmFromInches(1),
  "to ground 1.5": mmFromInches(1.5),
};

/** What is known of where the shaft's tip stands in the head. */
export type Bore =
  | { readonly kind: "hosel"; readonly hoselLengthMm: Millimetres; readonly insertionDepthMm: Millimetres }
  | { readonly kind: "class"; readonly boreClass: BoreClass }
  /** Measured once for each sleeve with each head model, from the sleeve's internal shaft stop. */
  | { readonly kind: "sleeve"; readonly stopToGroundMm: Millimetres };

const LONGEST_MM = 200;

/**
 * Distance from the tip of a seated shaft to the ground line, along the shaft.
 *
 *     boreToGround = hosel length − insertion depth
 *
 * Hosel length is read along its axis from its top to the ground line. Exact as measured; a bore class is nominal and a
 * head of it may be 1/8 in off (common practice, no source). In a sleeve it is its own measured value.
 *
 * @param bore - hosel length and insertion depth in mm, or the bore's class, or the sleeve's stop to the ground line in mm
 * @returns mm, zero when the shaft goes through to the sole
 * @throws {DomainError} `quantity-out-of-range` when a length is impossible or the shaft would stand below the ground line
 * @throws {DomainError} `quantity-unreadable` when the kind or class of bore is not known
 * @see fixtures/published/boreToGround.json
 */
export function boreToGround(bore: Bore): Millimetres {
  oneOf(bore.kind, ["hosel", "class", "sleeve"], "kind");
  switch (bore.kind) {
    case "hosel": {
      const hoselMm = inRange(bore.hoselLengthMm, { field: "hoselLengthMm", unit: "mm", min: 0, max: LONGEST_MM });
      const depthMm = inRange(bore.insertionDepthMm, { field: "insertionDepthMm", unit: "mm", min: 0, max: LONGEST_MM });
      return millimetres(inRange(hoselMm - depthMm, { field: "boreToGroundMm", unit: "mm", min: 0 }));
    }
    case "class":
      return nominalByClass[oneOf(bore.boreClass, boreClasses, "boreClass")];
    case "sleeve":
      return millimetres(inRange(bore.stopToGroundMm, { field: "stopToGroundMm", unit: "mm", min: 0, max: LONGEST_MM }));
  }
}
