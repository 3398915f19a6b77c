import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import type { Id } from "../../core/kinds.ts";
import { reserve } from "../../db/repositories/holds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { partsOfSheet } from "./partsOfSheet.ts";
import { takePart } from "./takePart.ts";

interface ToHold {
  readonly id: Id<"sheet">;
  readonly sheetPlan: Pick<SheetPlan, "plan" | "service">;
}

/** Holds what the sheets take, one part after the other; names what is gone. */
function holdOf(tx: Tx, order: OrderRow, sheets: readonly ToHold[]): readonly string[] {
  const gone: string[] = [];
  const takes = sheets.flatMap(({ id, sheetPlan }) => partsOfSheet(sheetPlan).map((part) => ({ sheetId: id, part })));
  takes.reduce<PartsInReach>(
    (left, { sheetId, part }) => {
      const taken = takePart(left, part);
      if (taken === null) {
        gone.push(part.name);
        return left;
      }
      reserve(tx, { ...taken.hold, sheetId });
      return taken.left;
    },
    partsInReach(tx, order),
  );
  return gone;
}

/**
 * Holds every part of every sheet of an order, or names what is gone.
 *
 * @param tx - the transaction
 * @param order - its sheets must hold nothing yet
 * @returns what is no longer free; then nothing of the transaction may stay
 */
export const holdParts = (tx: Tx, order: OrderRow): readonly string[] => holdOf(tx, order, sheetsOf(tx, order));

/** The same for one sheet. */
export const holdSheet = (tx: Tx, order: OrderRow, sheet: ToHold): readonly string[] => holdOf(tx, order, [sheet]);
