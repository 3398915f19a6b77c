import Database from "better-sqlite3";
import { refusalOf } from "./refusalOf.ts";

/**
 * Takes a database for this process alone, by an exclusive transaction held on a second file beside it.
 *
 * The operating system frees it when the process ends in any way, so that no stale lock is ever left.
 *
 * @param path - of the database; the lock lies at the same path with `.lock` at its end
 * @returns what frees the lock
 * @throws {DatabaseRefusal} `locked` when another process holds it, `read-only` when the folder cannot be written
 */
export function processLock(path: string): { readonly release: () => void } {
  const lock = openLock(path);
  try {
    lock.exec("BEGIN EXCLUSIVE");
  } catch (error) {
    lock.close();
    throw refusalOf(error, path);
  }
  return { release: () => lock.close() };
}

function openLock(path: string): Database.Database {
  try {
    return new Database(`${path}.lock`, { timeout: 0 });
  } catch (error) {
    throw refusalOf(error, path);
  }
}
