import type { ScreenPost } from "./screenPost.ts";

/** One post as one line of JSON, its moment in ISO UTC. */
export function jsonLine(post: ScreenPost): string {
  const { id, channel, to, answers, edits } = post;
  const shown = "card" in post ? { card: post.card } : { form: post.form };
  return JSON.stringify({ id, at: new Date(post.at).toISOString(), channel, to, answers, edits, ...shown });
}
