import { eq } from "drizzle-orm";
import type { Instant } from "../../core/kinds.ts";
import { asked } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

/** Something that waits for its answer: its key, when and in which channel, who asked, for which command. */
export interface Asked {
  readonly key: string;
  readonly at: Instant;
  readonly channel: string;
  readonly platform: string;
  readonly platformId: string;
  readonly command: string;
}

/** Keeps that something waits for its answer; a second time changes nothing. */
export function insertAsked(tx: Tx, waiting: Asked): void {
  tx.insert(asked).values(waiting).onConflictDoNothing().run();
}

/** Lists what waits, the longest first. */
export function allAsked(reader: Reader): readonly Asked[] {
  return reader.select().from(asked).orderBy(asked.at, asked.key).all();
}

/** Keeps that something waits no more. */
export function deleteAsked(tx: Tx, key: string): void {
  tx.delete(asked).where(eq(asked.key, key)).run();
}
