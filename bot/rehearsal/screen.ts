import type { Writable } from "node:stream";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Reply, Sender, Sent } from "../chat/types.ts";
import { UndrawnFile } from "../prints/undrawnFile.ts";
import { jsonLine } from "./jsonLine.ts";
import type { KeepFiles } from "./keepFiles.ts";
import type { ScreenPost } from "./screenPost.ts";
import { textLines } from "./textLines.ts";

/** More than a person scrolls back; an older post is looked up by its ref. */
const CARDS_KEPT = 500;

interface ShownCard {
  readonly id: string;
  readonly channel: string;
  readonly to: string | null;
  readonly card: Card;
}

/** Draws what the bot shows and remembers it, so that it can be pressed. */
export interface Screen {
  /** For the outbox: what it sends and edits is drawn here. */
  readonly sender: Sender;
  readonly answer: (key: string, channel: string, person: string, reply: Reply) => Promise<void>;
  /** The newest card, as it was drawn last, that a person sees in a channel and that fits. */
  readonly lastShown: (channel: string, person: string, fits: (card: Card) => boolean) => ShownCard | null;
  readonly shownPost: (id: string) => ShownCard | null;
}

interface ScreenParts {
  readonly output: Writable;
  /** One object a line instead of text. */
  readonly json: boolean;
  readonly zoneOf: (channel: string) => string;
  readonly now: () => Instant;
  readonly keepFiles: KeepFiles;
}

export function openScreen({ output, json, zoneOf, now, keepFiles }: ScreenParts): Screen {
  const cards: ShownCard[] = [];
  const remember = (shown: ShownCard): void => {
    const earlier = cards.findIndex(({ id }) => id === shown.id);
    if (earlier >= 0) cards.splice(earlier, 1);
    cards.push(shown);
    if (cards.length > CARDS_KEPT) cards.shift();
  };
  const show = (post: ScreenPost): void => {
    const lines = json ? [jsonLine(post)] : [...textLines(post, zoneOf(post.channel)), ""];
    output.write(`${lines.join("\n")}\n`);
    if ("card" in post) remember({ id: post.id, channel: post.channel, to: post.to, card: post.card });
  };
  const showCard = async (post: Place, card: Card): Promise<void> => show({ ...post, card, files: await keepFiles(card) });
  const shownPost = (wanted: string): ShownCard | null => cards.find(({ id }) => id === wanted) ?? null;
  return {
    sender: senderOf(showCard, shownPost, now),
    answer: async (key, channel, person, reply) => {
      const place = { id: `answer:${key}`, at: now(), channel, answers: key, edits: null };
      if (reply.kind === "form") show({ ...place, to: person, form: reply.form });
      else await showCard({ ...place, to: reply.audience === "asker" ? person : null }, reply.card);
    },
    lastShown: (channel, person, fits) =>
      cards.findLast((shown) => shown.channel === channel && (shown.to === null || shown.to === person) && fits(shown.card)) ?? null,
    shownPost,
  };
}

type Place = Omit<ScreenPost, "card" | "form" | "files">;
type ShowCard = (place: Place, card: Card) => Promise<void>;

/** A post goes by its ref; what an earlier run drew is gone with its terminal, so only this run's posts are found. */
function senderOf(showCard: ShowCard, shownPost: (id: string) => ShownCard | null, now: () => Instant): Sender {
  const post = async (id: string, channel: string, edits: string | null, card: Card): Promise<Sent> => {
    try {
      await showCard({ id, at: now(), channel, to: null, answers: null, edits }, card);
      return { kind: "sent", message: id };
    } catch (error) {
      if (error instanceof UndrawnFile) return { kind: "refused", reason: error.message };
      throw error;
    }
  };
  return {
    send: (channel, card, { ref }) => post(ref, channel, null, card),
    edit: (channel, message, card) => post(message, channel, message, card),
    find: async (channel, ref) => (shownPost(ref)?.channel === channel ? ref : null),
  };
}
