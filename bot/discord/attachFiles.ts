import type { Card } from "../chat/types.ts";
import { drawFiles } from "../prints/drawFiles.ts";

/** A card's files as the platform takes them; nothing for a card without any. */
export async function attachFiles(card: Card): Promise<{ readonly files?: { readonly name: string; readonly attachment: Buffer }[] }> {
  const drawn = await drawFiles(card);
  return drawn.length === 0 ? {} : { files: drawn.map(({ name, bytes }) => ({ name, attachment: Buffer.from(bytes) })) };
}
