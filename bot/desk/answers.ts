import { type Instant, instant } from "../../core/kinds.ts";
import { type Asked, allAsked, deleteAsked, insertAsked } from "../../db/repositories/asked.ts";
import { findReply, markAnswered, unansweredSince } from "../../db/repositories/inbound.ts";
import { enqueuePost, type PostMark } from "../../db/repositories/outbox.ts";
import { personByIdentity, personName } from "../../db/repositories/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";
import type { Card, Incoming, Reply } from "../chat/types.ts";
import { codeWords } from "../operations/codeWords.ts";
import { type Asker, cutShortCard, lateAnswerCard } from "../replies/lateAnswerCard.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";

/** How long after it was asked an answer is still worth a post. */
const WORTH_MS = 60 * 60_000;
/** What came by a platform with ids of its own; the rehearsal answers at once. */
const fromOutside = /^(?:press|submit|invoke):\d{17,20}$/;

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
  const post = (tx: Tx, { key, channel }: { readonly key: string; readonly channel: string }, card: Card): void => {
    enqueuePost(tx, { channel, dedupeKey: `answer:${key}`, card: withCodeWords(card, codeWords(tx)), at: now(), ...newMark() });
  };
  const settle = (tx: Tx, key: string): void => {
    deleteAsked(tx, key);
    markAnswered(tx, key, now());
  };
  return {
    asked: ({ key, channel, command, sender: { platform, platformId } }) =>
      write(db, (tx) => insertAsked(tx, { key, at: now(), channel, platform, platformId, command })),
    reached: (key) => write(db, (tx) => settle(tx, key)),
    missed: (asking, reply) =>
      write(db, (tx) => {
        settle(tx, asking.key);
        if (reply !== null) {
          post(tx, asking, lateAnswerCard(askerOf(tx, asking.sender), reply));
        }
      }),
    missedBefore: () =>
      write(db, (tx) => {
        const since = instant(now() - WORTH_MS);
        for (const { key, channel, personId, reply } of unansweredSince(tx, since)) {
          if (fromOutside.test(key)) {
            settle(tx, key);
            if (reply !== null) {
              post(tx, { key, channel }, lateAnswerCard(personId === null ? null : { id: personId, name: personName(tx, personId) }, reply as Reply));
            }
          }
        }
        for (const asked of allAsked(tx)) {
          deleteAsked(tx, asked.key);
          if (asked.at >= since && findReply(tx, asked.key) === null) {
            post(tx, asked, cutShortCard(askerOf(tx, asked), asked.command, asked.at));
          }
        }
      }),
  };
}

function askerOf(tx: Tx, { platform, platformId }: Pick<Asked, "platform" | "platformId">): Asker | null {
  const known = personByIdentity(tx, platform, platformId);
  return known === null ? null : { id: known.id, name: known.name ?? "erased" };
}
