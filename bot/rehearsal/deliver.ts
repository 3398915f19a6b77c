import type { Action, Incoming, Values } from "../chat/types.ts";
import { WEEK_PLATFORM } from "../chat/weekPlatform.ts";
import type { Delivery, Misuse, OwnMessage, Session } from "./session.ts";

type Arrived =
  | { readonly kind: "message"; readonly message: string; readonly text: string }
  | { readonly kind: "invoke"; readonly command: string; readonly values: Values }
  | { readonly kind: "press"; readonly action: Action; readonly picked: readonly string[] }
  | { readonly kind: "submit"; readonly action: Action; readonly answers: Values };

/** Takes something the current person did to the desk and shows the answer. */
export async function deliver(session: Session, key: string, channel: string, arrived: Arrived): Promise<Misuse> {
  const person = session.world.people.get(session.person);
  if (person === undefined) return `no person @${session.person}`;
  const sender = { platform: WEEK_PLATFORM, platformId: person.platformId, roleIds: person.roleIds };
  const incoming: Incoming = { key, channel, sender, ...arrived };
  return redeliver(session, { person: session.person, incoming });
}

/** Delivers the same thing once more, under the same key. */
export async function redeliver(session: Session, delivery: Delivery): Promise<Misuse> {
  session.last = delivery;
  const { person, incoming } = delivery;
  const reply = await session.world.desk.receive(incoming);
  if (reply === null) return null;
  await session.screen.answer(incoming.key, incoming.channel, person, reply);
  if (reply.kind === "form") session.forms.set(person, { form: reply.form, channel: incoming.channel, answers: new Map() });
  return null;
}

export async function deliverMessage(session: Session, text: string): Promise<Misuse> {
  return deliverOwn(session, { id: session.world.newKey(), channel: session.channel, editedAt: 0 }, text);
}

/** Edits the current person's last message; an edit made while the clock stands still is a millisecond later. */
export async function deliverEdit(session: Session, text: string): Promise<Misuse> {
  const own = session.messages.get(session.person);
  if (own === undefined) return `@${session.person} has sent no message to edit`;
  return deliverOwn(session, { ...own, editedAt: Math.max(session.world.clock.now(), own.editedAt + 1) }, text);
}

function deliverOwn(session: Session, own: OwnMessage, text: string): Promise<Misuse> {
  session.messages.set(session.person, own);
  return deliver(session, `message:${own.id}:${own.editedAt}`, own.channel, { kind: "message", message: own.id, text });
}
