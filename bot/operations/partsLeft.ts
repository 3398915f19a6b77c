import type { PartsInReach, Stocked } from "../../core/buildSheet/parts.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { type PartTaken, partsOfSheet } from "./partsOfSheet.ts";

type Model = { readonly id: Stocked<{ readonly name: string }>["placeId"] | number; readonly name: string };

function without<M extends Model>(stock: readonly Stocked<M>[], taken: readonly PartTaken[]): readonly Stocked<M>[] {
  return taken.reduce<readonly Stocked<M>[]>((left, part) => {
    if (part.kind !== "counted") {
      return left;
    }
    const at = left.findIndex(
      ({ model, placeId, free }) => model.id === part.modelId && (part.placeId === null || part.placeId === placeId) && free >= part.quantity,
    );
    return left.map((row, index) => (index === at ? { ...row, free: row.free - part.quantity } : row));
  }, stock);
}

/** What one plan leaves of the parts in reach for the next. */
export function partsLeft(parts: PartsInReach, plan: ClubPlan): PartsInReach {
  const taken = partsOfSheet({ plan });
  const isTaken = (kind: "head" | "piece", id: number): boolean => taken.some((part) => part.kind === kind && part.id === id);
  return {
    ...parts,
    heads: parts.heads.filter(({ id }) => !isTaken("head", id)),
    pieces: (parts.pieces ?? []).filter(({ id }) => !isTaken("piece", id)),
    sleeves: without(parts.sleeves, taken),
    shafts: without(parts.shafts, taken),
    grips: without(parts.grips, taken),
    weights: without(parts.weights, taken),
  };
}
