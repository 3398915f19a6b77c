import { grams, MM_PER_INCH, millimetres } from "../../../core/quantity/units.ts";
import { defaultLeadTape, type LeadTape } from "../../../core/selection/leadTape.ts";
import { assumed, type Understood } from "../../boundary/calc/fields.ts";
import type { WeightsValues } from "./clubToWeigh.ts";

/** The roll of lead tape at hand: as weighed, or by its measures. */
export function leadTapeOf(values: WeightsValues): { readonly tape: LeadTape; readonly assumed: readonly Understood[] } {
  const { roll, width, thickness } = values;
  const rollLength = values["roll length"];
  if (roll !== undefined && rollLength !== undefined) {
    return { tape: { weighedG: grams(roll.value), weighedLengthMm: millimetres(rollLength.value) }, assumed: [] };
  }
  const { widthMm, thicknessMm } = defaultLeadTape;
  return {
    tape: {
      ...defaultLeadTape,
      widthMm: millimetres(width?.value ?? widthMm),
      thicknessMm: millimetres(thickness?.value ?? thicknessMm),
    },
    assumed: [
      ...(width === undefined ? [assumed("lead tape", `${widthMm / MM_PER_INCH}`, "in wide")] : []),
      ...(thickness === undefined ? [assumed("lead", thicknessMm, "mm thick")] : []),
    ],
  };
}
