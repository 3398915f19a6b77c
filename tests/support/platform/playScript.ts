import { instantIn, readLocalTime } from "../../../bot/boundary/week/localTime.ts";
import { commands } from "../../../bot/registry.ts";
import { readCommandLine } from "../../../bot/rehearsal/commandLine.ts";
import { type RehearsalLine, readRehearsalLine } from "../../../bot/rehearsal/rehearsalLine.ts";
import type { PostName } from "../../../bot/rehearsal/rehearsalWorld.ts";
import { nextDue } from "../../../bot/reminders/tick.ts";
import { type Instant, instant } from "../../../core/kinds.ts";
import { findReply } from "../../../db/repositories/inbound.ts";
import { findLivePost } from "../../../db/repositories/livePosts.ts";
import { metaValue } from "../../../db/repositories/meta.ts";
import { orderByNumber } from "../../../db/repositories/orders.ts";
import { findPost } from "../../../db/repositories/outbox.ts";
import { channelByName, currentEvent } from "../../../db/repositories/people.ts";
import { unsettled } from "../../drill/unsettled.ts";
import { type Interaction, isAnswered } from "./interactions.ts";
import type { JoinedWeek, Running } from "./joinedWeek.ts";
import type { Said } from "./store.ts";
import { idOf } from "./world.ts";

type Row = Readonly<Record<string, unknown>>;
type Values = Readonly<Record<string, string>>;

/** A card as somebody has it on the screen: a post, or an answer that only they see. */
interface Seen {
  readonly id: string;
  readonly channel: string;
  readonly to: string | null;
  readonly components: readonly Row[];
}

interface Part {
  readonly type: number;
  readonly label?: string;
  readonly custom_id: string;
  readonly value?: string;
  readonly options?: readonly { readonly label: string; readonly value: string; readonly default?: boolean }[];
}

const BUTTON = 2;
const SELECT = 3;
const MINUTE_MS = 60_000;
const SETTLE_PATIENCE_MS = 60_000;

const partsOf = (seen: Pick<Seen, "components">, type: number): readonly Part[] =>
  seen.components.flatMap(({ components }) => (components ?? []) as readonly Part[]).filter((part) => part.type === type);

/** Plays a script of the rehearsal in the chat, line after line: what was typed there is said, pressed, chosen and sent here. */
export class ChatPlayer {
  private who = "maren";
  private channel = "plover-orders";
  private readonly seen: Seen[] = [];
  private readonly drawn = new Map<string, string>();
  private readonly own = new Map<string, Said>();
  private readonly forms = new Map<string, { readonly form: Interaction; readonly answers: Map<string, string> }>();
  private again: () => void = () => {};

  constructor(
    private readonly week: JoinedWeek,
    private readonly running: Running,
  ) {}

  async play(script: string): Promise<void> {
    await this.settle();
    for (const line of script.replaceAll("\\\n", "\u0000").split("\n")) {
      try {
        await this.playLine(readRehearsalLine(line.replaceAll("\u0000", "\n")));
      } catch (error) {
        throw new Error(`at: ${line}`, { cause: error });
      }
    }
  }

  private async playLine(line: RehearsalLine): Promise<void> {
    const { platform } = this.week;
    switch (line.kind) {
      case "nothing":
      case "quit":
        return;
      case "person":
        this.who = line.name;
        return;
      case "channel":
        this.channel = line.name;
        return;
      case "forward":
        return this.passTime(instant(this.week.now() + line.ms));
      case "moment":
        return this.passTime(this.moment(line.written));
      case "message":
        return this.say(line.text);
      case "edit":
        return this.edit(line.text);
      case "again":
        this.again();
        return this.settle();
      case "command": {
        const read = readCommandLine(line.text, (name) => commands.find((command) => command.name === name)?.options ?? null);
        if (read.kind === "misused") {
          throw new Error(read.reason);
        }
        return this.take(platform.calls(this.who, this.channel, read.command, read.values));
      }
      case "press": {
        const card = this.card(line.on, BUTTON);
        const label = partsOf(card, BUTTON)[line.number - 1]?.label ?? "";
        return this.take(platform.presses(this.who, { ...card, channel: idOf(platform.world.channels, card.channel) }, label));
      }
      case "choose": {
        const card = this.card(line.on, SELECT);
        const value = partsOf(card, SELECT)[0]?.options?.[line.number - 1]?.value ?? "";
        return this.take(platform.chooses(this.who, { ...card, channel: idOf(platform.world.channels, card.channel) }, value));
      }
      case "answer":
        return this.fill(line.number, line.text);
      case "send":
        return this.send();
      case "attach":
        throw new Error("no files here");
    }
  }

  private async passTime(target: Instant): Promise<void> {
    const { db, now, forward } = this.week;
    for (let due = nextDue({ db }, now(), target); due !== null && due < target; due = nextDue({ db }, now(), target)) {
      forward(Math.max(0, due - now()) / MINUTE_MS);
      await this.settle();
    }
    forward(Math.max(0, target - now()) / MINUTE_MS);
    await this.settle();
  }

