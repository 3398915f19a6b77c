import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { type OrderRow, ordersIn, requestOf } from "../../db/repositories/orders.ts";
import { type SheetRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";

/** A sheet of another open order that wants a head of the same model and hand. */
export interface RivalSheet {
  readonly order: OrderRow;
  readonly sheet: SheetRow;
  readonly plan: ClubPlan;
  /** For play, not on trial. */
  readonly forGamer: boolean;
}

/** A draft left alone so long has no say any more in who gets which head. */
const DRAFT_COUNTS_MS = 30 * 60_000;

/**
 * The sheets that heads are allotted together with: of confirmed orders before their first step, and of fresh drafts.
 *
 * @param wanted - the head models asked for, with the hand
 * @param except - the order that is being planned
 */
export function rivalSheets(
  reader: Reader,
  truckId: Id<"truck">,
  now: Instant,
  wanted: { readonly models: ReadonlySet<string>; readonly hand: string },
  except: Id<"order"> | null,
): readonly RivalSheet[] {
  const counts = (order: OrderRow): boolean =>
    order.id !== except && (order.state === "confirmed" || order.createdAt >= instant(now - DRAFT_COUNTS_MS));
  return ordersIn(reader, truckId, ["draft", "confirmed"])
    .filter(counts)
    .flatMap((order) =>
      sheetsOf(reader, order).flatMap((sheet) => {
        const { plan } = sheet.sheetPlan;
        const isRival =
          plan !== null && plan.kind !== "reshaft" && plan.target.hand === wanted.hand && wanted.models.has(plan.choice.head.model.name);
        return isRival ? [{ order, sheet, plan, forGamer: requestOf(reader, order).request.purpose !== "test" }] : [];
      }),
    );
}
