import type { Card } from "../chat/types.ts";
import { deliver } from "./deliver.ts";
import type { PostName, RehearsalPost } from "./rehearsalWorld.ts";
import type { Misuse, Session } from "./session.ts";

/** Presses a button by its number, on the last card that has some or on the one named. */
export async function pressButton(session: Session, number: number, on: PostName | null): Promise<Misuse> {
  const found = cardFor(session, on, ({ buttons }) => buttons.length > 0);
  if (found === null) return missing(session, on, "buttons");
  const button = found.card.buttons[number - 1];
  if (button === undefined) return `no button ${number} on "${found.card.title}"`;
  return deliver(session, `press:${session.world.newKey()}`, found.channel, { kind: "press", action: button.action, picked: [] });
}

/** Takes one of a card's choices by its number. */
export async function chooseItem(session: Session, number: number, on: PostName | null): Promise<Misuse> {
  const found = cardFor(session, on, ({ choices }) => choices !== null);
  const choices = found?.card.choices ?? null;
  if (found === null || choices === null) return missing(session, on, "choices");
  const item = choices.items[number - 1];
  if (item === undefined) return `no choice ${number} on "${found.card.title}"`;
  return deliver(session, `press:${session.world.newKey()}`, found.channel, { kind: "press", action: choices.action, picked: [item.value] });
}

function cardFor(session: Session, on: PostName | null, fits: (card: Card) => boolean): RehearsalPost | null {
  const { world, screen, channel, person } = session;
  if (on === null) return screen.lastShown(channel, person, fits);
  const shown = on.kind === "ref" ? screen.shownPost(on.ref) : null;
  const found = shown ?? world.findPost(on, channel);
  const asDrawn = found === null ? null : (screen.shownPost(found.id) ?? found);
  return asDrawn !== null && fits(asDrawn.card) ? asDrawn : null;
}

function missing({ channel, person }: Session, on: PostName | null, what: string): string {
  if (on === null) return `no card with ${what} in #${channel} for @${person}`;
  return `no post with ${what} for ${on.kind === "order" ? `order ${on.number}` : on.ref}`;
}
