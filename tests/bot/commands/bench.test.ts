import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Card } from "../../../bot/chat/types.ts";
import { AS_WRITTEN, bringTo, DRIVER_NUMBER, HEAVY, handToPlayer } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, labels, newest, orderPost, sheetPost, venueTime } from "../../support/readCard.ts";

const callan = { person: "callan", channel: "plover-bench" };
/** The walk of the Saltpan Open, fixtures/scenario/events.csv. */
const WALK_MIN = 2;
const TOLL_ORDER = "build toll driver like gamer, swing d2, by 12:00 go";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  // The demo week's own orders are set aside, so that a test's bench holds what the test puts on it.
  for (const number of ["1", "2", "3", "4", "5"]) await bot.invoke(petra, "order scratch", { order: number });
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const bench = async (who: typeof maren, view?: string): Promise<Card> => cardOf(await bot.invoke(who, "bench", view === undefined ? {} : { view }));
const boardText = (): string => cardText(newest(bot, "plover-bench", ({ kind }) => kind === "board").card);
const say = async (text: string): Promise<void> => {
  await bot.say(maren, text);
  await bot.settle();
};
interface Told {
  readonly technician: string;
  readonly orderNumber: number | null;
  readonly step: string | null;
  readonly startAt: number | null;
  readonly endAt: number | null;
  readonly waitEndsAt: number | null;
  readonly why: string;
  readonly spareMin: number | null;
  readonly meanwhile: readonly { readonly orderNumber: number; readonly startAt: number; readonly endAt: number }[];
}
const told = (card: Card): readonly Told[] => card.data.technicians as unknown as readonly Told[];

describe("/bench", () => {
  it("says that there is nothing to do on an empty bench", async () => {
    const text = cardText(await bench(dessa));
    expect(text).toContain("Next for Dessa");
    expect(text).toContain("Dessa: nothing to do");
    expect(text).toContain("Callan: nothing to do");
  });

  it("tells a technician the first step of the only order, with a button to start it", async () => {
    await bringTo(bot, "confirmed");
    const card = await bench(dessa);
    expect(cardText(card)).toMatch(/Dessa: 6 OXTOBY RH driver: \w+/);
    expect(labels(card)).toEqual(["Start"]);
    expect(told(card)[0]).toMatchObject({ technician: "Dessa", orderNumber: DRIVER_NUMBER, startAt: bot.now(), why: "onlyWork" });
    await bot.press(dessa, card, "Start");
    await bot.settle();
    expect(sheetPost(bot, DRIVER_NUMBER).card.title).toContain("building, Dessa");
    bot.later(2);
    expect(cardText(await bench(dessa))).toMatch(/under way, till about \d\d:\d\d/);
  });

  it("says what fits into the wait, and never more than fits", async () => {
    await bringTo(bot, "gluedOn");
    await bot.invoke(petra, "shift off", { person: "callan" });
    await say(TOLL_ORDER);
    bot.later(1);
    const card = await bench(dessa);
    const [own] = told(card);
    // A loft sleeve's glue sets 6 minutes by the route (common practice, no source), one of them gone.
    expect(own?.waitEndsAt).toBe(bot.now() + 5 * 60_000);
    expect(cardText(card)).toMatch(/glue on 6 sets till 10:36; meanwhile: /);
    expect(own?.meanwhile.length).toBeGreaterThan(0);
    for (const step of own?.meanwhile ?? []) {
      expect(step.startAt).toBeGreaterThanOrEqual(own?.endAt ?? Number.POSITIVE_INFINITY);
      expect(step.endAt).toBeLessThanOrEqual(own?.waitEndsAt ?? 0);
    }
  });

  it("gives the time to spare before the order is due", async () => {
    await bringTo(bot, "confirmed");
    await say(TOLL_ORDER);
    const due = told(await bench(dessa)).find(({ why }) => why === "due");
    expect(due?.spareMin).toBeGreaterThan(0);
    expect(cardText(await bench(dessa))).toMatch(/due (12:00|14:30), \d+ minutes to spare/);
  });

  it("names the order on its buttons when several are in hand, and lets another's work alone", async () => {
    await bringTo(bot, "gluedOn");
    await say(TOLL_ORDER);
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER + 1).card, "Start");
    await bot.settle();
    const own = labels(await bench(dessa));
    expect(own).toEqual(expect.arrayContaining(["Done 6", "Glue on 7", "Done 7"]));
    expect(own.filter((label) => label.startsWith("Pause"))).toHaveLength(1);
    expect(labels(await bench(callan)).filter((label) => /Pause|Hand back/.test(label))).toEqual([]);
  });

  it("has buttons of the version it was read at: a stale one changes nothing", async () => {
    await bringTo(bot, "confirmed");
    const card = await bench(dessa);
    await bot.press(dessa, card, "Start");
    const late = cardOf(await bot.press(callan, card, "Start"));
    expect(late.tone).not.toBe("good");
    await bot.settle();
    expect(sheetPost(bot, DRIVER_NUMBER).card.title).toContain("building, Dessa");
  });

  it("tells a rep and the lead everybody's, without buttons", async () => {
    await bringTo(bot, "confirmed");
    for (const who of [maren, petra]) {
      const card = await bench(who);
      expect(card.title).toBe("What is next at the bench");
      expect(told(card).map(({ technician }) => technician)).toEqual(["Dessa", "Callan"]);
      expect(labels(card)).toEqual([]);
    }
    expect(cardOf(await bot.invoke(akiko, "bench", {})).tone).toBe("refusal");
  });

  it("answers the question what is next", async () => {
    await bringTo(bot, "confirmed");
    await bot.say(dessa, "next?");
    await bot.settle();
    expect(newest(bot, "plover-bench", ({ kind }) => kind === "bench.next").card.title).toBe("Next for Dessa");
  });

  it("says who is off and till when, and that the workshop is closed", async () => {
    await bringTo(bot, "confirmed");
    await bot.invoke(callan, "shift off", { till: "11:15" });
    expect(cardText(await bench(callan))).toContain("Callan: off till 11:15");
    bot.moveTo(venueTime("2027-05-03T19:00"));
    expect(cardText(await bench(dessa))).toContain("Dessa: closed till Tue 07:00");
  });

  it("tells a technician of another truck to sign on", async () => {
    const jonty = { person: "jonty", channel: "plover-bench" };
    expect(cardText(await bench(jonty))).toContain("You are not signed on here: /shift on");
  });

  it("refuses a view it has not got", async () => {
    expect(cardText(await bench(dessa, "later"))).toContain("view: next, board or record");
  });
});

