import { readdirSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { openDatabase, openMemory } from "../../db/open.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { write } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "./migrationsFolder.ts";
import { addMigration, migrationsCopy, refusalFrom, temporaryFolder } from "./openTemporary.ts";

const open = (path: string, folder: string, create = false) => openDatabase({ path, create, now: MONDAY, migrationsFolder: folder });

async function databaseOf(folder: string): Promise<string> {
  const path = join(temporaryFolder(), "truck.sqlite");
  (await open(path, folder, true)).close();
  return path;
}

describe("the migrations", () => {
  it("make every table STRICT", () => {
    const { sqlite, close } = openMemory({ migrationsFolder });
    const tables = sqlite.prepare(
      "SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite@_%' ESCAPE '@'",
    );
    const rows = tables.all();
    close();
    expect(rows.length).toBeGreaterThan(7);
    expect(rows).toEqual(rows.map((row) => ({ ...Object(row), strict: 1 })));
  });

  it("delete nothing along with what it points at", () => {
    const { sqlite, close } = openMemory({ migrationsFolder });
    const actions = sqlite.prepare("SELECT DISTINCT f.on_delete FROM pragma_table_list t JOIN pragma_foreign_key_list(t.name) f").pluck().all();
    close();
    expect(actions).toEqual(["NO ACTION"]);
  });

  it.each([
    ["UPDATE audit SET action = 'nothing'", "audit is append-only"],
    ["DELETE FROM audit", "audit is append-only"],
    ["DELETE FROM audit_body", "audit is append-only"],
    ["UPDATE audit_body SET body = '2'", "only be erased"],
    ["UPDATE audit_body SET salt = NULL, body = NULL, erased_at = 1, player_id = 2", "only be erased"],
    ["UPDATE audit_body SET salt = NULL, body = NULL", "only be erased"],
    ["UPDATE audit_body SET erased_at = 1", "CHECK constraint failed"],
  ])("refuse %s", (change, told) => {
    const { db, sqlite, close } = openMemory({ migrationsFolder });
    write(db, (tx) => appendAudit(tx, { at: MONDAY, personId: null, action: "start", subject: "bot", body: 1 }));
    expect(() => sqlite.exec(change)).toThrow(told);
    close();
  });
});

describe("openDatabase with migrations to apply", () => {
  it("takes a backup first, applies them, and keeps what is there", async () => {
    const path = await databaseOf(migrationsFolder);
    const folder = migrationsCopy();
    addMigration(folder, "0900_more", "CREATE TABLE more (id INTEGER PRIMARY KEY) STRICT;");
    const { sqlite, backup, close } = await open(path, folder);
    expect(sqlite.prepare("SELECT count(*) FROM more").pluck().get()).toBe(0);
    close();
    const copy = new Database(backup ?? "no backup", { readonly: true, fileMustExist: true });
    expect(() => copy.prepare("SELECT count(*) FROM more")).toThrow("no such table");
    expect(copy.prepare("SELECT count(*) FROM outbox").pluck().get()).toBe(0);
    copy.close();
  });

  it("keeps the children of a table that is rebuilt", async () => {
    const folder = migrationsCopy();
    addMigration(
      folder,
      "0900_family",
      "CREATE TABLE parent (id INTEGER PRIMARY KEY) STRICT;\n--> statement-breakpoint\nCREATE TABLE child (parent_id INTEGER NOT NULL REFERENCES parent(id) ON DELETE CASCADE) STRICT;",
    );
    const path = await databaseOf(folder);
    const tool = new Database(path);
    tool.exec("INSERT INTO parent VALUES (1); INSERT INTO child VALUES (1)");
    tool.close();
    const rebuild = [
      "CREATE TABLE __new_parent (id INTEGER PRIMARY KEY, name TEXT) STRICT;",
      "INSERT INTO __new_parent (id) SELECT id FROM parent;",
      "DROP TABLE parent;",
      "ALTER TABLE __new_parent RENAME TO parent;",
    ];
    addMigration(folder, "0901_rebuild", rebuild.join("\n--> statement-breakpoint\n"));
    const { sqlite, close } = await open(path, folder);
    expect(sqlite.prepare("SELECT count(*) FROM child").pluck().get()).toBe(1);
    expect(sqlite.pragma("foreign_keys", { simple: true })).toBe(1);
    close();
  });

  it("refuses an applied migration that was edited", async () => {
    const path = await databaseOf(migrationsFolder);
    const refusal = await refusalFrom(() =>
      open(
        path,
        migrationsCopy((sql) => sql.replace("`last_error` text", "`last_error`  text")),
      ),
    );
    expect(refusal.code).toBe("migration-changed");
  });

  it.each([0, -1])("refuses a migration %i ms after the one before, which would be passed over", async (laterMs) => {
    const path = await databaseOf(migrationsFolder);
    const folder = migrationsCopy();
    addMigration(folder, "0900_more", "CREATE TABLE more (id INTEGER PRIMARY KEY) STRICT;", laterMs);
    const refusal = await refusalFrom(() => open(path, folder));
    expect(refusal.code).toBe("migration-order");
    expect(refusal.facts).toEqual({ migration: "0900_more" });
  });

  it("refuses a database that a newer program has migrated", async () => {
    const folder = migrationsCopy();
    addMigration(folder, "0900_more", "CREATE TABLE more (id INTEGER PRIMARY KEY) STRICT;");
    const path = await databaseOf(folder);
    expect((await refusalFrom(() => open(path, migrationsFolder))).code).toBe("newer");
  });

  it("applies none when one fails, names the backup, and opens again with the good ones", async () => {
    const path = await databaseOf(migrationsFolder);
    const folder = migrationsCopy();
    addMigration(folder, "0900_more", "CREATE TABLE more (id INTEGER PRIMARY KEY) STRICT;");
    addMigration(folder, "0901_wrong", "ALTER TABLE absent ADD COLUMN name TEXT;");
    const refusal = await refusalFrom(() => open(path, folder));
    expect(refusal.code).toBe("migration-failed");
    expect(refusal.message).toContain("no such table: absent");
    expect(readdirSync(join(path, "..", "backups"))).toHaveLength(1);
    const { sqlite, close } = await open(path, migrationsFolder);
    expect(sqlite.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'more'").pluck().get()).toBe(0);
    close();
  });

  it("refuses to go on when a migration leaves a reference that points at nothing", async () => {
    const path = await databaseOf(migrationsFolder);
    const folder = migrationsCopy();
    addMigration(folder, "0900_dangling", "INSERT INTO due VALUES ('monday', '2027-05-03', 'posted', 999);");
    expect((await refusalFrom(() => open(path, folder))).code).toBe("migration-failed");
  });
});
