import { and, asc, eq, isNull, type SQL, sql, sum } from "drizzle-orm";
import type { GripModel, HeadModel, MeasuredHead, PartsInReach, ShaftModel, SleeveModel, Stocked, WeightModel } from "../../core/buildSheet/parts.ts";
import type { Bend } from "../../core/head/afterBend.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { degrees, grams } from "../../core/quantity/units.ts";
import { truck } from "../schema/people.ts";
import { head, headBend, partModel, place, reservation, stockEntry } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";
import { piecesInReach } from "./shaftPieces.ts";

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

/** Whose hands are asked for, and what is looked past. */
export interface Reach {
  readonly truckId: Id<"truck">;
  readonly playerId: Id<"player">;
  /** Orders whose own holds do not count: they are being planned anew. */
  readonly pastOrders?: readonly Id<"order">[];
}

/** The holds that count, as a condition on `reservation`. */
function counting(pastOrders: readonly Id<"order">[] = []): SQL {
  const held = eq(reservation.state, "held");
  return pastOrders.length === 0
    ? held
    : sql`${held} AND ${reservation.sheetId} NOT IN (SELECT id FROM sheet WHERE order_id IN (${sql.join([...pastOrders], sql`, `)}))`;
}

/** Where a thing lies, as said in a truck: of another truck or home base it is said. */
function placeWords(row: { readonly place: PlaceRow; readonly truckName: string | null }, truckId: Id<"truck">): string {
  const { place: at, truckName } = row;
  return at.truckId === truckId ? at.label : at.truckId === null ? at.label : `${at.label}, truck ${truckName ?? at.truckId}`;
}

const isOthers = ({ playerId }: PlaceRow, mine: Id<"player">): boolean => playerId !== null && playerId !== mine;

function bendsOfHeads(reader: Reader): ReadonlyMap<Id<"head">, readonly Bend[]> {
  const bends = new Map<Id<"head">, Bend[]>();
  for (const { headId, loftChangeDeg, lieChangeDeg } of reader.select().from(headBend).orderBy(asc(headBend.id)).all()) {
    const known = bends.get(headId) ?? [];
    known.push({ loftChangeDeg: degrees(loftChangeDeg), lieChangeDeg: degrees(lieChangeDeg) });
    bends.set(headId, known);
  }
  return bends;
}

/** @returns every bend the head has had */
export function bendsOf(reader: Reader, headId: Id<"head">): readonly Bend[] {
  return bendsOfHeads(reader).get(headId) ?? [];
}

type HeadRow = typeof head.$inferSelect;

