import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, labels, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

// fixtures/scenario: the Saltpan Open keeps a list for play; Cairn is on it, Menhir (code word lamplight) is not.
let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const order = { order: String(DRIVER_NUMBER) };
const state = () => orderPost(bot, DRIVER_NUMBER).card.kind;

/** A club of the head that is not on the list, ready to be handed over. */
async function readyMenhir(purpose: string): Promise<void> {
  await bot.say(maren, `build oxtoby driver like gamer, head menhir 9, loft 9${purpose}`);
  await bot.settle();
  await bot.invoke(maren, "order confirm", order);
  for (const command of ["step start", "step glue", "step done"]) await bot.invoke(dessa, command, order);
  await bot.invoke(dessa, "measured", { ...order, text: "loft 9 face 0.5 open swing d3 length 45 1/4" });
  await bot.settle();
}

describe("the list for play", () => {
  it("is asked before a driver head leaves the truck, and the answer hands it over", async () => {
    await bringTo(bot, "ready");
    const asked = cardOf(await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "To caddie"));
    expect(asked.title).toBe(`${DRIVER_NUMBER}: is Cairn on the list for play?`);
    expect(labels(asked)).toEqual(["On it: to caddie", "Not on it"]);
    await bot.settle();
    expect(state()).toBe("order.ready");
    await bot.press(maren, asked, "On it: to caddie");
    await bot.settle();
    expect(state()).toBe("order.outWithPlayer");
    expect(recorded(bot).map(({ action }) => action)).toContain("list.entry");
  });

  it("is not asked again in the same week", async () => {
    await bringTo(bot, "outWithPlayer");
    await bot.say(maren, "build oxtoby driver like gamer, loft 9.6, face 0.1 open, for backup go");
    await bot.settle();
    const next = { order: String(DRIVER_NUMBER + 1) };
    for (const command of ["step start", "step glue", "step done"]) await bot.invoke(dessa, command, next);
    const { data } = orderPost(bot, DRIVER_NUMBER + 1).card;
    await bot.invoke(dessa, "measured", {
      ...next,
      text: `loft ${Number(data.squaredLoftDeg).toFixed(1)} face ${Math.abs(Number(data.soledFaceDeg)).toFixed(1)} ${Number(data.soledFaceDeg) < 0 ? "closed" : "open"} swing d3 length 45 1/4`,
    });
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER + 1).card)).toContain("ready");
    await bot.invoke(maren, "order handover", { ...next, argument: "player" });
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER + 1).card.kind).toBe("order.outWithPlayer");
  });

  it("keeps a head that turns out not to be on it in the truck", async () => {
    await bringTo(bot, "ready");
    const asked = cardOf(await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "To player"));
    await bot.press(maren, asked, "Not on it");
    await bot.settle();
    const again = cardOf(await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "To player"));
    expect(cardText(again)).toContain("not on the list for play");
    expect(state()).toBe("order.ready");
  });

  it("lets a head that is not on it out by the lead alone, with a reason", async () => {
    await readyMenhir("");
    const byRep = cardOf(await bot.invoke(maren, "order handover", { ...order, argument: "player", reason: "he wants it" }));
    expect(cardText(byRep)).toContain("lamplight is not on the list for play");
    await bot.invoke(petra, "order handover", { ...order, argument: "player", reason: "the committee has seen it" });
    await bot.settle();
    expect(state()).toBe("order.outWithPlayer");
    expect(recorded(bot).map(({ action }) => action)).toContain("order.handover.unlisted");
  });

  it("does not matter for a club that is out on test", async () => {
    await readyMenhir(", to test");
    expect(cardText(orderPost(bot, DRIVER_NUMBER).card)).toContain("testing only");
    await bot.invoke(maren, "order handover", { ...order, argument: "player" });
    await bot.settle();
    expect(state()).toBe("order.outWithPlayer");
  });
});
