import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, WEAK } from "../../support/builtDriver.ts";
import { plannedSteps } from "../../support/emptyBench.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const ask = async (who: typeof maren, name?: string, value?: string) =>
  cardOf(await bot.invoke(who, "settings", { ...(name === undefined ? {} : { name }), ...(value === undefined ? {} : { value }) }));

describe("/settings", () => {
  it("lists the tolerances in force, in their units (common practice, no source)", async () => {
    const text = cardText(await ask(dessa));
    for (const row of ["choosing-loft ±0.25°", "choosing-mass ±2 g", "checking-length ±1.588 mm", "checking-swing ±0.5 points"])
      expect(text).toContain(row);
  });

  it("is changed by the lead alone, on record, and taken back to the default", async () => {
    expect((await ask(maren, "checking-loft", "0.5")).tone).toBe("refusal");
    expect(cardText(await ask(petra, "checking loft", "0,5"))).toContain("checking-loft ±0.25° > ±0.5°");
    expect(cardText(await ask(dessa))).toContain("checking-loft ±0.5°");
    expect(recorded(bot).filter(({ action }) => action === "setting.change")).toHaveLength(1);
    await ask(petra, "checking-loft", "default");
    expect(cardText(await ask(dessa))).toContain("checking-loft ±0.25°");
  });

  it.each([
    ["loft", "0.3", "No setting loft"],
    ["choosing-loft", "0", "0 cannot be"],
    ["choosing-loft", "-1", "-1 cannot be"],
    ["choosing-loft", "wide", "wide cannot be"],
    ["waits-glue", "-1", "-1 cannot be"],
    ["waits-glue", "10081", "10081 cannot be"],
    ["stations-cutter", "1.5", "1.5 cannot be"],
    ["stations-cutter", "10", "10 cannot be"],
  ])("refuses %s %s", async (name, value, words) => {
    expect(cardText(await ask(petra, name, value))).toContain(words);
  });

  it("decides whether a club is off in the final check", async () => {
    await bringTo(bot, "finalCheck");
    await bot.say(dessa, WEAK);
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toMatch(/loft .* off 1/);
    await ask(petra, "checking-loft", "2");
    await bot.say(dessa, WEAK);
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toMatch(/loft .* close/);
  });

  it("decides which head is nearest", async () => {
    const text = "build oxtoby driver like gamer loft 9.25, face 1.5 open";
    await bot.say(maren, text);
    await bot.settle();
    const before = orderPost(bot, DRIVER_NUMBER).card.data.headSerial;
    await bot.invoke(maren, "order drop", { order: String(DRIVER_NUMBER) });
    await ask(petra, "choosing-loft", "20");
    await ask(petra, "choosing-face", "0.01");
    await bot.say(maren, text);
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER + 1).card.data.headSerial).not.toBe(before);
  });

  it("decides how long the glue of later orders sets, what is on the bench keeping its wait", async () => {
    const [before] = plannedSteps(bot, "bondSet");
    expect(cardText(await ask(petra, "waits-glue", "10"))).toContain("waits-glue 6 min > 10 min");
    expect(plannedSteps(bot, "bondSet")[0]).toEqual(before);
    await bringTo(bot, "confirmed");
    const sets = plannedSteps(bot, "bondSet").map(({ startAt, endAt }) => (endAt - startAt) / 60_000);
    expect(sets).toContain(10);
    expect(cardText(await ask(petra, "waits-glue", "default"))).toContain("waits-glue 10 min > 6 min");
  });

  it("decides how many clubs a station of the truck holds: at none nothing is promised", async () => {
    expect(cardText(await ask(petra, "stations-cutter", "0"))).toContain("stations-cutter 1 at once > 0 at once");
    await bringTo(bot, "confirmed");
    expect(plannedSteps(bot, "cut").every(({ startAt }) => startAt <= bot.now())).toBe(true);
    expect(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt).toBeNull();
    await ask(petra, "stations-cutter", "1");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt).not.toBeNull();
  });
});
