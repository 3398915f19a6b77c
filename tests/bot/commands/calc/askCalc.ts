import type { Card } from "../../../../bot/chat/types.ts";
import type { MemoryBot } from "../../../support/memoryBot.ts";
import { maren } from "../../../support/people.ts";
import { cardOf } from "../../../support/readCard.ts";

/** Asks a view of `/calc`, as a rep unless said otherwise. */
export const askCalc = async (bot: MemoryBot, view: string, text: string, who: typeof maren = maren): Promise<Card> =>
  cardOf(await bot.invoke(who, "calc", { view, text }));

type Row = readonly (string | number)[];

/** Parts of a published club as people type them. */
export const typedParts = (parts: readonly Row[]): string => parts.map(([name, massG, placeIn]) => `${name} ${massG} at ${placeIn}`).join(", ");
