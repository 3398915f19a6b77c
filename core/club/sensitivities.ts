import { inRange } from "../quantity/inRange.ts";
import {
  type Grams,
  grams,
  type KilogramSquareCentimetres,
  kilogramSquareCentimetres,
  type Millimetres,
  MM_PER_INCH,
  millimetres,
  type SwingWeightPoints,
  swingWeightPoints,
} from "../quantity/units.ts";
import { type AssembledClub, summedClub } from "./assembledClub.ts";
import { componentsOf } from "./builtClub.ts";
import { checkedBuiltClub } from "./clubAtLength.ts";
import type { ClubComponent } from "./clubComponent.ts";
import type { BuiltClub } from "./clubParts.ts";
import { lengthenedClub } from "./lengthenedClub.ts";
import { gramsPerPoint } from "./massAtPosition.ts";

/** What one change does to a club. */
interface Effect {
  readonly swingWeightPoints: SwingWeightPoints;
  readonly inertiaKgCm2: KilogramSquareCentimetres;
  readonly pointInertiaKgCm2: KilogramSquareCentimetres;
}

interface Sensitivities {
  readonly headOneGram: Effect;
  readonly headGramsPerPointG: Grams;
  readonly gripFiveGrams: Effect;
  readonly shaftNineGrams: Effect;
  readonly halfInchLonger: Effect;
  readonly buttTenGrams: Effect;
  readonly tipOneGram: Effect;
}

interface WeightPlaces {
  readonly tipWeightFromCapMm: Millimetres;
  readonly buttWeightFromCapMm: Millimetres;
}

const HALF_INCH = millimetres(MM_PER_INCH / 2);

/** A part made heavier all along itself: its own inertia grows with its mass. */
function heavierThroughout(part: ClubComponent, addedG: number): ClubComponent {
  const massG = grams(part.massG + addedG);
  const { ownInertiaKgCm2 } = part;
  return ownInertiaKgCm2 === undefined || part.massG === 0
    ? { ...part, massG }
    : { ...part, massG, ownInertiaKgCm2: kilogramSquareCentimetres((ownInertiaKgCm2 * massG) / part.massG) };
}

function difference(after: AssembledClub, before: AssembledClub): Effect {
  return {
    swingWeightPoints: swingWeightPoints(after.swingWeightPoints - before.swingWeightPoints),
    inertiaKgCm2: kilogramSquareCentimetres(after.inertiaKgCm2 - before.inertiaKgCm2),
    pointInertiaKgCm2: kilogramSquareCentimetres(after.pointInertiaKgCm2 - before.pointInertiaKgCm2),
  };
}

/**
 * What the usual small changes do to the swing weight and inertia of this very club, in place of rules of thumb.
 *
 *     Δ = club after − club before,   by the sums of `assembledClub` and, for length, `lengthenedClub`
 *
 * One gram in the head, 5 g more grip, 9 g more shaft, half an inch at the butt, 10 g in the butt, one gram in the tip.
 * Exact for the model. The rules (2 g, 5 g, 9 g, 1/6 in a point) are off by up to a third: 9 g of shaft is 1.3 points on
 * a driver and 0.7 on a 7-iron. Weight in the butt fools the scale: 10 g take 2.7 points and add 0.02 kg·cm².
 *
 * @param club - its components in g and mm, shaft length and cap in mm
 * @param places - of a tip weight and a butt weight, in mm from the end of the cap
 * @returns points and kg·cm² of each change, and g a point at the head
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/swingWeightSensitivity.json
 */
export function sensitivities(club: BuiltClub, places: WeightPlaces): Sensitivities {
  const before = summedClub(componentsOf(checkedBuiltClub(club)));
  const effect = (changed: Partial<BuiltClub>) => difference(summedClub(componentsOf({ ...club, ...changed })), before);
  const pieceAt = (name: string, massG: Grams, fromCap: Millimetres): ClubComponent => ({
    name,
    massG,
    fromCapMm: millimetres(inRange(fromCap, { field: `${name} fromCapMm`, unit: "mm", min: 0, max: 2000 })),
  });
  return {
    headOneGram: effect({ head: { ...club.head, massG: grams(club.head.massG + 1) } }),
    headGramsPerPointG: gramsPerPoint(club.head.fromCapMm),
    gripFiveGrams: effect({ grip: heavierThroughout(club.grip, 5) }),
    shaftNineGrams: effect({ shaft: heavierThroughout(club.shaft, 9) }),
    halfInchLonger: difference(lengthenedClub(club, HALF_INCH), before),
    buttTenGrams: effect({ buttEnd: [...club.buttEnd, pieceAt("butt weight", grams(10), places.buttWeightFromCapMm)] }),
    tipOneGram: effect({ headEnd: [...club.headEnd, pieceAt("tip weight", grams(1), places.tipWeightFromCapMm)] }),
  };
}
