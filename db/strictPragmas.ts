import type { Database } from "better-sqlite3";
import { DatabaseRefusal } from "./databaseRefusal.ts";

const pragmas = [
  { pragma: "journal_mode", value: "WAL", wanted: "wal" },
  { pragma: "synchronous", value: "FULL", wanted: "2" },
  { pragma: "foreign_keys", value: "ON", wanted: "1" },
  { pragma: "busy_timeout", value: "5000", wanted: "5000" },
  { pragma: "trusted_schema", value: "OFF", wanted: "0" },
  { pragma: "secure_delete", value: "ON", wanted: "1" },
] as const;

/**
 * Sets what durability rests on, and reads each setting back.
 *
 * Write-ahead log with a sync at every commit (an acknowledged change survives a power cut), references enforced, five
 * seconds of patience, no trust in functions named by the schema, erased data overwritten.
 *
 * @param sqlite - the open database
 * @param inMemory - a database in memory has no log: `journal_mode` is left as it is
 * @throws {DatabaseRefusal} `pragma` when a setting does not stick
 */
export function strictPragmas(sqlite: Database, inMemory = false): void {
  for (const { pragma, value, wanted } of pragmas) {
    if (inMemory && pragma === "journal_mode") {
      continue;
    }
    sqlite.pragma(`${pragma} = ${value}`);
    const got = String(sqlite.pragma(pragma, { simple: true }));
    if (got !== wanted) {
      throw new DatabaseRefusal("pragma", { pragma, wanted, got });
    }
  }
}
