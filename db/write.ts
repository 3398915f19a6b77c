import type { RunResult } from "better-sqlite3";
import type { BetterSQLite3Database } from "drizzle-orm/better-sqlite3";
import type { BaseSQLiteDatabase } from "drizzle-orm/sqlite-core";

export type Db = BetterSQLite3Database;
/** What a change is made on: only `write` hands one out. */
export type Tx = Parameters<Parameters<Db["transaction"]>[0]>[0];
/** What can be read from: the database, or a transaction under way. */
export type Reader = BaseSQLiteDatabase<"sync", RunResult, Record<string, never>>;

/**
 * Does some work in one immediate transaction: all of it is on disk when this returns, or none of it happens.
 *
 * @param db - the open database
 * @param work - synchronous; an async callback is refused by type, because its tail would run outside the transaction
 * @returns what the work returns
 */
export function write<T>(db: Db, work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T {
  return db.transaction((tx) => work(tx) as T, { behavior: "immediate" });
}
