import { and, asc, eq, isNotNull, ne, sql } from "drizzle-orm";
import type { HeadModel, MeasuredHead } from "../../core/buildSheet/parts.ts";
import type { Bend } from "../../core/head/afterBend.ts";
import type { Id } from "../../core/kinds.ts";
import { degrees, grams } from "../../core/quantity/units.ts";
import { head, headBend, partModel, place } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";
import { factsOf, type PartModelRow } from "./partModels.ts";

type HeadRow = typeof head.$inferSelect;
type BendRow = typeof headBend.$inferSelect;

const bendOf = ({ loftChangeDeg, lieChangeDeg }: BendRow): Bend => ({
  loftChangeDeg: degrees(loftChangeDeg),
  lieChangeDeg: degrees(lieChangeDeg),
});

/** Reads the bends of all heads that were ever bent, the oldest first. */
export function bendsOfHeads(reader: Reader): ReadonlyMap<Id<"head">, readonly Bend[]> {
  const bends = new Map<Id<"head">, Bend[]>();
  for (const row of reader.select().from(headBend).orderBy(asc(headBend.id)).all()) {
    bends.set(row.headId, [...(bends.get(row.headId) ?? []), bendOf(row)]);
  }
  return bends;
}

/** @returns every bend the head has had */
export function bendsOf(reader: Reader, headId: Id<"head">): readonly Bend[] {
  return reader.select().from(headBend).where(eq(headBend.headId, headId)).orderBy(asc(headBend.id)).all().map(bendOf);
}

/** A head as measured, with its model and where it lies. */
export function measuredHead(row: HeadRow, model: PartModelRow, lying: { readonly place: string; readonly here: boolean }): MeasuredHead {
  return {
    ...row,
    stampedLoftDeg: degrees(row.stampedLoftDeg),
    soledLoftDeg: degrees(row.soledLoftDeg),
    designLieDeg: degrees(row.designLieDeg),
    soledFaceDeg: degrees(row.soledFaceDeg),
    bounceDeg: row.bounceDeg === null ? null : degrees(row.bounceDeg),
    massG: grams(row.massG),
    model: factsOf<HeadModel>(model),
    ...lying,
  };
}

/** @returns the head of that serial wherever it is, in a club too; null when none is known */
export function headBySerial(reader: Reader, serial: string): MeasuredHead | null {
  const row = reader
    .select({ head, model: partModel, place })
    .from(head)
    .innerJoin(partModel, eq(partModel.id, head.modelId))
    .leftJoin(place, eq(place.id, head.placeId))
    .where(eq(head.serial, serial))
    .get();
  return row === undefined
    ? null
    : { ...measuredHead(row.head, row.model, { place: row.place?.label ?? "in the club", here: true }), bends: bendsOf(reader, row.head.id) };
}

/** Lists the heads that lie in the bins of other players than this one, in any truck. */
export function headsInOthersBins(reader: Reader, playerId: Id<"player">): ReadonlySet<Id<"head">> {
  const rows = reader
    .select({ id: head.id })
    .from(head)
    .innerJoin(place, eq(place.id, head.placeId))
    .where(and(isNotNull(place.playerId), ne(place.playerId, playerId)))
    .all();
  return new Set(rows.map(({ id }) => id));
}

/** Adds a measured head. */
export function addHead(tx: Tx, row: typeof head.$inferInsert): void {
  tx.insert(head).values(row).run();
}

/** Takes a head out of its drawer: it is in a club now. */
export function takeHead(tx: Tx, headId: Id<"head">): void {
  tx.update(head).set({ placeId: null }).where(eq(head.id, headId)).run();
}

/** Lays a head in a place: it is out of its club, or was found there. */
export function putHead(tx: Tx, headId: Id<"head">, placeId: Id<"place">): void {
  tx.update(head).set({ placeId }).where(eq(head.id, headId)).run();
}

/** Keeps a bend a head has had: every one counts, there and back. Its readings are those after it. */
export function addBend(tx: Tx, row: typeof headBend.$inferInsert): void {
  tx.insert(headBend).values(row).run();
}

/** Bends a head: the bend is kept, and its bare loft, lie and bounce go with it. */
export function bendHead(tx: Tx, row: typeof headBend.$inferInsert): void {
  const { headId, loftChangeDeg, lieChangeDeg } = row;
  addBend(tx, row);
  tx.update(head)
    .set({
      soledLoftDeg: sql`${head.soledLoftDeg} + ${loftChangeDeg}`,
      designLieDeg: sql`${head.designLieDeg} + ${lieChangeDeg}`,
      bounceDeg: sql`${head.bounceDeg} + ${loftChangeDeg}`,
    })
    .where(eq(head.id, headId))
    .run();
}
