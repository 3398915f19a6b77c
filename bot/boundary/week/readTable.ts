import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
import { type CsvRow, csvRows, MAX_CSV_BYTES } from "../csvRows.ts";
import type { WeekFault } from "../week.ts";

/** A row whose cells were all read. */
export interface ReadRow<Value> extends CsvRow {
  readonly file: string;
  readonly value: Value;
}

/** One file of the week: the rows that could be read, every row's cells as written, and the faults of the others. */
export interface ReadTable<Value> {
  readonly file: string;
  readonly rows: readonly ReadRow<Value>[];
  readonly written: readonly CsvRow[];
  readonly faults: readonly WeekFault[];
}

/** Columns whose cells may be absent. */
function optionalColumns(schema: z.ZodObject): ReadonlySet<string> {
  return new Set(Object.entries(schema.shape).flatMap(([column, kind]) => (kind.safeParse(undefined).success ? [column] : [])));
}

/** The same of a file that may be left out: then it has no rows. */
export function readTableIfAny<Schema extends z.ZodObject>(folder: string, file: string, schema: Schema): ReadTable<z.output<Schema>> {
  return existsSync(join(folder, file)) ? readTable(folder, file, schema) : { file, rows: [], written: [], faults: [] };
}

/** Reads one file of the week by the schema of its rows, whose keys are the columns. */
export function readTable<Schema extends z.ZodObject>(folder: string, file: string, schema: Schema): ReadTable<z.output<Schema>> {
  const bytes = fileBytes(join(folder, file));
  if (typeof bytes === "string") return { file, rows: [], written: [], faults: [{ file, row: null, column: null, written: null, accepted: bytes }] };
  const { rows: written, faults: shapeFaults } = csvRows(file, bytes, Object.keys(schema.shape), optionalColumns(schema));
  const faults = [...shapeFaults];
  const rows: ReadRow<z.output<Schema>>[] = [];
  for (const { row, cells } of written) {
    const reading = schema.safeParse(cells);
    if (reading.success) rows.push({ file, row, cells, value: reading.data });
    else faults.push(...reading.error.issues.map((issue) => faultOf(file, row, cells, issue)));
  }
  return { file, rows, written, faults };
}

function faultOf(file: string, row: number, cells: CsvRow["cells"], issue: z.core.$ZodIssue): WeekFault {
  const column = String(issue.path[0] ?? "");
  return { file, row, column, written: cells[column] ?? null, accepted: issue.message };
}

function fileBytes(path: string): Uint8Array | string {
  try {
    const facts = statSync(path);
    if (!facts.isFile()) return "a file of this name";
    if (facts.size > MAX_CSV_BYTES) return `a file of at most ${MAX_CSV_BYTES / 1e6} MB`;
    return readFileSync(path);
  } catch {
    return "a file of this name that can be read";
  }
}
