import { DomainError } from "../errors.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type RouteRow, stepKinds } from "./routeRows.ts";
import { workableOrder } from "./stepOrder.ts";

const MOST_STEPS = 60;
const LONGEST_MIN = 14 * 24 * 60;

function checkedRow(row: RouteRow, kinds: readonly string[]): void {
  oneOf(row.kind, stepKinds, "kind");
  inRange(row.min, { field: `${row.kind} min`, unit: "min", min: 0, max: LONGEST_MIN });
  for (const earlier of row.after) oneOf(earlier, kinds, `${row.kind} after`);
  if (row.setUpShare !== undefined) inRange(row.setUpShare, { field: `${row.kind} setUpShare`, unit: "", min: 0, max: 0.9 });
  if (row.wait?.atLeastMin !== undefined) inRange(row.wait.atLeastMin, { field: `${row.kind} atLeastMin`, unit: "min", min: 0, max: LONGEST_MIN });
}

/**
 * A route of a shop's own that can be worked: known steps, each once, none waiting for each other, with a final check, a signature and the
 * way out of the truck.
 *
 * @param rows - the route's table, minutes hands-on or of the wait itself
 * @returns the same rows
 * @throws {DomainError} `quantity-out-of-range` when a minute or share cannot be; `quantity-unreadable` when a step is unknown, is waited for
 *   and missing, or one of `measure`, `sign` and `walk` is missing; `list-of-wrong-size` when a step stands there twice; `route-has-a-cycle`
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
  workableOrder(rows);
  return rows;
}