function measuredHead(row: HeadRow, model: typeof partModel.$inferSelect, lying: { readonly place: string; readonly here: boolean }): MeasuredHead {
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

function headsInReach(reader: Reader, { truckId, playerId, pastOrders }: Reach): readonly MeasuredHead[] {
  const bends = bendsOfHeads(reader);
  return reader
    .select({ head, model: partModel, place, truckName: truck.name })
    .from(head)
    .innerJoin(partModel, eq(partModel.id, head.modelId))
    .innerJoin(place, eq(place.id, head.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .leftJoin(reservation, and(eq(reservation.headId, head.id), counting(pastOrders)))
    .where(and(isNull(head.retiredAt), isNull(reservation.id)))
    .all()
    .map((row) => ({
      ...measuredHead(row.head, row.model, {
        place: placeWords(row, truckId),
        here: row.place.truckId === truckId && !isOthers(row.place, playerId),
      }),
      bends: bends.get(row.head.id) ?? [],
    }));
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

interface Counted {
  readonly model: typeof partModel.$inferSelect;
  readonly place: PlaceRow;
  readonly truckName: string | null;
  readonly free: number;
}

/** What lies free anywhere: the ledger's sum, less what open sheets hold. */
function counted(reader: Reader, pastOrders: readonly Id<"order">[] = []): readonly Counted[] {
  const holds = reader
    .select({ modelId: reservation.partModelId, placeId: reservation.placeId, quantity: sum(reservation.quantity).as("quantity") })
    .from(reservation)
    .where(counting(pastOrders))
    .groupBy(reservation.partModelId, reservation.placeId)
    .all();
  const held = new Map(holds.map(({ modelId, placeId, quantity }) => [`${modelId} ${placeId}`, Number(quantity)]));
  return reader
    .select({ model: partModel, place, truckName: truck.name, lying: sql<number>`sum(${stockEntry.quantityChange})` })
    .from(stockEntry)
    .innerJoin(partModel, eq(partModel.id, stockEntry.partModelId))
    .innerJoin(place, eq(place.id, stockEntry.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .groupBy(stockEntry.partModelId, stockEntry.placeId)
    .all()
    .map(({ lying, ...row }) => ({ ...row, free: lying - (held.get(`${row.model.id} ${row.place.id}`) ?? 0) }))
    .filter((row) => row.free > 0);
}

const countedIn = (reader: Reader, truckId: Id<"truck">): readonly Counted[] => counted(reader).filter((row) => row.place.truckId === truckId);

/**
 * Reads the parts a truck can build with now: heads no open sheet holds, counted parts less what is held, prepared
 * shafts; and what lies elsewhere, each with its place.
 *
 * A player's bin is in reach for that player alone.
 *
 * @param reach - the truck that builds, whose club it is, and the orders whose own holds do not count
 */
export function partsInReach(reader: Reader, reach: Reach): PartsInReach {
  const { truckId, playerId, pastOrders } = reach;
  const all = counted(reader, pastOrders).filter((row) => !isOthers(row.place, playerId));
  const of = <M>(kind: PartKind, here: boolean): readonly Stocked<M>[] =>
    all
      .filter((row) => row.model.kind === kind && (row.place.truckId === truckId) === here)
      .map((row) => ({
        model: factsOf<M>(row.model),
        place: placeWords(row, truckId),
        placeId: row.place.id,
        inPlayersBin: row.place.kind === "playerBin",
        free: row.free,
      }));
  return {
    heads: headsInReach(reader, reach),
    sleeves: of<SleeveModel>("sleeve", true),
    shafts: of<ShaftModel>("shaft", true),
    grips: of<GripModel>("grip", true),
    weights: of<WeightModel>("weight", true),
    pieces: piecesInReach(reader, reach),
    elsewhere: {
      sleeves: of<SleeveModel>("sleeve", false),
      shafts: of<ShaftModel>("shaft", false),
      grips: of<GripModel>("grip", false),
    },
    known: { shafts: modelsOf<ShaftModel>(reader, "shaft"), grips: modelsOf<GripModel>(reader, "grip") },
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

/** Lays a head in a place: it is out of its club, or was found there. */
export function putHead(tx: Tx, headId: Id<"head">, placeId: Id<"place">): void {
  tx.update(head).set({ placeId }).where(eq(head.id, headId)).run();
}

/** Keeps a bend a head has had: every one counts, there and back. */
export function addBend(tx: Tx, row: typeof headBend.$inferInsert): void {
  tx.insert(headBend).values(row).run();
}

/** @returns the place, or null when there is none of that id */
export function placeById(reader: Reader, id: Id<"place">): PlaceRow | null {
  return reader.select().from(place).where(eq(place.id, id)).get() ?? null;
}

/** @returns the player's own bin in a truck, or null */
export function binOf(reader: Reader, truckId: Id<"truck">, playerId: Id<"player">): PlaceRow | null {
  return (
    reader
      .select()
      .from(place)
      .where(and(eq(place.truckId, truckId), eq(place.playerId, playerId), eq(place.kind, "playerBin")))
      .get() ?? null
  );
}

/** Lists what the sheets of an order hold. */
export function heldBy(reader: Reader, sheetId: Id<"sheet">) {
  return reader
    .select()
    .from(reservation)
    .where(and(eq(reservation.sheetId, sheetId), eq(reservation.state, "held")))
    .all();
}

/** Notes what the list for play says of a head's model. */
export function setListedForPlay(tx: Tx, modelId: Id<"partModel">, listed: { readonly listedForPlay: boolean; readonly listedAt: Instant }): void {
  const row = tx.select({ facts: partModel.facts }).from(partModel).where(eq(partModel.id, modelId)).get();
  tx.update(partModel)
    .set({ facts: JSON.stringify({ ...JSON.parse(row?.facts ?? "{}"), ...listed }) })
    .where(eq(partModel.id, modelId))
    .run();
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
