import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, DRIVER_ORDER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, dessa, iver, maren } from "../../support/people.ts";
import { cardOf, cardText, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const state = (): string => orderPost(bot, DRIVER_NUMBER).card.kind;
const drafts = (): number => recorded(bot).filter(({ action }) => action === "order.draft").length;
const lastRecorded = (): string => recorded(bot).at(-1)?.action ?? "";

describe("makeDesk: the same thing delivered twice", () => {
  it("opens one draft from a message that arrives twice", async () => {
    const before = drafts();
    await bot.say({ ...maren, key: "message:m1:0" }, DRIVER_ORDER, { message: "m1", at: 0 });
    await bot.say({ ...maren, key: "message:m1:0" }, DRIVER_ORDER, { message: "m1", at: 0 });
    await bot.settle();
    expect(drafts()).toBe(before + 1);
  });

  it("opens one draft from a message that arrives a second time while the first is being estimated", async () => {
    const before = drafts();
    const once = () => bot.say({ ...maren, key: "message:m1:0" }, DRIVER_ORDER, { message: "m1", at: 0 });
    await Promise.all([once(), once()]);
    await bot.settle();
    expect(drafts()).toBe(before + 1);
  });

  it("gives the stored reply to a press that arrives twice and records it once", async () => {
    await bringTo(bot, "draft");
    const { card } = orderPost(bot, DRIVER_NUMBER);
    const first = await bot.press({ ...maren, key: "press:p1" }, card, "Go");
    const after = recorded(bot).length;
    expect(await bot.press({ ...maren, key: "press:p1" }, card, "Go")).toEqual(first);
    expect(recorded(bot)).toHaveLength(after);
  });

  it("confirms once when the same press arrives twice at the same time", async () => {
    await bringTo(bot, "draft");
    const { card } = orderPost(bot, DRIVER_NUMBER);
    const once = () => bot.press({ ...maren, key: "press:p1" }, card, "Go");
    const [first, second] = await Promise.all([once(), once()]);
    expect(second).toEqual(first);
    expect(recorded(bot).filter(({ action, subject }) => action === "order.confirm" && subject === `order:${card.data.orderId}`)).toHaveLength(1);
  });

  it("gives a refusal again as it was, though the role has come meanwhile", async () => {
    await bringTo(bot, "draft");
    const { card } = orderPost(bot, DRIVER_NUMBER);
    const refused = await bot.press({ ...maren, roles: ["viewer"], key: "press:p1" }, card, "Go");
    expect(await bot.press({ ...maren, key: "press:p1" }, card, "Go")).toEqual(refused);
    expect(state()).toBe("order.draft");
  });
});

describe("makeDesk: buttons of an older card", () => {
  it("changes nothing on a second Go and says the order is confirmed", async () => {
    await bringTo(bot, "draft");
    const { card } = orderPost(bot, DRIVER_NUMBER);
    await bot.press(maren, card, "Go");
    const after = recorded(bot).length;
    expect(cardOf(await bot.press(iver, card, "Go")).title).toContain("confirmed");
    expect(recorded(bot)).toHaveLength(after);
  });

  it.each(["Drop", "Change", "Other heads"])("answers %s of a draft that was confirmed as stale", async (label) => {
    await bringTo(bot, "draft");
    const { card } = orderPost(bot, DRIVER_NUMBER);
    await bringToConfirmed();
    const answer = cardOf(await bot.press(maren, card, label));
    expect([answer.kind, answer.title]).toEqual(["stale", "6 has moved on: confirmed"]);
    expect(cardText(answer)).toContain("Nothing was changed");
    await bot.settle();
    expect(state()).toBe("order.confirmed");
  });

  it("answers a second Start as stale", async () => {
    await bringTo(bot, "confirmed");
    const { card } = sheetPost(bot, DRIVER_NUMBER);
    await bot.press(dessa, card, "Start");
    expect(cardOf(await bot.press(dessa, card, "Start")).kind).toBe("stale");
  });

  it("answers an older draft's Go as stale once its message was edited", async () => {
    await bot.say(maren, DRIVER_ORDER, { message: "m1", at: 0 });
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    await bot.say(maren, DRIVER_ORDER.replace("d3", "d4"), { message: "m1", at: 1 });
    expect(cardOf(await bot.press(maren, card, "Go")).kind).toBe("stale");
    await bot.settle();
    expect(state()).toBe("order.draft");
  });
});

const bringToConfirmed = () => bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Go");

describe("makeDesk: edited messages", () => {
  it("replaces the open draft under its number", async () => {
    await bot.say(maren, DRIVER_ORDER, { message: "m1", at: 0 });
    await bot.settle();
    const first = orderPost(bot, DRIVER_NUMBER);
    await bot.say(maren, DRIVER_ORDER.replace("45 1/4", "45"), { message: "m1", at: 1 });
    await bot.settle();
    const edited = orderPost(bot, DRIVER_NUMBER);
    expect(edited.id).toBe(first.id);
    expect(edited.card.data.lengthMm).toBeCloseTo(45 * 25.4, 6);
    expect(() => orderPost(bot, DRIVER_NUMBER + 1)).toThrow();
  });

  it("changes nothing of a confirmed order and says how to", async () => {
    await bot.say(maren, DRIVER_ORDER, { message: "m1", at: 0 });
    await bot.settle();
    await bringToConfirmed();
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    await bot.say(maren, DRIVER_ORDER.replace("45 1/4", "45"), { message: "m1", at: 1 });
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.data).toEqual(card.data);
    expect(bot.posts("plover-orders").at(-1)?.card.title).toBe("6 is under way: an edit changes nothing");
  });
});

