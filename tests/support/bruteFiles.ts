import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

export type Cells = Readonly<Record<string, string>>;

export const rowsOf = (file: string): readonly Cells[] =>
  parse(readFileSync(new URL(`../../fixtures/scenario/${file}.csv`, import.meta.url)), { columns: true, skip_empty_lines: true });

export const numberIn = (cells: Cells | undefined, column: string): number | null => {
  const cell = cells?.[column] ?? "";
  return cell === "" ? null : Number(cell);
};

/** The models of heads by name. */
export const models: ReadonlyMap<string, Cells> = new Map(rowsOf("head-models").map((row) => [row.name ?? "", row]));
