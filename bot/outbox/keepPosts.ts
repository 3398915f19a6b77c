import type { Instant } from "../../core/kinds.ts";
import { wantLivePost } from "../../db/repositories/livePosts.ts";
import { enqueuePost, type PostMark } from "../../db/repositories/outbox.ts";
import type { Tx } from "../../db/write.ts";
import type { Post } from "../chat/context.ts";
import { codeWords } from "../operations/codeWords.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";

/** Plans posts in the transaction that causes them: each leaves once, a live one is edited from then on; restricted names by their code word. */
export function keepPosts(tx: Tx, posts: readonly Post[], at: Instant, newMark: () => PostMark): void {
  const words = codeWords(tx);
  for (const post of posts) {
    const { channel, key, live } = post;
    const card = withCodeWords(post.card, words);
    if (live === undefined) {
      enqueuePost(tx, { channel, dedupeKey: key, card, at, ...newMark() });
    } else {
      wantLivePost(tx, { subject: live, channel, card, at, ...newMark() });
    }
  }
}
