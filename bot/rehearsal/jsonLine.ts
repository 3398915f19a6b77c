import type { ScreenPost } from "./screenPost.ts";

/** One post as one line of JSON, its moment in ISO UTC, its files as they were kept. */
export function jsonLine(post: ScreenPost): string {
  const { id, channel, to, answers, edits } = post;
  const shown = "card" in post ? { card: { ...post.card, files: post.files } } : { form: post.form };
  return JSON.stringify({ id, at: new Date(post.at).toISOString(), channel, to, answers, edits, ...shown });
}
