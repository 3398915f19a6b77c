import type { Message } from "discord.js";
import { metaValue, setMeta } from "../../db/repositories/meta.ts";
import { type Db, write } from "../../db/write.ts";
import { type Channels, pageAfter } from "./channels.ts";
import { isYounger } from "./snowflake.ts";

const PAGE = 100;
const PAGES_MAX = 20;

const keyOf = (channel: string): string => `discord.seen.${channel}`;

/** Keeps how far a channel was read; it never goes back. */
export function noteSeen(db: Db, channel: string, messageId: string): void {
  write(db, (tx) => {
    const before = metaValue(tx, keyOf(channel));
    if (before === null || isYounger(messageId, before)) {
      setMeta(tx, keyOf(channel), messageId);
    }
  });
}

/**
 * Reads what was said while the bot was away, in each channel it has read before, oldest first.
 *
 * @param take - the same door that live messages come in by: one that came twice is known there
 */
export async function catchUp(db: Db, channels: Channels, take: (message: Message) => Promise<void>): Promise<void> {
  const marks = new Map(channels.names.map((name) => [name, metaValue(db, keyOf(name))]));
  for (const [name, mark] of marks) {
    const channel = mark === null ? null : await channels.open(name);
    let after = mark;
    for (let page = 0; channel !== null && after !== null && page < PAGES_MAX; page += 1) {
      const messages = await pageAfter(channel, after, PAGE);
      for (const message of messages) {
        await take(message);
      }
      after = messages.length < PAGE ? null : (messages.at(-1)?.id ?? null);
    }
  }
}
