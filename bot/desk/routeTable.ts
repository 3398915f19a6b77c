import type { Incoming, Values } from "../chat/types.ts";

const named = /^(?:stock\s+)?(receive|count)\b/i;

/**
 * The command an attached table stands for: stock that comes in or was counted.
 *
 * At the bench a table without a word is stock that comes in; elsewhere the message says so, or the table is not for the bot.
 */
export function routeTable(
  incoming: Extract<Incoming, { kind: "message" }>,
  purpose: string | null,
): { readonly command: string; readonly values: Values } | null {
  const { table, text } = incoming;
  const written = text.trim();
  const view = named.exec(written)?.[1]?.toLowerCase() ?? (written === "" && purpose === "bench" ? "receive" : null);
  return table === undefined || view === null ? null : { command: "stock", values: { view, text: table } };
}
