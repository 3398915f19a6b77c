import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, orderPost, sheetPost, venueTime } from "../../support/readCard.ts";

// fixtures/scenario/head-models.csv: Menhir is unreleased, its code word is lamplight; heads.csv: 0288 is its only head, 9 stamped, 8.96.
let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.say(maren, "build oxtoby driver like gamer, head menhir 9, loft 9");
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const everythingPosted = (): string =>
  ["plover-orders", "plover-bench", "plover-week", "general", "lead"]
    .flatMap((channel) => bot.posts(channel).map(({ card }) => JSON.stringify(card)))
    .join("\n");

/** The club of the restricted head, through the bench and into the bag. */
async function intoTheBag(): Promise<void> {
  const order = { order: String(DRIVER_NUMBER) };
  await bot.invoke(maren, "order confirm", order);
  for (const command of ["step start", "step glue", "step done"]) await bot.invoke(dessa, command, order);
  await bot.settle();
  await bot.invoke(dessa, "measured", { ...order, text: "loft 9 face 0.5 open swing d3 length 45 1/4" });
  /** fixtures/scenario/head-models.csv: it is not on the list for play, so that only the lead lets it out. */
  await bot.invoke(petra, "order handover", { ...order, argument: "player", reason: "the committee has seen it" });
  await bot.invoke(maren, "order bag", { ...order, argument: "in the bag" });
  await bot.settle();
}

describe("a restricted head", () => {
  it("shows its code word on the order's card and on the sheet", async () => {
    const { card } = orderPost(bot, DRIVER_NUMBER);
    expect(cardText(card)).toMatch(/Head 0288 lamplight stamped 9/);
    await bot.press(maren, card, "Go");
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("Head 0288 lamplight");
  });

  it("is named in no post of any channel, from the draft to the bag", async () => {
    await intoTheBag();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.closed");
    expect(everythingPosted()).not.toMatch(/menhir/i);
  });

  it("is named to the lead and to nobody else in the live spec", async () => {
    await intoTheBag();
    const asked = async (who: typeof akiko) => cardText(cardOf(await bot.invoke(who, "spec", { player: "oxtoby", club: "driver" })));
    for (const who of [akiko, maren, dessa]) {
      expect(await asked(who)).toContain("lamplight");
      expect(await asked(who)).not.toMatch(/menhir/i);
    }
    expect(await asked(petra)).toContain("Menhir");
  });

  it("is not offered by name when a head is not known", async () => {
    await bot.say(maren, "build toll driver head manhir 9");
    await bot.say(maren, "build toll driver head xyzzy");
    await bot.settle();
    expect(everythingPosted()).not.toMatch(/menhir/i);
  });
});
