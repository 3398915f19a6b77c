import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { reestimate } from "../../../bot/flows/reestimate.ts";
import { instant } from "../../../core/kinds.ts";
import { benchOf, noteEstimated, promisesOf } from "../../../db/repositories/benchEstimates.ts";
import { benchVersion, noteOnOrder, orderByNumber, touchBench } from "../../../db/repositories/orders.ts";
import { allTrucks, currentEvent } from "../../../db/repositories/people.ts";
import { sheetsOf } from "../../../db/repositories/sheets.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, dataOf, orderPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-04T09:00"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const NUMBER = 6;
const truck = () => allTrucks(bot.db)[0]?.id ?? expect.fail("no truck");
const row = (number = NUMBER) =>
  orderByNumber(bot.db, truck(), currentEvent(bot.db, truck(), bot.now())?.event.id ?? null, number) ?? expect.fail(`no order ${number}`);
const late = () => bot.posts("plover-orders").filter(({ card }) => card.kind === "call.late");
const lateOf = (number: number) => late().filter(({ card }) => dataOf(card, number) !== undefined);

/** Everybody of the bench signs off, or on again. */
async function shift(way: "off" | "on"): Promise<void> {
  for (const person of ["Dessa", "Callan"]) await bot.invoke({ ...petra, channel: "plover-bench" }, `shift ${way}`, { person });
  await bot.settle();
}

async function ordered(...texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await bot.say(maren, text);
    await bot.settle();
  }
}

describe("reestimate", () => {
  it("makes the times of every open order anew after a change of the bench, and only then", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    const first = benchOf(bot.db, truck());
    expect(first?.estimatedVersion).toBe(benchVersion(bot.db, truck()));
    bot.later(2);
    await bot.settle();
    expect(benchOf(bot.db, truck())?.estimatedAt).toBe(first?.estimatedAt);
    await bot.invoke(dessa, "step start", { order: String(NUMBER) });
    await bot.settle();
    expect(benchOf(bot.db, truck())?.estimatedVersion).toBe(benchVersion(bot.db, truck()));
    expect(benchOf(bot.db, truck())?.estimatedVersion).toBeGreaterThan(first?.estimatedVersion ?? 0);
  });

  it("gives every club of a set its own times, the order those of the last", async () => {
    await ordered("build toll irons 4-pw like gamer go");
    const times = sheetsOf(bot.db, row()).map(({ likelyAt }) => likelyAt ?? expect.fail("a club without a time"));
    expect(times).toHaveLength(7);
    expect(new Set(times).size).toBeGreaterThan(1);
    expect(Math.abs(Math.max(...times) - (row().likelyAt ?? 0))).toBeLessThan(2 * 60_000);
  });

  it("puts nothing on record of a bench that moves while it is estimated", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    write(bot.db, (tx) => touchBench(tx, truck()));
    const before = benchOf(bot.db, truck())?.estimatedVersion;
    const parts = { db: bot.db, seed: 1, newMark: () => expect.fail("no post is due"), effort: { samples: 50, scenarios: 2, schedules: 2 } };
    let asked = 0;
    await reestimate({
      ...parts,
      now: () => {
        asked += 1;
        setImmediate(() => write(bot.db, (tx) => touchBench(tx, truck())));
        return bot.now();
      },
    });
    expect(asked).toBeGreaterThan(1);
    expect(benchOf(bot.db, truck())?.estimatedVersion).toBe(before);
  });
});

