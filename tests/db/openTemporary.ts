import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach } from "vitest";
import { DatabaseRefusal } from "../../db/databaseRefusal.ts";
import { migrationsFolder } from "./migrationsFolder.ts";

const made: string[] = [];

/** A folder of its own for one test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "rangecall-"));
  made.push(folder);
  return folder;
}

afterEach(() => {
  for (const folder of made.splice(0)) {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** The refusal that some work ends in; a test fails when it ends otherwise. */
export async function refusalFrom(work: () => unknown): Promise<DatabaseRefusal> {
  try {
    await work();
  } catch (error) {
    if (error instanceof DatabaseRefusal) {
      return error;
    }
    throw error;
  }
  throw new Error("nothing was refused");
}

/** The real migrations in a folder of their own, the first of them edited. */
export function migrationsCopy(edit: (sql: string) => string = (sql) => sql): string {
  const folder = temporaryFolder();
  cpSync(migrationsFolder, folder, { recursive: true });
  const first = readdirSync(folder)
    .filter((name) => name.endsWith(".sql"))
    .sort()[0];
  const path = join(folder, first ?? "none");
  writeFileSync(path, edit(readFileSync(path, "utf8")));
  return folder;
}

/** Adds a migration to a copy, `laterMs` after the newest one there. */
export function addMigration(folder: string, tag: string, sql: string, laterMs = 1000): void {
  const path = join(folder, "meta", "_journal.json");
  const journal: { entries: { idx: number; version: string; when: number; tag: string; breakpoints: boolean }[] } = JSON.parse(
    readFileSync(path, "utf8"),
  );
  const newest = journal.entries.at(-1);
  journal.entries.push({ idx: journal.entries.length, version: "6", when: (newest?.when ?? 0) + laterMs, tag, breakpoints: true });
  writeFileSync(path, JSON.stringify(journal));
  writeFileSync(join(folder, `${tag}.sql`), sql);
}
