import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Where the project lies, whatever folder the program was started in. */
export const projectFolder = fileURLToPath(new URL("..", import.meta.url));

/** The schema's files, seen from the project's folder. */
export const schemaFiles = "./db/schema/*.ts";

/**
 * Runs the generator of migrations, which needs no network.
 *
 * It ends well even when it could not ask what a new name means: judge by what it wrote, never by its exit code.
 *
 * @param args - command and options
 * @param asks - whether it may ask at the terminal; what it prints then goes there
 * @returns what it printed, empty when it may ask
 */
export function drizzleKit(args: readonly string[], asks: boolean): string {
  const program = join(dirname(createRequire(import.meta.url).resolve("drizzle-kit")), "bin.cjs");
  const stdio = asks ? "inherit" : ["ignore" as const, "pipe" as const, "pipe" as const];
  const run = spawnSync(process.execPath, [program, ...args], { cwd: projectFolder, encoding: "utf8", stdio });
  return `${run.stdout ?? ""}${run.stderr ?? ""}`;
}

/**
 * Reads the migrations of a folder.
 *
 * @param folder - where the `.sql` files lie; none when it does not exist
 * @returns name and SQL, in the order they are applied
 */
export function migrationFiles(folder: string): readonly { readonly name: string; readonly sql: string }[] {
  if (!existsSync(folder)) {
    return [];
  }
  const names = readdirSync(folder).filter((name) => name.endsWith(".sql"));
  return names.sort().map((name) => ({ name, sql: readFileSync(join(folder, name), "utf8") }));
}
