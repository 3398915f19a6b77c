import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import Database from "better-sqlite3";
import type { Instant } from "../core/kinds.ts";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { fileFaults } from "./fileFaults.ts";
import { createPrivate, PRIVATE_FOLDER } from "./privateFiles.ts";

/**
 * Copies the open database beside the running work, and only then gives the copy its name.
 *
 * Temporary name, for its owner alone → one file without a log → integrity check → sync to disk → rename → sync of the folder.
 *
 * @param sqlite - the open database
 * @param folder - where backups lie; made when it is not there
 * @param now - the moment, which names the file
 * @param label - why it was taken: `daily`, `before-migration`
 * @returns the path of the finished backup
 * @throws {DatabaseRefusal} `damaged` when the copy does not pass its check
 */
export async function backupDatabase(sqlite: Database.Database, folder: string, now: Instant, label: string): Promise<string> {
  mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
  const stamp = new Date(now).toISOString().replace(/[:.]/g, "-");
  const path = freeName(folder, `${stamp}-${label}`);
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    createPrivate(unfinished);
    await sqlite.backup(unfinished);
    checkCopy(unfinished);
    syncToDisk(unfinished);
    renameSync(unfinished, path);
    syncToDisk(folder);
    return path;
  } finally {
    rmSync(unfinished, { force: true });
  }
}

/** Makes one file of a copy and checks it. */
function checkCopy(path: string): void {
  const copy = new Database(path);
  try {
    copy.pragma("journal_mode = DELETE");
    const found = fileFaults(copy);
    if (found.length > 0) {
      throw new DatabaseRefusal("damaged", { path, found });
    }
  } finally {
    copy.close();
  }
}

function freeName(folder: string, name: string): string {
  const candidates = [name, ...Array.from({ length: 99 }, (_, count) => `${name}-${count + 2}`)].map((each) => join(folder, `${each}.sqlite`));
  const free = candidates.find((path) => !existsSync(path));
  if (free === undefined) {
    throw new DatabaseRefusal("unreadable", { path: join(folder, name), reason: "a hundred backups of this moment are there already" });
  }
  return free;
}

/** Makes a file, or the names in a folder, survive a power cut. */
export function syncToDisk(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Where the backups of a database lie. */
export const backupFolder = (databasePath: string): string => join(dirname(databasePath), "backups");
