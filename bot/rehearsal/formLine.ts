import type { FormPart } from "../chat/types.ts";
import { deliver } from "./deliver.ts";
import type { Misuse, Session } from "./session.ts";

/** Fills one part of the open form; a part with items takes an item's text, value or number. */
export function fillPart(session: Session, number: number, text: string): Misuse {
  const open = session.forms.get(session.person);
  if (open === undefined) return `no form is open for @${session.person}`;
  const part = open.form.parts[number - 1];
  if (part === undefined) return `no part ${number} in "${open.form.title}"`;
  const value = part.items.length === 0 ? text : itemValue(part, text);
  if (value === null) return `"${part.label}" takes ${part.items.map(({ label }) => label).join(", ")}`;
  session.forms.set(session.person, { ...open, answers: new Map([...open.answers, [part.name, value]]) });
  return null;
}

function itemValue({ items }: FormPart, text: string): string | null {
  const wanted = text.trim().toLowerCase();
  const named = items.find(({ label, value }) => label.toLowerCase() === wanted || value.toLowerCase() === wanted);
  const counted = /^\d{1,3}$/.test(wanted) ? items[Number(wanted) - 1] : undefined;
  return (named ?? counted)?.value ?? null;
}

/** Sends the open form; what was not filled keeps the value it came with. */
export async function sendForm(session: Session): Promise<Misuse> {
  const open = session.forms.get(session.person);
  if (open === undefined) return `no form is open for @${session.person}`;
  const answers = open.form.parts.map(({ name, value }): readonly [string, string] => [name, open.answers.get(name) ?? value]);
  const empty = open.form.parts.find(({ required }, index) => required && (answers[index]?.[1] ?? "").trim() === "");
  if (empty !== undefined) return `"${empty.label}" is still empty`;
  session.forms.delete(session.person);
  const key = `submit:${session.world.newKey()}`;
  return deliver(session, key, open.channel, { kind: "submit", action: open.form.action, answers: Object.fromEntries(answers) });
}
