import type { BenchJob, Route } from "../../core/bench/benchTypes.ts";
import { type ClubName, clubFamily, type Id, type Instant, id, type OrderKind } from "../../core/kinds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import { orderWeight } from "./orderWeight.ts";

/** An order that is not on the bench yet, one route a club. */
export interface BenchExtra {
  readonly kind: OrderKind;
  readonly clubs: readonly { readonly club: ClubName; readonly route: Route }[];
  readonly dueAt: Instant | null;
  readonly urgent: boolean;
  /** The club it works on has yet to come in. */
  readonly releaseAt: Instant | null;
}

/** The order id that stands for one not yet on the bench. */
export const extraOrder: Id<"order"> = id<"order">(0);

/** What the pace of a club's work is learned by. */
export const workOf = (kind: OrderKind, club: ClubName): string => `${kind} ${clubFamily(club) ?? "iron"}`;

/** A draft, or an order whose club is only now in the truck, as one more on the bench. */
export function extraOfOrder(order: Pick<OrderRow, "kind" | "byAt" | "urgent">, sheets: readonly SheetRow[]): BenchExtra {
  const clubs = sheets.map(({ club, sheetPlan, steps }) => ({ club, route: { ...sheetPlan, steps: steps.map(({ route }) => route) } }));
  return { kind: order.kind, clubs, dueAt: order.byAt, urgent: order.urgent, releaseAt: null };
}

/** Its jobs beside those on the bench. */
export function extraJobs(extra: BenchExtra): readonly BenchJob[] {
  return extra.clubs.map(({ club, route }, job) => ({
    order: extraOrder,
    job,
    work: workOf(extra.kind, club),
    steps: route.steps.map((step) => ({ route: step, state: "todo", startedAt: null, finishedAt: null, workedMs: 0, person: null })),
    playableAfterBondMin: route.playableAfterBondMin,
    playableAfterGripMin: route.playableAfterGripMin,
    releaseAt: extra.releaseAt,
    dueAt: extra.dueAt,
    weight: orderWeight({ urgent: extra.urgent, byAt: extra.dueAt }),
    held: false,
  }));
}
