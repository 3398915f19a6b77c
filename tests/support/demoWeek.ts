import { fileURLToPath } from "node:url";
import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { openWeek } from "../../bot/openWeek.ts";
import { openMemory } from "../../db/open.ts";
import { strictPragmas } from "../../db/strictPragmas.ts";
import type { Db } from "../../db/write.ts";

const folderOf = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

let loaded: Promise<Buffer> | null = null;

/** The demo week with its orders in progress, loaded once a worker and copied for each test. */
export async function demoWeek(): Promise<{ readonly db: Db; readonly close: () => void }> {
  loaded ??= loadOnce();
  const sqlite = new Database(await loaded);
  strictPragmas(sqlite, true);
  return { db: drizzle(sqlite), close: () => sqlite.close() };
}

async function loadOnce(): Promise<Buffer> {
  const { db, sqlite, close } = openMemory({ migrationsFolder: folderOf("db/migrations") });
  const bugs: unknown[] = [];
  const opened = await openWeek(db, { folder: folderOf("fixtures/scenario"), at: null }, (error) => bugs.push(error));
  if (opened.kind !== "ready" || bugs.length > 0) {
    throw new Error("the demo week does not open", { cause: bugs[0] ?? opened });
  }
  const bytes = sqlite.serialize();
  close();
  return bytes;
}
