import type { StepKind } from "../../core/bench/benchTypes.ts";
import { predecessorPlaces } from "../../core/bench/stepOrder.ts";
import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import { addPress } from "../../db/repositories/benchPresses.ts";
import { changeOrder, type OrderRow, touchBench } from "../../db/repositories/orders.ts";
import { addStep, changeRoute, changeStep, type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";

export interface ReworkWish {
  readonly step: StepKind;
  /** The club, where the order has several. */
  readonly club: ClubName | null;
  readonly reason: string | null;
  readonly personId: Id<"person">;
  readonly now: Instant;
}

export type Reworked =
  | { readonly kind: "reworked"; readonly order: OrderRow; readonly club: ClubName; readonly steps: readonly StepKind[] }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "wrong-state" | "no-such-step" | "not-done" | "must-be-done" }
  | { readonly kind: "which-club"; readonly order: OrderRow; readonly clubs: readonly ClubName[] };

/** The final check is the contract, and no wait is cut short. */
const isContract = (step: StepRow): boolean => step.kind === "measure" || step.kind === "sign" || step.kind === "walk" || step.route.unattended;

function sheetFor(tx: Tx, order: OrderRow, { club }: ReworkWish): SheetRow | readonly ClubName[] {
  const sheets = sheetsOf(tx, order).filter((sheet) => club === null || sheet.club === club);
  const [only, another] = sheets;
  return only !== undefined && another === undefined ? only : sheetsOf(tx, order).map((sheet) => sheet.club);
}

const isUnderWay = ({ state }: OrderRow): boolean => state === "building" || state === "finalCheck";

/** A bond done again sets again. */
const withItsWait = (step: StepKind): readonly StepKind[] => (step === "bond" ? ["bond", "bondSet"] : step === "grip" ? ["grip", "gripSet"] : [step]);

/** What is still to be done of what follows a step, however far, waits for it by name: a step done in between holds nothing back. */
function holdFollowers(tx: Tx, { steps }: SheetRow, kind: StepKind): void {
  const before = predecessorPlaces(steps.map(({ route }) => route));
  const followers = new Set<number>();
  const follow = (follows: (place: number) => boolean): void =>
    steps.forEach((_, at) => {
      if (!followers.has(at) && before[at]?.some(follows)) {
        followers.add(at);
        follow((place) => place === at);
      }
    });
  follow((place) => steps[place]?.kind === kind);
  for (const at of followers) {
    const step = steps[at];
    if (step !== undefined && step.kind !== kind && step.state !== "done" && step.state !== "skipped" && !step.route.after.includes(kind)) {
      changeRoute(tx, step.id, { ...step.route, after: [...step.route.after, kind] });
    }
  }
}

/** The final check of a club that goes back to the bench is still to come. */
function takeBackCheck(tx: Tx, { steps }: SheetRow): void {
  for (const step of steps.filter(({ kind, state }) => (kind === "measure" || kind === "sign") && state !== "todo" && state !== "skipped")) {
    changeStep(tx, step.id, { state: "todo", startedAt: null, finishedAt: null, personId: null });
  }
}

/**
 * Has a step of a club done again: a new step at the end of its route, with what it waits for; what follows waits for both. It is
 * taken up at once, so that it counts as Resume.
 *
 * @param tx - the transaction
 * @param order - as read in it; at the final check it goes back to the bench
 */
export function repeatStep(tx: Tx, order: OrderRow, wish: ReworkWish): Reworked {
  if (!isUnderWay(order)) {
    return { kind: "refused", order, why: "wrong-state" };
  }
  const sheet = sheetFor(tx, order, wish);
  if (!("steps" in sheet)) {
    return { kind: "which-club", order, clubs: sheet };
  }
  const again = withItsWait(wish.step).flatMap((kind) => sheet.steps.findLast((step) => step.kind === kind) ?? []);
  const [first] = again;
  if (first === undefined || first.kind !== wish.step) {
    return { kind: "refused", order, why: "no-such-step" };
  }
  if (first.state !== "done") {
    return { kind: "refused", order, why: "not-done" };
  }
  for (const step of again) {
    addStep(tx, sheet.id, step.route, { reason: wish.reason, repeatsStepId: step.id });
  }
  takeBackCheck(tx, sheet);
  holdFollowers(tx, sheet, again.at(-1)?.route.kind ?? wish.step);
  addPress(tx, { orderId: order.id, press: "resume", personId: wish.personId, at: wish.now });
  touchBench(tx, order.truckId);
  const changed = changeOrder(tx, order.id, { state: "building" });
  return { kind: "reworked", order: changed, club: sheet.club, steps: again.map(({ route }) => route.kind) };
}

/** What waited for a step that is left out waits for what that one waited for. */
function passOn(tx: Tx, { steps }: SheetRow, out: StepRow): void {
  for (const step of steps.filter(({ route }) => route.after.includes(out.route.kind))) {
    changeRoute(tx, step.id, { ...step.route, after: [...new Set([...step.route.after, ...out.route.after])] });
  }
}

/** Leaves out a step that is not needed, with the reason. */
export function skipStep(tx: Tx, order: OrderRow, wish: ReworkWish): Reworked {
  if (!isUnderWay(order) && order.state !== "confirmed") {
    return { kind: "refused", order, why: "wrong-state" };
  }
  const sheet = sheetFor(tx, order, wish);
  if (!("steps" in sheet)) {
    return { kind: "which-club", order, clubs: sheet };
  }
  const step = sheet.steps.findLast(({ kind, state }) => kind === wish.step && state !== "done" && state !== "skipped");
  if (step === undefined) {
    return { kind: "refused", order, why: "no-such-step" };
  }
  if (isContract(step)) {
    return { kind: "refused", order, why: "must-be-done" };
  }
  passOn(tx, sheet, step);
  changeStep(tx, step.id, { state: "skipped", finishedAt: wish.now, reason: wish.reason });
  touchBench(tx, order.truckId);
  return { kind: "reworked", order: changeOrder(tx, order.id, {}), club: sheet.club, steps: [step.route.kind] };
}
