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

/** Sets a number, or takes it back to the default of the code. */
export function setNumber(tx: Tx, name: string, value: number | null, by: { readonly personId: Id<"person">; readonly at: Instant }): void {
  if (value === null) {
    tx.delete(setting).where(eq(setting.name, name)).run();
    return;
  }
  const row = { name, value: JSON.stringify(value), ...by };
  tx.insert(setting).values(row).onConflictDoUpdate({ target: setting.name, set: row }).run();
}
