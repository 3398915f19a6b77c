import type { FaultList } from "./faultList.ts";
import type { ReadRow, ReadTable } from "./readTable.ts";

const MOST_LISTED = 12;

/** The names a column holds, those of unreadable rows too, so that one slip is not reported wherever it is named. */
export function namesIn(table: ReadTable<unknown>, column: string): ReadonlySet<string> {
  return new Set(table.written.map(({ cells }) => cells[column] ?? "").filter((name) => name !== ""));
}

/** Requires a cell to be one of the names another file holds; an empty cell passes. */
export function requireKnown(faults: FaultList, row: ReadRow<unknown>, column: string, names: ReadonlySet<string>, source: string): void {
  const written = row.cells[column] ?? "";
  if (written === "" || names.has(written)) return;
  const list = names.size > 0 && names.size <= MOST_LISTED ? `: ${[...names].join(", ")}` : "";
  faults.add(row, column, `a name in ${source}${list}`);
}

/** Requires every row to differ from the others in the given columns taken together. */
export function requireUnique(faults: FaultList, rows: readonly ReadRow<unknown>[], columns: readonly string[]): void {
  const firstRows = new Map<string, number>();
  for (const row of rows) {
    const key = JSON.stringify(columns.map((column) => row.cells[column]));
    const first = firstRows.get(key);
    if (first === undefined) firstRows.set(key, row.row);
    else faults.add(row, columns.at(-1) ?? "", `each ${columns.join(" and ")} once; row ${first} has it`);
  }
}

/** @returns the rows by a key made of them, in their order */
export function groupBy<Row>(rows: readonly Row[], key: (row: Row) => string): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(key(row));
    if (group === undefined) groups.set(key(row), [row]);
    else group.push(row);
  }
  return groups;
}
