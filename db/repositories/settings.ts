import { eq, like } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { setting } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

/** Reads the numbers the lead has set under a prefix, by the rest of their names. */
export function numbersSet(reader: Reader, prefix: string): ReadonlyMap<string, number> {
  const rows = reader
    .select()
    .from(setting)
    .where(like(setting.name, `${prefix}.%`))
    .all();
  return new Map(
    rows.flatMap(({ name, value }) => {
      const number: unknown = JSON.parse(value);
      return typeof number === "number" && Number.isFinite(number) ? [[name.slice(prefix.length + 1), number] as const] : [];
    }),
  );
}

/** Reads what the lead has set under a prefix as JSON texts, by the rest of their names. */
export function textsSet(reader: Reader, prefix: string): ReadonlyMap<string, string> {
  const rows = reader
    .select()
    .from(setting)
    .where(like(setting.name, `${prefix}.%`))
    .all();
  return new Map(rows.map(({ name, value }) => [name.slice(prefix.length + 1), value] as const));
}

/** Sets a JSON text, or takes it back to the default of the code. */
export function setJson(tx: Tx, name: string, value: string | null, by: { readonly personId: Id<"person">; readonly at: Instant }): void {
  if (value === null) {
    tx.delete(setting).where(eq(setting.name, name)).run();
    return;
  }
  const row = { name, value, ...by };
  tx.insert(setting).values(row).onConflictDoUpdate({ target: setting.name, set: row }).run();
}

/** Sets a number, or takes it back to the default of the code. */
export const setNumber = (tx: Tx, name: string, value: number | null, by: { readonly personId: Id<"person">; readonly at: Instant }): void =>
  setJson(tx, name, value === null ? null : JSON.stringify(value), by);
