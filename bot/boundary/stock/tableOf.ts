import { z } from "zod";
import { csvRows } from "../csvRows.ts";
import type { StockFault } from "./stockKnown.ts";

/** A row with what could be read of it, cell by cell. */
export interface TableRow<Value> {
  readonly row: number;
  readonly cells: Readonly<Record<string, string>>;
  readonly value: Partial<Value>;
}

/** The names in a first line that is the header of a table, folded; null when the text is no table. */
export function headerOf(text: string, columns: readonly string[]): readonly string[] | null {
  const first = /^\s*([^\n\r]*)/.exec(text)?.[1] ?? "";
  const names = first.split(",").map((name) => name.trim().toLowerCase());
  return names.filter((name) => columns.includes(name)).length >= 2 ? names : null;
}

/** Reads a table of known columns out of a text; every fault of its cells by row and column. */
export function tableOf<Schema extends z.ZodObject>(
  text: string,
  { shape }: Schema,
): { readonly rows: readonly TableRow<z.output<Schema>>[]; readonly faults: readonly StockFault[] } {
  const written = csvRows("", new TextEncoder().encode(text.replace(/^\s*[^\n\r]*/, (header) => header.toLowerCase())), Object.keys(shape));
  const faults: StockFault[] = written.faults.map(({ row, column, written: cell, accepted }) => ({
    row: row ?? 1,
    column: column ?? "text",
    written: cell,
    accepted,
    guess: null,
  }));
  const rows = written.rows.map(({ row, cells }) => {
    const read = Object.entries(shape).map(([column, schema]) => [column, z.safeParse(schema, cells[column] ?? "")] as const);
    faults.push(
      ...read.flatMap(([column, { error }]) =>
        (error?.issues ?? []).map(({ message }) => ({ row, column, written: cells[column] ?? null, accepted: message, guess: null })),
      ),
    );
    const value = Object.fromEntries(read.flatMap(([column, { success, data }]) => (success ? [[column, data]] : [])));
    return { row, cells, value: value as Partial<z.output<Schema>> };
  });
  return { rows, faults };
}
