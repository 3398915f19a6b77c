import { copyFileSync, existsSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import Database from "better-sqlite3";
import { max } from "drizzle-orm";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { type Instant, instant } from "../core/kinds.ts";
import { syncToDisk } from "./backup.ts";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { fileFaults } from "./fileFaults.ts";
import { APPLICATION_ID } from "./open.ts";
import { processLock } from "./processLock.ts";
import { refusalOf } from "./refusalOf.ts";
import { setMeta } from "./repositories/meta.ts";
import { distrustPending } from "./repositories/outbox.ts";
import { audit } from "./schema/plumbing.ts";
import { write } from "./write.ts";

/** Ids that may have been given after the backup are not given again. */
const SKIPPED_IDS = 1000;

/**
 * Makes a database at a new path out of a backup; the damaged one stays where it is.
 *
 * Posts that wait in the backup may have left since: history is read before they do. Ids skip ahead by a thousand, since
 * people and the platform may know those given after the backup. `restored_at` and `restored_from` are kept in `meta`.
 *
 * @param options - the backup's path; the new path, where nothing may lie; the moment
 * @returns changes from `missingFrom` (the backup's newest; null when it has none) until `now` may be missing
 * @throws {DatabaseRefusal} `occupied`, `missing`, `foreign`, `damaged`, `locked`, `read-only` or `disk-full`
 */
export function restoreDatabase(options: { readonly backup: string; readonly path: string; readonly now: Instant }): {
  readonly missingFrom: Instant | null;
} {
  const path = resolve(options.path);
  if (!existsSync(options.backup)) {
    throw new DatabaseRefusal("missing", { path: options.backup });
  }
  const unfinished = `${path}.unfinished`;
  const lock = processLock(path);
  try {
    if (existsSync(path)) {
      throw new DatabaseRefusal("occupied", { path });
    }
    copyFileSync(options.backup, unfinished);
    const missingFrom = makeReady(unfinished, basename(options.backup), options.now);
    syncToDisk(unfinished);
    renameSync(unfinished, path);
    syncToDisk(dirname(path));
    return { missingFrom };
  } catch (error) {
    throw refusalOf(error, path);
  } finally {
    for (const file of [unfinished, `${unfinished}-wal`, `${unfinished}-shm`]) {
      rmSync(file, { force: true });
    }
    lock.release();
  }
}

function makeReady(path: string, backupName: string, now: Instant): Instant | null {
  const sqlite = new Database(path, { fileMustExist: true });
  try {
    sqlite.pragma("journal_mode = DELETE");
    const applicationId = Number(sqlite.pragma("application_id", { simple: true }));
    if (applicationId !== APPLICATION_ID) {
      throw new DatabaseRefusal("foreign", { path: backupName, applicationId });
    }
    const found = fileFaults(sqlite);
    if (found.length > 0) {
      throw new DatabaseRefusal("damaged", { path: backupName, found });
    }
    return write(drizzle(sqlite), (tx) => {
      distrustPending(tx);
      tx.run(`UPDATE sqlite_sequence SET seq = seq + ${SKIPPED_IDS} WHERE name <> 'audit'`);
      setMeta(tx, "restored_at", String(now));
      setMeta(tx, "restored_from", backupName);
      const newest = tx
        .select({ at: max(audit.at) })
        .from(audit)
        .get()?.at;
      return newest === null || newest === undefined ? null : instant(newest);
    });
  } finally {
    sqlite.close();
  }
}
