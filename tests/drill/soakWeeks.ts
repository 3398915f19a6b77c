import { and, between, eq } from "drizzle-orm";
import { type Instant, instant } from "../../core/kinds.ts";
import { addEvent, addToEvent, allTrucks } from "../../db/repositories/people.ts";
import { event, eventPlayer, opening, truckEvent } from "../../db/schema/people.ts";
import { type Db, write } from "../../db/write.ts";

const WEEK_MS = 7 * 24 * 3_600_000;
const FIRST = "Saltpan Open";

const later = (date: string, weeks: number): string => new Date(Date.parse(`${date}T00:00:00Z`) + weeks * WEEK_MS).toISOString().slice(0, 10);
const laterAt = (at: Instant, weeks: number): Instant => instant(at + weeks * WEEK_MS);

/** Gives the truck of the demo's week the same week again and again, with the same field and hours. */
export function addWeeks(db: Db, count: number): void {
  write(db, (tx) => {
    const first = tx.select().from(event).where(eq(event.name, FIRST)).get();
    const plover = allTrucks(tx).find(({ name }) => name === "Plover");
    if (first === undefined || plover === undefined) {
      throw new Error(`the demo has no ${FIRST}`);
    }
    const stays = tx.select().from(truckEvent).where(eq(truckEvent.eventId, first.id)).all();
    const from = stays[0]?.arrivesAt ?? instant(0);
    const openings = tx
      .select()
      .from(opening)
      .where(and(eq(opening.truckId, plover.id), between(opening.opensAt, from, laterAt(from, 1))))
      .all();
    const field = tx.select().from(eventPlayer).where(eq(eventPlayer.eventId, first.id)).all();
    for (let weeks = 1; weeks <= count; weeks += 1) {
      const { id: _first, ...same } = first;
      const eventId = addEvent(tx, {
        ...same,
        name: `${FIRST}, week ${weeks + 1}`,
        monday: later(first.monday, weeks),
        firstPracticeRound: later(first.firstPracticeRound, weeks),
      });
      for (const stay of stays) {
        addToEvent.truck(tx, { ...stay, eventId, arrivesAt: laterAt(stay.arrivesAt, weeks), rollOutAt: laterAt(stay.rollOutAt, weeks) });
      }
      for (const row of field) {
        addToEvent.player(tx, { ...row, eventId });
      }
      for (const { opensAt, closesAt, ...row } of openings) {
        addToEvent.opening(tx, { ...row, opensAt: laterAt(opensAt, weeks), closesAt: laterAt(closesAt, weeks) });
      }
    }
  });
}
