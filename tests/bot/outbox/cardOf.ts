import type { Card } from "../../../bot/chat/types.ts";

/** A card with nothing but a title. */
export const cardOf = (title: string): Card => ({
  kind: "note",
  title,
  tone: "plain",
  lines: [],
  fields: [],
  buttons: [],
  choices: null,
  files: [],
  data: {},
});
