import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { finishedClubs } from "../../../bot/operations/finishedClubs.ts";
import { type ClubName, type Id, id } from "../../../core/kinds.ts";
import { changeOrder, openOrdersOf } from "../../../db/repositories/orders.ts";
import { addPlayer, allPlayers, allTrucks } from "../../../db/repositories/people.ts";
import { addPlace } from "../../../db/repositories/places.ts";
import { addSpec, liveSpec } from "../../../db/repositories/week.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren } from "../../support/people.ts";
import { venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const driver = "driver" as ClubName;
const playerCalled = (name: string): Id<"player"> => allPlayers(bot.db).find((row) => row.name?.endsWith(name))?.id ?? id<"player">(0);
const truckCalled = (name: string): Id<"truck"> => allTrucks(bot.db).find((row) => row.name === name)?.id ?? id<"truck">(0);

/** The newest order of a player in a state, as if it had come so far. */
function newestIn(player: Id<"player">, change: Parameters<typeof changeOrder>[2]): number {
  const [newest] = openOrdersOf(bot.db, player);
  if (newest === undefined) throw new Error("no order");
  write(bot.db, (tx) => void changeOrder(tx, newest.id, change));
  return newest.number;
}

/** Publishes a spec with nothing but a backup driver, of which no place is noted. */
function addBackup(playerId: Id<"player">): void {
  const live = liveSpec(bot.db, playerCalled("Oxtoby"));
  const [backup] = live?.bag.backups ?? [];
  if (live === null || backup === undefined) throw new Error("no backup");
  const bag = { version: 1, clubs: [], backups: [{ ...backup, note: null }] } as const;
  write(bot.db, (tx) => void addSpec(tx, { playerId, validFrom: bot.now(), personId: live.personId, eventId: null, takenAt: "", bag }));
}

describe("finishedClubs", () => {
  it("finds the backup of one place in the bag in the drawer with the player's name, measured as it was", () => {
    const oxtoby = playerCalled("Oxtoby");
    const [only, ...others] = finishedClubs(bot.db, oxtoby, driver);
    // fixtures/scenario/spec-clubs.csv: oxtoby 3 backup driver, head 2018; places.csv: his drawer.
    expect(only).toMatchObject({
      club: { headSerial: "2018", squaredLoftDeg: 9.6, gauge: "Plover loft bench" },
      where: { kind: "drawer", place: "backups Bram Oxtoby", truck: "Plover" },
      onTest: false,
    });
    expect(others).toEqual([]);
    expect(finishedClubs(bot.db, oxtoby, "3w" as ClubName)).toEqual([]);
  });

  it("goes by the note where no drawer or more than one has the player's name", () => {
    const oxtoby = playerCalled("Oxtoby");
    write(bot.db, (tx) => void addPlace(tx, { kind: "drawer", label: "Oxtoby", truckId: truckCalled("Knot"), playerId: oxtoby }));
    expect(finishedClubs(bot.db, oxtoby, driver)[0]?.where).toEqual({ kind: "drawer", place: "drawer with the player's name", truck: null });
  });

  it("looks in the player's one bin where no drawer has the name and nothing is noted, and knows nothing without one", () => {
    const pruett = write(bot.db, (tx) => addPlayer(tx, { name: "Ansel Pruett", hand: "left", hatSize: "M", gloveSize: "M" }, []));
    addBackup(pruett);
    expect(finishedClubs(bot.db, pruett, driver)[0]?.where).toEqual({ kind: "drawer", place: null, truck: null });
    write(bot.db, (tx) => void addPlace(tx, { kind: "playerBin", label: "bin Ansel Pruett", truckId: truckCalled("Knot"), playerId: pruett }));
    expect(finishedClubs(bot.db, pruett, driver)[0]?.where).toEqual({ kind: "drawer", place: "bin Ansel Pruett", truck: "Knot" });
    write(bot.db, (tx) => void addPlace(tx, { kind: "playerBin", label: "bin Ansel Pruett", truckId: truckCalled("Avocet"), playerId: pruett }));
    expect(finishedClubs(bot.db, pruett, driver)[0]?.where).toEqual({ kind: "drawer", place: null, truck: null });
  });

  it("finds a club that is ready, with its order and its truck", async () => {
    const oxtoby = playerCalled("Oxtoby");
    await bot.say(maren, "build oxtoby driver like gamer");
    const order = newestIn(oxtoby, { state: "ready" });
    expect(finishedClubs(bot.db, oxtoby, driver)[1]).toMatchObject({
      club: { club: "driver", headModel: "Cairn", measuredAt: null },
      where: { kind: "ready", order, truck: "Plover" },
      onTest: false,
    });
  });

  it.each([
    ["is not built yet", { state: "building" }],
    ["was withdrawn", { state: "withdrawn" }],
    ["is out to be played", { state: "outWithPlayer" }],
  ] as const)("leaves out a club that %s", async (_what, change) => {
    const oxtoby = playerCalled("Oxtoby");
    await bot.say(maren, "build oxtoby driver like gamer");
    newestIn(oxtoby, change);
    expect(finishedClubs(bot.db, oxtoby, driver)).toHaveLength(1);
  });

  it("finds a club that is out on test, by its purpose or by the rep's answer", async () => {
    const oxtoby = playerCalled("Oxtoby");
    await bot.say(maren, "build oxtoby driver like gamer for test");
    const order = newestIn(oxtoby, { state: "outWithPlayer" });
    expect(finishedClubs(bot.db, oxtoby, driver)[1]).toMatchObject({ where: { kind: "out", order }, onTest: true });
    await bot.say(maren, "build toll driver like gamer");
    newestIn(playerCalled("Toll"), { state: "outWithPlayer", answer: "testing" });
    expect(finishedClubs(bot.db, playerCalled("Toll"), driver)[1]).toMatchObject({ where: { kind: "out" }, onTest: true });
  });

  it("takes work on a club that exists for no other club", async () => {
    const oxtoby = playerCalled("Oxtoby");
    await bot.say(maren, "swap oxtoby driver loft 9.2");
    newestIn(oxtoby, { state: "ready" });
    expect(finishedClubs(bot.db, oxtoby, driver)).toHaveLength(1);
  });

  it("finds nothing for a player of whom nothing is on record", () => {
    expect(finishedClubs(bot.db, id<"player">(999_999), driver)).toEqual([]);
  });
});
