import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { id, instant } from "../../../core/kinds.ts";
import { allPresses, lastPressId, pressesOf, truckPresses } from "../../../db/repositories/benchPresses.ts";
import { ordersIn } from "../../../db/repositories/orders.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const plover = () => allTrucks(bot.db).find(({ name }) => name === "Plover")?.id ?? id<"truck">(0);

describe("benchPresses", () => {
  it("keep each press as it came, the final check with them, and a higher number for each", async () => {
    const before = lastPressId(bot.db);
    await bringTo(bot, "ready");
    const order = ordersIn(bot.db, plover(), ["ready"]).find(({ number }) => number === DRIVER_NUMBER);
    const presses = pressesOf(bot.db, order?.id ?? id<"order">(0));
    expect(presses.map(({ press }) => press)).toEqual(["start", "glueOn", "done", "checked"]);
    expect(new Set(presses.map(({ at }) => at))).toEqual(new Set([bot.now()]));
    expect(lastPressId(bot.db)).toBe(presses.at(-1)?.id);
    expect(lastPressId(bot.db)).toBe(before + 4);
    expect(allPresses(bot.db).slice(-4)).toEqual(presses);
  });

  it("are those of a truck since a moment", async () => {
    await bringTo(bot, "building");
    expect(truckPresses(bot.db, plover(), bot.now()).map(({ press }) => press)).toEqual(["start"]);
    expect(truckPresses(bot.db, plover(), instant(bot.now() + 1))).toEqual([]);
    expect(truckPresses(bot.db, id<"truck">(999), instant(0))).toEqual([]);
  });
});
