import { desc, eq, sql } from "drizzle-orm";
import type { Card } from "../../../../bot/chat/types.ts";
import { headsOnRecord, partsLying } from "../../../../db/repositories/stockCount.ts";
import { head, stockEntry } from "../../../../db/schema/stock.ts";
import type { MemoryBot } from "../../../support/memoryBot.ts";
import { dessa } from "../../../support/people.ts";
import { cardOf } from "../../../support/readCard.ts";

/** Asks a view of `/stock`, as a technician unless said otherwise. */
export const askStock = async (bot: MemoryBot, view: string, text: string, who: typeof dessa = dessa): Promise<Card> =>
  cardOf(await bot.invoke(who, "stock", { view, text }));

/** How many of a model lie in a place of the truck Plover. */
export const lyingIn = (bot: MemoryBot, place: string, model: string): number =>
  partsLying(bot.db).find((row) => row.truckName === "Plover" && row.place.label === place && row.model.name === model)?.lying ?? 0;

/** Where a head lies, with its truck; null when it is in no place. */
export const placeOfHead = (bot: MemoryBot, serial: string): string | null => {
  const row = headsOnRecord(bot.db).find((known) => known.head.serial === serial);
  return row?.place == null ? null : `${row.place.label} ${row.truckName ?? ""}`.trim();
};

/** A digest of the heads and the ledger: equal before and after, nothing was touched. */
export const digest = (bot: MemoryBot): unknown =>
  bot.db.get(sql`SELECT (SELECT count(*) FROM stock_entry), count(*), sum(place_id * id), sum(id) FROM ${head}`);

export const headOf = (bot: MemoryBot, serial: string) => bot.db.select().from(head).where(eq(head.serial, serial)).get();

/** The newest line of the stock ledger. */
export const lastEntry = (bot: MemoryBot) => bot.db.select().from(stockEntry).orderBy(desc(stockEntry.id)).limit(1).get();
