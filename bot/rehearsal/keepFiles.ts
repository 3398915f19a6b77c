import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { extname, join, resolve } from "node:path";
import type { Card } from "../chat/types.ts";
import { drawFiles } from "../prints/drawFiles.ts";

/** A file of a card as it lies on disk. */
export interface KeptFile {
  readonly name: string;
  readonly bytes: number;
  readonly path: string;
}

/** Draws a card's files and keeps them. */
export type KeepFiles = (card: Card) => Promise<readonly KeptFile[]>;

/** In a folder that is made, or chosen, when the first file comes. */
export function keepFilesIn(folderOf: () => string): KeepFiles {
  return async (card) =>
    (await drawFiles(card)).map(({ name, bytes }) => {
      const folder = resolve(folderOf());
      mkdirSync(folder, { recursive: true });
      return { name, bytes: bytes.length, path: write(folder, name, bytes) };
    });
}

/** Another content under the same name stands beside the first; the same content is there already. */
function write(folder: string, name: string, bytes: Uint8Array): string {
  const end = extname(name);
  for (let copy = 1; ; copy += 1) {
    const path = join(folder, copy === 1 ? name : `${name.slice(0, name.length - end.length)}-${copy}${end}`);
    try {
      writeFileSync(path, bytes, { flag: "wx" });
      return path;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      if (Buffer.from(bytes).equals(readFileSync(path))) return path;
    }
  }
}
