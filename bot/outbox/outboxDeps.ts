import type { Id, Instant } from "../../core/kinds.ts";
import type { PostMark } from "../../db/repositories/outbox.ts";
import type { Db, Tx } from "../../db/write.ts";
import type { Sender, Sent } from "../chat/types.ts";

/** A post, or one version of a live post, that was given up. */
export interface DeadPost {
  readonly outboxId: Id<"outbox">;
  readonly channel: string;
  readonly ref: string;
  readonly reason: string;
  /** Of the live post whose edit was refused; null for a post. */
  readonly subject: string | null;
}

/** Where a drill may kill the process. */
export type CrashPoint = "before-send" | "after-send" | "before-mark";

export interface OutboxDeps {
  readonly db: Db;
  readonly sender: Sender;
  /** From 0 to below 1. */
  readonly random: () => number;
  readonly newMark: () => PostMark;
  /** In the transaction that gives the post up; a report planned here must not go where the post was refused. */
  readonly onDead: (tx: Tx, dead: DeadPost) => void;
  readonly crash?: (point: CrashPoint) => void;
}

/** The same with the clock of one pass. */
export interface OutboxWork extends OutboxDeps {
  readonly now: () => Instant;
}

export interface Outcome<S> {
  readonly sent: S | Extract<Sent, { kind: "later" }>;
  readonly error: string | null;
}

/** A sender that throws has told nothing: the try counts as one whose outcome is unknown. */
export async function outcome<S extends Sent | null>(sending: () => Promise<S>): Promise<Outcome<S>> {
  try {
    const sent = await sending();
    return { sent, error: sent !== null && "reason" in sent ? sent.reason : null };
  } catch (error) {
    return { sent: { kind: "later", afterMs: null }, error: error instanceof Error ? error.message : String(error) };
  }
}
