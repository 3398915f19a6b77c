import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren, petra } from "../../support/people.ts";
import { cardOf, cardText, orderPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-04T09:00"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const NUMBER = 6;
const ready = async (text: string) => cardOf(await bot.invoke(maren, "ready", { text }));

describe("/ready", () => {
  it("gives the times the draft then gets", async () => {
    const { data } = await ready("oxtoby driver d3 by 11:00");
    await bot.say(maren, "build oxtoby driver like gamer d3 by 11:00");
    await bot.settle();
    const draft = orderPost(bot, NUMBER).card.data;
    expect(data.promiseAt).not.toBeNull();
    for (const name of ["likelyAt", "promiseAt", "playableAt", "byAt"]) expect([name, data[name]]).toEqual([name, draft[name]]);
  });

  it("keeps nothing", async () => {
    await ready("oxtoby driver by 11:00");
    await bot.settle();
    await bot.say(maren, "build oxtoby driver like gamer d3");
    await bot.settle();
    expect(orderPost(bot, NUMBER).card.title).toContain("OXTOBY");
  });

  it("says how likely the time is, and what putting it first would do when it is tight", async () => {
    const certain = await ready("oxtoby driver by 11:00");
    expect(certain.data.chancePct).toBe(100);
    expect(cardText(certain)).toContain("as good as certain");
    const hopeless = await ready("oxtoby driver by 9:05");
    expect(hopeless.data.chancePct).toBe(0);
    expect(cardText(hopeless)).toContain("as good as none");
    expect(cardText(hopeless)).toContain("Put first in line");
  });

  it("names who would slip, by how much", async () => {
    await bot.say(maren, "build toll irons 4-pw like gamer go");
    await bot.settle();
    const { data } = await ready("oxtoby driver by 9:30");
    const slips = data.slips as readonly { readonly orderNumber: number; readonly beforeAt: number; readonly afterAt: number }[];
    const toll = slips.find(({ orderNumber }) => orderNumber === NUMBER) ?? expect.fail("the set does not slip");
    expect(toll.afterAt).toBeGreaterThan(toll.beforeAt);
  });

  it("answers the question as it is asked on the range", async () => {
    await bot.say(maren, "a driver for bram now, by 11:00?");
    await bot.settle();
    const answer = bot.posts("plover-orders").find(({ card }) => card.kind === "ready")?.card ?? expect.fail("no answer");
    expect(answer.title).toContain("Bram Oxtoby, driver");
  });

  it.each([
    ["toll", "Not read"],
    ["oxtoby driver by fri 12:00", "after the truck leaves"],
  ])("says why %j has no answer", async (text, words) => expect(cardText(await ready(text))).toContain(words));

  it("says that nobody is at the bench", async () => {
    bot.moveTo(venueTime("2027-05-05T14:00"));
    for (const person of ["Dessa", "Callan"]) await bot.invoke({ ...petra, channel: "plover-bench" }, "shift off", { person });
    const card = await ready("oxtoby driver");
    expect(card.data.promiseAt).toBeNull();
    expect(cardText(card)).toContain("No promise: nobody is at this bench");
  });

  it("gives the times of work on a club as if it were in the truck", async () => {
    const card = await ready("regrip toll 7i by 11:00");
    expect(card.data.promiseAt).not.toBeNull();
    expect(cardText(card)).toContain("were the club in the truck now");
  });
});
