import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { openEmptyBench, plannedSteps, ploverBench } from "../../support/emptyBench.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, newest, orderPost, venueTime } from "../../support/readCard.ts";

/** The demo week's swap: its club has yet to come in. */
const SWAP = 4;

let bot: MemoryBot;
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** The order as it stands, for whoever asks. */
const swap = async () => cardOf(await bot.invoke(maren, "where", { what: String(SWAP) }));
const said = async (text: string): Promise<void> => {
  await bot.say(maren, text);
  await bot.settle();
};
const expectCard = async (time: string) => cardText(cardOf(await bot.invoke(maren, "order expect", { order: String(SWAP), time })));

describe("/order expect", () => {
  beforeEach(async () => {
    bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
    await bot.settle();
  });

  it("gives a likely time from when the club comes, and the promise only with the club", async () => {
    expect((await swap()).data).toMatchObject({ likelyAt: null, promiseAt: null });
    await said("4 comes at 14:00");
    expect(cardText(newest(bot, "plover-orders", ({ kind }) => kind === "order.expect").card)).toContain("4: expected 14:00");
    const { likelyAt, promiseAt } = (await swap()).data;
    expect(Number(likelyAt)).toBeGreaterThan(venueTime("2027-05-03T14:00"));
    expect(Number(likelyAt)).toBeLessThan(venueTime("2027-05-03T15:00"));
    expect(promiseAt).toBeNull();
    expect(cardText(await swap())).toContain("if it comes at 14:00; promised when it is there");
    bot.moveTo(venueTime("2027-05-03T13:50"));
    await bot.invoke(dessa, "order arrived", { order: String(SWAP) });
    await bot.settle();
    expect((await swap()).data.promiseAt).not.toBeNull();
    expect(ploverBench(bot).jobs.every(({ releaseAt }) => releaseAt === null)).toBe(true);
  });

  it("waits again when the time has passed and no club came", async () => {
    await said("4 expected 2:30pm");
    expect(Number((await swap()).data.likelyAt)).toBeGreaterThan(venueTime("2027-05-03T14:30"));
    bot.moveTo(venueTime("2027-05-03T14:30"));
    expect(plannedSteps(bot, "removeOld")).toEqual([]);
    await bot.settle();
    expect((await swap()).data.likelyAt).toBeNull();
  });

  it("is taken back by none", async () => {
    await expectCard("14:00");
    expect(await expectCard("none")).toContain("4: nobody says when it comes");
    await bot.settle();
    expect((await swap()).data.likelyAt).toBeNull();
  });

  it("refuses a time that is none or has passed, and an order that waits for nothing", async () => {
    expect(await expectCard("soon")).toContain("soon is no time");
    expect(await expectCard("07:00")).toContain("has passed");
    expect(cardText(cardOf(await bot.invoke(maren, "order expect", { order: "2", time: "14:00" })))).toContain("2 waits for nothing");
  });
});

describe("/order hold with a time", () => {
  it("counts on the part from then, and on resume at once", async () => {
    bot = await openEmptyBench();
    await bringTo(bot, "confirmed");
    await said(`hold ${DRIVER_NUMBER} till 14:00 short of a ferrule`);
    expect(cardText(orderPost(bot, DRIVER_NUMBER).card)).toContain("short of a ferrule");
    expect(plannedSteps(bot, "pullParts")[0]?.startAt).toBe(venueTime("2027-05-03T14:00"));
    await said(`resume ${DRIVER_NUMBER}`);
    expect(plannedSteps(bot, "pullParts")[0]?.startAt).toBe(bot.now());
  });

  it("takes no bench time without one, whatever was expected before", async () => {
    bot = await openEmptyBench();
    await bringTo(bot, "confirmed");
    await said(`hold ${DRIVER_NUMBER} till the player calls`);
    expect(cardText(orderPost(bot, DRIVER_NUMBER).card)).toContain("till the player calls");
    expect(plannedSteps(bot, "pullParts")).toEqual([]);
  });
});
