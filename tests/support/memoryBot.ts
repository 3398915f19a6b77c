import type { Action, Card, Desk, Incoming, Reply, Sender, Values } from "../../bot/chat/types.ts";
import { WEEK_PLATFORM } from "../../bot/chat/weekPlatform.ts";
import { rolesByName } from "../../bot/desk/actorOf.ts";
import { makeDesk } from "../../bot/desk/desk.ts";
import { runOutboxOnce } from "../../bot/outbox/outboxLoop.ts";
import { commands } from "../../bot/registry.ts";
import { dueNow } from "../../bot/reminders/dueNow.ts";
import { type Instant, instant } from "../../core/kinds.ts";
import type { PostMark } from "../../db/repositories/outbox.ts";
import { identitiesOf } from "../../db/repositories/people.ts";
import type { Db } from "../../db/write.ts";
import { demoWeek } from "./demoWeek.ts";

const SEED = 11;
/** Enough for times that behave; promises are made with more. */
const EFFORT = { samples: 100, scenarios: 10, schedules: 20 };
const MINUTE_MS = 60_000;
const MOST_PASSES = 50;

/** A message of the chat as it stands: the card of its last edit. */
export interface MemoryPost {
  readonly id: string;
  readonly channel: string;
  readonly card: Card;
  readonly edits: number;
}

interface Place {
  readonly person: string;
  readonly channel: string;
  /** What the platform says of the person now; else the roles of the week's files. */
  readonly roles?: readonly string[];
  /** The same key again is the same thing delivered twice. */
  readonly key?: string;
}

/** The smallest chat there can be: posts in an array, people who speak and press, a clock that is moved by hand. */
export interface MemoryBot {
  readonly db: Db;
  readonly now: () => Instant;
  readonly moveTo: (at: Instant) => void;
  readonly later: (minutes: number) => void;
  readonly say: (at: Place, text: string, edited?: { readonly message: string; readonly at: number }) => Promise<Reply | null>;
  readonly invoke: (at: Place, command: string, values: Values) => Promise<Reply | null>;
  readonly press: (at: Place, card: Card, label: string) => Promise<Reply | null>;
  readonly pick: (at: Place, card: Card, label: string) => Promise<Reply | null>;
  readonly submit: (at: Place, action: Action, answers: Values) => Promise<Reply | null>;
  /** The clock's duties of the moment, then everything that waits to leave. */
  readonly settle: () => Promise<void>;
  readonly posts: (channel: string) => readonly MemoryPost[];
  /** What went wrong as a bug: nothing may. */
  readonly bugs: readonly unknown[];
  readonly close: () => void;
}

/** Keeps what the outbox sends, by channel, edits applied. */
function memorySender(posts: Map<string, MemoryPost>): Sender {
  return {
    send: async (channel, card, { ref }) => {
      posts.set(ref, { id: ref, channel, card, edits: 0 });
      return { kind: "sent", message: ref };
    },
    edit: async (channel, message, card) => {
      posts.set(message, { id: message, channel, card, edits: (posts.get(message)?.edits ?? 0) + 1 });
      return { kind: "sent", message };
    },
    find: async (channel, ref) => (posts.get(ref)?.channel === channel ? ref : null),
  };
}

/** Joins the demo week to the chat in memory, its clock at a moment. */
export async function openMemoryBot(start: Instant): Promise<MemoryBot> {
  const { db, close } = await demoWeek();
  const posts = new Map<string, MemoryPost>();
  const bugs: unknown[] = [];
  const sender = memorySender(posts);
  let at = start;
  let marks = 0;
  let keys = 0;
  const now = (): Instant => at;
  const newMark = (): PostMark => {
    marks += 1;
    return { nonce: `memory${marks}`, ref: `memory${marks}` };
  };
  const parts = { db, commands, now, newMark, rolesOf: rolesByName, seed: SEED, log: (error: unknown) => void bugs.push(error) };
  const deliver = delivering(db, makeDesk(parts), () => String(++keys));
  return {
    db,
    now,
    bugs,
    close,
    ...deliver,
    moveTo: (moment) => {
      at = moment;
    },
    later: (minutes) => {
      at = instant(at + minutes * MINUTE_MS);
    },
    settle: async () => {
      await dueNow({ db, newMark, seed: SEED, effort: EFFORT }, now);
      const deps = { db, sender, random: () => 0, newMark, onDead: () => {} };
      for (let pass = 0; pass < MOST_PASSES && (await runOutboxOnce(deps, now)).sent > 0; pass += 1);
    },
    posts: (channel) => [...posts.values()].filter((post) => post.channel === channel),
  };
}

/** What people do, as arrivals at the desk. */
function delivering(db: Db, desk: Desk, newKey: () => string): Pick<MemoryBot, "say" | "invoke" | "press" | "pick" | "submit"> {
  const rolesOf = new Map(identitiesOf(db, WEEK_PLATFORM).map((row) => [row.platformUserId, JSON.parse(row.rehearsalRoles) as string[]]));
  const arrival = (kind: Incoming["kind"], place: Place) => ({
    key: place.key ?? `${kind}:${newKey()}`,
    channel: place.channel,
    sender: { platform: WEEK_PLATFORM, platformId: place.person, roleIds: place.roles ?? rolesOf.get(place.person) ?? [] },
  });
  return {
    say: (place, text, edited) => {
      const message = edited?.message ?? newKey();
      const key = place.key ?? `message:${message}:${edited?.at ?? 0}`;
      return desk.receive({ kind: "message", ...arrival("message", { ...place, key }), message, text });
    },
    invoke: (place, command, values) => desk.receive({ kind: "invoke", ...arrival("invoke", place), command, values }),
    press: (place, card, label) => {
      const button = card.buttons.find((known) => known.label === label);
      if (button === undefined) {
        throw new Error(`no button ${label} on "${card.title}": ${card.buttons.map((known) => known.label).join(", ")}`);
      }
      return desk.receive({ kind: "press", ...arrival("press", place), action: button.action, picked: [] });
    },
    pick: (place, card, label) => {
      const item = card.choices?.items.find((known) => known.label === label);
      if (card.choices === null || item === undefined) {
        throw new Error(`no choice ${label} on "${card.title}"`);
      }
      return desk.receive({ kind: "press", ...arrival("press", place), action: card.choices.action, picked: [item.value] });
    },
    submit: (place, action, answers) => desk.receive({ kind: "submit", ...arrival("submit", place), action, answers }),
  };
}
