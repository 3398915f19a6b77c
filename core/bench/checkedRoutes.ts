import { DomainError } from "../errors.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { oneOf } from "../quantity/oneOf.ts";
import type { StepKind, WaitFloors } from "./benchTypes.ts";
import { type RouteRow, stepKinds } from "./routeRows.ts";
import { workableOrder } from "./stepOrder.ts";

const MOST_STEPS = 60;
const LONGEST_MIN = 14 * 24 * 60;

/** What has to set is a wait with its sheet, whatever its minutes; what dries or cools is a wait. */
const waitsOf: Readonly<Partial<Record<StepKind, keyof WaitFloors | null>>> = {
  bondSet: "adhesiveHandleMin",
  gripSet: "gripHandleMin",
  walk: "walkMin",
  coolDown: null,
  paintDry: null,
};
/** What is done before something has to set. */
const setsAfter: Readonly<Partial<Record<StepKind, StepKind>>> = { bond: "bondSet", grip: "gripSet" };

const unreadable = (field: string, written: string, accepted: string): DomainError =>
  new DomainError("quantity-unreadable", { field, written, accepted });

function checkedWaits(rows: readonly RouteRow[]): void {
  for (const { kind, wait } of rows) {
    const sheet = waitsOf[kind];
    if (sheet === undefined ? wait !== undefined : wait === undefined || (sheet !== null && wait.sheet !== sheet)) {
      throw unreadable(`${kind} wait`, wait === undefined ? "none" : (wait.sheet ?? "yes"), sheet === undefined ? "none" : (sheet ?? "yes"));
    }
    const set = setsAfter[kind];
    if (set !== undefined && rows.find((row) => row.kind === set)?.after.includes(kind) !== true) {
      throw unreadable(`${set} after`, "", kind);
    }
  }
}

/** All is done before the way out: without a circle, nothing but the walk is waited for by nothing. */
function checkedLast(rows: readonly RouteRow[]): void {
  const loose = rows.find(({ kind }) => kind !== "walk" && !rows.some(({ after }) => after.includes(kind)));
  if (loose !== undefined) throw unreadable(loose.kind, "waited for by nothing", "before sign or walk");
}

function checkedRow(row: RouteRow, kinds: readonly string[]): void {
  oneOf(row.kind, stepKinds, "kind");
  inRange(row.min, { field: `${row.kind} min`, unit: "min", min: 0, max: LONGEST_MIN });
  for (const earlier of row.after) oneOf(earlier, kinds, `${row.kind} after`);
  if (row.setUpShare !== undefined) inRange(row.setUpShare, { field: `${row.kind} setUpShare`, unit: "", min: 0, max: 0.9 });
  if (row.wait?.atLeastMin !== undefined) inRange(row.wait.atLeastMin, { field: `${row.kind} atLeastMin`, unit: "min", min: 0, max: LONGEST_MIN });
}

/**
 * A route of a shop's own that can be worked: known steps, each once, none waiting for each other, with a final check, a signature and the
 * way out of the truck last. What has to set is waited for, and its wait keeps its data sheet.
 *
 * @param rows - the route's table, minutes hands-on or of the wait itself
 * @returns the same rows
 * @throws {DomainError} `quantity-out-of-range` when a minute or share cannot be; `quantity-unreadable` when a step is unknown, is waited for
 *   and missing, a wait is none or lacks its sheet, something is not done before the walk, or one of `measure`, `sign` and `walk` is missing; `list-of-wrong-size` when a step stands there twice; `route-has-a-cycle`
 */
export function checkedRoutes(rows: readonly RouteRow[]): readonly RouteRow[] {
  finiteNumbers(rows, "rows");
  listOf(rows, { field: "rows", min: 3, max: MOST_STEPS });
  const kinds = rows.map(({ kind }) => kind);
  for (const row of rows) checkedRow(row, kinds);
  for (const needed of ["measure", "sign", "walk"]) oneOf(needed, kinds, "rows");
  const twice = kinds.find((kind, at) => kinds.indexOf(kind) !== at);
  if (twice !== undefined) {
    throw new DomainError("list-of-wrong-size", { field: twice, min: 1, max: 1, count: kinds.filter((kind) => kind === twice).length });
  }
  checkedWaits(rows);
  workableOrder(rows);
  checkedLast(rows);
  return rows;
}
