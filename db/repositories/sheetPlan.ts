import type { FinishedClub } from "../../core/bag/finishedClub.ts";
import type { SpecClub } from "../../core/bag/specClub.ts";
import type { ClubPlan, HeadChoice, RunnerUp } from "../../core/buildSheet/plan.ts";
import type { ServicePlan } from "../../core/buildSheet/servicePlan.ts";
import type { Id, OrderKind } from "../../core/kinds.ts";

/** Another plan for a confirmed sheet of another order, good while that order is as it was. */
export interface SheetMove {
  readonly order: Id<"order">;
  readonly number: number;
  readonly version: number;
  readonly sheet: Id<"sheet">;
  readonly plan: ClubPlan;
}

/** A sheet as kept: the route and its floors, and what is built from parts or done to a club that exists. */
export interface SheetPlan {
  readonly version: 1;
  readonly plan: ClubPlan | null;
  /** Left out on sheets written before there were any. */
  readonly service?: ServicePlan | null;
  /** The club it leans on or works on, as it was on record when the sheet was made. */
  readonly reference?: SpecClub | null;
  /** The finished club offered for one that broke. */
  readonly finished?: FinishedClub | null;
  /** A nearer head that goes to another open order, as all heads are allotted together. */
  readonly yields?: { readonly serial: string; readonly toOrder: number } | null;
  /** Confirmed sheets that take another head, no further from what was written, when this order is confirmed. */
  readonly moves?: readonly SheetMove[];
  readonly playableAfterBondMin: number;
  readonly playableAfterGripMin: number;
}

/** What was not kept before heads were bent and plans could be of every kind. */
type LaterOfChoice = "atPreferredMark" | "bounceDeg" | "bend" | "bendWarned" | "addedCount" | "deviations";
type LaterOfPlan = "kind" | "elsewhere" | "remedies" | "piece" | "gripMisfit";
type StoredChoice = Omit<HeadChoice, LaterOfChoice> & Partial<Pick<HeadChoice, LaterOfChoice>>;
type StoredRunnerUp = StoredChoice & Partial<Pick<RunnerUp, "givesUp">>;
type StoredPlan = Omit<ClubPlan, LaterOfPlan | "choice" | "runnersUp"> &
  Partial<Pick<ClubPlan, LaterOfPlan>> & { readonly choice: StoredChoice; readonly runnersUp: readonly StoredRunnerUp[] };
type StoredSheetPlan = Omit<SheetPlan, "plan"> & { readonly plan: StoredPlan | null };

const choiceOf = (stored: StoredChoice): HeadChoice => ({
  atPreferredMark: true,
  bounceDeg: stored.head.bounceDeg,
  bend: null,
  bendWarned: false,
  addedCount: 0,
  deviations: [],
  ...stored,
});

const planOf = (stored: StoredPlan, kind: OrderKind): ClubPlan => ({
  kind: kind === "swap" ? "swap" : "build",
  elsewhere: [],
  remedies: [],
  piece: null,
  gripMisfit: null,
  ...stored,
  choice: choiceOf(stored.choice),
  runnersUp: stored.runnersUp.map((one) => ({ ...choiceOf(one), givesUp: one.givesUp ?? [] })),
});

/** A plan as stored, with what plans did not say in earlier days filled in. */
export function readSheetPlan(stored: string, kind: OrderKind): SheetPlan {
  const sheetPlan = JSON.parse(stored) as StoredSheetPlan;
  const { plan } = sheetPlan;
  return { ...sheetPlan, plan: plan === null ? null : planOf(plan, kind) };
}
