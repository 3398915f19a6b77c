import { type BuildRequest, kindsOnExistingClub } from "../../core/buildSheet/buildRequest.ts";
import type { OrderKind } from "../../core/kinds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";

/** One particular club has to come in for it. */
const worksOnClub = (kind: OrderKind): boolean => kind === "swap" || kindsOnExistingClub.includes(kind);

/** Whether the work is on a club that has yet to come into the truck: its clock starts when it is there. */
export function awaitsClub(request: Pick<BuildRequest, "kind" | "broughtBy">, order: Pick<OrderRow, "clubInAt"> | null): boolean {
  return worksOnClub(request.kind) && request.broughtBy !== "inTruck" && (order === null || order.clubInAt === null);
}
