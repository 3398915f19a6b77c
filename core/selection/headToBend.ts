import type { MeasuredHead } from "../buildSheet/parts.ts";
import type { bendAllowed } from "../head/bendAllowed.ts";
import { usuallyMade } from "../head/usuallyMade.ts";

/**
 * What decides how far a head may be bent: as its model says, else as its kind of club is usually made; null for a driver
 * and for a head with a sleeve, which are never bent. A fairway wood without a sleeve is bonded, whatever it is made of.
 */
export function headToBend({ model, bends = [] }: MeasuredHead, skilledTechnician: boolean): Parameters<typeof bendAllowed>[0] | null {
  if (model.family === "driver" || model.sleeveFamily !== null) {
    return null;
  }
  const usual = usuallyMade[model.family];
  return {
    material: model.material ?? usual.material,
    construction: model.family === "fairway" ? usual.construction : (model.construction ?? usual.construction),
    history: bends,
    makerLimitDeg: model.makerBendLimitDeg ?? null,
    skilledTechnician,
  };
}
