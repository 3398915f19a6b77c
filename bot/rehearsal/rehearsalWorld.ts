import type { Instant } from "../../core/kinds.ts";
import type { Card, Desk } from "../chat/types.ts";
import type { CommandOption } from "./commandLine.ts";

/** A member of the rehearsed chat, found under the name typed after `@`. */
interface RehearsalPerson {
  readonly platformId: string;
  readonly roleIds: readonly string[];
  readonly name: string;
  readonly zone: string;
}

/** How a line names a post that is not the last one. */
export type PostName = { readonly kind: "order"; readonly number: number } | { readonly kind: "ref"; readonly ref: string };

export interface RehearsalPost {
  /** The ref the post left with. */
  readonly id: string;
  readonly channel: string;
  readonly card: Card;
}

/** The bot and its surroundings, as far as a rehearsal touches them. */
export interface RehearsalWorld {
  readonly desk: Desk;
  /** By the name typed after `@`, in small letters. */
  readonly people: ReadonlyMap<string, RehearsalPerson>;
  /** Without the `#`. */
  readonly channels: readonly string[];
  readonly zoneOf: (channel: string) => string;
  /** Standing still until moved; `moveTo` stores the moment. */
  readonly clock: { readonly now: () => Instant; readonly moveTo: (at: Instant) => void };
  /** The first moment after now, at the limit at the latest, at which something is due; null when nothing is. */
  readonly nextDueAt: (limit: Instant) => Instant | null;
  /** Does everything due now: reminders, then the outbox. */
  readonly settle: () => Promise<void>;
  /** A new id of a message, press or form; never the same again, whatever was restarted in between. */
  readonly newKey: () => string;
  /** The options of a command (`spec`, `order confirm`) in their order; null when there is no such command. */
  readonly commandOptions: (command: string) => readonly CommandOption[] | null;
  /** A post of an earlier run, or an order's live post; the channel says which truck's order is meant. */
  readonly findPost: (name: PostName, channel: string) => RehearsalPost | null;
}
