import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { owedToBins, oweToBin, refill } from "../../../db/repositories/replenishment.ts";
import { type Tx, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";
import { binsOfATruck } from "./binsOfATruck.ts";

let database: OpenDatabase;
let truck: ReturnType<typeof binsOfATruck>;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
  truck = change(binsOfATruck);
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);
const owed = (truckId = truck.truckId) => owedToBins(database.db, truckId);
const later = instant(MONDAY + 60_000);

describe("replenishment", () => {
  it("lists what is owed by bin and part, with player, place and how many", () => {
    change((tx) => {
      oweToBin(tx, { placeId: truck.bin, partModelId: truck.shaft, quantity: 1, at: MONDAY });
      oweToBin(tx, { placeId: truck.othersBin, partModelId: truck.grip, quantity: 13, at: MONDAY });
      oweToBin(tx, { placeId: truck.bin, partModelId: truck.grip, quantity: 1, at: later });
    });
    expect(owed().map(({ playerName, place, kind, part, quantity }) => [playerName, place, kind, part, quantity])).toEqual([
      ["Marrick Toll", "bin Marrick Toll", "grip", "Gorse Standard", 13],
      ["Noor Halloway", "bin Noor Halloway", "shaft", "Dunlin 60 X", 1],
      ["Noor Halloway", "bin Noor Halloway", "grip", "Gorse Standard", 1],
    ]);
    expect(owed()[0]).toMatchObject({ playerId: truck.otherPlayerId, playerCode: null, partCode: null, orderId: null, at: MONDAY });
    expect(owed(truck.otherTruckId)).toEqual([]);
  });

  it("is put back once, by somebody at a time, and only what was named", () => {
    const [one, other] = change((tx) =>
      [truck.shaft, truck.grip].map((partModelId) => oweToBin(tx, { placeId: truck.bin, partModelId, quantity: 2, at: MONDAY })),
    );
    if (one === undefined || other === undefined) throw new Error("nothing is owed");
    const done = change((tx) => refill(tx, [one], truck.personId, later));
    expect(done).toMatchObject([
      { id: one, placeId: truck.bin, partModelId: truck.shaft, quantity: 2, refilledAt: later, refilledById: truck.personId },
    ]);
    expect(owed().map((row) => row.id)).toEqual([other]);
    expect(change((tx) => refill(tx, [one], truck.personId, later))).toEqual([]);
    expect(change((tx) => refill(tx, [], truck.personId, later))).toEqual([]);
  });
});
