import type { Instant } from "../../core/kinds.ts";
import { type Asked, allAsked, deleteAsked, insertAsked } from "../../db/repositories/asked.ts";
import { findReply } from "../../db/repositories/inbound.ts";
import { enqueuePost, type PostMark } from "../../db/repositories/outbox.ts";
import { personByIdentity } from "../../db/repositories/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";
import type { Card, Incoming, Reply } from "../chat/types.ts";
import { codeWords } from "../operations/codeWords.ts";
import { type Asker, cutShortCard, lateAnswerCard } from "../replies/lateAnswerCard.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";

/** How long after it was asked an answer is still worth a post. */
const WORTH_MS = 60 * 60_000;

/** What was asked, as far as it is known before it is read. */
export type Asking = Pick<Incoming, "key" | "channel" | "sender"> & { readonly command: string };

/** Whether answers reach those who asked; one that does not leaves as a post. */
export interface Answers {
  /** From here on a process that ends owes an answer. */
  readonly asked: (asking: Asking) => void;
  readonly reached: (key: string) => void;
  readonly missed: (asking: Asking, reply: Reply | null) => void;
  /** What an earlier process owes: it ended before it got to it, or between the commit and the answer. */
  readonly missedBefore: () => void;
}

export function makeAnswers(parts: { readonly db: Db; readonly now: () => Instant; readonly newMark: () => PostMark }): Answers {
  const { db, now, newMark } = parts;
  const post = (tx: Tx, { key, channel }: Pick<Asked, "key" | "channel">, card: Card): void => {
    enqueuePost(tx, { channel, dedupeKey: `answer:${key}`, card: withCodeWords(card, codeWords(tx)), at: now(), ...newMark() });
  };
  return {
    asked: ({ key, channel, command, sender: { platform, platformId } }) =>
      write(db, (tx) => insertAsked(tx, { key, at: now(), channel, platform, platformId, command })),
    reached: (key) => write(db, (tx) => deleteAsked(tx, key)),
    missed: (asking, reply) =>
      write(db, (tx) => {
        deleteAsked(tx, asking.key);
        if (reply !== null) {
          post(tx, asking, lateAnswerCard(askerOf(tx, asking.sender), reply));
        }
      }),
    missedBefore: () =>
      write(db, (tx) => {
        for (const asked of allAsked(tx)) {
          deleteAsked(tx, asked.key);
          const card = cardOwed(tx, asked);
          if (card !== null && asked.at >= now() - WORTH_MS) {
            post(tx, asked, card);
          }
        }
      }),
  };
}

/** What an earlier process owes: the answer it had committed, or that it never got to it; null where the answer was nothing. */
function cardOwed(tx: Tx, asked: Asked): Card | null {
  const committed = findReply(tx, asked.key);
  if (committed === null) {
    return cutShortCard(askerOf(tx, asked), asked.command, asked.at);
  }
  const reply = committed.reply as Reply | null;
  return reply === null ? null : lateAnswerCard(askerOf(tx, asked), reply);
}

function askerOf(tx: Tx, { platform, platformId }: Pick<Asked, "platform" | "platformId">): Asker | null {
  const known = personByIdentity(tx, platform, platformId);
  return known === null ? null : { id: known.id, name: known.name ?? "erased" };
}
