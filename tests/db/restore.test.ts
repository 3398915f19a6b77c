import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { instant } from "../../core/kinds.ts";
import { backupDatabase, backupFolder } from "../../db/backup.ts";
import { openDatabase } from "../../db/open.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { metaValue } from "../../db/repositories/meta.ts";
import { enqueuePost, findPost } from "../../db/repositories/outbox.ts";
import { restoreDatabase } from "../../db/restore.ts";
import { write } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "./migrationsFolder.ts";
import { refusalFrom, temporaryFolder } from "./openTemporary.ts";

const post = (name: string) => ({ channel: "orders", dedupeKey: name, nonce: name, ref: name, card: {}, at: MONDAY });
const later = instant(MONDAY + 3_600_000);

/** A database with one post waiting, and a backup of it. */
async function backedUp() {
  const folder = temporaryFolder();
  const path = join(folder, "truck.sqlite");
  const { db, sqlite, close } = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
  const { id } = write(db, (tx) => {
    appendAudit(tx, { at: MONDAY, personId: null, action: "plan", subject: "post", body: null });
    return enqueuePost(tx, post("one"));
  });
  const backup = await backupDatabase(sqlite, backupFolder(path), MONDAY, "daily");
  close();
  return { folder, path, backup, id };
}

describe("restoreDatabase", () => {
  it("makes a database that opens, and says from when changes may be missing", async () => {
    const { folder, backup } = await backedUp();
    const path = join(folder, "restored.sqlite");
    expect(restoreDatabase({ backup, path, now: later })).toEqual({ missingFrom: MONDAY });
    const { db, close } = await openDatabase({ path, create: false, now: later, migrationsFolder });
    expect(metaValue(db, "restored_at")).toBe(String(later));
    close();
    expect(readdirSync(folder).filter((name) => name.includes("unfinished"))).toEqual([]);
  });

  it("trusts no waiting post, and gives no id a second time", async () => {
    const { folder, backup, id } = await backedUp();
    const path = join(folder, "restored.sqlite");
    restoreDatabase({ backup, path, now: later });
    const { db, close } = await openDatabase({ path, create: false, now: later, migrationsFolder });
    expect(findPost(db, id)?.firstTryAt).toBe(MONDAY);
    expect(write(db, (tx) => enqueuePost(tx, post("two")).id)).toBeGreaterThan(id + 999);
    close();
  });

  it("leaves a file that lies there as it was", async () => {
    const { path, backup } = await backedUp();
    const before = readFileSync(path);
    expect((await refusalFrom(() => restoreDatabase({ backup, path, now: later }))).code).toBe("occupied");
    expect(readFileSync(path)).toEqual(before);
  });

  it("refuses a backup that is missing, another program's, or cut short, and makes nothing of it", async () => {
    const { folder, backup } = await backedUp();
    const path = join(folder, "restored.sqlite");
    const other = new Database(join(folder, "other.sqlite"));
    other.exec("CREATE TABLE theirs (id INTEGER)");
    other.close();
    const short = join(folder, "short.sqlite");
    writeFileSync(short, readFileSync(backup).subarray(0, 8192));
    const codes = [];
    for (const bad of [join(folder, "nothing"), join(folder, "other.sqlite"), short]) {
      codes.push((await refusalFrom(() => restoreDatabase({ backup: bad, path, now: later }))).code);
    }
    expect(codes).toEqual(["missing", "foreign", "damaged"]);
    expect(existsSync(path)).toBe(false);
  });
});
