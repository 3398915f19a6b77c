import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readWeek } from "../../../bot/boundary/readWeek.ts";
import type { Week, WeekFault } from "../../../bot/boundary/week.ts";

export const scenario = new URL("../../../fixtures/scenario", import.meta.url).pathname;

/** The demo week, or a failure that names its faults. */
export function demoWeek(): Week {
  const reading = readWeek(scenario);
  if (reading.kind === "faults") throw new Error(`the demo week has faults: ${JSON.stringify(reading.faults.slice(0, 10))}`);
  return reading.week;
}

/** Hands a copy of the demo week in a folder of its own to `use`, and removes it. */
export function inCopy<T>(use: (folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), "week-"));
  try {
    cpSync(scenario, folder, { recursive: true });
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The faults of a demo week with one file changed. */
export function faultsAfter(file: string, change: (text: string) => string | Uint8Array): readonly WeekFault[] {
  return inCopy((folder) => {
    const path = join(folder, file);
    const before = readFileSync(path, "utf8");
    const after = change(before);
    if (after === before) throw new Error(`${file} was not changed`);
    writeFileSync(path, after);
    const reading = readWeek(folder);
    return reading.kind === "faults" ? reading.faults : [];
  });
}

/** Replaces a cell, found by its column and by another cell of its row. */
export function withCell(text: string, where: readonly [column: string, value: string], column: string, value: string): string {
  const [header = "", ...lines] = text.split("\n");
  const columns = header.split(",");
  const at = lines.findIndex((line) => line.split(",")[columns.indexOf(where[0])] === where[1]);
  const cells = (lines[at] ?? "").split(",");
  cells[columns.indexOf(column)] = value;
  return [header, ...lines.with(at, cells.join(","))].join("\n");
}
