import type { Database } from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { knownMigrations } from "./migrationHistory.ts";

/**
 * Applies the migrations that are still missing, all or none, with references unenforced meanwhile and checked after.
 *
 * With references enforced a rebuilt table would take its children with it.
 *
 * @param sqlite - the open database, with its history checked by `pendingMigrations`
 * @param migrationsFolder - where the migrations lie
 * @param backup - of the database before, named when this fails; null without one
 * @throws {DatabaseRefusal} `migration-failed` when a statement fails or a reference points nowhere afterwards
 */
export function migrateChecked(sqlite: Database, migrationsFolder: string, backup: string | null): void {
  sqlite.pragma("foreign_keys = OFF");
  try {
    sqlite.exec("CREATE TABLE IF NOT EXISTS __drizzle_migrations (id INTEGER PRIMARY KEY, hash TEXT NOT NULL, created_at INTEGER NOT NULL) STRICT");
    migrate(drizzle(sqlite), { migrationsFolder });
  } catch (error) {
    const reason = error instanceof Error && error.cause instanceof Error ? error.cause.message : String(error);
    throw new DatabaseRefusal("migration-failed", { reason, backup }, error);
  } finally {
    sqlite.pragma("foreign_keys = ON");
  }
  const dangling = sqlite.pragma("foreign_key_check");
  if (Array.isArray(dangling) && dangling.length > 0) {
    throw new DatabaseRefusal("migration-failed", { reason: `${dangling.length} references point nowhere`, backup });
  }
  const applied = sqlite.prepare("SELECT count(*) FROM __drizzle_migrations").pluck().get();
  if (applied !== knownMigrations(migrationsFolder).length) {
    throw new DatabaseRefusal("migration-failed", { reason: "a migration was passed over", backup });
  }
}
