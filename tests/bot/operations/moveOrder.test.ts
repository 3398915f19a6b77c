import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, type Stage } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, labels, orderPost, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const order = { order: String(DRIVER_NUMBER) };
const move = async (command: string) => cardOf(await bot.invoke(maren, command, order));

describe("moveOrder: where a move makes sense (common practice, no source)", () => {
  it.each<[string, Stage, boolean]>([
    ["order hold", "draft", false],
    ["order hold", "confirmed", true],
    ["order hold", "gluedOn", true],
    ["order hold", "finalCheck", true],
    ["order hold", "ready", false],
    ["order hold", "outWithPlayer", false],
    ["order scratch", "draft", true],
    ["order scratch", "confirmed", true],
    ["order scratch", "gluedOn", true],
    ["order scratch", "ready", true],
    ["order scratch", "outWithPlayer", false],
    ["order scratch", "closed", false],
    ["order drop", "draft", true],
    ["order drop", "confirmed", false],
    ["order resume", "ready", false],
  ])("%s of an order at %s: %s", async (command, stage, works) => {
    await bringTo(bot, stage);
    const before = orderPost(bot, DRIVER_NUMBER).card;
    const answer = await move(command);
    expect(answer.tone === "refusal").toBe(!works);
    await bot.settle();
    const after = orderPost(bot, DRIVER_NUMBER).card;
    expect(after.data.orderVersion === before.data.orderVersion).toBe(!works);
    if (!works) expect(cardText(answer)).toContain("It can be done while");
  });
});

describe("moveOrder: hold and resume", () => {
  it("stops the bench with the reason shown, and lets it go on after resume", async () => {
    await bringTo(bot, "confirmed");
    const { card: sheet } = sheetPost(bot, DRIVER_NUMBER);
    await bot.say(maren, `hold ${DRIVER_NUMBER} player is thinking`);
    await bot.settle();
    expect(cardText(orderPost(bot, DRIVER_NUMBER).card)).toContain("Held: player is thinking");
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toEqual([]);
    expect(cardOf(await bot.press(dessa, sheet, "Start")).kind).toBe("stale");
    expect(cardText(cardOf(await bot.invoke(dessa, "step start", order)))).toContain("it is held: player is thinking");
    await bot.say(maren, `resume ${DRIVER_NUMBER}`);
    await bot.settle();
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Start");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.building");
  });

  it("says that a second hold changes nothing", async () => {
    await bringTo(bot, "confirmed");
    await move("order hold");
    expect((await move("order hold")).title).toBe("6 is held already");
  });

  it("does not measure a club that is held", async () => {
    await bringTo(bot, "finalCheck");
    await bot.invoke(maren, "order hold", { ...order, reason: "player is thinking" });
    const answer = cardOf(await bot.invoke(dessa, "measured", { ...order, text: "loft 9.2 face 0.4 open swing d3 length 45 1/4" }));
    expect([answer.tone, answer.title]).toEqual(["refusal", "6 is held: player is thinking"]);
  });
});

describe("moveOrder: scratch", () => {
  it("says what cannot be undone once the club is glued and cut", async () => {
    await bringTo(bot, "finalCheck");
    expect(cardText(await move("order scratch"))).toMatch(/Not to be undone: .*glued.*cut/);
  });

  it("says nothing of the kind before the first step", async () => {
    await bringTo(bot, "confirmed");
    expect(cardText(await move("order scratch"))).toBe("6 withdrawn");
  });

  it("leaves no button on the order's post", async () => {
    await bringTo(bot, "confirmed");
    await move("order scratch");
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    expect([card.kind, labels(card)]).toEqual(["order.withdrawn", []]);
  });
});