describe("the board of the day", () => {
  it.each([
    ["bench", { view: "board" }],
    ["board", {}],
  ] as const)("is a picture behind /%s, with the wait and the promise given", async (command, values) => {
    await bringTo(bot, "gluedOn");
    const card = cardOf(await bot.invoke(maren, command, values));
    const [file] = card.files;
    if (file?.draw !== "readyBoard") throw new Error("no board drawn");
    expect(file.name).toBe("ready-board.png");
    const waits = file.board.rows.flatMap(({ bars }) => bars.filter(({ wait }) => wait).map(({ label }) => label));
    expect(waits).toEqual(["6 glue", "6 grip"]);
    const promiseAt = Number(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt);
    expect(file.board.orders.map((order) => [order.number, order.promiseAt, order.byAt])).toEqual([
      [DRIVER_NUMBER, promiseAt, venueTime("2027-05-03T14:30")],
    ]);
    expect(cardText(card)).toContain("6 OXTOBY RH driver glue till 10:36 (Dessa), promise ");
  });

  it("is not drawn for the pinned board, which is edited in place", async () => {
    await bringTo(bot, "gluedOn");
    expect(newest(bot, "plover-bench", ({ kind }) => kind === "board").card.files).toEqual([]);
  });
});

describe("/bench record", () => {
  it("says that no promise has come due, and how many are open", async () => {
    expect((await bench(maren, "record")).title).toBe("No promise has come due yet");
    await bringTo(bot, "confirmed");
    expect(cardText(await bench(maren, "record"))).toContain("Not counted yet: 1 open");
  });

  it("counts a promise kept and how early", async () => {
    await bringTo(bot, "ready");
    const card = await bench(maren, "record");
    expect(card.title).toBe("Promises: 1 of 1 kept");
    expect(card.data).toMatchObject({ openCount: 0, all: { promiseCount: 1, keptCount: 1, coveragePct: 100, misses: [] } });
    const { promiseAt } = orderPost(bot, DRIVER_NUMBER).card.data;
    // All presses came at once: in hand is the walk later.
    expect((card.data.all as { readonly earlyMedianMin: number }).earlyMedianMin).toBeCloseTo((Number(promiseAt) - bot.now()) / 60_000 - WALK_MIN, 6);
  });

  it("counts a promise missed by what was said first, not by the new time told for the slip", async () => {
    await bringTo(bot, "gluedOn");
    const first = Number(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt);
    bot.moveTo(venueTime("2027-05-03T12:30"));
    await bot.settle();
    expect(Number(orderPost(bot, DRIVER_NUMBER).card.data.promiseAt)).toBeGreaterThan(first);
    expect(cardText(await bench(maren, "record"))).toContain("1 open, 1 past its promise");
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Done");
    await bot.say(dessa, AS_WRITTEN);
    const card = await bench(maren, "record");
    expect(card.title).toBe("Promises: 0 of 1 kept");
    const [miss] = (card.data.all as { readonly misses: readonly { readonly orderNumber: number; readonly lateMin: number }[] }).misses;
    expect(miss?.orderNumber).toBe(DRIVER_NUMBER);
    expect(miss?.lateMin).toBeCloseTo((bot.now() - first) / 60_000 + WALK_MIN, 6);
    expect(cardText(card)).toMatch(/Missed: 6 by \d+ minutes/);
  });

  it("takes the hand-over when it came before the walk would have", async () => {
    await bringTo(bot, "ready");
    const before = (await bench(maren, "record")).data.all as { readonly earlyMedianMin: number };
    bot.later(1);
    await handToPlayer(bot, DRIVER_NUMBER);
    const after = (await bench(maren, "record")).data.all as { readonly earlyMedianMin: number };
    expect(after.earlyMedianMin).toBeCloseTo(before.earlyMedianMin + WALK_MIN - 1, 6);
  });

  it("keeps held orders apart, and leaves withdrawn ones out", async () => {
    await bringTo(bot, "building");
    await bot.invoke(maren, "order hold", { order: "6", reason: "waits for the player" });
    expect(cardText(await bench(maren, "record"))).toContain("Not counted yet: 1 held or without its club");
    await bot.invoke(maren, "order scratch", { order: "6" });
    expect(cardText(await bench(maren, "record"))).not.toContain("Not counted");
  });
});

