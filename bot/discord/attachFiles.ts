import type { Card } from "../chat/types.ts";
import type { DrawnFile } from "../prints/drawFile.ts";
import { drawFiles } from "../prints/drawFiles.ts";
import { fileName } from "../prints/fileName.ts";
import { wholeCardText } from "../prints/wholeCardText.ts";
import { FILES_MAX, fitCard } from "./fitCard.ts";

/** Of the 10 MiB that a message takes; the rest is for the text and for what is around the files. */
const FILES_BYTES = 8 * 1024 * 1024;
const TEXT_CHARACTERS = 250_000;

/** A card's files as the platform takes them, with the whole card as text when something of it had no room; nothing for a card without any. */
export async function attachFiles(
  card: Card,
  draw = drawFiles,
): Promise<{ readonly files?: { readonly name: string; readonly attachment: Buffer }[] }> {
  const drawn = await draw({ files: (card.files ?? []).slice(0, FILES_MAX) });
  const [kept, large] = withinBytes(drawn);
  const isWhole = fitCard(card).leftOut === null && large.length === 0;
  const attached = isWhole ? kept : [...kept, textFile(card, large)];
  return attached.length === 0 ? {} : { files: attached.map(({ name, bytes }) => ({ name, attachment: Buffer.from(bytes) })) };
}

function withinBytes(files: readonly DrawnFile[]): readonly [kept: readonly DrawnFile[], large: readonly DrawnFile[]] {
  const [kept, large]: [DrawnFile[], DrawnFile[]] = [[], []];
  let room = FILES_BYTES;
  for (const file of files) {
    const fits = file.bytes.byteLength <= room;
    (fits ? kept : large).push(file);
    room -= fits ? file.bytes.byteLength : 0;
  }
  return [kept, large];
}

function textFile(card: Card, large: readonly DrawnFile[]): Pick<DrawnFile, "name" | "bytes"> {
  const notes = large.map(({ name, bytes }) => `Too large for the chat: ${name}, ${Math.ceil(bytes.byteLength / 1_000_000)} MB\n`);
  const text = [wholeCardText(card), ...notes].join("\n").slice(0, TEXT_CHARACTERS);
  return { name: fileName(`${card.title}.txt`), bytes: Buffer.from(text, "utf8") };
}
