import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { looseTables, strictTables } from "../../db/strictTables.ts";

const migration = [
  'CREATE TABLE `one` (\n\t`id` integer PRIMARY KEY NOT NULL,\n\tCONSTRAINT "short" CHECK(length("one"."id") < 9)\n);\n',
  "\nCREATE INDEX `by_id` ON `one` (`id`);",
  "\nCREATE TABLE `__new_two` (\n\t`name` text\n);\n",
].join("--> statement-breakpoint");

describe("strictTables", () => {
  it("makes each table STRICT, as the engine itself says", () => {
    const sqlite = new Database(":memory:");
    sqlite.exec(strictTables(migration).replaceAll("--> statement-breakpoint", ""));
    const strict = sqlite.prepare("SELECT name FROM pragma_table_list WHERE strict = 1 ORDER BY name").pluck().all();
    sqlite.close();
    expect(strict).toEqual(["__new_two", "one"]);
  });

  it("changes nothing the second time", () => {
    expect(strictTables(strictTables(migration))).toBe(strictTables(migration));
  });
});

describe("looseTables", () => {
  it("names the tables that are not STRICT", () => {
    expect(looseTables(migration)).toEqual(["one", "__new_two"]);
    expect(looseTables(strictTables(migration))).toEqual([]);
  });
});
