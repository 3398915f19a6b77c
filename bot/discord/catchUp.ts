import type { Message } from "discord.js";
import type { Instant } from "../../core/kinds.ts";
import { metaValue, setMeta } from "../../db/repositories/meta.ts";
import { type Db, write } from "../../db/write.ts";
import { type Channels, pageAfter, pageBefore } from "./channels.ts";
import { isYounger, snowflakeAt, snowflakeTime } from "./snowflake.ts";

const PAGE = 100;
/** Messages of one channel in one reading; what is beyond is read the next time. */
const PAGES_MAX = 100;

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
 * Reads what was said, and edited, while the bot was away, in each channel, oldest first. A channel never read before is
 * read from now on.
 *
 * @param take - the same door that live messages come in by: one that came twice is known there
 * @throws {Error} when a channel holds more than is read at once; what was read is kept
 */
export async function catchUp(
  db: Db,
  { channels, now }: { readonly channels: Channels; readonly now: () => Instant },
  take: (message: Message) => Promise<void>,
): Promise<void> {
  for (const name of channels.names) {
    const mark = metaValue(db, keyOf(name));
    if (mark === null) {
      noteSeen(db, name, snowflakeAt(now()));
    } else {
      await catchUpOne(channels, name, mark, take);
    }
  }
}

async function catchUpOne(channels: Channels, name: string, mark: string, take: (message: Message) => Promise<void>): Promise<void> {
  const channel = await channels.open(name);
  if (channel === null) {
    return;
  }
  const read = await pageBefore(channel, mark, PAGE);
  for (const message of read.filter(({ editedTimestamp }) => (editedTimestamp ?? 0) > snowflakeTime(mark))) {
    await take(message);
  }
  let after = mark;
  for (let page = 0; page < PAGES_MAX; page += 1) {
    const messages = await pageAfter(channel, after, PAGE);
    for (const message of messages) {
      await take(message);
    }
    if (messages.length < PAGE) {
      return;
    }
    after = messages.at(-1)?.id ?? after;
  }
  throw new Error(`#${name} has more than ${PAGE * PAGES_MAX} messages to read: the rest comes next`);
}
