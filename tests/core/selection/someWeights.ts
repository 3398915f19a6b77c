import { grams, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import type { StockedWeight, WeightPlace } from "../../../core/selection/weightQuestion.ts";

export const someScrew = (massG: number, given: Partial<StockedWeight> = {}): StockedWeight => ({
  name: `Screw ${massG} g`,
  massG: grams(massG),
  place: "Rack 1",
  inPlayersBin: false,
  free: 1,
  ...given,
});

export const somePlace = (name: string, fromCapMm: number, backMm: number, toeMm: number): WeightPlace => ({
  name,
  fromCapMm: millimetres(fromCapMm),
  backMm: millimetres(backMm),
  toeMm: millimetres(toeMm),
});

export const front = somePlace("front", 1128, -20, 0);
export const rear = somePlace("rear", 1134, 55, 4);
export const heel = somePlace("heel", 1120, 10, -35);
export const toe = somePlace("toe", 1137, 10, 45);
/** The tip of the shaft, 2 in above the head. */
export const tipFromCapMm = mmFromInches(42.5);
