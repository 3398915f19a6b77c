const TABLE_END = /\n\);?(?=\s*(?:-->|$))/;

/**
 * Makes every table of a migration STRICT, which the generator of migrations cannot write.
 *
 * Statements are told apart by the generator's own breakpoints; a table that is STRICT already stays as it is.
 *
 * @param migration - the SQL of one migration file
 * @returns the same SQL with `) STRICT;` at the end of each CREATE TABLE
 */
export function strictTables(migration: string): string {
  const breakpoint = "--> statement-breakpoint";
  return migration
    .split(breakpoint)
    .map((statement) => (/^\s*CREATE TABLE /.test(statement) ? statement.replace(TABLE_END, "\n) STRICT;") : statement))
    .join(breakpoint);
}

/**
 * Lists the tables of a migration that are not STRICT.
 *
 * @param migration - the SQL of one migration file
 * @returns the names of the tables, in the order they are created
 */
export function looseTables(migration: string): readonly string[] {
  return migration
    .split("--> statement-breakpoint")
    .filter((statement) => /^\s*CREATE TABLE /.test(statement) && !/\) STRICT;?\s*$/.test(statement))
    .map((statement) => /CREATE TABLE [`"]?([^`"\s(]+)/.exec(statement)?.[1] ?? "unnamed");
}
