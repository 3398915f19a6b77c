import { CsvError, type Info, parse } from "csv-parse/sync";
import type { WeekFault } from "./week.ts";

/** One record under its header; `row` is the line it begins on, as an editor shows it. */
export interface CsvRow {
  readonly row: number;
  readonly cells: Readonly<Record<string, string>>;
}

interface CsvReading {
  readonly rows: readonly CsvRow[];
  readonly faults: readonly WeekFault[];
}

/** The largest file that is read. */
export const MAX_CSV_BYTES = 2_000_000;
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 100;
const MAX_CELL_CHARACTERS = 500;

interface CsvRecord {
  readonly record: readonly string[];
  readonly info: Info;
}

/**
 * Reads one CSV file of known columns, of which the optional ones may be left out: every fault of shape, by row and column.
 * Rows with a fault are left out.
 */
export function csvRows(file: string, bytes: Uint8Array, columns: readonly string[], optional: ReadonlySet<string> = new Set()): CsvReading {
  const fault = (accepted: string, row: number | null = null): CsvReading => ({
    rows: [],
    faults: [{ file, row, column: null, written: null, accepted }],
  });
  if (bytes.byteLength > MAX_CSV_BYTES) return fault(`a file of at most ${MAX_CSV_BYTES / 1e6} MB`);
  const text = decoded(bytes);
  if (text === null) return fault("text in UTF-8");
  const records = parsed(text);
  if ("accepted" in records) return fault(records.accepted, records.row);
  const [header, ...body] = records;
  if (header === undefined) return fault(`a header: ${columns.join(",")}`);
  if (body.length > MAX_ROWS) return fault(`at most ${MAX_ROWS.toLocaleString("en-GB")} rows under the header`);
  const headerFaults = faultsOfHeader(file, header.record, columns, optional);
  if (headerFaults.length > 0) return { rows: [], faults: headerFaults };
  return rowsUnder(file, header.record, body);
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes).replaceAll("\r\n", "\n");
  } catch {
    return null;
  }
}

function parsed(text: string): readonly CsvRecord[] | { readonly row: number; readonly accepted: string } {
  try {
    return parse(text, { info: true, relax_column_count: true, skip_empty_lines: true, trim: true }) as unknown as readonly CsvRecord[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = (error as CsvError & { readonly lines?: number }).lines ?? 1;
    return { row: line, accepted: 'quotes around a whole cell, closed again; a quote inside written ""' };
  }
}

function faultsOfHeader(file: string, header: readonly string[], columns: readonly string[], optional: ReadonlySet<string>): WeekFault[] {
  if (header.length > MAX_COLUMNS) {
    return [{ file, row: 1, column: null, written: `${header.length} columns`, accepted: `the columns ${columns.join(", ")}` }];
  }
  const known = new Set(columns);
  const faults: WeekFault[] = [];
  const add = (column: string, written: string | null, accepted: string) => faults.push({ file, row: 1, column, written, accepted });
  for (const [at, name] of header.entries()) {
    const shown = name.slice(0, MAX_CELL_CHARACTERS);
    if (!known.has(name)) add(shown, shown, `the columns ${columns.join(", ")}`);
    else if (header.indexOf(name) !== at) add(name, name, "each column once");
  }
  const written = new Set(header);
  for (const column of columns) if (!written.has(column) && !optional.has(column)) add(column, null, `the column ${column}`);
  return faults;
}

function rowsUnder(file: string, header: readonly string[], body: readonly CsvRecord[]): CsvReading {
  const rows: CsvRow[] = [];
  const faults: WeekFault[] = [];
  for (const { record, info } of body) {
    const row = info.lines - record.reduce((lines, cell) => lines + cell.split("\n").length - 1, 0);
    if (record.length !== header.length) {
      faults.push({ file, row, column: null, written: `${record.length} cells`, accepted: `${header.length} cells, one under each column` });
      continue;
    }
    const bad = faultsOfCells(file, row, header, record);
    faults.push(...bad);
    if (bad.length === 0) rows.push({ row, cells: Object.fromEntries(header.map((column, at) => [column, record[at] ?? ""])) });
  }
  return { rows, faults };
}

function faultsOfCells(file: string, row: number, header: readonly string[], record: readonly string[]): WeekFault[] {
  return record.flatMap((cell, at) => {
    const accepted = faultOfCell(cell);
    return accepted === null ? [] : [{ file, row, column: header[at] ?? null, written: cell.slice(0, 40), accepted }];
  });
}

function faultOfCell(cell: string): string | null {
  if (cell.length > MAX_CELL_CHARACTERS) return `at most ${MAX_CELL_CHARACTERS} characters`;
  return hasControlCharacter(cell) ? "text without control characters" : null;
}

function hasControlCharacter(cell: string): boolean {
  for (let at = 0; at < cell.length; at++) {
    const code = cell.charCodeAt(at);
    if ((code < 32 && code !== 9 && code !== 10 && code !== 13) || code === 127) return true;
  }
  return false;
}
