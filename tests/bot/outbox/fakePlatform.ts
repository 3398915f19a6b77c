import type { Card, Sender, Sent } from "../../../bot/chat/types.ts";
import { type Instant, instant } from "../../../core/kinds.ts";

interface Message {
  readonly id: string;
  readonly channel: string;
  readonly ref: string;
  readonly nonce: string;
  readonly at: Instant;
  card: Card;
  edits: number;
}

export type Fault = "none" | "later" | "told" | "lost" | "unanswered" | "late" | "twice";
export const faults: readonly Fault[] = ["none", "later", "told", "lost", "unanswered", "late", "twice"];

/** How long the platform knows a nonce again: a few minutes only. */
const NONCE_MS = 3 * 60_000;

/**
 * A chat platform with a clock of its own and faults as asked for. `later` and `told` take nothing (a 5xx, a 429 with
 * a wait); `lost` takes nothing and says nothing; `unanswered` takes the post and says nothing; `late` does so after
 * 40 s; `twice` is a network that delivers the same request again.
 */
export class FakePlatform implements Sender {
  now: Instant;
  nextFault: () => Fault = () => "none";
  historyFails: () => boolean = () => false;
  /** What a send or an edit is answered with, in place of taking it. */
  answer: ((call: "send" | "edit", channel: string) => Sent | null) | null = null;
  readonly messages: Message[] = [];
  readonly calls: string[] = [];
  private late: { readonly at: number; readonly arrive: () => void }[] = [];

  constructor(now: Instant) {
    this.now = now;
  }

  /** Lets time pass, with what arrives meanwhile. */
  passUntil(at: number): void {
    this.now = instant(Math.max(this.now, at));
    const arrived = this.late.filter((each) => each.at <= this.now);
    this.late = this.late.filter((each) => each.at > this.now);
    for (const each of arrived) {
      each.arrive();
    }
  }

  send = async (channel: string, card: Card, mark: { readonly nonce: string; readonly ref: string }): Promise<Sent> => {
    this.calls.push(`send ${channel} ${mark.ref}`);
    await this.travel();
    const answered = this.answer?.("send", channel) ?? null;
    if (answered !== null) {
      return answered;
    }
    const take = () => this.take(channel, card, mark);
    switch (this.nextFault()) {
      case "later":
        return { kind: "later", afterMs: null };
      case "told":
        return { kind: "later", afterMs: 7000 };
      case "lost":
        throw new Error("timed out");
      case "unanswered":
        take();
        throw new Error("timed out");
      case "late":
        this.late.push({ at: this.now + 40_000, arrive: take });
        throw new Error("timed out");
      case "twice":
        take();
        return { kind: "sent", message: take() };
      default:
        return { kind: "sent", message: take() };
    }
  };

  edit = async (channel: string, message: string, card: Card): Promise<Sent> => {
    this.calls.push(`edit ${channel} ${message}`);
    await this.travel();
    const answered = this.answer?.("edit", channel) ?? null;
    if (answered !== null) {
      return answered;
    }
    const fault = this.nextFault();
    if (fault === "later" || fault === "told") {
      return { kind: "later", afterMs: fault === "told" ? 7000 : null };
    }
    const found = this.messages.find((each) => each.id === message);
    if (fault !== "lost" && found !== undefined) {
      found.card = card;
      found.edits += 1;
    }
    if (fault !== "none" && fault !== "twice") {
      throw new Error("timed out");
    }
    return found === undefined ? { kind: "gone", reason: "no such message" } : { kind: "sent", message };
  };

  find = async (channel: string, ref: string, since: Instant): Promise<string | null> => {
    this.calls.push(`find ${channel} ${ref}`);
    await this.travel();
    if (this.historyFails()) {
      throw new Error("history timed out");
    }
    return this.messages.find((each) => each.channel === channel && each.ref === ref && each.at >= since)?.id ?? null;
  };

  remove(message: string): void {
    const at = this.messages.findIndex((each) => each.id === message);
    this.messages.splice(at, at < 0 ? 0 : 1);
  }

  private async travel(): Promise<void> {
    this.passUntil(this.now + 50);
    await Promise.resolve();
  }

  private take(channel: string, card: Card, { nonce, ref }: { readonly nonce: string; readonly ref: string }): string {
    const known = this.messages.find((each) => each.nonce === nonce && each.at > this.now - NONCE_MS);
    if (known !== undefined) {
      return known.id;
    }
    const id = `m${this.messages.length + 1}-${ref}`;
    this.messages.push({ id, channel, ref, nonce, at: this.now, card, edits: 0 });
    return id;
  }
}
