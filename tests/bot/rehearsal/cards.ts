import type { Action, Card } from "../../../bot/chat/types.ts";

export const action = (command: string, version = 1): Action => ({ command, subject: "order:57", version });

export const card = (title: string, rest: Partial<Card> = {}): Card => ({
  kind: "test",
  title,
  tone: "plain",
  lines: [],
  fields: [],
  buttons: [],
  choices: null,
  files: [],
  data: {},
  ...rest,
});

export const cardWithButtons = (title: string, ...labels: readonly string[]): Card =>
  card(title, { buttons: labels.map((label) => ({ label, action: action(label.toLowerCase()), weight: "plain" as const })) });
