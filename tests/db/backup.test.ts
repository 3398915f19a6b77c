import { chmodSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { folderChecks } from "../../bot/doctor/folderChecks.ts";
import { backupDatabase, backupFolder } from "../../db/backup.ts";
import { openDatabase } from "../../db/open.ts";
import { setMeta } from "../../db/repositories/meta.ts";
import { write } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "./migrationsFolder.ts";
import { refusalFrom, temporaryFolder } from "./openTemporary.ts";

describe("backupDatabase", () => {
  it("copies everything acknowledged into one sound file, named after the moment, while work goes on", async () => {
    const path = join(temporaryFolder(), "truck.sqlite");
    const { db, sqlite, close } = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
    write(db, (tx) => setMeta(tx, "guild", "lantern"));
    const backup = await backupDatabase(sqlite, backupFolder(path), MONDAY, "daily");
    write(db, (tx) => setMeta(tx, "guild", "changed since"));
    close();
    expect(readdirSync(backupFolder(path))).toEqual(["2027-05-03T07-00-00-000Z-daily.sqlite"]);
    const copy = new Database(backup, { readonly: true });
    expect(copy.prepare("SELECT value FROM meta").pluck().get()).toBe("lantern");
    expect(copy.pragma("integrity_check", { simple: true })).toBe("ok");
    copy.close();
  });

  it("makes a copy and a folder that are for their owner alone, so that the doctor has nothing to say", async () => {
    const before = process.umask(0);
    try {
      const folder = temporaryFolder();
      const path = join(folder, "truck.sqlite");
      const { sqlite, close } = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
      const backup = await backupDatabase(sqlite, backupFolder(path), MONDAY, "daily");
      close();
      expect([backupFolder(path), backup].map((made) => statSync(made).mode & 0o777)).toEqual([0o700, 0o600]);
      chmodSync(folder, 0o755);
      chmodSync(backupFolder(path), 0o755);
      const checks = folderChecks({ folder, database: path, backups: backupFolder(path), workFolder: folder, now: () => MONDAY });
      expect(await checks.find(({ name }) => name === "file rights")?.look()).toMatchObject({ state: "ok" });
    } finally {
      process.umask(before);
    }
  });

  it("never writes over a backup of the same moment", async () => {
    const path = join(temporaryFolder(), "truck.sqlite");
    const { sqlite, close } = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
    const first = await backupDatabase(sqlite, backupFolder(path), MONDAY, "daily");
    const second = await backupDatabase(sqlite, backupFolder(path), MONDAY, "daily");
    close();
    expect(second).not.toBe(first);
    expect(readdirSync(backupFolder(path))).toHaveLength(2);
  });

  it("gives a copy that does not pass its check no name", async () => {
    const folder = temporaryFolder();
    const sqlite = new Database(join(folder, "broken.sqlite"));
    sqlite.exec("CREATE TABLE parent (id INTEGER PRIMARY KEY); CREATE TABLE child (parent_id INTEGER REFERENCES parent)");
    sqlite.pragma("foreign_keys = OFF");
    sqlite.exec("INSERT INTO child VALUES (7)");
    const refusal = await refusalFrom(() => backupDatabase(sqlite, join(folder, "backups"), MONDAY, "daily"));
    sqlite.close();
    expect(refusal.code).toBe("damaged");
    expect(readdirSync(join(folder, "backups"))).toEqual([]);
  });
});