describe("makeDesk: who may", () => {
  it("refuses a viewer's order in words and records it", async () => {
    const before = drafts();
    await bot.say({ ...akiko, channel: "plover-orders" }, DRIVER_ORDER);
    await bot.settle();
    const said = bot.posts("plover-orders").at(-1)?.card;
    expect([said?.tone, said?.title]).toEqual(["refusal", "order new is for rep or lead"]);
    expect(drafts()).toBe(before);
    expect(lastRecorded()).toBe("refused order new");
  });

  it("refuses a rep's Start and records it", async () => {
    await bringTo(bot, "confirmed");
    const answer = cardOf(await bot.press({ ...maren, channel: "plover-bench" }, sheetPost(bot, DRIVER_NUMBER).card, "Start"));
    expect([answer.tone, answer.title]).toEqual(["refusal", "step start is for technician or lead"]);
    expect(cardText(answer)).toContain("You are here as rep. Nothing was changed.");
    expect(lastRecorded()).toBe("refused step start");
    await bot.settle();
    expect(state()).toBe("order.confirmed");
  });

  it("refuses a technician's Go and records it", async () => {
    await bringTo(bot, "draft");
    const answer = cardOf(await bot.press({ ...dessa, channel: "plover-orders" }, orderPost(bot, DRIVER_NUMBER).card, "Go"));
    expect([answer.tone, answer.title]).toEqual(["refusal", "order confirm is for rep or lead"]);
    expect(lastRecorded()).toBe("refused order confirm");
    await bot.settle();
    expect(state()).toBe("order.draft");
  });

  it("takes roles from the platform at each arrival: a rep who lost the role may no more", async () => {
    await bringTo(bot, "draft");
    const answer = cardOf(await bot.press({ ...maren, roles: [] }, orderPost(bot, DRIVER_NUMBER).card, "Go"));
    expect(cardText(answer)).toContain("a member without a role");
    await bot.settle();
    expect(state()).toBe("order.draft");
  });

  it("leaves an order of one truck to the reps of that truck", async () => {
    await bringTo(bot, "draft");
    const answer = cardOf(await bot.press({ person: "ruben", channel: "avocet-orders" }, orderPost(bot, DRIVER_NUMBER).card, "Go"));
    expect(answer.tone).toBe("refusal");
    await bot.settle();
    expect(state()).toBe("order.draft");
  });

  it("tells a stranger who presses or commands that it does not know them, and stays silent to their chatter", async () => {
    const stranger = { person: "nobody-here", channel: "plover-orders", roles: ["lead"] };
    expect(cardOf(await bot.invoke(stranger, "spec", { player: "oxtoby" })).title).toBe("I do not know you yet");
    expect(lastRecorded()).toBe("person unknown");
    const posted = bot.posts("plover-orders").length;
    expect(await bot.say(stranger, DRIVER_ORDER)).toBeNull();
    await bot.settle();
    expect(bot.posts("plover-orders")).toHaveLength(posted);
  });

  it("says that there is no such command", async () => {
    expect(cardOf(await bot.invoke(maren, "order everything", {})).title).toBe("There is no /order everything");
  });

  it.each(["morning all", "rain at 3", "👍", "", "toll is on the range", "thanks dessa!"])("stays silent to %j", async (text) => {
    const [posted, known] = [bot.posts("plover-orders").length, recorded(bot).length];
    expect(await bot.say(maren, text)).toBeNull();
    await bot.settle();
    expect([bot.posts("plover-orders").length, recorded(bot).length]).toEqual([posted, known]);
  });

  it("does not listen in a channel it does not know", async () => {
    expect(await bot.say({ ...maren, channel: "elsewhere" }, DRIVER_ORDER)).toBeNull();
  });
});
