import { and, asc, desc, eq } from "drizzle-orm";
import type { Bag } from "../../core/bag/specClub.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { allowanceEntry, marking, specVersion, win } from "../schema/week.ts";
import type { Reader, Tx } from "../write.ts";

export interface LiveSpec {
  readonly version: number;
  readonly validFrom: Instant;
  readonly personId: Id<"person">;
  readonly takenAt: string;
  readonly bag: Bag;
}

/** @returns what the player games now, or null when nothing was ever published */
export function liveSpec(reader: Reader, playerId: Id<"player">): LiveSpec | null {
  const row = reader.select().from(specVersion).where(eq(specVersion.playerId, playerId)).orderBy(desc(specVersion.version)).limit(1).get();
  return row === undefined ? null : { ...row, bag: JSON.parse(row.bag) as Bag };
}

/** Publishes the next version of what a player games. */
export function addSpec(
  tx: Tx,
  spec: {
    readonly playerId: Id<"player">;
    readonly validFrom: Instant;
    readonly personId: Id<"person">;
    readonly eventId: Id<"event"> | null;
    readonly takenAt: string;
    readonly bag: Bag;
  },
): number {
  const version = (liveSpec(tx, spec.playerId)?.version ?? 0) + 1;
  tx.insert(specVersion)
    .values({ ...spec, version, bag: JSON.stringify(spec.bag) })
    .run();
  return version;
}

/** Adds a win. */
export function addWin(tx: Tx, row: typeof win.$inferInsert): void {
  tx.insert(win).values(row).run();
}

/** Adds a marking that is owed. */
export function addMarking(
  tx: Tx,
  row: { readonly playerId: Id<"player">; readonly club: string; readonly text: string; readonly forWin: boolean },
): void {
  tx.insert(marking)
    .values({ ...row, state: "owed" })
    .run();
}

/** Lists what is owed, of one player or of all. */
export function owedMarkings(reader: Reader, playerId: Id<"player"> | null) {
  const owed = eq(marking.state, "owed");
  return reader
    .select()
    .from(marking)
    .where(playerId === null ? owed : and(owed, eq(marking.playerId, playerId)))
    .orderBy(asc(marking.id))
    .all();
}

/** Marks a marking as done, once. */
export function finishMarking(tx: Tx, id: number, personId: Id<"person">, at: Instant) {
  return (
    tx
      .update(marking)
      .set({ state: "done", doneAt: at, doneById: personId, version: 2 })
      .where(and(eq(marking.id, id as Id<"marking">), eq(marking.state, "owed")))
      .returning()
      .get() ?? null
  );
}

/** Records that a player's bin was filled, once an event. @returns false when it was before */
export function addFill(tx: Tx, row: typeof allowanceEntry.$inferInsert): boolean {
  return tx.insert(allowanceEntry).values(row).onConflictDoNothing().run().changes === 1;
}

/** Lists the players whose bins are filled at an event. */
export function filledAt(reader: Reader, eventId: Id<"event">): ReadonlySet<Id<"player">> {
  return new Set(
    reader
      .select({ playerId: allowanceEntry.playerId })
      .from(allowanceEntry)
      .where(eq(allowanceEntry.eventId, eventId))
      .all()
      .map(({ playerId }) => playerId),
  );
}
