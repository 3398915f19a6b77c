import type { FileRecipe } from "../chat/types.ts";
import { drawSheet } from "./drawSheet.ts";
import { fileName } from "./fileName.ts";
import { drawReadyBoard } from "./ready/drawReadyBoard.ts";

export interface DrawnFile {
  readonly name: string;
  readonly type: "application/pdf" | "image/png";
  readonly bytes: Uint8Array;
}

/** Draws a file of a card when the card is sent: the same recipe gives the same bytes. */
export async function drawFile(recipe: FileRecipe): Promise<DrawnFile> {
  switch (recipe.draw) {
    case "sheet":
      return { name: fileName(recipe.name), type: "application/pdf", bytes: await drawSheet(recipe.sheet) };
    case "readyBoard":
      return { name: fileName(recipe.name), type: "image/png", bytes: await drawReadyBoard(recipe.board) };
  }
}
