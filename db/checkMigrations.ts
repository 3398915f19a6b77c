import { join } from "node:path";
import { projectFolder, schemaFiles } from "./drizzleKit.ts";
import { migrationFaults } from "./migrationFaults.ts";

const faults = migrationFaults(join(projectFolder, "db", "migrations"), schemaFiles);
process.stdout.write(faults.length === 0 ? "migrations match the schema\n" : `${faults.join("\n")}\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
