import { type ChildProcess, spawn } from "node:child_process";
import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Database from "better-sqlite3";
import { afterEach, describe, expect, it } from "vitest";
import { id } from "../../core/kinds.ts";
import { APPLICATION_ID, openDatabase, openMemory } from "../../db/open.ts";
import { appendAudit, eraseBodies } from "../../db/repositories/audit.ts";
import { setMeta } from "../../db/repositories/meta.ts";
import { write } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "./migrationsFolder.ts";
import { migrationsCopy, refusalFrom, temporaryFolder } from "./openTemporary.ts";

const opened: { close: () => void }[] = [];
const processes: ChildProcess[] = [];

afterEach(() => {
  for (const each of opened.splice(0)) {
    each.close();
  }
  for (const each of processes.splice(0)) {
    each.kill("SIGKILL");
  }
});

async function open(path: string, create = false, folder = migrationsFolder) {
  const database = await openDatabase({ path, create, now: MONDAY, migrationsFolder: folder });
  opened.push(database);
  return database;
}

/** A sound database that nobody has open. */
async function closedDatabase(): Promise<string> {
  const path = join(temporaryFolder(), "truck.sqlite");
  const database = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
  write(database.db, (tx) => {
    setMeta(tx, "guild", "lantern");
    appendAudit(tx, { at: MONDAY, personId: null, action: "start", subject: "bot", body: { text: "an unlikely sentence" } });
    appendAudit(tx, { at: MONDAY, personId: null, action: "start", subject: "bot", body: 2 });
  });
  database.close();
  return path;
}

const rightsOf = (path: string): number => statSync(path).mode & 0o777;

/** Opens the database in another process, and waits for what that one says. */
async function otherProcess(path: string, ...asUser: readonly string[]): Promise<{ readonly said: string; readonly process: ChildProcess }> {
  const program = fileURLToPath(new URL("holdDatabase.ts", import.meta.url));
  const child = spawn(process.execPath, ["--import", "tsx", program, path, ...asUser], { stdio: ["ignore", "pipe", "inherit"] });
  processes.push(child);
  const said = await new Promise<string>((tell) => child.stdout.once("data", (bytes) => tell(String(bytes).trim())));
  return { said, process: child };
}

