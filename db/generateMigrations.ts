import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { auditTriggers } from "./auditTriggers.ts";
import { drizzleKit, migrationFiles, projectFolder, schemaFiles } from "./drizzleKit.ts";
import { migrationFaults } from "./migrationFaults.ts";
import { strictTables } from "./strictTables.ts";

const folder = join(projectFolder, "db", "migrations");
const before = new Set(migrationFiles(folder).map(({ name }) => name));
drizzleKit(["generate", "--config", "db/drizzle.config.ts", ...process.argv.slice(2)], true);

migrationFiles(folder).forEach(({ name, sql }, position) => {
  if (!before.has(name)) {
    const triggers = position === 0 ? `\n--> statement-breakpoint\n${auditTriggers}\n` : "";
    writeFileSync(join(folder, name), strictTables(sql) + triggers);
  }
});

const faults = migrationFaults(folder, schemaFiles);
process.stdout.write(faults.map((fault) => `${fault}\n`).join(""));
process.exitCode = faults.length === 0 ? 0 : 1;