describe("the sheet and the board of an order at the bench", () => {
  it("say in whose hands it is, that it is paused, and go on with Resume", async () => {
    await bringTo(bot, "building");
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toEqual(["Glue on", "Done", "Pause", "Hand back", "Print"]);
    expect(boardText()).toContain("6 OXTOBY RH driver building (Dessa), promise ");
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Pause");
    await bot.settle();
    expect(sheetPost(bot, DRIVER_NUMBER).card.title).toContain("paused by Dessa");
    expect(boardText()).toContain("6 OXTOBY RH driver paused (Dessa)");
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toEqual(["Resume", "Glue on", "Done", "Hand back", "Print"]);
    await bot.press(callan, sheetPost(bot, DRIVER_NUMBER).card, "Resume");
    await bot.settle();
    expect(boardText()).toContain("6 OXTOBY RH driver building (Callan)");
  });

  it("say that it is handed back, and where it lies", async () => {
    await bringTo(bot, "building");
    await bot.invoke(dessa, "step back", { order: "6", lies: "rack 2" });
    await bot.settle();
    expect(sheetPost(bot, DRIVER_NUMBER).card.title).toContain("building, handed back");
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("It lies: rack 2");
    expect(boardText()).toContain("6 OXTOBY RH driver handed back, lies: rack 2, promise");
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toEqual(["Resume", "Glue on", "Done", "Print"]);
    expect(labels(await bench(callan))).toContain("Resume");
  });

  it("say till when the glue sets, and that it has set", async () => {
    await bringTo(bot, "gluedOn");
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("Glue till 10:36");
    bot.later(7);
    expect(cardText(cardOf(await bot.invoke(maren, "board", {})))).toContain("6 OXTOBY RH driver glue set (Dessa)");
  });

  it("show a step that is done again, with its reason, and one left out", async () => {
    await bringTo(bot, "finalCheck");
    await bot.say(dessa, HEAVY);
    await bot.invoke(dessa, "step again", { order: "6", step: "cut", reason: "too heavy" });
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("cut to length again: too heavy");
    await bot.invoke(dessa, "step skip", { order: "6", step: "cut", reason: "as good as it gets" });
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("cut to length left out: as good as it gets");
  });

  it("say that glue sets again when it is put on again", async () => {
    await bringTo(bot, "finalCheck");
    await bot.invoke(dessa, "step again", { order: "6", step: "glue", reason: "slipped" });
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("glue again: slipped");
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Glue on");
    await bot.settle();
    expect(cardText(sheetPost(bot, DRIVER_NUMBER).card)).toContain("Glue again till 10:36");
  });

  it("say when a held order or its club is expected", async () => {
    await bringTo(bot, "confirmed");
    await bot.say(maren, "hold 6 till 14:00 short of ferrule");
    await bot.settle();
    expect(boardText()).toMatch(/6 OXTOBY RH driver held: .*expected 14:00/);
  });

  it("give each club of a set its likely time behind More", async () => {
    await say("build toll 7i 8i 9i like gamer go");
    await bot.invoke(petra, "shift off", { person: "callan" });
    await bot.settle();
    await bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Start");
    await bot.settle();
    const fields = sheetPost(bot, DRIVER_NUMBER).card.fields.map(({ value }) => value.join(""));
    expect(fields).toHaveLength(3);
    for (const field of fields) expect(field).toMatch(/^0 of \d+ steps done, likely /);
  });
});
