import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { bringTo, DRIVER_NUMBER, HEAVY, WEAK } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren, petra } from "../../support/people.ts";
import { calls, cardOf, cardText, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

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
const state = (): string => orderPost(bot, DRIVER_NUMBER).card.kind;

async function measuredOff(line: string) {
  await bringTo(bot, "finalCheck");
  await bot.say(dessa, line);
  await bot.settle();
}

describe("measureOrder", () => {
  it("keeps a club that is off what was written from being ready, and says by how much", async () => {
    await measuredOff(WEAK);
    expect(state()).toBe("order.finalCheck");
    // Written 9.25, measured 10.6: off by 1.35, shown to a tenth.
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toMatch(/loft 9\.\d > 10\.6 off 1\.[34]/);
    expect(calls(bot, "call.ready", DRIVER_NUMBER)).toEqual([]);
    const answer = cardOf(await bot.invoke(maren, "order handover", { ...order, argument: "player" }));
    expect([answer.tone, answer.title]).toEqual(["refusal", "6 is final check: only a ready club is handed over"]);
  });

  it("is ready once measured again as written", async () => {
    await measuredOff(WEAK);
    await bot.say(dessa, `measured ${DRIVER_NUMBER} loft 9.2`);
    await bot.settle();
    expect(state()).toBe("order.ready");
  });

  it("asks for what is not measured yet", async () => {
    await bringTo(bot, "finalCheck");
    await bot.say(dessa, `measured ${DRIVER_NUMBER} loft 9.2`);
    await bot.settle();
    expect(state()).toBe("order.finalCheck");
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toMatch(/Still to measure: .*length/);
  });

  it("refuses to measure what was not started", async () => {
    await bringTo(bot, "confirmed");
    const answer = cardOf(await bot.invoke(dessa, "measured", { ...order, text: "loft 9.2" }));
    expect([answer.tone, answer.title]).toEqual(["refusal", "6 is confirmed: measuring belongs to the build"]);
  });
});

describe("order accept", () => {
  it("lets the rep take a club that is off, with the player's reason on record", async () => {
    await measuredOff(HEAVY);
    const answer = cardOf(await bot.invoke(maren, "order accept", { ...order, reason: "he likes the look" }));
    expect(answer.kind).toBe("order.accepted");
    await bot.settle();
    expect(state()).toBe("order.ready");
    expect(recorded(bot).map(({ action }) => action)).toContain("order.accept.reason");
  });

  it("leaves an angle that is off to the lead", async () => {
    await measuredOff(WEAK);
    const reason = { ...order, reason: "he likes the look" };
    expect(cardOf(await bot.invoke(maren, "order accept", reason)).title).toBe("6: conformity is accepted by the lead only");
    expect(cardOf(await bot.invoke(petra, "order accept", reason)).kind).toBe("order.accepted");
  });

  it.each([{ reason: "" }, { reason: "ok" }])("refuses %j as a reason", async (given) => {
    await measuredOff(HEAVY);
    expect(cardOf(await bot.invoke(maren, "order accept", { ...order, ...given })).tone).toBe("refusal");
    await bot.settle();
    expect(state()).toBe("order.finalCheck");
  });

  it("is not the technician's to say", async () => {
    await measuredOff(HEAVY);
    const answer = cardOf(await bot.invoke(dessa, "order accept", { ...order, reason: "he likes the look" }));
    expect(answer.title).toBe("order accept is for rep or lead");
    await bot.settle();
    expect(state()).toBe("order.finalCheck");
  });

  it("refuses a club that is not measured in full", async () => {
    await bringTo(bot, "finalCheck");
    await bot.say(dessa, `measured ${DRIVER_NUMBER} loft 10.6`);
    expect(cardOf(await bot.invoke(maren, "order accept", { ...order, reason: "he likes the look" })).tone).toBe("refusal");
  });
});

describe("answerBag", () => {
  it("refuses an answer about a club that was not handed over", async () => {
    await bringTo(bot, "ready");
    const answer = cardOf(await bot.invoke(maren, "order bag", { ...order, argument: "in the bag" }));
    expect([answer.tone, answer.title]).toEqual(["refusal", "6 is ready: only a club out with the player can be in the bag"]);
  });

  it.each([
    ["Testing", "order.outWithPlayer"],
    ["Coming back", "order.ready"],
  ])("publishes nothing on %s", async (label, kind) => {
    await bringTo(bot, "outWithPlayer");
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, label);
    await bot.settle();
    expect(state()).toBe(kind);
    expect(cardOf(await bot.invoke(maren, "spec", { player: "oxtoby" })).data.versionNumber).toBe(3);
  });

  it("publishes a finished backup beside the gamer that stays", async () => {
    await bringTo(bot, "outWithPlayer");
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Backup");
    const card = cardOf(await bot.invoke(maren, "spec", { player: "oxtoby", club: "driver" }));
    expect(card.data.versionNumber).toBe(4);
    // fixtures/scenario/spec-clubs.csv, Oxtoby's gamer of version 3.
    expect(card.data.clubs).toMatchObject([{ squaredLoftDeg: 9.6, lengthMm: 1149.3 }]);
  });
});
