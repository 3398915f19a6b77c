import type { Attachment } from "discord.js";

const LARGEST_BYTES = 1_000_000;
const PATIENCE_MS = 8000;

/** Whether an attached file is a table by its name. */
export const isTable = ({ name }: Pick<Attachment, "name">): boolean => /\.(?:csv|tsv)$/i.test(name);

/** The UTF-8 text of an attached file up to a megabyte; null when it is larger, no text, or not to be had. */
export async function textOf({ url, size }: Pick<Attachment, "url" | "size">): Promise<string | null> {
  if (size > LARGEST_BYTES) {
    return null;
  }
  try {
    const answer = await fetch(url, { signal: AbortSignal.timeout(PATIENCE_MS) });
    const bytes = answer.ok ? await answer.arrayBuffer() : null;
    return bytes === null || bytes.byteLength > LARGEST_BYTES ? null : new TextDecoder("utf-8", { fatal: true }).decode(bytes).trimEnd();
  } catch {
    return null;
  }
}
