import { type Instant, instant } from "../../core/kinds.ts";
import { markAnswered, unansweredSince } from "../../db/repositories/inbound.ts";
import { enqueuePost, type PostMark } from "../../db/repositories/outbox.ts";
import { personByIdentity, personName } from "../../db/repositories/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";
import type { Incoming, Reply } from "../chat/types.ts";
import { codeWords } from "../operations/codeWords.ts";
import { lateAnswerCard } from "../replies/lateAnswerCard.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";

/** How long after it was asked an answer is still worth a post. */
const WORTH_MS = 60 * 60_000;
/** What came by a platform with ids of its own; the rehearsal answers at once. */
const fromOutside = /^(?:press|submit|invoke):\d{17,20}$/;

/** Whether answers reach those who asked; one that does not leaves as a post. */
export interface Answers {
  readonly reached: (key: string) => void;
  readonly missed: (incoming: Incoming, reply: Reply | null) => void;
  /** Those of an earlier process that ended between the commit and the answer. */
  readonly missedBefore: () => void;
}

export function makeAnswers(parts: { readonly db: Db; readonly now: () => Instant; readonly newMark: () => PostMark }): Answers {
  const { db, now, newMark } = parts;
  const post = (
    tx: Tx,
    asked: { readonly key: string; readonly channel: string; readonly person: Parameters<typeof lateAnswerCard>[0] },
    reply: Reply,
  ): void => {
    const card = withCodeWords(lateAnswerCard(asked.person, reply), codeWords(tx));
    enqueuePost(tx, { channel: asked.channel, dedupeKey: `answer:${asked.key}`, card, at: now(), ...newMark() });
  };
  return {
    reached: (key) => write(db, (tx) => markAnswered(tx, key, now())),
    missed: ({ key, channel, sender }, reply) =>
      write(db, (tx) => {
        markAnswered(tx, key, now());
        if (reply !== null) {
          const known = personByIdentity(tx, sender.platform, sender.platformId);
          post(tx, { key, channel, person: known === null ? null : { id: known.id, name: known.name ?? "erased" } }, reply);
        }
      }),
    missedBefore: () =>
      write(db, (tx) => {
        for (const { key, channel, personId, reply } of unansweredSince(tx, instant(now() - WORTH_MS))) {
          if (fromOutside.test(key)) {
            markAnswered(tx, key, now());
            if (reply !== null) {
              post(tx, { key, channel, person: personId === null ? null : { id: personId, name: personName(tx, personId) } }, reply as Reply);
            }
          }
        }
      }),
  };
}
