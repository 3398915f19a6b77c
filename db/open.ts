import { statSync } from "node:fs";
import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import type { Instant } from "../core/kinds.ts";
import { backupDatabase, backupFolder } from "./backup.ts";
import { refuseMissing, truePath } from "./databasePath.ts";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { fileFaults } from "./fileFaults.ts";
import { migrateChecked } from "./migrateChecked.ts";
import { pendingMigrations } from "./migrationHistory.ts";
import { createPrivate, keepPrivate } from "./privateFiles.ts";
import { processLock } from "./processLock.ts";
import { refusalOf } from "./refusalOf.ts";
import { verifyChain } from "./repositories/audit.ts";
import { strictPragmas } from "./strictPragmas.ts";
import type { Db } from "./write.ts";

export interface OpenDatabase {
  readonly db: Db;
  readonly sqlite: Database.Database;
  /** The backup taken before migrating, when there was something to migrate. */
  readonly backup: string | null;
  readonly close: () => void;
}

/** `RGC1` in the file's header: tells our files from those of other programs. */
export const APPLICATION_ID = 0x52474331;

/**
 * Opens the database for this process alone, after every check that can be made before work begins.
 *
 * Process lock → the file is there → it is ours → it can be written → it is sound → backup and migrations when some are
 * missing → settings of durability → the audit verifies. Nobody but their owner may read the files.
 *
 * @param options - `path`; `create` makes a new database when there is none; `now` names a backup; where migrations lie
 * @returns the database and what closes it
 * @throws {DatabaseRefusal} with the code of the first check that fails; the file is left as it was
 */
export async function openDatabase(options: {
  readonly path: string;
  readonly create: boolean;
  readonly now: Instant;
  readonly migrationsFolder: string;
}): Promise<OpenDatabase> {
  const path = truePath(options.path, options.create);
  const lock = processLock(path);
  try {
    refuseMissing(path, options.create);
    if (options.create) {
      createPrivate(path);
    }
    const sqlite = new Database(path, { fileMustExist: !options.create, timeout: 5000 });
    try {
      const backup = await prepare(sqlite, path, options);
      const close = () => {
        sqlite.close();
        lock.release();
      };
      return { db: drizzle(sqlite), sqlite, backup, close };
    } catch (error) {
      sqlite.close();
      throw error;
    }
  } catch (error) {
    lock.release();
    throw refusalOf(error, path);
  }
}

/**
 * Opens a database in memory, with the real migrations and settings, for tests and trials.
 *
 * @param options - where the migrations lie
 * @returns the database and what closes it
 */
export function openMemory({ migrationsFolder }: { readonly migrationsFolder: string }): OpenDatabase {
  const sqlite = new Database(":memory:");
  sqlite.pragma(`application_id = ${APPLICATION_ID}`);
  pendingMigrations(sqlite, migrationsFolder);
  migrateChecked(sqlite, migrationsFolder, null);
  strictPragmas(sqlite, true);
  return { db: drizzle(sqlite), sqlite, backup: null, close: () => sqlite.close() };
}

async function prepare(
  sqlite: Database.Database,
  path: string,
  { now, migrationsFolder }: { readonly now: Instant; readonly migrationsFolder: string },
): Promise<string | null> {
  refuseForeign(sqlite, path);
  probeWrite(sqlite);
  const found = fileFaults(sqlite);
  if (found.length > 0) {
    throw new DatabaseRefusal("damaged", { path, found });
  }
  for (const file of [path, `${path}-wal`, `${path}-shm`, `${path}.lock`]) {
    keepPrivate(file);
  }
  const { applied, pending } = pendingMigrations(sqlite, migrationsFolder);
  const backup = applied > 0 && pending.length > 0 ? await backupDatabase(sqlite, backupFolder(path), now, "before-migration") : null;
  if (pending.length > 0) {
    migrateChecked(sqlite, migrationsFolder, backup);
  }
  strictPragmas(sqlite);
  const audit = verifyChain(drizzle(sqlite));
  if (audit.kind === "broken") {
    throw new DatabaseRefusal("audit-broken", { seq: audit.seq, reason: audit.reason });
  }
  return backup;
}

/** A file without a table is one that we are just making; any other must bear our mark. */
function refuseForeign(sqlite: Database.Database, path: string): void {
  const applicationId = Number(sqlite.pragma("application_id", { simple: true }));
  const isBlank = applicationId === 0 && sqlite.prepare("SELECT count(*) FROM sqlite_schema").pluck().get() === 0 && statSync(path).size === 0;
  if (isBlank) {
    sqlite.pragma(`application_id = ${APPLICATION_ID}`);
  } else if (applicationId !== APPLICATION_ID) {
    throw new DatabaseRefusal("foreign", { path, applicationId });
  }
}

/** A folder that cannot be written lets a file be opened, and fails at the first change. */
function probeWrite(sqlite: Database.Database): void {
  sqlite.pragma(`user_version = ${Number(sqlite.pragma("user_version", { simple: true }))}`);
}
