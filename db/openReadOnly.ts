import { existsSync, realpathSync, statSync } from "node:fs";
import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { APPLICATION_ID } from "./open.ts";
import { refusalOf } from "./refusalOf.ts";
import type { Db } from "./write.ts";

export interface ReadOnlyDatabase {
  readonly db: Db;
  readonly sqlite: Database.Database;
  readonly close: () => void;
}

/**
 * Opens a database to look at it beside the process that works on it: no lock is taken and nothing is changed.
 *
 * @param path - of the database
 * @returns the database and what closes it
 * @throws {DatabaseRefusal} `missing`, `empty`, `foreign`, or what keeps the file from being read
 */
export function openReadOnly(path: string): ReadOnlyDatabase {
  if (!existsSync(path)) {
    throw new DatabaseRefusal("missing", { path });
  }
  if (statSync(path).size === 0) {
    throw new DatabaseRefusal("empty", { path });
  }
  try {
    const sqlite = new Database(realpathSync(path), { readonly: true, fileMustExist: true, timeout: 5000 });
    try {
      refuseForeign(sqlite, path);
      sqlite.pragma("trusted_schema = OFF");
      return { db: drizzle(sqlite), sqlite, close: () => sqlite.close() };
    } catch (error) {
      sqlite.close();
      throw error;
    }
  } catch (error) {
    throw refusalOf(error, path);
  }
}

/**
 * Asks whether a process has a database for itself, without taking it.
 *
 * @param path - of the database
 * @returns true while the lock beside it is held
 */
export function isInUse(path: string): boolean {
  const lockPath = `${existsSync(path) ? realpathSync(path) : path}.lock`;
  if (!existsSync(lockPath)) {
    return false;
  }
  try {
    const lock = new Database(lockPath, { readonly: true, fileMustExist: true, timeout: 0 });
    try {
      lock.prepare("SELECT 1 FROM sqlite_schema").get();
      return false;
    } finally {
      lock.close();
    }
  } catch (error) {
    const refusal = refusalOf(error, path);
    if (refusal instanceof DatabaseRefusal && refusal.code === "locked") {
      return true;
    }
    throw refusal;
  }
}

function refuseForeign(sqlite: Database.Database, path: string): void {
  const applicationId = Number(sqlite.pragma("application_id", { simple: true }));
  if (applicationId !== APPLICATION_ID) {
    throw new DatabaseRefusal("foreign", { path, applicationId });
  }
}
