import { cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { auditTriggers } from "./auditTriggers.ts";
import { drizzleKit, migrationFiles, projectFolder } from "./drizzleKit.ts";
import { looseTables } from "./strictTables.ts";

/**
 * Tells how a folder of migrations differs from the schema, by generating into a copy of it what would still be missing.
 *
 * @param migrationsFolder - the folder to check
 * @param schema - the schema's files, as a pattern
 * @returns one line a fault; none when schema and migrations say the same
 */
export function migrationFaults(migrationsFolder: string, schema: string): readonly string[] {
  const files = migrationFiles(migrationsFolder);
  const loose = files.flatMap(({ name, sql }) => looseTables(sql).map((table) => `${name}: table ${table} is not STRICT`));
  const triggers = files[0]?.sql.includes(auditTriggers) ? [] : ["the first migration lacks the audit's triggers"];
  return [...loose, ...triggers, ...missingMigrations(migrationsFolder, schema)];
}

function missingMigrations(migrationsFolder: string, schema: string): readonly string[] {
  const scratch = mkdtempSync(join(tmpdir(), "migrations-"));
  try {
    const copy = join(scratch, "migrations");
    if (existsSync(migrationsFolder)) {
      cpSync(migrationsFolder, copy, { recursive: true });
    }
    const known = migrationFiles(copy).length;
    const printed = drizzleKit(["generate", "--dialect", "sqlite", "--schema", schema, "--out", relative(projectFolder, copy)], false);
    const missing = migrationFiles(copy).slice(known);
    if (missing.length === 0 && !printed.includes("No schema changes")) {
      return [`the schema and the migrations could not be compared: ${printed.trim()}`];
    }
    return missing.map(({ sql }) => `the schema has changes without a migration:\n${sql}`);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
