import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type ClubName, type Id, id } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { endReservations, reserve } from "../../../db/repositories/holds.ts";
import { addDraft } from "../../../db/repositories/orders.ts";
import { addEvent } from "../../../db/repositories/people.ts";
import { addPiece, piecesInReach, putPiece, takePiece } from "../../../db/repositories/shaftPieces.ts";
import { addSheet } from "../../../db/repositories/sheets.ts";
import { shaftPiece } from "../../../db/schema/stock.ts";
import { type Tx, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";
import { binsOfATruck, shaftFacts, sleeveFacts } from "./binsOfATruck.ts";

let database: OpenDatabase;
let truck: ReturnType<typeof binsOfATruck>;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
  truck = change(binsOfATruck);
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);
const add = (placeId: Id<"place"> | null, given: Partial<Parameters<typeof addPiece>[1]> = {}): Id<"shaftPiece"> =>
  change((tx) => addPiece(tx, { modelId: truck.shaft, state: "tipped", tipTrimMm: 12.7, placeId, addedAt: MONDAY, ...given }));
const inReach = (playerId = truck.playerId, pastOrders: readonly Id<"order">[] = []) =>
  piecesInReach(database.db, { truckId: truck.truckId, playerId, pastOrders }).map((piece) => piece.id);

/** A sheet of an order of the player's. */
function addedSheet(): { readonly orderId: Id<"order">; readonly sheetId: Id<"sheet"> } {
  return change((tx) => {
    const week = { monday: "2027-05-03", firstPracticeRound: "2027-05-04", walkMin: 2, keepsListForPlay: false };
    const eventId = addEvent(tx, { name: "Saltpan Open", course: "Cinder Head Links", zone: "Europe/Lisbon", ...week });
    const { truckId, playerId, personId } = truck;
    const posted = { truckId, eventId, playerId, postedById: personId, sourceKey: "k", channel: "orders", urgent: false, createdAt: MONDAY };
    const order = addDraft(tx, posted, { kind: "build", clubs: ["driver"] } as never, "build driver");
    const plan = { version: 1, plan: null, reference: null } as never;
    return { orderId: order.id, sheetId: addSheet(tx, order, { club: "driver" as ClubName, copy: 1 }, plan, []) };
  });
}

describe("piecesInReach", () => {
  it("reads a shaft as it was prepared, with the facts of its model and its sleeve", () => {
    const tipped = add(truck.rack);
    const sleeved = add(truck.bin, { state: "sleeved", sleeveModelId: truck.sleeve, logo: "up", cutLengthMm: 1100 });
    const where = { truckId: truck.truckId, playerId: truck.playerId };
    expect(piecesInReach(database.db, where)).toMatchObject([
      {
        id: tipped,
        model: { ...shaftFacts, id: truck.shaft, name: "Dunlin 60 X" },
        state: "tipped",
        tipTrimMm: 12.7,
        sleeve: null,
        logo: null,
        cutLengthMm: null,
        place: "main rack",
        placeId: truck.rack,
        inPlayersBin: false,
      },
      {
        id: sleeved,
        state: "sleeved",
        sleeve: { ...sleeveFacts, id: truck.sleeve, name: "Cairn driver sleeve" },
        logo: "up",
        cutLengthMm: 1100,
        inPlayersBin: true,
      },
    ]);
  });

  it("leaves out other players' bins, other trucks, what is retired and what is in a club", () => {
    const [mine, racked] = [add(truck.bin), add(truck.rack)];
    const others = add(truck.othersBin);
    add(truck.otherRack);
    add(null);
    const retired = add(truck.rack);
    change((tx) => void tx.update(shaftPiece).set({ retiredAt: MONDAY }).where(eq(shaftPiece.id, retired)).run());
    expect(inReach()).toEqual([mine, racked]);
    expect(inReach(truck.otherPlayerId)).toEqual([racked, others]);
  });

  it("leaves out what a sheet holds until it lets go, unless that order is planned anew; it is held once", () => {
    const piece = add(truck.rack);
    const { orderId, sheetId } = addedSheet();
    change((tx) => reserve(tx, { sheetId, pieceId: piece }));
    expect(inReach()).toEqual([]);
    expect(inReach(truck.playerId, [orderId])).toEqual([piece]);
    expect(inReach(truck.playerId, [id(999)])).toEqual([]);
    expect(() => change((tx) => reserve(tx, { sheetId, pieceId: piece }))).toThrow();
    change((tx) => void endReservations(tx, sheetId, "released"));
    expect(inReach()).toEqual([piece]);
  });

  it("follows a piece into a club and back", () => {
    const piece = add(truck.rack);
    change((tx) => takePiece(tx, piece));
    expect(inReach()).toEqual([]);
    change((tx) => putPiece(tx, piece, truck.bin));
    expect(inReach()).toEqual([piece]);
  });
});
