import { type Grams, grams, millimetres } from "../quantity/units.ts";
import type { StockedWeight, WeightPlace } from "../selection/weightQuestion.ts";
import { weightsFor } from "../selection/weightsFor.ts";
import type { Stocked, WeightModel } from "./parts.ts";

/** So many of one weight from one place. */
interface ChosenWeight {
  readonly model: WeightModel;
  readonly placeId: Stocked<WeightModel>["placeId"];
  readonly count: number;
}

interface ChosenWeights {
  readonly weights: readonly ChosenWeight[];
  readonly leadG: Grams;
  /** Head, weights and lead together. */
  readonly massG: Grams;
}

interface StockedScrew extends StockedWeight {
  readonly row: Stocked<WeightModel>;
}

const MOST_LEAD_G = grams(1000);

/** A plan takes every weight at the head's own centre of mass. */
const atCentre: WeightPlace = { name: "head", fromCapMm: millimetres(0), backMm: millimetres(0), toeMm: millimetres(0) };

export const portsAtCentre = (ports: number): readonly WeightPlace[] => Array.from({ length: ports }, () => atCentre);

export const asScrews = (stock: readonly Stocked<WeightModel>[]): readonly StockedScrew[] =>
  stock.map((row) => ({ name: row.model.name, massG: row.model.massG, place: row.place, inPlayersBin: row.inPlayersBin, free: row.free, row }));

/** The weights in stock, then lead, that bring a bare head to its mass. */
export function chooseWeights(
  bareG: number,
  aim: { readonly wantedG: number; readonly toleranceG: number },
  stock: readonly Stocked<WeightModel>[],
  ports: number,
): ChosenWeights {
  const { plan } = weightsFor({
    head: { massG: grams(bareG) },
    aims: { headMassG: { wanted: grams(aim.wantedG), tolerance: grams(aim.toleranceG) } },
    ports: portsAtCentre(ports),
    screws: asScrews(stock),
    lead: { places: [atCentre], mostG: MOST_LEAD_G },
  });
  const rows = plan.screws.map(({ weight }) => weight.row);
  const weights = [...new Set(rows)].map((row) => ({
    model: row.model,
    placeId: row.placeId,
    count: rows.filter((other) => other === row).length,
  }));
  return { weights, leadG: plan.lead?.massG ?? grams(0), massG: plan.headMassG };
}
