import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { verifyChain } from "../../../db/repositories/audit.ts";
import { AS_WRITTEN, bringTo, DRIVER_NUMBER, DRIVER_ORDER, handToPlayer } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, dessa, maren } from "../../support/people.ts";
import { calls, cardOf, cardText, labels, newest, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const boardText = (): string => cardText(newest(bot, "plover-bench", ({ kind }) => kind === "board").card);
const specVersion = async (): Promise<unknown> => cardOf(await bot.invoke(akiko, "spec", { player: "oxtoby", club: "driver" })).data.versionNumber;

describe("the main job over a chat in memory", () => {
  it("turns a message into a draft that shows the head, its drawer and a promise before the time asked", async () => {
    expect(await bot.say(maren, DRIVER_ORDER)).toBeNull();
    await bot.settle();
    const { card } = orderPost(bot, DRIVER_NUMBER);
    expect(card.title).toBe("6 OXTOBY RH driver · draft");
    expect(cardText(card)).toContain("Wrote 9.25, 0.5 open, 45 1/4, d3");
    // fixtures/scenario/heads.csv: 0417 is the right-handed Cairn stamped 9 in D-7 whose face stands 0.41 open.
    expect(cardText(card)).toMatch(/Head 0417 Cairn stamped 9, D-7, standard: true 9\.2 \/ 0\.4 open/);
    // fixtures/scenario/spec-clubs.csv, Oxtoby's driver of version 3: Dunlin 60 X, tip trim 12.7 mm, logo down, one wrap.
    expect(cardText(card)).toContain("Dunlin 60 X tip 1/2, logo down; Gorse Standard +1");
    expect(card.data.lengthMm).toBeCloseTo(45.25 * 25.4, 6);
    expect(card.data.byAt).toBe(venueTime("2027-05-03T14:30"));
    expect(card.data.likelyAt).toBeGreaterThan(bot.now());
    expect(card.data.promiseAt).toBeGreaterThanOrEqual(Number(card.data.likelyAt));
    expect(card.data.promiseAt).toBeLessThan(Number(card.data.byAt));
    expect(labels(card)).toEqual(["Go", "Change", "Other heads", "Drop"]);
  });

  it("puts a confirmed order on the bench with a sheet and a line on the board", async () => {
    await bringTo(bot, "confirmed");
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.confirmed");
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("Bare cut");
    expect(boardText()).toContain("6 OXTOBY RH driver confirmed");
  });

  it("goes from Go to the bag by the presses of the people it is for, and publishes the spec once", async () => {
    expect(await specVersion()).toBe(3);
    await bringTo(bot, "building");
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toEqual(["Glue on", "Done", "Pause", "Hand back", "Print"]);
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Glue on");
    await bot.settle();
    expect(boardText()).toMatch(/6 OXTOBY RH driver glue till \d\d:\d\d/);
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Done");
    await bot.settle();
    expect(await bot.say(dessa, AS_WRITTEN)).toBeNull();
    await bot.settle();
    expect(calls(bot, "call.ready", DRIVER_NUMBER)).toHaveLength(1);
    expect(cardText(calls(bot, "call.ready", DRIVER_NUMBER)[0] ?? expect.fail("no call"))).toContain("@Maren Aldersea");
    await handToPlayer(bot, DRIVER_NUMBER);
    await bot.settle();
    expect(await specVersion()).toBe(3);
    await bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "In the bag");
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.closed");
    expect(labels(orderPost(bot, DRIVER_NUMBER).card)).toEqual([]);
    expect(await specVersion()).toBe(4);
  });

  it("publishes what the gauge said, on which gauge and when", async () => {
    await bringTo(bot, "closed");
    const card = cardOf(await bot.invoke(akiko, "spec", { player: "oxtoby", club: "driver" }));
    expect(card.data.clubs).toMatchObject([{ club: "driver", squaredLoftDeg: 9.2, soledFaceDeg: 0.4, swingWeightPoints: 3, measuredAt: bot.now() }]);
    expect(cardText(card)).toContain("on gauge of plover-bench");
  });

  it("says of a club with green glue from when it takes full swings", async () => {
    await bringTo(bot, "ready");
    const answer = cardOf(await handToPlayer(bot, DRIVER_NUMBER));
    expect(cardText(answer)).toMatch(/Not for full swings before \d\d:\d\d/);
  });

  it("edits one post of the order through its life and calls only once", async () => {
    await bringTo(bot, "closed");
    await bot.settle();
    const own = bot.posts("plover-orders").filter(({ card }) => card.kind.startsWith("order.") && card.data.orderNumber === DRIVER_NUMBER);
    expect(own).toHaveLength(1);
    expect(calls(bot, "call.ready", DRIVER_NUMBER)).toHaveLength(1);
  });

  it("records every change with its author, in a chain that verifies", async () => {
    await bringTo(bot, "closed");
    const subject = orderPost(bot, DRIVER_NUMBER).card.data.orderId;
    const own = recorded(bot).filter((row) => row.subject === `order:${subject}`);
    expect(own.map(({ action }) => action)).toEqual([
      "order.draft",
      "order.confirm",
      "step.start",
      "step.glueOn",
      "step.done",
      "order.measured",
      "order.handover",
      "order.listed",
      "order.bag",
    ]);
    expect(own.every(({ personId }) => personId !== null)).toBe(true);
    expect(verifyChain(bot.db).kind).toBe("sound");
  });

  it("takes a plain go at the end of a message as the press of Go", async () => {
    await bot.say(maren, `${DRIVER_ORDER} go`);
    await bot.settle();
    expect(orderPost(bot, DRIVER_NUMBER).card.kind).toBe("order.confirmed");
  });
});
