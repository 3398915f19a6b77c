import type { Card } from "../chat/types.ts";
import { type DrawnFile, drawFile } from "./drawFile.ts";
import { UndrawnFile } from "./undrawnFile.ts";

/**
 * The files of a card in their order; a card kept by an earlier version knows of none.
 *
 * @throws {UndrawnFile} naming the file, its cause what went wrong
 */
export async function drawFiles({ files }: Pick<Partial<Card>, "files">): Promise<readonly DrawnFile[]> {
  const drawn: DrawnFile[] = [];
  for (const recipe of files ?? []) {
    try {
      drawn.push(await drawFile(recipe));
    } catch (error) {
      throw new UndrawnFile(`the file ${recipe.name} cannot be drawn`, { cause: error });
    }
  }
  return drawn;
}
