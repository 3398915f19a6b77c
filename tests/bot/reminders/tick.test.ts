import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { bringTo, DRIVER_NUMBER, DRIVER_ORDER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren } from "../../support/people.ts";
import { calls, cardOf, cardText, dataOf, newest, orderPost, recorded, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-02T22:00"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const inWeek = (kind: string) => bot.posts("plover-week").filter(({ card }) => card.kind === kind);

async function settleAt(local: string): Promise<void> {
  bot.moveTo(venueTime(local));
  await bot.settle();
}

describe("tick: the Monday fill", () => {
  it("is posted once, at 07:00 on the venue's clock", async () => {
    await settleAt("2027-05-03T06:59");
    expect(inWeek("fill")).toHaveLength(0);
    for (const local of ["2027-05-03T07:00", "2027-05-03T07:00", "2027-05-03T09:00", "2027-05-04T07:00"]) {
      await settleAt(local);
      expect(inWeek("fill")).toHaveLength(1);
    }
  });

  it("counts the field's bins: 26 players, one of them with 48 balls and one with 24", async () => {
    await settleAt("2027-05-03T07:00");
    const card = inWeek("fill")[0]?.card ?? expect.fail("no fill");
    // fixtures/scenario/field.csv and players.csv: 26 players; Toll 48 balls, Lerrimer 24, all others 36.
    expect(card.data).toMatchObject({ playerCount: 26, openCount: 26, ballCount: 24 * 36 + 48 + 24 });
    expect(cardText(card)).toContain("Marrick Toll: hat L, glove L left, 48 balls");
    expect(cardText(card)).toContain("Noor Halloway: hat S, glove M right");
  });

  it("is not posted in the evening when nobody was there in the morning", async () => {
    await settleAt("2027-05-03T19:30");
    expect(inWeek("fill")).toHaveLength(0);
  });

  it("is not posted for a truck between its events", async () => {
    await settleAt("2027-05-03T09:00");
    expect(bot.posts("knot-week").filter(({ card }) => card.kind === "fill")).toHaveLength(0);
  });

  it("records a player as filled by one press, once", async () => {
    await settleAt("2027-05-03T07:00");
    const card = inWeek("fill")[0]?.card ?? expect.fail("no fill");
    const place = { person: "callan", channel: "plover-week" };
    expect(cardOf(await bot.pick(place, card, "Bram Oxtoby")).title).toBe("Bram Oxtoby: bin filled");
    expect(cardOf(await bot.pick(place, card, "Bram Oxtoby")).title).toBe("Bram Oxtoby was filled before");
    expect(recorded(bot).filter(({ action }) => action === "fill")).toHaveLength(1);
    expect(cardOf(await bot.invoke(place, "fill", {})).data.openCount).toBe(25);
  });
});

describe("tick: owed markings", () => {
  it("reminds once, on the day before the first practice round", async () => {
    expect(inWeek("owed")).toHaveLength(0);
    // fixtures/scenario/events.csv: the first practice round is on Tuesday 2027-05-04.
    for (const local of ["2027-05-03T07:00", "2027-05-03T12:00", "2027-05-04T08:00"]) {
      await settleAt(local);
      expect(inWeek("owed")).toHaveLength(1);
    }
    expect(inWeek("owed")[0]?.card.data.owedCount).toBe(5);
  });

  it("takes a technician's press as stamped, once", async () => {
    await settleAt("2027-05-03T07:00");
    const card = inWeek("owed")[0]?.card ?? expect.fail("no reminder");
    const place = { person: "dessa", channel: "plover-week" };
    expect(cardOf(await bot.pick({ ...place, person: "maren" }, card, "Bram Oxtoby LW BRAM")).tone).toBe("refusal");
    expect(cardOf(await bot.pick(place, card, "Bram Oxtoby LW BRAM")).title).toBe("Stamped: LW BRAM");
    expect(cardOf(await bot.pick(place, card, "Bram Oxtoby LW BRAM")).title).toBe("That marking is not owed any more");
    expect(cardOf(await bot.invoke(place, "owed", {})).data.owedCount).toBe(4);
  });

  it("shows on the order of the wedge before it is handed over", async () => {
    await settleAt("2027-05-03T10:30");
    await bot.say(maren, "build oxtoby lw like gamer go");
    for (const command of ["step start", "step done"]) await bot.invoke(dessa, command, { order: String(DRIVER_NUMBER) });
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    expect(card.kind).toBe("order.finalCheck");
    expect(cardText(card)).toContain("Owed on the LW: stamp BRAM");
  });
});

describe("tick: drafts", () => {
  it("nudges once, three minutes after a draft was posted", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bringTo(bot, "draft");
    bot.later(2.9);
    await bot.settle();
    expect(calls(bot, "call.nudge", DRIVER_NUMBER)).toHaveLength(0);
    for (const minutes of [0.1, 0, 10, 120]) {
      bot.later(minutes);
      await bot.settle();
      expect(calls(bot, "call.nudge", DRIVER_NUMBER)).toHaveLength(1);
    }
  });

  it("takes Go on the nudge as Go on the order", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bringTo(bot, "draft");
    bot.later(3);
    await bot.settle();
    await bot.press(maren, calls(bot, "call.nudge", DRIVER_NUMBER)[0] ?? expect.fail("no nudge"), "Go");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.confirmed");
  });

  it("does not nudge what was confirmed or dropped in time", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bot.say(maren, DRIVER_ORDER);
    await bot.settle();
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Drop");
    bot.later(10);
    await bot.settle();
    expect(calls(bot, "call.nudge", DRIVER_NUMBER)).toHaveLength(0);
  });
});