  private moment(written: string): Instant {
    const { db, now } = this.week;
    const truck = channelByName(db, this.channel)?.truckId ?? null;
    const zone = (truck === null ? null : currentEvent(db, truck, now())?.event.zone) ?? "UTC";
    const local = readLocalTime(written);
    const at = local === null ? null : instantIn(zone, local);
    if (at === null) {
      throw new Error(`no such time: ${written}`);
    }
    return at;
  }

  private async say(text: string): Promise<void> {
    const { platform, db } = this.week;
    const said = platform.says(this.who, this.channel, text);
    this.own.set(this.who, said);
    this.again = () => platform.deliverAgain(said);
    const channel = `discord.seen.${this.channel}`;
    await this.until(() => BigInt(metaValue(db, channel) ?? 0) >= BigInt(said.id), `the reading of ${text}`);
    return this.settle();
  }

  private async edit(text: string): Promise<void> {
    const { platform, db } = this.week;
    const said = this.own.get(this.who);
    if (said === undefined) {
      throw new Error(`${this.who} said nothing yet`);
    }
    platform.edits(said, text);
    this.again = () => platform.deliverAgain(said);
    await this.until(() => findReply(db, `message:${said.id}:${said.editedAtMs ?? 0}`) !== null, `the reading of ${text}`);
    return this.settle();
  }

  private async take(interaction: Interaction): Promise<void> {
    const { platform } = this.week;
    this.again = () => platform.again(interaction);
    await this.until(() => isAnswered(interaction), "the answer");
    if (interaction.form !== null) {
      this.forms.set(this.who, { form: interaction, answers: new Map() });
    } else if (interaction.shown !== null) {
      const components = (interaction.shown.components ?? []) as readonly Row[];
      this.seen.push({ id: interaction.id, channel: this.channel, to: this.who, components });
    }
    return this.settle();
  }

  private fill(number: number, text: string): void {
    const open = this.openForm();
    const part = formParts(open.form)[number - 1];
    const wanted = text.trim().toLowerCase();
    const option = part?.options?.find(({ label, value }, index) => [label.toLowerCase(), value.toLowerCase(), String(index + 1)].includes(wanted));
    if (part === undefined || (part.type === SELECT && option === undefined)) {
      throw new Error(`the form has no part ${number} that takes ${text}`);
    }
    open.answers.set(part.custom_id, option?.value ?? text);
  }

  private send(): Promise<void> {
    const { form, answers } = this.openForm();
    const values: Values = Object.fromEntries(
      formParts(form).map(({ custom_id, value, options }) => [
        custom_id,
        answers.get(custom_id) ?? value ?? options?.find((option) => option.default)?.value ?? "",
      ]),
    );
    this.forms.delete(this.who);
    return this.take(this.week.platform.submits(this.who, form, values));
  }

  private openForm() {
    const open = this.forms.get(this.who);
    if (open === undefined) {
      throw new Error(`no form is open for ${this.who}`);
    }
    return open;
  }

  /** The post of an order, or the last card with such parts that the person sees in the channel. */
  private card(on: PostName | null, type: number): Seen {
    const found =
      on?.kind === "order"
        ? this.postOf(on.number)
        : this.seen.findLast((one) => one.channel === this.channel && (one.to === null || one.to === this.who) && partsOf(one, type).length > 0);
    if (found === undefined || found === null) {
      throw new Error(`no card to press on in ${this.channel} for ${this.who}`);
    }
    return found;
  }

  private postOf(number: number): Seen | null {
    const { db, platform, now } = this.week;
    const channel = channelByName(db, this.channel);
    const truck = channel?.truckId ?? null;
    const order = truck === null ? null : orderByNumber(db, truck, currentEvent(db, truck, now())?.event.id ?? null, number);
    if (channel === null || order === null) {
      return null;
    }
    const isBench = channel.purpose === "bench";
    const live = findLivePost(db, { subject: `${isBench ? "sheet" : "order"}:${order.id}`, channel: isBench ? channel.name : order.channel });
    const messageId = live === null ? null : (findPost(db, live.outboxId)?.messageId ?? null);
    const said = live === null || messageId === null ? null : platform.store.find(idOf(platform.world.channels, live.channel), messageId);
    return said === null || live === null ? null : { id: said.id, channel: live.channel, to: null, components: said.components };
  }

  /** Until everything has left; then what is new or changed has been seen. */
  private async settle(): Promise<void> {
    const { db, platform } = this.week;
    await this.running.tick();
    await this.until(() => unsettled(db, platform, []).next().done === true, "everything to leave");
    for (const [name, id] of platform.world.channels) {
      for (const post of platform.store.messages.filter(({ channel, author }) => channel === id && author === platform.world.bot)) {
        const drawn = JSON.stringify([post.embeds, post.components]);
        if (this.drawn.get(post.id) !== drawn) {
          this.drawn.set(post.id, drawn);
          this.seen.push({ id: post.id, channel: name, to: null, components: post.components });
        }
      }
    }
  }

  private async until(look: () => boolean, what: string): Promise<void> {
    const { platform } = this.week;
    const looking = setInterval(platform.look, 20);
    try {
      await platform.until(look, what, SETTLE_PATIENCE_MS);
    } finally {
      clearInterval(looking);
    }
  }
}

const formParts = ({ form }: Interaction): readonly Part[] =>
  ((form?.components ?? []) as readonly { readonly component: Part }[]).map(({ component }) => component);
