import { accessSync, constants, existsSync, readdirSync, statfsSync, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { type Check, fault, ok, type Verdict, warn } from "./finding.ts";

const MIB = 1024 * 1024;
const LEAST_FREE = 50 * MIB;
const GOOD_FREE = 500 * MIB;
const DAY_MS = 24 * 60 * 60_000;
const OLD_BACKUP_DAYS = 7;
const READ_BY_GROUP = 0o040;
const READ_BY_ALL = 0o004;

interface Place {
  readonly folder: string;
  readonly database: string;
  readonly backups: string;
  /** Where a file with the environment may lie beside the database. */
  readonly workFolder: string;
  readonly now: () => number;
  readonly freeBytes?: (folder: string) => number;
}

/** The place where the database lies: that it can be written, is for nobody else to read, has room and backups. */
export function folderChecks({ folder, database, backups, workFolder, now, freeBytes = freeOn }: Place): readonly Check[] {
  return [
    { name: "database folder", look: () => writable(folder) },
    {
      name: "file rights",
      look: () => rights([database, `${database}-wal`, ...backupFiles(backups)], [join(folder, ".env"), join(workFolder, ".env")]),
    },
    { name: "disk space", look: () => room(freeBytes(nearest(folder))) },
    { name: "backup", look: () => newestBackup(database, backups, now()) },
  ];
}

function writable(folder: string): Verdict {
  const there = nearest(folder);
  const remedy = `Make ${folder} a folder that the user of the bot may write, or name another with --data DIR`;
  if (!statSync(there).isDirectory()) {
    return fault(`${there} is not a folder`, remedy);
  }
  try {
    accessSync(there, constants.W_OK | constants.X_OK);
  } catch {
    return fault(`${there} cannot be written`, remedy);
  }
  return ok(there === resolve(folder) ? `${folder} can be written` : `${folder} is not there yet, and npm start can make it`);
}

function rights(data: readonly string[], secrets: readonly string[]): Verdict {
  const open = [...new Set([...data, ...secrets].map((path) => resolve(path)))].filter(isReadByOthers);
  return open.length === 0
    ? ok("nobody else may read the database or a .env file")
    : warn(`others on this machine may read ${open.join(", ")}`, `Run chmod 600 ${open.map((path) => `"${path}"`).join(" ")}`);
}

/** Whoever may not enter the folder reads nothing in it. */
function isReadByOthers(path: string): boolean {
  if (process.platform === "win32" || !existsSync(path)) {
    return false;
  }
  const allowed = statSync(path).mode & (statSync(dirname(path)).mode << 2);
  return (allowed & (READ_BY_GROUP | READ_BY_ALL)) !== 0;
}

function room(free: number): Verdict {
  const found = `${Math.floor(free / MIB)} MiB free`;
  const remedy = `Make room: the bot needs ${GOOD_FREE / MIB} MiB for its record and backups`;
  if (free < LEAST_FREE) {
    return fault(found, remedy);
  }
  return free < GOOD_FREE ? warn(found, remedy) : ok(found);
}

function newestBackup(database: string, backups: string, now: number): Verdict {
  const remedy = `Stop the bot and copy the folder ${dirname(database)} to another disk`;
  const newest = backupFiles(backups)
    .map((path) => ({ path, at: statSync(path).mtimeMs }))
    .reduce((best, each) => (each.at > best.at ? each : best), { path: "", at: 0 });
  if (newest.path === "") {
    return existsSync(database) ? warn(`no backup in ${backups}`, remedy) : ok("no database, and no backup, yet");
  }
  if (!existsSync(database)) {
    return fault(
      `there is a backup and no database at ${database}`,
      `Remove ${database}-wal if it is there and copy ${newest.path} to ${database}: npm start would begin anew`,
    );
  }
  const days = Math.max(0, Math.floor((now - newest.at) / DAY_MS));
  const found = days === 0 ? "the newest is of the last 24 hours" : `the newest is ${days} ${days === 1 ? "day" : "days"} old`;
  return days > OLD_BACKUP_DAYS ? warn(found, remedy) : ok(found);
}

const backupFiles = (backups: string): readonly string[] =>
  existsSync(backups)
    ? readdirSync(backups)
        .filter((name) => name.endsWith(".sqlite"))
        .map((name) => join(backups, name))
    : [];

/** The folder itself, or the nearest one above it that is there. */
function nearest(folder: string): string {
  const path = resolve(folder);
  return existsSync(path) || path === dirname(path) ? path : nearest(dirname(path));
}

function freeOn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}