describe("openDatabase", () => {
  it("creates a database when asked, and finds it again", async () => {
    const path = await closedDatabase();
    const { sqlite, backup } = await open(path);
    expect(sqlite.prepare("SELECT value FROM meta WHERE key = 'guild'").pluck().get()).toBe("lantern");
    expect(backup).toBeNull();
  });

  it("creates the folder too when asked", async () => {
    const path = join(temporaryFolder(), "new", "truck.sqlite");
    await open(path, true);
    expect(statSync(path).size).toBeGreaterThan(0);
  });

  it("lets nobody but the owner read its files, nor enter the folder it makes, whatever the umask", async () => {
    const before = process.umask(0);
    try {
      const path = join(temporaryFolder(), "new", "truck.sqlite");
      const { db } = await open(path, true);
      write(db, (tx) => setMeta(tx, "guild", "lantern"));
      expect(rightsOf(join(path, ".."))).toBe(0o700);
      for (const end of ["", "-wal", "-shm", ".lock"]) {
        expect([end, rightsOf(path + end)]).toEqual([end, 0o600]);
      }
    } finally {
      process.umask(before);
    }
  });

  it("takes the rights of others from a database made with them", async () => {
    const path = await closedDatabase();
    const left = new Database(path);
    left.prepare("SELECT count(*) FROM meta").get();
    const files = ["", "-wal", "-shm", ".lock"].map((end) => path + end);
    for (const file of files) chmodSync(file, 0o644);
    await open(path);
    left.close();
    expect(files.map(rightsOf)).toEqual([0o600, 0o600, 0o600, 0o600]);
  });

  it("leaves the rights of another program's database as they were", async () => {
    const path = join(temporaryFolder(), "other.sqlite");
    const other = new Database(path);
    other.exec("CREATE TABLE theirs (id INTEGER)");
    other.close();
    chmodSync(path, 0o644);
    expect((await refusalFrom(() => open(path, true))).code).toBe("foreign");
    expect(rightsOf(path)).toBe(0o644);
  });

  it("finishes a database whose making was cut off before the first byte", async () => {
    const path = join(temporaryFolder(), "truck.sqlite");
    writeFileSync(path, "");
    const { sqlite } = await open(path, true);
    expect(sqlite.pragma("application_id", { simple: true })).toBe(APPLICATION_ID);
  });

  // Bytes 68 to 71 of the header are the application id: the file format page of SQLite, section 1.3.
  it("writes its mark into the header", async () => {
    expect(readFileSync(await closedDatabase()).toString("latin1", 68, 72)).toBe("RGC1");
  });

  it.each([
    ["journal_mode", "wal"],
    ["synchronous", 2],
    ["foreign_keys", 1],
    ["busy_timeout", 5000],
    ["trusted_schema", 0],
    ["secure_delete", 1],
  ])("sets %s to %s", async (pragma, value) => {
    const { sqlite } = await open(await closedDatabase());
    expect(sqlite.pragma(pragma, { simple: true })).toBe(value);
  });

  it("refuses a file that is not there, and makes none", async () => {
    const folder = temporaryFolder();
    expect((await refusalFrom(() => open(join(folder, "truck.sqlite")))).code).toBe("missing");
    expect(readdirSync(folder)).not.toContain("truck.sqlite");
    expect((await refusalFrom(() => open(join(folder, "nowhere", "truck.sqlite")))).code).toBe("missing");
  });

  it("refuses an empty file", async () => {
    const path = join(temporaryFolder(), "truck.sqlite");
    writeFileSync(path, "");
    expect((await refusalFrom(() => open(path))).code).toBe("empty");
  });

  it("refuses a database of another program, asked to create or not, and leaves it as it was", async () => {
    const path = join(temporaryFolder(), "other.sqlite");
    const other = new Database(path);
    other.exec("CREATE TABLE theirs (id INTEGER)");
    other.close();
    const before = readFileSync(path);
    expect((await refusalFrom(() => open(path))).code).toBe("foreign");
    expect((await refusalFrom(() => open(path, true))).code).toBe("foreign");
    expect(readFileSync(path)).toEqual(before);
  });

  it("refuses a file that is no database, and a folder", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "letter.txt"), "Dear truck, ".repeat(200));
    mkdirSync(join(folder, "folder"));
    expect((await refusalFrom(() => open(join(folder, "letter.txt")))).code).toBe("unreadable");
    expect((await refusalFrom(() => open(join(folder, "folder")))).code).toBe("unreadable");
  });

  it("refuses a file that was cut short", async () => {
    const path = await closedDatabase();
    truncateSync(path, statSync(path).size - 8192);
    expect((await refusalFrom(() => open(path))).code).toBe("damaged");
  });

  it("refuses a reference that points at nothing", async () => {
    const path = await closedDatabase();
    const tool = new Database(path);
    tool.pragma("foreign_keys = OFF");
    tool.exec("INSERT INTO due VALUES ('monday', '2027-05-03', 'posted', 999)");
    tool.close();
    const refusal = await refusalFrom(() => open(path));
    expect(refusal.code).toBe("damaged");
    expect(refusal.message).toContain("due");
  });

  it("refuses an audit with a letter changed inside a text, which the engine's own check passes", async () => {
    const path = await closedDatabase();
    const bytes = readFileSync(path);
    const at = bytes.indexOf("an unlikely sentence");
    bytes.write("e", at + 1);
    writeFileSync(path, bytes);
    const tool = new Database(path, { readonly: true });
    expect(tool.pragma("integrity_check", { simple: true })).toBe("ok");
    tool.close();
    const refusal = await refusalFrom(() => open(path));
    expect(refusal.code).toBe("audit-broken");
    expect(refusal.facts).toMatchObject({ seq: 1 });
  });

  it("leaves no trace of an erased body in its files once closed", async () => {
    const path = await closedDatabase();
    const database = await openDatabase({ path, create: false, now: MONDAY, migrationsFolder });
    write(database.db, (tx) => {
      appendAudit(tx, { at: MONDAY, personId: null, action: "note", subject: "player", body: "blisters on both hands", playerId: id<"player">(1) });
    });
    write(database.db, (tx) => eraseBodies(tx, id<"player">(1), MONDAY));
    database.close();
    const files = readdirSync(join(path, "..")).map((name) => readFileSync(join(path, "..", name)));
    expect(files.some((bytes) => bytes.includes("blisters"))).toBe(false);
    expect(files.some((bytes) => bytes.includes("an unlikely sentence"))).toBe(true);
  });

  it("refuses a second opener in the same process, by another name of the file too", async () => {
    const path = await closedDatabase();
    const alias = join(temporaryFolder(), "alias.sqlite");
    symlinkSync(path, alias);
    await open(path);
    expect((await refusalFrom(() => open(path))).code).toBe("locked");
    expect((await refusalFrom(() => open(alias))).code).toBe("locked");
  });

  it("is free again after closing, and after a refusal", async () => {
    const path = await closedDatabase();
    const edited = migrationsCopy((sql) => `${sql}\n-- another word`);
    expect((await refusalFrom(() => open(path, false, edited))).code).toBe("migration-changed");
    (await openDatabase({ path, create: false, now: MONDAY, migrationsFolder })).close();
    await expect(open(path)).resolves.toBeDefined();
  });

  it("refuses while another process has it, and opens as soon as that one is killed", async () => {
    const path = await closedDatabase();
    const other = await otherProcess(path);
    expect(other.said).toBe("open");
    expect((await refusalFrom(() => open(path))).code).toBe("locked");
    const ended = new Promise((end) => other.process.once("exit", end));
    other.process.kill("SIGKILL");
    await ended;
    await expect(open(path)).resolves.toBeDefined();
  });

  it("refuses a folder that cannot be written", async () => {
    const path = await closedDatabase();
    const folder = join(path, "..");
    chmodSync(path, 0o444);
    chmodSync(folder, 0o555);
    const isRoot = process.getuid?.() === 0;
    const { said } = await otherProcess(path, ...(isRoot ? ["65534"] : []));
    chmodSync(folder, 0o755);
    expect(said).toBe("read-only");
  });

  it("refuses a file that cannot be written in a folder that can", async () => {
    const path = await closedDatabase();
    chmodSync(path, 0o444);
    chmodSync(join(path, ".."), 0o777);
    chmodSync(`${path}.lock`, 0o666);
    const isRoot = process.getuid?.() === 0;
    const { said } = await otherProcess(path, ...(isRoot ? ["65534"] : []));
    expect(said).toBe("read-only");
  });
});

describe("openMemory", () => {
  it("has the same tables and settings, without a file", () => {
    const { sqlite, close } = openMemory({ migrationsFolder });
    expect(sqlite.pragma("foreign_keys", { simple: true })).toBe(1);
    expect(sqlite.prepare("SELECT count(*) FROM outbox").pluck().get()).toBe(0);
    close();
  });
});
