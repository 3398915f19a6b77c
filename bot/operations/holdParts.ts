import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import type { Id } from "../../core/kinds.ts";
import { reserve } from "../../db/repositories/holds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { type PartTaken, partsOfSheet } from "./partsOfSheet.ts";

/** What is still free while parts are given out one after another. */
interface Left {
  readonly heads: Set<Id<"head">>;
  readonly pieces: Set<Id<"shaftPiece">>;
  readonly counted: { readonly modelId: Id<"partModel">; readonly placeId: Id<"place">; free: number }[];
}

function leftOf(parts: PartsInReach): Left {
  return {
    heads: new Set(parts.heads.filter(({ here }) => here).map(({ id }) => id)),
    pieces: new Set((parts.pieces ?? []).map(({ id }) => id)),
    counted: [...parts.shafts, ...parts.grips, ...parts.sleeves, ...parts.weights].map(({ model, placeId, free }) => ({
      modelId: model.id,
      placeId,
      free,
    })),
  };
}

type Hold = Omit<Parameters<typeof reserve>[1], "sheetId">;

/** Takes one part out of what is left; null when it is gone. */
function takeFrom(left: Left, part: PartTaken): Hold | null {
  if (part.kind === "head") {
    return left.heads.delete(part.id) ? { headId: part.id } : null;
  }
  if (part.kind === "piece") {
    return left.pieces.delete(part.id) ? { pieceId: part.id } : null;
  }
  const row = left.counted.find(
    ({ modelId, placeId, free }) => modelId === part.modelId && (part.placeId === null || placeId === part.placeId) && free >= part.quantity,
  );
  if (row === undefined) {
    return null;
  }
  row.free -= part.quantity;
  return { partModelId: row.modelId, placeId: row.placeId, quantity: part.quantity };
}

/**
 * Holds every part of every sheet of an order, or names what is gone.
 *
 * @param tx - the transaction
 * @param order - its sheets must hold nothing yet
 * @returns what is no longer free; then nothing of the transaction may stay
 */
export function holdParts(tx: Tx, order: OrderRow): readonly string[] {
  const left = leftOf(partsInReach(tx, order));
  return sheetsOf(tx, order).flatMap(({ id, sheetPlan }) => holdWith(tx, left, id, sheetPlan));
}

/** The same for one sheet. */
export function holdSheet(tx: Tx, order: OrderRow, sheetId: Id<"sheet">, plan: Pick<SheetPlan, "plan" | "service">): readonly string[] {
  return holdWith(tx, leftOf(partsInReach(tx, order)), sheetId, plan);
}

function holdWith(tx: Tx, left: Left, sheetId: Id<"sheet">, plan: Pick<SheetPlan, "plan" | "service">): readonly string[] {
  return partsOfSheet(plan).flatMap((part) => {
    const hold = takeFrom(left, part);
    if (hold === null) {
      return [part.name];
    }
    reserve(tx, { ...hold, sheetId });
    return [];
  });
}
