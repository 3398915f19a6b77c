import type { Id, Instant } from "../../core/kinds.ts";
import type { ReadyBoardPrint } from "../prints/ready/readyBoardPrint.ts";
import type { SheetPrint } from "../prints/sheetPrint.ts";

/** Plain JSON: what is logged, stored and replayed. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

export const roles = ["viewer", "rep", "technician", "lead"] as const;
export type Role = (typeof roles)[number];

/** Who is behind an arrival; the clock is an actor too. The truck and the zone come from the channel. */
export interface Actor {
  readonly person: Id<"person"> | null;
  readonly name: string;
  readonly roles: readonly Role[];
  readonly truck: Id<"truck"> | null;
  /** The venue's zone: what times in the channel mean. */
  readonly zone: string;
  readonly ownZone: string;
  readonly lengthUnit: "in" | "mm";
}

interface Arrival {
  /** `message:<id>:<edited at, 0 when new>`, `press:<id>`, `submit:<id>` or `invoke:<id>`. */
  readonly key: string;
  readonly channel: string;
  readonly sender: { readonly platform: string; readonly platformId: string; readonly roleIds: readonly string[] };
}

/** Names the subject and the version that the person saw, so that a stale or doubled press is harmless. */
export interface Action {
  readonly command: string;
  readonly subject: string;
  readonly version: number;
  readonly argument?: string;
}

export type Values = Readonly<Record<string, string>>;

export type Incoming = Arrival &
  (
    | {
        readonly kind: "message";
        readonly message: string;
        readonly text: string;
        /** The text of a table attached to it; empty when it could not be read. */
        readonly table?: string;
      }
    | { readonly kind: "invoke"; readonly command: string; readonly values: Values }
    | { readonly kind: "press"; readonly action: Action; readonly picked: readonly string[] }
    | { readonly kind: "submit"; readonly action: Action; readonly answers: Values }
  );

interface Choice {
  readonly label: string;
  readonly value: string;
}
export type Audience = "asker" | "channel";
/** A piece of a line. People's text is never markup: the transport escapes every string. */
export type Span =
  | string
  | { readonly strong: string }
  | { readonly at: Instant; readonly zone: string }
  | { readonly call: Id<"person"> | Role; readonly name: string };
export type Line = readonly Span[];
export interface Button {
  readonly label: string;
  readonly action: Action;
  readonly weight: "main" | "plain" | "grave";
}
/** One to 25 things to choose from. */
interface Choices {
  readonly label: string;
  readonly action: Action;
  readonly items: readonly Choice[];
}
/** How a file of a card is drawn once the card is sent; plain JSON like all of a card. */
export type FileRecipe =
  | { readonly name: string; readonly draw: "sheet"; readonly sheet: SheetPrint }
  | { readonly name: string; readonly draw: "readyBoard"; readonly board: ReadyBoardPrint };
export interface Card {
  readonly kind: string;
  readonly title: string;
  readonly tone: "plain" | "good" | "attention" | "refusal";
  readonly lines: readonly Line[];
  /** What stands behind More. */
  readonly fields: readonly { readonly label: string; readonly value: Line }[];
  readonly buttons: readonly Button[];
  readonly choices: Choices | null;
  readonly files: readonly FileRecipe[];
  /** Every number shown, unrounded, its unit in its name. */
  readonly data: { readonly [key: string]: Json };
}
export interface FormPart {
  readonly name: string;
  readonly label: string;
  readonly items: readonly Choice[];
  readonly required: boolean;
  readonly value: string;
}
/** One page of at most five questions. */
export interface Form {
  readonly title: string;
  readonly action: Action;
  readonly parts: readonly FormPart[];
}
export type Reply = { readonly kind: "card"; readonly audience: Audience; readonly card: Card } | { readonly kind: "form"; readonly form: Form };

/** How a post left, or why it did not. */
export type Sent =
  | { readonly kind: "sent"; readonly message: string }
  | { readonly kind: "later"; readonly afterMs: number | null }
  | { readonly kind: "gone" | "refused" | "stop"; readonly reason: string };

/** What leaves by the outbox: nothing else of the bot knows a platform. */
export interface Sender {
  readonly send: (channel: string, card: Card, mark: { readonly nonce: string; readonly ref: string }) => Promise<Sent>;
  readonly edit: (channel: string, message: string, card: Card) => Promise<Sent>;
  readonly find: (channel: string, ref: string, since: Instant) => Promise<string | null>;
}

/** An option of a command that somebody is typing, with the values given before. */
export interface Typing extends Pick<Arrival, "channel" | "sender"> {
  readonly command: string;
  readonly option: string;
  readonly typed: string;
  readonly values: Values;
}

export interface Desk {
  /** The answer for the asker, or null when it is not for the bot or leaves by the outbox. */
  readonly receive: (incoming: Incoming) => Promise<Reply | null>;
  /** What could stand in an option that is being typed, from memory; nothing for those who may not call the command. */
  readonly suggest: (typing: Typing) => readonly Choice[];
}
