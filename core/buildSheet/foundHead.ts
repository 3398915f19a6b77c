import type { MeasuredHead } from "./parts.ts";
import type { FoundHead } from "./plan.ts";

/** What people need to find a head. */
export const foundHead = ({ serial, model, stampedLoftDeg, place, here }: MeasuredHead): FoundHead => ({
  serial,
  model: model.name,
  stampedLoftDeg,
  place,
  here,
});
