import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadWeek } from "../../../bot/operations/loadWeek.ts";
import type { HeadModel, ShaftModel } from "../../../core/buildSheet/parts.ts";
import type { Id } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { headBySerial } from "../../../db/repositories/heads.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import { allPlayers } from "../../../db/repositories/people.ts";
import { piecesInReach } from "../../../db/repositories/shaftPieces.ts";
import { type Db, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../../db/migrationsFolder.ts";
import { demoWeek } from "../boundary/weekCopy.ts";

let database: OpenDatabase;
let db: Db;
beforeAll(() => {
  database = openMemory({ migrationsFolder });
  db = database.db;
  write(db, (tx) => loadWeek(tx, demoWeek(), "rehearsal", MONDAY));
});
afterAll(() => database.close());

describe("loadWeek", () => {
  it("lays every prepared shaft in its place, in reach of the player whose bin it is", () => {
    const plover = 1 as Id<"truck">;
    const inReachOf = (name: string) => {
      const player = allPlayers(db).find((one) => one.name === name);
      if (player === undefined) throw new Error(`no player ${name}`);
      return piecesInReach(db, { truckId: plover, playerId: player.id });
    };
    const racked = inReachOf("Bram Oxtoby");
    expect(racked.length).toBeGreaterThan(0);
    expect(racked.every(({ inPlayersBin, place }) => !inPlayersBin && place === "main rack")).toBe(true);
    const mine = inReachOf("Jory Pellwether").filter(({ inPlayersBin }) => inPlayersBin);
    expect(mine).toMatchObject([
      {
        state: "sleeved",
        tipTrimMm: 12.7,
        logo: "down",
        model: { name: "Dunlin 60 S" },
        sleeve: { name: "Cairn driver sleeve", family: "Cairn driver" },
      },
    ]);
  });

  it("keeps the bends of a head in their order, and what its model is made of", () => {
    expect(headBySerial(db, "0265")).toMatchObject({
      bends: [
        { loftChangeDeg: 0.5, lieChangeDeg: 0 },
        { loftChangeDeg: 0, lieChangeDeg: 0.5 },
      ],
      model: { material: "carbon steel", construction: "forged", makerBendLimitDeg: null },
    });
    expect(headBySerial(db, "0417")?.bends).toEqual([]);
    const rill = modelsOf<HeadModel>(db, "head").find(({ name }) => name === "Rill");
    expect(rill).toMatchObject({ construction: "hollow", makerBendLimitDeg: 1 });
  });

  it("keeps what a shaft read, null where none was read", () => {
    const shafts = new Map(modelsOf<ShaftModel>(db, "shaft").map(({ name, frequencyCpm }) => [name, frequencyCpm]));
    expect(shafts.get("Dunlin 60 X")).toBe(263);
    expect(shafts.get("Dunlin Putter 95 S")).toBeNull();
  });
});
