import { and, eq, isNull, sql } from "drizzle-orm";
import type { GripModel, HeadModel, MeasuredHead, PartsInReach, ShaftModel, SleeveModel, Stocked, WeightModel } from "../../core/buildSheet/parts.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { degrees, grams } from "../../core/quantity/units.ts";
import { head, partModel, place, reservation, stockEntry } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";

type PartKind = typeof partModel.$inferSelect.kind;
type PlaceRow = typeof place.$inferSelect;

/** A model's facts as stored; version 1 is the only one so far. */
function factsOf<M>(row: { readonly id: Id<"partModel">; readonly name: string; readonly facts: string }): M {
  return { ...JSON.parse(row.facts), id: row.id, name: row.name } as M;
}

/** Lists the models of a kind, each with the code word it hides behind while unreleased. */
export function modelsOf<M>(reader: Reader, kind: PartKind): readonly (M & { readonly restrictedCode: string | null })[] {
  return reader
    .select()
    .from(partModel)
    .where(eq(partModel.kind, kind))
    .all()
    .map((row) => ({ ...factsOf<M>(row), restrictedCode: row.restrictedCode }));
}

function headsInReach(reader: Reader, truckId: Id<"truck">): readonly MeasuredHead[] {
  return reader
    .select({ head, model: partModel, place })
    .from(head)
    .innerJoin(partModel, eq(partModel.id, head.modelId))
    .innerJoin(place, eq(place.id, head.placeId))
    .leftJoin(reservation, and(eq(reservation.headId, head.id), eq(reservation.state, "held")))
    .where(and(isNull(head.retiredAt), isNull(reservation.id), eq(place.truckId, truckId)))
    .all()
    .map((row) => ({
      ...row.head,
      stampedLoftDeg: degrees(row.head.stampedLoftDeg),
      soledLoftDeg: degrees(row.head.soledLoftDeg),
      designLieDeg: degrees(row.head.designLieDeg),
      soledFaceDeg: degrees(row.head.soledFaceDeg),
      bounceDeg: row.head.bounceDeg === null ? null : degrees(row.head.bounceDeg),
      massG: grams(row.head.massG),
      model: factsOf<HeadModel>(row.model),
      place: row.place.label,
      here: true,
    }));
}

interface Counted {
  readonly model: typeof partModel.$inferSelect;
  readonly place: PlaceRow;
  readonly free: number;
}

/** What lies free in a truck: the ledger's sum, less what open sheets hold. */
function countedIn(reader: Reader, truckId: Id<"truck">): readonly Counted[] {
  const held = sql<number>`(SELECT coalesce(sum(r.quantity), 0) FROM reservation r WHERE r.state = 'held' AND r.part_model_id = ${stockEntry.partModelId} AND r.place_id = ${stockEntry.placeId})`;
  return reader
    .select({ model: partModel, place, free: sql<number>`sum(${stockEntry.quantityChange}) - ${held}` })
    .from(stockEntry)
    .innerJoin(partModel, eq(partModel.id, stockEntry.partModelId))
    .innerJoin(place, eq(place.id, stockEntry.placeId))
    .where(eq(place.truckId, truckId))
    .groupBy(stockEntry.partModelId, stockEntry.placeId)
    .all()
    .filter((row) => row.free > 0);
}

/**
 * Reads the parts a truck can build with now: heads no open sheet holds, counted parts less what is held.
 *
 * A player's bin is in reach for that player alone.
 *
 * @param truckId - the truck that builds
 * @param playerId - whose club it is
 */
export function partsInReach(reader: Reader, truckId: Id<"truck">, playerId: Id<"player">): PartsInReach {
  const counted = countedIn(reader, truckId).filter((row) => row.place.kind !== "playerBin" || row.place.playerId === playerId);
  const of = <M>(kind: PartKind): readonly Stocked<M>[] =>
    counted
      .filter((row) => row.model.kind === kind)
      .map((row) => ({
        model: factsOf<M>(row.model),
        place: row.place.label,
        placeId: row.place.id,
        inPlayersBin: row.place.kind === "playerBin",
        free: row.free,
      }));
  return {
    heads: headsInReach(reader, truckId),
    sleeves: of<SleeveModel>("sleeve"),
    shafts: of<ShaftModel>("shaft"),
    grips: of<GripModel>("grip"),
    weights: of<WeightModel>("weight"),
  };
}

/** Lists the float of balls, hats and gloves in a truck, by name. */
export function floatOf(reader: Reader, truckId: Id<"truck">): readonly { readonly name: string; readonly free: number }[] {
  return countedIn(reader, truckId)
    .filter((row) => row.model.kind === "goods")
    .map((row) => ({ name: row.model.name, free: row.free }));
}

/**
 * Takes goods out of a truck's float, as far as there are any.
 *
 * @param tx - the transaction that says where they went
 * @param taken - which goods, how many, for what, by whom and when
 * @returns how many were there to take
 */
export function takeGoods(
  tx: Tx,
  taken: {
    readonly truckId: Id<"truck">;
    readonly name: string;
    readonly quantity: number;
    readonly reason: string;
    readonly personId: Id<"person">;
    readonly at: Instant;
  },
): number {
  let left = taken.quantity;
  for (const row of countedIn(tx, taken.truckId).filter(({ model }) => model.kind === "goods" && model.name === taken.name)) {
    const quantity = Math.min(left, row.free);
    if (quantity > 0) {
      addStockEntry(tx, {
        partModelId: row.model.id,
        placeId: row.place.id,
        quantityChange: -quantity,
        reason: taken.reason,
        personId: taken.personId,
        at: taken.at,
      });
      left -= quantity;
    }
  }
  return taken.quantity - left;
}

/** Holds a head, or so many of a counted part, for a sheet. A head is held once: the database refuses a second hold. */
export function reserve(tx: Tx, row: Omit<typeof reservation.$inferInsert, "state" | "id">): void {
  tx.insert(reservation)
    .values({ ...row, state: "held" })
    .run();
}

/** Ends the holds of a sheet: given back, or gone into the club. */
export function endReservations(tx: Tx, sheetId: Id<"sheet">, state: "released" | "consumed") {
  return tx
    .update(reservation)
    .set({ state })
    .where(and(eq(reservation.sheetId, sheetId), eq(reservation.state, "held")))
    .returning()
    .all();
}

/** Takes a head out of its drawer: it is in a club now. */
export function takeHead(tx: Tx, headId: Id<"head">): void {
  tx.update(head).set({ placeId: null }).where(eq(head.id, headId)).run();
}

/** Writes one line of the stock ledger. */
export function addStockEntry(tx: Tx, row: typeof stockEntry.$inferInsert): void {
  tx.insert(stockEntry).values(row).run();
}

/** Adds a model of a kind of part with its facts. */
export function addPartModel(
  tx: Tx,
  row: { readonly kind: PartKind; readonly name: string; readonly facts: object; readonly restrictedCode: string | null },
): Id<"partModel"> {
  return tx
    .insert(partModel)
    .values({ ...row, facts: JSON.stringify({ version: 1, ...row.facts }) })
    .returning({ id: partModel.id })
    .get().id;
}

/** Adds a place where parts lie. */
export function addPlace(tx: Tx, row: typeof place.$inferInsert): Id<"place"> {
  return tx.insert(place).values(row).returning({ id: place.id }).get().id;
}

/** Adds a measured head. */
export function addHead(tx: Tx, row: typeof head.$inferInsert): void {
  tx.insert(head).values(row).run();
}
