import { fileFaults } from "../../db/fileFaults.ts";
import { pendingMigrations } from "../../db/migrationHistory.ts";
import type { ReadOnlyDatabase } from "../../db/openReadOnly.ts";
import { verifyChain } from "../../db/repositories/audit.ts";
import { type Check, fault, ok, skipped, warn } from "./finding.ts";

/** The database itself: sound, up to date, its record unbroken, and whether a bot has it open. */
export function databaseChecks(
  { db, sqlite }: ReadOnlyDatabase,
  path: string,
  migrationsFolder: string,
  isInUse: (path: string) => boolean,
): readonly Check[] {
  return [
    {
      name: "database",
      look: () => {
        const found = fileFaults(sqlite);
        return found.length === 0
          ? ok("the file and its references are sound")
          : fault(found.slice(0, 3).join("; "), "Stop the bot, keep the file, and put the newest backup in its place");
      },
    },
    {
      name: "migrations",
      look: () => {
        const { applied, pending } = pendingMigrations(sqlite, migrationsFolder);
        return pending.length === 0
          ? ok(`all ${applied} applied`)
          : warn(`${pending.length} not applied yet: ${pending.join(", ")}`, "Run npm start: it takes a backup and applies them");
      },
    },
    {
      name: "audit",
      look: () => {
        if (!isUpToDate(sqlite, migrationsFolder)) {
          return skipped("the database is not up to date");
        }
        // In one transaction, so that what a running bot adds meanwhile does not look like a gap.
        const audit = db.transaction((tx) => verifyChain(tx));
        return audit.kind === "sound"
          ? ok(`${audit.entries} entries verify`)
          : fault(`it does not verify at entry ${audit.seq}: ${audit.reason}`, "Stop the bot, keep the file, and compare it with a backup");
      },
    },
    { name: "running", look: () => ok(isInUse(path) ? "a bot has the database open" : "no bot has the database open") },
  ];
}

/** Whether the tables are those of this program; a history that cannot be read has its own fault. */
export function isUpToDate(sqlite: ReadOnlyDatabase["sqlite"], migrationsFolder: string): boolean {
  try {
    return pendingMigrations(sqlite, migrationsFolder).pending.length === 0;
  } catch {
    return false;
  }
}
