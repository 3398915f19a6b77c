import { type Message, RateLimitError } from "discord.js";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Sender, Sent } from "../chat/types.ts";
import { UndrawnFile } from "../prints/undrawnFile.ts";
import { attachFiles } from "./attachFiles.ts";
import { type Channels, pageAfter } from "./channels.ts";
import { drawCard } from "./drawCard.ts";
import type { CalledOf } from "./drawLine.ts";
import { sentOf } from "./sentOf.ts";
import { snowflakeAt, snowflakeTime } from "./snowflake.ts";

const PAGE = 100;
const PAGES_MAX = 50;

interface SenderParts {
  readonly channels: Channels;
  readonly calledOf: CalledOf;
  /** The bot's own user id. */
  readonly self: () => string | null;
  /** The platform lets nobody in under this token any more. */
  readonly onStop: (reason: string) => void;
  readonly now: () => Instant;
  readonly log: (error: unknown, doing: string) => void;
}

/** Kept at the top of their channel, where everybody finds them. */
const pinned: ReadonlySet<string> = new Set(["board"]);

const refOf = (message: Message): string | null => message.embeds[0]?.footer?.text ?? null;

/** What the outbox sends and edits, with the reference in the footer by which a post of unknown outcome is found again. */
export function discordSender(parts: SenderParts): Sender {
  const stopOn = (sent: Sent): Sent => {
    if (sent.kind === "stop") {
      parts.onStop(sent.reason);
    }
    return sent;
  };
  const attempt = async (channelName: string, work: (channel: Opened) => Promise<string>): Promise<Sent> => {
    try {
      const channel = await parts.channels.open(channelName);
      return channel === null
        ? { kind: "refused", reason: `no channel is set up for ${channelName}` }
        : { kind: "sent", message: await work(channel) };
    } catch (error) {
      if (error instanceof UndrawnFile || error instanceof TooOldToEdit) {
        return { kind: error instanceof UndrawnFile ? "refused" : "gone", reason: error.message };
      }
      return stopOn(sentOf(error));
    }
  };
  return {
    send: (channelName, card, { nonce, ref }) =>
      attempt(channelName, async (channel) => {
        const drawn = { ...drawCard(card, ref, parts.calledOf), ...(await attachFiles(card)) };
        const sent = await channel.send({ ...drawn, nonce, enforceNonce: true });
        await pin(parts, sent, card);
        return sent.id;
      }),
    edit: (channelName, message, card) => attempt(channelName, (channel) => editPost(parts, channel, message, card)),
    find: async (channelName, ref, since) => {
      try {
        return await findPost(parts, channelName, ref, since);
      } catch (error) {
        stopOn(sentOf(error));
        throw error;
      }
    },
  };
}

type Opened = NonNullable<Awaited<ReturnType<Channels["open"]>>>;

/** An edit keeps the post's reference and wakes nobody again. One that is too old to be edited makes room for a new one. */
async function editPost(parts: SenderParts, channel: Opened, message: string, card: Card): Promise<string> {
  const before = await channel.messages.fetch(message);
  const drawn = { ...drawCard(card, refOf(before) ?? "", parts.calledOf), ...(await attachFiles(card)) };
  try {
    const after = await channel.messages.edit(message, { ...drawn, attachments: [], allowedMentions: { parse: [] } });
    await pin(parts, after, card);
    return after.id;
  } catch (error) {
    if (error instanceof RateLimitError && parts.now() - snowflakeTime(message) > OLD_MS) {
      await channel.messages.delete(message);
      throw new TooOldToEdit("edits of messages older than an hour are limited");
    }
    throw error;
  }
}

/** The message has made room for a new one. */
class TooOldToEdit extends Error {}

const OLD_MS = 60 * 60_000;

/** A board that cannot be pinned is a board all the same. */
async function pin({ log }: SenderParts, message: Message, { kind }: Card): Promise<void> {
  if (pinned.has(kind) && !message.pinned) {
    try {
      await message.pin();
    } catch (error) {
      log(error, "pinning the board");
    }
  }
}

async function findPost({ channels, self }: SenderParts, channelName: string, ref: string, since: Instant): Promise<string | null> {
  const channel = await channels.open(channelName);
  let after = snowflakeAt(since);
  for (let page = 0; channel !== null && page < PAGES_MAX; page += 1) {
    const messages = await pageAfter(channel, after, PAGE);
    const found = messages.find((message) => message.author.id === self() && refOf(message) === ref);
    if (found !== undefined || messages.length < PAGE) {
      return found?.id ?? null;
    }
    after = messages.at(-1)?.id ?? after;
  }
  if (channel === null) {
    return null;
  }
  throw new Error(`${channelName} has more history than is read at once`);
}
