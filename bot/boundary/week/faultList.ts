import type { WeekFault } from "../week.ts";
import type { ReadRow } from "./readTable.ts";

/** Every fault found so far, in the order of the files. */
export class FaultList {
  readonly all: WeekFault[] = [];

  /** Notes that a cell of a row is not what would be accepted. */
  add(row: Pick<ReadRow<unknown>, "file" | "row" | "cells">, column: string, accepted: string): void {
    this.all.push({ file: row.file, row: row.row, column, written: row.cells[column] ?? null, accepted });
  }
}
