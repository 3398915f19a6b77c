import { readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, it } from "vitest";
import { drizzleKit, projectFolder } from "../../db/drizzleKit.ts";
import { migrationFaults } from "../../db/migrationFaults.ts";
import { migrationsCopy, temporaryFolder } from "./openTemporary.ts";

/** A schema in a file of its own, outside the project, with the project's packages in reach. */
function schemaWith(...tables: readonly string[]): string {
  const file = join(temporaryFolder(), "small.ts");
  const core = join(projectFolder, "node_modules", "drizzle-orm", "sqlite-core", "index.js");
  const lines = tables.map((table) => `export const ${table} = sqliteTable("${table}", { id: integer("id") });`);
  writeFileSync(file, `import { integer, sqliteTable } from ${JSON.stringify(core)};\n${lines.join("\n")}\n`);
  return relative(projectFolder, file);
}

describe("migrationFaults", () => {
  it("finds a schema that has no migrations at all", () => {
    const faults = migrationFaults(join(temporaryFolder(), "none"), schemaWith("small"));
    expect(faults.join("\n")).toContain("CREATE TABLE `small`");
  });

  it("finds what the schema has gained since", () => {
    const folder = temporaryFolder();
    drizzleKit(["generate", "--dialect", "sqlite", "--schema", schemaWith("small"), "--out", relative(projectFolder, folder)], false);
    const faults = migrationFaults(folder, schemaWith("small", "large")).join("\n");
    expect(faults).toContain("CREATE TABLE `large`");
    expect(faults).not.toContain("CREATE TABLE `small`");
  });

  it("does not take a schema for equal when the generator would have to ask what a name means", () => {
    expect(migrationFaults(migrationsCopy(), schemaWith("small")).join("\n")).toContain("could not be compared");
  });

  it("finds a table that lost its STRICT, and missing triggers", () => {
    const folder = migrationsCopy((sql) =>
      sql.replace(/(`value` text NOT NULL\n)\) STRICT;/, "$1);").replace(/CREATE TRIGGER `audit_no_delete`/, "-- "),
    );
    const faults = migrationFaults(folder, "./db/schema/*.ts");
    expect(faults.filter((fault) => fault.includes("is not STRICT"))).toEqual([expect.stringContaining("meta")]);
    expect(faults.filter((fault) => fault.includes("triggers"))).toHaveLength(1);
  });

  it("leaves the folder that it checks as it was", () => {
    const folder = migrationsCopy();
    const before = readFileSync(join(folder, "meta", "_journal.json"), "utf8");
    migrationFaults(folder, schemaWith("small"));
    expect(readFileSync(join(folder, "meta", "_journal.json"), "utf8")).toBe(before);
  });
});
