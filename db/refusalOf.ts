import { DatabaseRefusal } from "./databaseRefusal.ts";

/**
 * Turns what the database engine threw into the refusal it means.
 *
 * @param error - what was thrown
 * @param path - of the database
 * @returns a refusal; the error itself when it is already one, or not from the engine
 */
export function refusalOf(error: unknown, path: string): unknown {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const reason = error instanceof Error ? error.message : String(error);
  if (error instanceof DatabaseRefusal) {
    return error;
  }
  if (code === "SQLITE_NOTADB" || code.startsWith("SQLITE_IOERR") || code === "EISDIR") {
    return new DatabaseRefusal("unreadable", { path, reason }, error);
  }
  if (code.startsWith("SQLITE_CORRUPT")) {
    return new DatabaseRefusal("damaged", { path, found: [reason] }, error);
  }
  if (code.startsWith("SQLITE_BUSY")) {
    return new DatabaseRefusal("locked", { path }, error);
  }
  if (code === "SQLITE_FULL" || code === "ENOSPC") {
    return new DatabaseRefusal("disk-full", { path }, error);
  }
  if (/^(SQLITE_(READONLY|CANTOPEN|PERM|AUTH)|EACCES|EPERM|EROFS)/.test(code)) {
    return new DatabaseRefusal("read-only", { path, reason }, error);
  }
  return error;
}