describe("promises on record", () => {
  it("keep what was given with an order, what it rested on, and what a slip gave in its place", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    const given = row().givenPromiseAt;
    expect(promisesOf(bot.db, row().id)).toMatchObject([{ cause: "confirmed", promiseAt: given, technicians: 2 }]);
    bot.moveTo(instant((given ?? 0) + 60_000));
    await bot.settle();
    const [, slipped] = promisesOf(bot.db, row().id);
    expect(slipped).toMatchObject({ cause: "slipped", promiseAt: row().givenPromiseAt });
    expect(slipped?.promiseAt).toBeGreaterThan(given ?? 0);
  });

  it("are given anew once a bench that nobody was at has hands again", async () => {
    bot.moveTo(venueTime("2027-05-05T14:00"));
    await ordered("build oxtoby driver like gamer d3 go");
    await shift("off");
    expect(row()).toMatchObject({ likelyAt: null, givenPromiseAt: null });
    expect(cardText(orderPost(bot, NUMBER).card)).toContain("No promise: nobody is at this bench");
    await shift("on");
    const given = row().givenPromiseAt ?? expect.fail("no promise");
    expect(promisesOf(bot.db, row().id).map(({ cause, promiseAt }) => [cause, promiseAt !== null])).toEqual([
      ["confirmed", true],
      ["slipped", false],
      ["slipped", true],
    ]);
    expect(orderPost(bot, NUMBER).card.data.promiseAt).toBe(given);
  });

  it("count as the order's first when none could be given with it", async () => {
    bot.moveTo(venueTime("2027-05-05T14:00"));
    await shift("off");
    await ordered("build oxtoby driver like gamer d3 go");
    expect(promisesOf(bot.db, row().id)).toEqual([]);
    await shift("on");
    expect(promisesOf(bot.db, row().id)).toMatchObject([{ cause: "confirmed", promiseAt: row().givenPromiseAt, technicians: 2 }]);
    expect(lateOf(NUMBER)).toEqual([]);
  });

  it("are given for a club that has to come in when it is there", async () => {
    await ordered("regrip toll 7i go");
    expect(promisesOf(bot.db, row().id)).toEqual([]);
    await bot.press(maren, orderPost(bot, NUMBER).card, "In the truck");
    expect(promisesOf(bot.db, row().id)).toMatchObject([{ cause: "arrived" }]);
  });
});

