import { instantIn, readLocalTime } from "../../../bot/boundary/week/localTime.ts";
import { commands } from "../../../bot/registry.ts";
import { readCommandLine } from "../../../bot/rehearsal/commandLine.ts";
import { type RehearsalLine, readRehearsalLine } from "../../../bot/rehearsal/rehearsalLine.ts";
import { nextDue } from "../../../bot/reminders/tick.ts";
import { type Instant, instant } from "../../../core/kinds.ts";
import { findReply } from "../../../db/repositories/inbound.ts";
import { metaValue } from "../../../db/repositories/meta.ts";
import { channelByName, currentEvent } from "../../../db/repositories/people.ts";
import { unsettled } from "../../drill/unsettled.ts";
import { BUTTON, type ChatScreen, chatScreen, type Part, partsOf, SELECT } from "./chatScreen.ts";
import { type Interaction, isAnswered } from "./interactions.ts";
import type { JoinedWeek, Running } from "./joinedWeek.ts";
import type { Said } from "./store.ts";
import { idOf } from "./world.ts";

const MINUTE_MS = 60_000;
const LOOK_MS = 20;
const PATIENCE_MS = 60_000;

/** Who plays where, what they said last, the form before them. */
interface Play {
  readonly week: JoinedWeek;
  readonly running: Running;
  readonly screen: ChatScreen;
  readonly own: Map<string, Said>;
  readonly forms: Map<string, { readonly form: Interaction; readonly answers: Map<string, string> }>;
  who: string;
  channel: string;
  again: () => void;
}

/** Plays a script of the rehearsal in the chat, line after line: what is typed there is said, pressed, chosen and sent here. */
export async function playScript(week: JoinedWeek, running: Running, script: string): Promise<void> {
  const [own, forms] = [new Map<string, Said>(), new Map()];
  const play: Play = { week, running, screen: chatScreen(week), own, forms, who: "maren", channel: "plover-orders", again: () => {} };
  await settle(play);
  for (const line of script.replaceAll("\\\n", "\u0000").split("\n")) {
    try {
      await playLine(play, readRehearsalLine(line.replaceAll("\u0000", "\n")));
    } catch (error) {
      throw new Error(`at: ${line}`, { cause: error });
    }
  }
}

async function playLine(play: Play, line: RehearsalLine): Promise<void> {
  const { platform, now } = play.week;
  switch (line.kind) {
    case "nothing":
    case "quit":
      return;
    case "person":
      play.who = line.name;
      return;
    case "channel":
      play.channel = line.name;
      return;
    case "forward":
      return passTime(play, instant(now() + line.ms));
    case "moment":
      return passTime(play, momentOf(play, line.written));
    case "message":
      return say(play, line.text);
    case "edit":
      return edit(play, line.text);
    case "again":
      play.again();
      return settle(play);
    case "command":
      return call(play, line.text);
    case "press": {
      const card = play.screen.find(line.on, play, BUTTON);
      const label = partsOf(card, BUTTON)[line.number - 1]?.label ?? "";
      return take(play, platform.presses(play.who, { ...card, channel: idOf(platform.world.channels, card.channel) }, label));
    }
    case "choose": {
      const card = play.screen.find(line.on, play, SELECT);
      const value = partsOf(card, SELECT)[0]?.options?.[line.number - 1]?.value ?? "";
      return take(play, platform.chooses(play.who, { ...card, channel: idOf(platform.world.channels, card.channel) }, value));
    }
    case "answer":
      return fill(play, line.number, line.text);
    case "send":
      return send(play);
    case "attach":
      throw new Error("files are not played here");
  }
}

async function passTime(play: Play, target: Instant): Promise<void> {
  const { db, now, forward } = play.week;
  const moveTo = (at: Instant): Promise<void> => {
    forward(Math.max(0, at - now()) / MINUTE_MS);
    return settle(play);
  };
  for (let due = nextDue({ db }, now(), target); due !== null && due < target; due = nextDue({ db }, now(), target)) {
    await moveTo(due);
  }
  await moveTo(target);
}

