import type { Card } from "../chat/types.ts";
import { drawFile } from "../prints/drawFile.ts";

/** A card's files as the platform takes them; nothing for a card without any. */
export async function drawFiles({ files }: Card) {
  const drawn = await Promise.all(files.map(drawFile));
  return drawn.length === 0 ? {} : { files: drawn.map(({ name, bytes }) => ({ name, attachment: Buffer.from(bytes) })) };
}
