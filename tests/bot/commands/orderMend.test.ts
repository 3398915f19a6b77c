import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { DRIVER_NUMBER, DRIVER_ORDER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, labels, newest, orderPost, recorded, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const drafts = (): number => recorded(bot).filter(({ action }) => action === "order.draft").length;
const problems = () => newest(bot, "plover-orders", ({ kind }) => kind === "order.problems").card;
const asked = () => newest(bot, "plover-orders", ({ kind }) => kind === "ask").card;
const FAULTY = DRIVER_ORDER.replace("9.25", "19.25");

describe("order mend: a fault's button", () => {
  it("puts the guess in place of the word and makes the draft", async () => {
    const before = drafts();
    await bot.say(maren, FAULTY);
    await bot.settle();
    expect([drafts(), labels(problems())]).toEqual([before, ["9.25"]]);
    expect(cardText(problems())).toContain("19.25?");
    await bot.press(maren, problems(), "9.25");
    await bot.settle();
    expect(cardText(orderPost(bot, DRIVER_NUMBER).card)).toContain("Wrote 9.25, 0.5 open, 45 1/4, d3");
    expect(drafts()).toBe(before + 1);
  });

  it("mends one fault after the other and keeps the first mending", async () => {
    await bot.say(maren, FAULTY.replace("45 1/4", "54 1/4"));
    await bot.settle();
    expect(problems().data.problemCount).toBe(2);
    const next = cardOf(await bot.press(maren, problems(), "9.25"));
    expect(next.data.problemCount).toBe(1);
    expect(cardText(next)).not.toContain("19.25");
  });

  it("waits for Go even when the post ended in go", async () => {
    await bot.say(maren, `${FAULTY} go`);
    await bot.settle();
    await bot.press(maren, problems(), "9.25");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.draft");
  });

  it("makes one draft of two presses", async () => {
    const before = drafts();
    await bot.say(maren, FAULTY);
    await bot.settle();
    const card = problems();
    await bot.press(maren, card, "9.25");
    await bot.press(maren, card, "9.25");
    expect(drafts()).toBe(before + 1);
  });

  it("is not the technician's", async () => {
    await bot.say(maren, FAULTY);
    await bot.settle();
    expect(cardOf(await bot.press({ ...dessa, channel: "plover-orders" }, problems(), "9.25")).tone).toBe("refusal");
  });

  it("leaves the correction to an edit of the message just as well", async () => {
    await bot.say(maren, FAULTY, { message: "m1", at: 0 });
    await bot.say(maren, DRIVER_ORDER, { message: "m1", at: 1 });
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.draft");
  });
});

describe("order mend: the same order again", () => {
  it("asks whether it is the same within 30 minutes, and opens no draft", async () => {
    await bot.say(maren, DRIVER_ORDER);
    const before = drafts();
    bot.later(29);
    await bot.say(maren, DRIVER_ORDER);
    await bot.settle();
    expect([asked().title, drafts()]).toEqual(["Same as 6?", before]);
  });

  it("does not ask after 31 minutes", async () => {
    await bot.say(maren, DRIVER_ORDER);
    const before = drafts();
    bot.later(31);
    await bot.say(maren, DRIVER_ORDER);
    expect(drafts()).toBe(before + 1);
  });

  it("does not ask when the first was dropped", async () => {
    await bot.say(maren, DRIVER_ORDER);
    await bot.settle();
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Drop");
    const before = drafts();
    await bot.say(maren, DRIVER_ORDER);
    expect(drafts()).toBe(before + 1);
  });

  it("opens one more on the press that wants another one, and no third on a second press", async () => {
    await bot.say(maren, DRIVER_ORDER);
    await bot.say(maren, DRIVER_ORDER);
    await bot.settle();
    const before = drafts();
    const card = asked();
    await bot.press(maren, card, "Another one");
    await bot.press(maren, card, "Another one");
    expect(drafts()).toBe(before + 1);
  });
});
