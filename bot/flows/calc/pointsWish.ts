import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import { gramsPerPoint } from "../../../core/club/massAtPosition.ts";
import { FULCRUM_MM } from "../../../core/quantity/swingWeightScale.ts";
import { type Millimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import type { PointsWish } from "../../replies/calc/wishLine.ts";
import type { ClubLengths } from "./asBuiltClub.ts";

/** Where weight goes into a club. */
export interface WeightPlaces {
  readonly headFromCapMm: Millimetres;
  readonly tipFromCapMm: Millimetres;
  readonly buttFromCapMm: Millimetres;
}

/** Common practice, no source: the middle of a tip weight above the end of the shaft, and of a butt weight below the cap. */
const TIP_WEIGHT_UP_MM = 35;
const BUTT_WEIGHT = mmFromInches(0.5);

export const weightPlaces = (head: ClubComponent, { shaftLengthMm, capMm }: ClubLengths): WeightPlaces => ({
  headFromCapMm: head.fromCapMm,
  tipFromCapMm: millimetres(capMm + shaftLengthMm - TIP_WEIGHT_UP_MM),
  buttFromCapMm: BUTT_WEIGHT,
});

/** The usual driver and 7-iron of the trade's examples: 45 and 37 in long. */
export const typicalPlaces = {
  "driver 45 in": { headFromCapMm: mmFromInches(44.5), tipFromCapMm: mmFromInches(42.4), buttFromCapMm: BUTT_WEIGHT },
  "7-iron 37 in": { headFromCapMm: mmFromInches(36.85), tipFromCapMm: mmFromInches(34.6), buttFromCapMm: BUTT_WEIGHT },
} as const satisfies Readonly<Record<string, WeightPlaces>>;

/** The mass at each place that changes the swing weight by so many points; below 0 it has to come off. */
export function pointsWish(points: number, places: WeightPlaces): PointsWish {
  const massAt = (place: Millimetres): number => points * gramsPerPoint(place) * Math.sign(place - FULCRUM_MM);
  return { points, headG: massAt(places.headFromCapMm), tipG: massAt(places.tipFromCapMm), buttG: massAt(places.buttFromCapMm) };
}
