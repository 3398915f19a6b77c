import type { ReadyEstimate } from "../../core/bench/benchTypes.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import type { ChannelRow } from "../../db/repositories/people.ts";
import type { Reader, Tx } from "../../db/write.ts";
import type { BenchExtra } from "../operations/benchExtra.ts";
import type { Actor, Card, Json, Reply } from "./types.ts";

/** One change with its before and after, for the record. */
interface Change {
  readonly action: string;
  readonly subject: string;
  readonly before: Json;
  readonly after: Json;
  readonly player?: Id<"player">;
}

/** A post that leaves by the outbox once; with a `live` subject it is edited in place from then on. */
export interface Post {
  readonly channel: string;
  readonly key: string;
  readonly card: Card;
  readonly live?: string;
}

export interface Committed {
  /** The answer for the asker; null when the posts say it all. */
  readonly reply: Reply | null;
  readonly changes: readonly Change[];
  readonly posts: readonly Post[];
}

/** What a command may do: read, estimate, and commit at most once with success. */
export interface Context {
  readonly actor: Actor;
  readonly now: Instant;
  readonly key: string;
  readonly channel: ChannelRow;
  readonly read: <T>(query: (reader: Reader) => T) => T;
  /** Ready times of a truck's open orders and of one that is not yet on its bench, in slices. */
  readonly estimate: (
    truck: Id<"truck">,
    extra: BenchExtra | null,
  ) => Promise<{ readonly benchVersion: number; readonly times: readonly ReadyEstimate[] }>;
  /** Domain rows, inbound key with the reply, audit and outbox in one immediate transaction. */
  readonly commit: (work: (tx: Tx) => Committed) => Reply | null;
  /** The same on an estimate: `moved` when the bench has changed since. */
  readonly commitAt: (truck: Id<"truck">, benchVersion: number, work: (tx: Tx) => Committed) => Reply | null | "moved";
}
