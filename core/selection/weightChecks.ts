import { DomainError } from "../errors.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import type { StockedWeight, WeightAims, WeightPlace, WeightQuestion } from "./weightQuestion.ts";

const HEAVIEST_WEIGHT_G = 200;
const HEAVIEST_HEAD_G = 2000;
const MOST_ROWS = 1000;
const MOST_PLACES = 6;
const MOST_MELT_STEPS = 20;

const aimUnits = {
  swingWeightPoints: { unit: "points", reach: 1000 },
  headMassG: { unit: "g", reach: 5000 },
  centreBackMm: { unit: "mm", reach: 100 },
  centreToeMm: { unit: "mm", reach: 100 },
} as const;

/** A place that can be on a head. */
export function checkWeightPlace(place: WeightPlace): void {
  inRange(place.fromCapMm, { field: `${place.name} fromCapMm`, unit: "mm", min: 0, max: 2000 });
  inRange(place.backMm, { field: `${place.name} backMm`, unit: "mm", min: -200, max: 200 });
  inRange(place.toeMm, { field: `${place.name} toeMm`, unit: "mm", min: -200, max: 200 });
}

/** Weights with a mass, and a whole number of each. */
export function checkWeightStock(stock: readonly StockedWeight[], field: string): void {
  for (const { name, massG, free } of listOf(stock, { field, min: 0, max: MOST_ROWS })) {
    inRange(massG, { field: `${name} massG`, unit: "g", min: 0.01, max: HEAVIEST_WEIGHT_G });
    inRange(free, { field: `${name} free`, unit: "", min: 0, max: 100_000 });
    if (!Number.isInteger(free)) {
      throw new DomainError("quantity-out-of-range", { field: `${name} free`, value: free, unit: "" });
    }
  }
}

function checkAims(aims: WeightAims): void {
  for (const [quantity, { unit, reach }] of Object.entries(aimUnits)) {
    const aim = aims[quantity as keyof WeightAims];
    if (aim !== undefined) {
      inRange(aim.wanted, { field: quantity, unit, min: -reach, max: reach });
      inRange(aim.tolerance, { field: `${quantity} tolerance`, unit, min: 0, max: reach });
    }
  }
}

function checkPlaces(places: readonly WeightPlace[], field: string): void {
  listOf(places, { field, min: 1, max: MOST_PLACES }).forEach(checkWeightPlace);
}

/** Every number of a question that the ports and screws do not hold. */
export function checkWeightQuestion<W extends StockedWeight>({ head, aims, melt, tip, lead }: WeightQuestion<W>): void {
  inRange(head.massG, { field: "headMassG", unit: "g", min: 1, max: HEAVIEST_HEAD_G });
  if (head.swingWeightPoints !== undefined || aims.swingWeightPoints !== undefined) {
    inRange(head.swingWeightPoints ?? Number.NaN, { field: "headSwingWeightPoints", unit: "points", min: -1000, max: 1000 });
  }
  checkAims(aims);
  if (melt !== undefined) {
    checkPlaces(melt.places, "meltPlaces");
    inRange(melt.mostG, { field: "meltMostG", unit: "g", min: 0, max: HEAVIEST_WEIGHT_G });
    inRange(melt.stepG, { field: "meltStepG", unit: "g", min: Math.max(0.05, melt.mostG / MOST_MELT_STEPS), max: HEAVIEST_WEIGHT_G });
  }
  if (tip !== undefined) {
    checkWeightStock(tip.stock, "tipWeights");
    inRange(tip.fromCapMm, { field: "tipFromCapMm", unit: "mm", min: 0, max: 2000 });
    inRange(tip.mostG, { field: "tipMostG", unit: "g", min: 0, max: HEAVIEST_WEIGHT_G });
  }
  if (lead !== undefined) {
    checkPlaces(lead.places, "leadPlaces");
    inRange(lead.mostG, { field: "leadMostG", unit: "g", min: 0, max: HEAVIEST_HEAD_G });
  }
}