function momentOf({ week: { db, now }, channel }: Play, written: string): Instant {
  const truck = channelByName(db, channel)?.truckId ?? null;
  const local = readLocalTime(written);
  const at = local === null ? null : instantIn((truck === null ? null : currentEvent(db, truck, now())?.event.zone) ?? "UTC", local);
  if (at === null) {
    throw new Error(`no such time: ${written}`);
  }
  return at;
}

async function say(play: Play, text: string): Promise<void> {
  const { platform, db } = play.week;
  const said = platform.says(play.who, play.channel, text);
  play.own.set(play.who, said);
  play.again = () => platform.deliverAgain(said);
  const mark = `discord.seen.${play.channel}`;
  await until(play, () => BigInt(metaValue(db, mark) ?? 0) >= BigInt(said.id), "its reading");
  return settle(play);
}

async function edit(play: Play, text: string): Promise<void> {
  const { platform, db } = play.week;
  const said = play.own.get(play.who);
  if (said === undefined) {
    throw new Error(`${play.who} said nothing yet`);
  }
  platform.edits(said, text);
  await until(play, () => findReply(db, `message:${said.id}:${said.editedAtMs ?? 0}`) !== null, "its reading");
  return settle(play);
}

function call(play: Play, text: string): Promise<void> {
  const read = readCommandLine(text, (name) => commands.find((command) => command.name === name)?.options ?? null);
  if (read.kind === "misused") {
    throw new Error(read.reason);
  }
  return take(play, play.week.platform.calls(play.who, play.channel, read.command, read.values));
}

async function take(play: Play, interaction: Interaction): Promise<void> {
  play.again = () => play.week.platform.again(interaction);
  await until(play, () => isAnswered(interaction), "its answer");
  if (interaction.form !== null) {
    play.forms.set(play.who, { form: interaction, answers: new Map() });
  } else if (interaction.shown !== null) {
    play.screen.answered(interaction, play.channel, play.who);
  }
  return settle(play);
}

const formParts = ({ form }: Interaction): readonly Part[] =>
  ((form?.components ?? []) as readonly { readonly component: Part }[]).map(({ component }) => component);

function openForm({ forms, who }: Play) {
  const open = forms.get(who);
  if (open === undefined) {
    throw new Error(`no form is open for ${who}`);
  }
  return open;
}

function fill(play: Play, number: number, text: string): void {
  const { form, answers } = openForm(play);
  const part = formParts(form)[number - 1];
  const wanted = text.trim().toLowerCase();
  const option = part?.options?.find(({ label, value }, index) => [label.toLowerCase(), value.toLowerCase(), String(index + 1)].includes(wanted));
  if (part === undefined || (part.type === SELECT && option === undefined)) {
    throw new Error(`the form has no part ${number} that takes ${text}`);
  }
  answers.set(part.custom_id, option?.value ?? text);
}

function send(play: Play): Promise<void> {
  const { form, answers } = openForm(play);
  const givenFor = ({ custom_id, value, options }: Part): string =>
    answers.get(custom_id) ?? value ?? options?.find((option) => option.default)?.value ?? "";
  play.forms.delete(play.who);
  const values = Object.fromEntries(formParts(form).map((part) => [part.custom_id, givenFor(part)]));
  return take(play, play.week.platform.submits(play.who, form, values));
}

/** What the clock owes is done and everything has left; people have seen it then. */
async function settle(play: Play): Promise<void> {
  const { db, platform } = play.week;
  await play.running.tick();
  await until(play, () => unsettled(db, platform, []).next().done === true, "everything to leave");
  play.screen.look();
}

async function until({ week: { platform } }: Play, look: () => boolean, what: string): Promise<void> {
  const looking = setInterval(platform.look, LOOK_MS);
  try {
    await platform.until(look, what, PATIENCE_MS);
  } finally {
    clearInterval(looking);
  }
}
