import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "better-sqlite3";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { z } from "zod";
import { DatabaseRefusal } from "./databaseRefusal.ts";

interface KnownMigration {
  readonly name: string;
  readonly hash: string;
  readonly at: number;
}

const journal = z.object({ entries: z.array(z.object({ tag: z.string() })) });

/**
 * Reads the migrations that this program knows.
 *
 * @param migrationsFolder - where they lie, with their journal
 * @returns name, hash of the text and timestamp, in the order of the journal
 */
export function knownMigrations(migrationsFolder: string): readonly KnownMigration[] {
  const { entries } = journal.parse(JSON.parse(readFileSync(join(migrationsFolder, "meta", "_journal.json"), "utf8")));
  return readMigrationFiles({ migrationsFolder }).map(({ hash, folderMillis }, position) => ({
    name: entries[position]?.tag ?? String(position),
    hash,
    at: folderMillis,
  }));
}

/**
 * Compares what a database has applied with what this program knows.
 *
 * @param sqlite - the open database
 * @param migrationsFolder - where the migrations lie
 * @returns how many are applied, and the names of those still missing
 * @throws {DatabaseRefusal} `migration-order` when timestamps do not rise, `newer` when the database has more,
 *   `migration-changed` when an applied one was edited
 */
export function pendingMigrations(sqlite: Database, migrationsFolder: string): { readonly applied: number; readonly pending: readonly string[] } {
  const known = knownMigrations(migrationsFolder);
  const misplaced = known.find(({ at }, position) => at <= (known[position - 1]?.at ?? Number.NEGATIVE_INFINITY));
  if (misplaced !== undefined) {
    throw new DatabaseRefusal("migration-order", { migration: misplaced.name });
  }
  const hashes = appliedHashes(sqlite);
  if (hashes.length > known.length) {
    throw new DatabaseRefusal("newer", { applied: hashes.length, known: known.length });
  }
  const changed = known.find(({ hash }, position) => position < hashes.length && hash !== hashes[position]);
  if (changed !== undefined) {
    throw new DatabaseRefusal("migration-changed", { migration: changed.name });
  }
  return { applied: hashes.length, pending: known.slice(hashes.length).map(({ name }) => name) };
}

function appliedHashes(sqlite: Database): readonly unknown[] {
  const exists = sqlite.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = '__drizzle_migrations'").get();
  return exists === undefined ? [] : sqlite.prepare("SELECT hash FROM __drizzle_migrations ORDER BY created_at").pluck().all();
}
