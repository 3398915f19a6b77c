import type { Database } from "better-sqlite3";

/**
 * Reads the whole file for damage that the engine can see, and for references that point nowhere.
 *
 * A changed bit inside a text is seen by neither: the hashes of the audit are for that.
 *
 * @param sqlite - the open database
 * @returns one line a fault, at most ten; none when the file is sound
 */
export function fileFaults(sqlite: Database): readonly string[] {
  const damage = sqlite.prepare("PRAGMA integrity_check(10)").pluck().all().map(String);
  if (damage.length !== 1 || damage[0] !== "ok") {
    return damage;
  }
  return sqlite
    .prepare(
      `SELECT 'row ' || coalesce(rowid, '?') || ' of ' || "table" || ' points at a missing row of ' || parent FROM pragma_foreign_key_check LIMIT 10`,
    )
    .pluck()
    .all()
    .map(String);
}
