import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, DRIVER_ORDER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { iver, maren } from "../../support/people.ts";
import { cardOf, cardText, orderPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const BACKUP = DRIVER_NUMBER + 1;

/**
 * Two drafts that want the same head, one of them confirmed; the other's card as its rep last saw it. A fresh draft would have
 * been stepped aside for: the first was left alone too long to count.
 */
async function rivalDraft() {
  await bringTo(bot, "draft");
  bot.later(31);
  await bot.say(iver, DRIVER_ORDER.replace("like gamer", "like gamer, for backup"));
  await bot.settle();
  const seen = orderPost(bot, BACKUP).card;
  expect(seen.data.headSerial).toBe(orderPost(bot, DRIVER_NUMBER).card.data.headSerial);
  await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Go");
  await bot.settle();
  return seen;
}

describe("confirmOrder: two drafts on one head", () => {
  it("plans the second anew and confirms nothing by the press on the old plan", async () => {
    const seen = await rivalDraft();
    const answer = cardOf(await bot.press(iver, seen, "Go"));
    expect(answer.title).toBe("7: a part was taken meanwhile");
    await bot.settle();
    const { card } = orderPost(bot, BACKUP);
    expect(card.kind).toBe("order.draft");
    expect(card.data.headSerial).not.toBe(seen.data.headSerial);
    expect(cardText(card)).toContain(`Head ${card.data.headSerial}`);
  });

  it("confirms with the head shown once Go is pressed on the new plan", async () => {
    await bot.press(iver, await rivalDraft(), "Go");
    await bot.settle();
    const { card } = orderPost(bot, BACKUP);
    await bot.press(iver, card, "Go");
    await bot.settle();
    const confirmed = orderPost(bot, BACKUP).card;
    expect([confirmed.kind, confirmed.data.headSerial]).toEqual(["order.confirmed", card.data.headSerial]);
    expect(orderPost(bot, DRIVER_NUMBER).card.data.headSerial).not.toBe(confirmed.data.headSerial);
  });

  it("gives the same answer when the press that found the part gone arrives twice", async () => {
    const seen = await rivalDraft();
    const once = () => bot.press({ ...iver, key: "press:p1" }, seen, "Go");
    const first = await once();
    expect(await once()).toEqual(first);
  });

  it("offers the head again once the order that held it is scratched", async () => {
    const { data } = await rivalDraft();
    await bot.say(maren, `scratch ${DRIVER_NUMBER}`);
    await bot.say(iver, "build wexcombe driver like backup, loft 9.25, face 0.5 open, length 45 1/4");
    await bot.press(iver, orderPost(bot, BACKUP).card, "Go");
    await bot.settle();
    const backup = orderPost(bot, BACKUP).card;
    expect([backup.kind, backup.data.headSerial]).toEqual(["order.confirmed", data.headSerial]);
  });
});
