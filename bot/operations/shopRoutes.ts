import type { StepKind, WaitFloors } from "../../core/bench/benchTypes.ts";
import { checkedRoutes } from "../../core/bench/checkedRoutes.ts";
import type { RouteRow } from "../../core/bench/routeRows.ts";
import { defaultFloors, defaultRoutes, type RouteName, type RouteTables, routeNames } from "../../core/bench/routes.ts";
import { DomainError } from "../../core/errors.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { numbersSet, setJson, textsSet } from "../../db/repositories/settings.ts";
import type { Reader, Tx } from "../../db/write.ts";

const PREFIX = "route";

/** Rows as they were kept, or null when nobody can work by them any more. */
function readRows(stored: string): readonly RouteRow[] | null {
  try {
    return checkedRoutes(JSON.parse(stored) as readonly RouteRow[]);
  } catch (error) {
    if (error instanceof DomainError || error instanceof TypeError || error instanceof SyntaxError) {
      return null;
    }
    throw error;
  }
}

/** The routes in force: the shop's own where the lead has written them. */
export function shopRoutes(reader: Reader): RouteTables {
  const set = textsSet(reader, PREFIX);
  const entries = routeNames.map((name) => {
    const stored = set.get(name);
    return [name, (stored === undefined ? null : readRows(stored)) ?? defaultRoutes[name]] as const;
  });
  return Object.fromEntries(entries) as unknown as RouteTables;
}

/** The routes the lead has written anew. */
export const ownRoutes = (reader: Reader): ReadonlySet<string> => new Set(textsSet(reader, PREFIX).keys());

/**
 * Writes a route of the shop's own, or takes it back to the usual.
 *
 * @throws {DomainError} as `checkedRoutes`
 */
export function writeRoute(
  tx: Tx,
  name: RouteName,
  rows: readonly RouteRow[] | null,
  by: { readonly personId: Id<"person">; readonly at: Instant },
): void {
  setJson(tx, `${PREFIX}.${name}`, rows === null ? null : JSON.stringify(checkedRoutes(rows)), by);
}

/** The same route with another time for one of its steps; null when it has no such step. */
export function withMinutes(rows: readonly RouteRow[], kind: StepKind, min: number): readonly RouteRow[] | null {
  return rows.some((row) => row.kind === kind) ? rows.map((row) => (row.kind === kind ? { ...row, min } : row)) : null;
}

/** The waits nobody shortens: those of the shop's own products' sheets where the lead has written them. */
export function shopFloors(reader: Reader): WaitFloors {
  const set = numbersSet(reader, "floor");
  const entries = Object.entries(defaultFloors).map(([name, usual]) => [name, set.get(name) ?? usual] as const);
  return Object.fromEntries(entries) as unknown as WaitFloors;
}