describe("a slip", () => {
  it("is called once, however often the clock ticks, and again only when it grows past the new promise", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    bot.moveTo(instant((row().givenPromiseAt ?? 0) + 60_000));
    for (const minutes of [0, 0, 1, 1]) {
      bot.later(minutes);
      await bot.settle();
      expect(lateOf(NUMBER)).toHaveLength(1);
    }
    bot.later(121);
    await bot.settle();
    expect(lateOf(NUMBER)).toHaveLength(2);
  });

  it("is not called again by a bot that was started anew", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    bot.moveTo(instant((row().givenPromiseAt ?? 0) + 60_000));
    await bot.settle();
    const told = row();
    write(bot.db, (tx) => noteEstimated(tx, truck(), { estimatedVersion: -1, estimatedAt: bot.now(), policy: "null" }));
    let marks = 0;
    const newMark = () => ({ nonce: `again${++marks}`, ref: `again${marks}` });
    await reestimate({ db: bot.db, seed: 5, now: bot.now, newMark, effort: { samples: 50, scenarios: 2, schedules: 2 } });
    await bot.settle();
    expect(row().givenPromiseAt).toBe(told.givenPromiseAt);
    expect(lateOf(NUMBER)).toHaveLength(1);
  });

  it("of several orders at once is one post that names each", async () => {
    await ordered("build oxtoby driver like gamer d3 go", "build halloway driver like gamer go", "build wexcombe 3w like gamer go");
    const before = late().length;
    for (const person of ["Dessa", "Callan"]) await bot.invoke({ ...petra, channel: "plover-bench" }, "shift off", { person, till: "12:00" });
    await bot.settle();
    expect(late()).toHaveLength(before + 1);
    const { card } = late().at(-1) ?? expect.fail("no call");
    for (const number of [6, 7, 8]) expect(dataOf(card, number)).toMatchObject({ cause: "fewerHands" });
    expect(cardText(card)).toContain("nobody is at the bench");
  });

  it("past what was wanted is called though the promise is not reached", async () => {
    await ordered("build oxtoby driver like gamer d3 by 11:00 go");
    write(bot.db, (tx) =>
      noteOnOrder(tx, row().id, { byAt: instant((row().likelyAt ?? 0) - 6 * 60_000), givenPromiseAt: instant((row().likelyAt ?? 0) - 7 * 60_000) }),
    );
    write(bot.db, (tx) => touchBench(tx, truck()));
    await bot.settle();
    expect(lateOf(NUMBER)).toHaveLength(1);
  });

  it("offers to put the order first, which moves it before the others", async () => {
    await ordered("build toll irons 4-pw like gamer by 12:00 go", "build oxtoby driver like gamer d3 go");
    bot.moveTo(instant((row(7).givenPromiseAt ?? 0) + 60_000));
    await bot.settle();
    const call = lateOf(7).at(-1)?.card ?? expect.fail("no call");
    const choice = call.buttons.find(({ label }) => /^(7 first|First in line)$/.test(label));
    const before = row(7).likelyAt ?? expect.fail("no time");
    expect(cardOf(await bot.press(maren, call, choice?.label ?? "")).title).toBe("7 goes first");
    await bot.settle();
    expect(row(7).urgent).toBe(true);
    expect(row(7).likelyAt).toBeLessThanOrEqual(before);
  });

  it("says that work was laid aside, or that nothing was pressed for long", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    await bot.invoke(dessa, "step start", { order: String(NUMBER) });
    bot.later(2);
    await bot.invoke(dessa, "step pause", { order: String(NUMBER) });
    await bot.settle();
    bot.later(45);
    await bot.settle();
    expect(dataOf(lateOf(NUMBER).at(-1)?.card ?? expect.fail("no call"), NUMBER)).toMatchObject({ cause: "resting" });
    await bot.invoke(dessa, "step resume", { order: String(NUMBER) });
    bot.later(60);
    await bot.settle();
    expect(dataOf(lateOf(NUMBER).at(-1)?.card ?? expect.fail("no call"), NUMBER)).toMatchObject({ cause: "noPress" });
  });

  it("is not called of an order that is held, nor of a draft", async () => {
    await ordered("build oxtoby driver like gamer d3 go", "build halloway driver like gamer", `hold ${NUMBER} thinking`);
    bot.later(120);
    await bot.settle();
    expect([lateOf(NUMBER), lateOf(7)]).toEqual([[], []]);
  });
});

describe("somebody signing off", () => {
  it("moves the times to when they are back", async () => {
    for (const person of ["Dessa", "Callan"]) await bot.invoke({ ...petra, channel: "plover-bench" }, "shift off", { person, till: "12:00" });
    await ordered("build oxtoby driver like gamer d3 go");
    expect(row().givenPromiseAt).toBeGreaterThan(venueTime("2027-05-04T12:00"));
  });
});

describe("an order's card", () => {
  it("says what a glue that sets longer by its sheet does to its times", async () => {
    await ordered("build oxtoby driver like gamer d3 go");
    const usual = (row().likelyAt ?? 0) - bot.now();
    await bot.say(maren, `scratch ${NUMBER}`);
    await bot.invoke(petra, "settings", { name: "waits-glue", value: "10" });
    await ordered("build oxtoby driver like gamer d3 go");
    expect((row(7).likelyAt ?? 0) - bot.now()).toBeGreaterThan(usual);
    expect(cardText(orderPost(bot, 7).card)).toMatch(/glue sets 10 minutes by its sheet/);
  });

  it("gives the likely time of every club of a set", async () => {
    await ordered("build toll irons 4-pw like gamer go");
    const clubs = orderPost(bot, NUMBER).card.data.clubs as readonly { readonly likelyAt: number | null }[];
    expect(clubs.map(({ likelyAt }) => likelyAt)).toEqual(sheetsOf(bot.db, row()).map(({ likelyAt }) => likelyAt));
  });
});
