import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, DRIVER_ORDER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren } from "../../support/people.ts";
import { cardOf, orderPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bringTo(bot, "draft");
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** The form that Change opens. */
async function changeForm() {
  const reply = await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Change");
  return reply?.kind === "form" ? reply.form : expect.fail("no form");
}

describe("order change", () => {
  it("opens a form with the order as it was typed", async () => {
    expect((await changeForm()).parts.map(({ value }) => value)).toEqual([DRIVER_ORDER]);
  });

  it("plans the draft anew from what the form says, under its number", async () => {
    const { action } = await changeForm();
    await bot.submit(maren, action, { text: DRIVER_ORDER.replace("45 1/4", "45") });
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    expect([card.kind, card.data.orderNumber]).toEqual(["order.draft", DRIVER_NUMBER]);
    expect(card.data.lengthMm).toBeCloseTo(45 * 25.4, 6);
  });

  it("shows all faults of the new text and leaves the draft as it was", async () => {
    const { action } = await changeForm();
    const before = orderPost(bot, DRIVER_NUMBER).card;
    const answer = cardOf(await bot.submit(maren, action, { text: DRIVER_ORDER.replace("9.25", "19.25") }));
    expect(answer.kind).toBe("order.problems");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card).toEqual(before);
  });

  it("is stale once the order was confirmed", async () => {
    const { action } = await changeForm();
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Go");
    const answer = cardOf(await bot.submit(maren, action, { text: DRIVER_ORDER.replace("45 1/4", "45") }));
    expect([answer.kind, answer.title]).toEqual(["stale", "6 has moved on: confirmed"]);
  });
});