describe("tick: slips", () => {
  it("calls once for a slip past the promise, with the new time and the one given before", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bringTo(bot, "confirmed");
    const promised = Number(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt);
    bot.moveTo(instant(promised));
    for (const minutes of [0, 0, 1, 4]) {
      bot.later(minutes);
      await bot.settle();
      expect(calls(bot, "call.late", DRIVER_NUMBER)).toHaveLength(1);
    }
    const card = calls(bot, "call.late", DRIVER_NUMBER)[0] ?? expect.fail("no call");
    const told = dataOf(card, DRIVER_NUMBER);
    expect(told?.promisedBeforeAt).toBe(promised);
    expect(told?.promiseAt).toBeGreaterThan(promised);
    expect(told?.cause).toBe("notStarted");
    expect(cardText(card)).toContain("it has not been started");
  });

  it("calls for no slip of an order that is held", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bringTo(bot, "confirmed");
    await bot.say(maren, `hold ${DRIVER_NUMBER} player is thinking`);
    bot.later(300);
    await bot.settle();
    expect(calls(bot, "call.late", DRIVER_NUMBER)).toHaveLength(0);
  });
});

describe("tick: clubs out with a player", () => {
  it("asks the rep once an evening, and takes the answer", async () => {
    bot.moveTo(venueTime("2027-05-03T10:30"));
    await bringTo(bot, "outWithPlayer");
    await settleAt("2027-05-03T17:59");
    expect(calls(bot, "call.bag", DRIVER_NUMBER)).toHaveLength(0);
    for (const local of ["2027-05-03T18:00", "2027-05-03T20:00"]) {
      await settleAt(local);
      expect(calls(bot, "call.bag", DRIVER_NUMBER)).toHaveLength(1);
    }
    const answer = cardOf(await bot.press(maren, newest(bot, "plover-orders", ({ kind }) => kind === "call.bag").card, "in the bag"));
    expect(answer.title).toBe("6 in the bag: live spec version 4");
    await settleAt("2027-05-04T18:00");
    expect(calls(bot, "call.bag", DRIVER_NUMBER)).toHaveLength(1);
  });
});
