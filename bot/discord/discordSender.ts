import type { Message } from "discord.js";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Sender, Sent } from "../chat/types.ts";
import { UndrawnFile } from "../prints/undrawnFile.ts";
import { attachFiles } from "./attachFiles.ts";
import { type Channels, pageAfter } from "./channels.ts";
import { drawCard } from "./drawCard.ts";
import type { CalledOf } from "./drawLine.ts";
import { sentOf } from "./sentOf.ts";
import { snowflakeAt } from "./snowflake.ts";

const PAGE = 100;
const PAGES_MAX = 50;

interface SenderParts {
  readonly channels: Channels;
  readonly calledOf: CalledOf;
  /** The bot's own user id. */
  readonly self: () => string | null;
  /** The platform lets nobody in under this token any more. */
  readonly onStop: (reason: string) => void;
}

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
      return error instanceof UndrawnFile ? { kind: "refused", reason: error.message } : stopOn(sentOf(error));
    }
  };
  return {
    send: (channelName, card, { nonce, ref }) =>
      attempt(
        channelName,
        async (channel) =>
          (await channel.send({ ...drawCard(card, ref, parts.calledOf), ...(await attachFiles(card)), nonce, enforceNonce: true })).id,
      ),
    edit: (channelName, message, card) => attempt(channelName, (channel) => editPost(channel, message, card, parts.calledOf)),
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

/** An edit keeps the post's reference and wakes nobody again. */
async function editPost(channel: Opened, message: string, card: Card, calledOf: CalledOf): Promise<string> {
  const before = await channel.messages.fetch(message);
  const after = await channel.messages.edit(message, {
    ...drawCard(card, refOf(before) ?? "", calledOf),
    ...(await attachFiles(card)),
    attachments: [],
    allowedMentions: { parse: [] },
  });
  return after.id;
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
