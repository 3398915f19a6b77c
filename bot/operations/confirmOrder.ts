import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { changeOrder, confirmRevision, type OrderRow, orderById, sheetsOf, touchBench } from "../../db/repositories/orders.ts";
import { partsInReach, reserve } from "../../db/repositories/stock.ts";
import type { Reader, Tx } from "../../db/write.ts";

export type Confirmation =
  | { readonly kind: "confirmed"; readonly order: OrderRow }
  | { readonly kind: "stale" | "already"; readonly order: OrderRow }
  /** A part of the plan is no longer free: the draft must be planned anew and shown again. */
  | { readonly kind: "plan-moved"; readonly order: OrderRow; readonly parts: readonly string[] };

interface Wanted {
  readonly partModelId: Id<"partModel">;
  readonly placeId: Id<"place">;
  readonly quantity: number;
  readonly name: string;
}

/** Counted parts of a plan, sleeves from wherever one is free. */
function countedParts(plan: ClubPlan, sleevePlace: Id<"place"> | null): readonly Wanted[] {
  const one = (
    part: { readonly model: { readonly id: Id<"partModel">; readonly name: string }; readonly placeId: Id<"place"> | null } | null,
  ): readonly Wanted[] =>
    part === null || part.placeId === null ? [] : [{ partModelId: part.model.id, placeId: part.placeId, quantity: 1, name: part.model.name }];
  const weights = plan.weights.map(({ model, placeId, count }) => ({ partModelId: model.id, placeId, quantity: count, name: model.name }));
  const { sleeve } = plan.choice;
  const takesSleeve = sleeve !== null && plan.shaft !== null;
  return [...one(plan.shaft), ...one(plan.grip), ...weights, ...(takesSleeve ? one({ model: sleeve, placeId: sleevePlace }) : [])];
}

/** What of a plan is no longer free in the truck. */
function partsGone(reader: Reader, order: OrderRow, plan: ClubPlan): readonly string[] {
  const parts = partsInReach(reader, order.truckId, order.playerId);
  const freeOf = (wanted: Wanted): number =>
    [...parts.shafts, ...parts.grips, ...parts.sleeves, ...parts.weights].find(
      (row) => row.model.id === wanted.partModelId && row.placeId === wanted.placeId,
    )?.free ?? 0;
  const headGone = parts.heads.some((head) => head.id === plan.choice.head.id) ? [] : [`head ${plan.choice.head.serial}`];
  return [
    ...headGone,
    ...countedParts(plan, sleevePlaceOf(reader, order, plan))
      .filter((wanted) => freeOf(wanted) < wanted.quantity)
      .map(({ name }) => name),
  ];
}

function sleevePlaceOf(reader: Reader, order: OrderRow, plan: ClubPlan): Id<"place"> | null {
  const stocked = partsInReach(reader, order.truckId, order.playerId).sleeves.find(({ model }) => model.id === plan.choice.sleeve?.id);
  return stocked?.placeId ?? null;
}

function holdParts(tx: Tx, order: OrderRow): readonly string[] {
  const gone: string[] = [];
  for (const sheet of sheetsOf(tx, order)) {
    const { plan } = sheet.sheetPlan;
    if (plan !== null) {
      const missing = partsGone(tx, order, plan);
      gone.push(...missing);
      if (missing.length === 0) {
        reserve(tx, { sheetId: sheet.id, headId: plan.choice.head.id });
        for (const { partModelId, placeId, quantity } of countedParts(plan, sleevePlaceOf(tx, order, plan))) {
          reserve(tx, { sheetId: sheet.id, partModelId, placeId, quantity });
        }
      }
    }
  }
  return gone;
}

/** Thrown inside the transaction so that nothing of a half-held plan stays. */
export class PlanMoved extends Error {
  readonly parts: readonly string[];
  constructor(parts: readonly string[]) {
    super("a part of the plan is no longer free");
    this.parts = parts;
  }
}

/**
 * Confirms a draft: its parts are held for it, its steps stand on the bench, its promise is on record.
 *
 * @param tx - the transaction
 * @param orderId - which draft
 * @param seen - the version the person saw
 * @param times - likely, promise and playable as estimated on the bench's version
 * @throws {PlanMoved} when a part is no longer free; nothing of the transaction may stay
 */
export function confirmOrder(
  tx: Tx,
  orderId: Id<"order">,
  seen: number,
  times: { readonly likelyAt: Instant | null; readonly promiseAt: Instant | null; readonly playableAt: Instant | null },
): Exclude<Confirmation, { kind: "plan-moved" }> {
  const order = orderById(tx, orderId);
  if (order === null) {
    throw new Error(`no order ${orderId}`);
  }
  if (order.state !== "draft") {
    return { kind: "already", order };
  }
  if (order.version !== seen) {
    return { kind: "stale", order };
  }
  const gone = holdParts(tx, order);
  if (gone.length > 0) {
    throw new PlanMoved(gone);
  }
  confirmRevision(tx, order);
  touchBench(tx, order.truckId);
  const { likelyAt, promiseAt, playableAt } = times;
  return { kind: "confirmed", order: changeOrder(tx, order.id, { state: "confirmed", likelyAt, givenPromiseAt: promiseAt, playableAt }) };
}
