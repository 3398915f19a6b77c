import type { SpecClub } from "../../core/bag/specClub.ts";
import type { Route } from "../../core/bench/benchTypes.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { ClubPlan, PlanFault } from "../../core/buildSheet/plan.ts";
import type { TargetFault } from "../../core/buildSheet/resolveTarget.ts";
import type { ServiceFault, ServicePlan } from "../../core/buildSheet/servicePlan.ts";
import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";

export type OrderFault =
  | PlanFault
  | TargetFault
  | ServiceFault
  | { readonly code: "no-reference"; readonly from: "gamer" | "backup" | "order"; readonly club: ClubName }
  /** Work on a club that is on no record: nothing says what it is. */
  | { readonly code: "no-such-club"; readonly club: ClubName };

/** One club of an order: its route, what is built or done, or why it cannot be planned. */
export interface PlannedClub {
  readonly club: ClubName;
  /** Which of several alike, from 1. */
  readonly copy: number;
  readonly reference: SpecClub | null;
  readonly route: Route;
  readonly plan: ClubPlan | null;
  readonly service: ServicePlan | null;
  /** What a sheet keeps beside its plan. */
  readonly beside: Pick<SheetPlan, "finished" | "yields" | "moves">;
  readonly faults: readonly OrderFault[];
}

/** What a plan is asked for. */
export interface OrderToPlan {
  readonly request: BuildRequest;
  readonly truckId: Id<"truck">;
  readonly now: Instant;
  /** The one head to build with, when the rep chose it. */
  readonly headSerial?: string | undefined;
  /** The order it replaces the plan of: what that one holds is free for it. */
  readonly replaces?: Id<"order"> | undefined;
}
