import { existsSync, mkdirSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { DatabaseRefusal } from "./databaseRefusal.ts";
import { PRIVATE_FOLDER } from "./privateFiles.ts";
import { refusalOf } from "./refusalOf.ts";

/** Two names of one file must meet at one lock. */
export function truePath(written: string, create: boolean): string {
  const path = resolve(written);
  if (existsSync(path)) {
    return realpathSync(path);
  }
  try {
    if (create) {
      mkdirSync(dirname(path), { recursive: true, mode: PRIVATE_FOLDER });
    }
    return join(realpathSync(dirname(path)), basename(path));
  } catch (error) {
    if (create) {
      throw refusalOf(error, path);
    }
    throw new DatabaseRefusal("missing", { path }, error);
  }
}

/** There must be a file with something in it, unless one is to be made. */
export function refuseMissing(path: string, create: boolean): void {
  if (!existsSync(path)) {
    if (!create) {
      throw new DatabaseRefusal("missing", { path });
    }
    return;
  }
  const file = statSync(path);
  if (!file.isFile()) {
    throw new DatabaseRefusal("unreadable", { path, reason: "it is not a file" });
  }
  if (file.size === 0 && !create) {
    throw new DatabaseRefusal("empty", { path });
  }
}
