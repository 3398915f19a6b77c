import type { HeadModel, MeasuredHead } from "../buildSheet/parts.ts";
import { checkedBend } from "../head/afterBend.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";

/** Of tens of thousands of heads no path to a number is spelled out unless one is wrong. */
const isAllFinite = (head: MeasuredHead): boolean => {
  for (const value of Object.values(head)) {
    if (typeof value === "number" && !Number.isFinite(value)) {
      return false;
    }
  }
  return true;
};

/**
 * Heads as they can be recorded; what decides about their angles is left to the geometry.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number is not finite, or a mass, a bounce or a bend is impossible
 * @throws {DomainError} `list-of-wrong-size` when a head was bent more than 200 times
 */
export function checkedHeads(heads: readonly MeasuredHead[]): readonly MeasuredHead[] {
  const models = new Set<HeadModel>();
  for (const head of heads) {
    if (!isAllFinite(head)) {
      finiteNumbers({ ...head, model: null, bends: [] }, `head ${head.serial}`);
    }
    inRange(head.massG, { field: `head ${head.serial} massG`, unit: "g", min: 50, max: 1000 });
    inRange(head.bounceDeg ?? 0, { field: `head ${head.serial} bounceDeg`, unit: "deg", min: -10, max: 30 });
    listOf(head.bends ?? [], { field: `head ${head.serial} bends`, min: 0, max: 200 }).forEach(checkedBend);
    models.add(head.model);
  }
  for (const model of models) {
    finiteNumbers(model, `model ${model.name}`);
    inRange(model.makerBendLimitDeg ?? 0, { field: `model ${model.name} makerBendLimitDeg`, unit: "deg", min: 0, max: 20 });
  }
  return heads;
}
