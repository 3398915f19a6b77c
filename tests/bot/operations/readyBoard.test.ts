import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type ReadyBoardFacts, readyBoard } from "../../../bot/operations/readyBoard.ts";
import { readyBoardPrintOf } from "../../../bot/replies/readyBoardPrintOf.ts";
import type { Id } from "../../../core/kinds.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren, petra } from "../../support/people.ts";
import { venueTime } from "../../support/readCard.ts";

const MIN = 60_000;
let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const plover = (): Id<"truck"> => (allTrucks(bot.db).find(({ name }) => name === "Plover") ?? expect.fail("no Plover")).id;
const board = (): ReadyBoardFacts => readyBoard(bot.db, plover(), bot.now());
const setAside = async (): Promise<void> => {
  for (const number of ["1", "2", "3", "4", "5"]) await bot.invoke(petra, "order scratch", { order: number });
};

describe("readyBoard", () => {
  it("is an hour of nothing on an empty bench", async () => {
    await setAside();
    const facts = board();
    expect(facts.orders).toEqual([]);
    expect(facts.stations).toEqual([]);
    expect(facts.waits).toEqual([]);
    expect(facts.technicians.map(({ name, bars }) => [name, bars.length])).toEqual([
      ["Dessa Corrigane", 0],
      ["Callan Furrow", 0],
    ]);
    expect(facts.from).toBe(bot.now());
    expect(facts.to).toBeGreaterThanOrEqual(bot.now() + 60 * MIN);
  });

  it("shows the glue that sets, who works meanwhile, and the promise given", async () => {
    await setAside();
    await bringTo(bot, "gluedOn");
    bot.later(1);
    const facts = board();
    const [wait] = facts.waits.flat();
    // The glue of a loft sleeve sets 6 minutes by the route (common practice, no source); on it for one.
    expect(wait).toMatchObject({ orderNumber: DRIVER_NUMBER, kind: "bondSet", underWay: true, fromAt: bot.now() - MIN, toAt: bot.now() + 5 * MIN });
    expect(facts.technicians.flatMap(({ bars }) => bars).length).toBeGreaterThan(0);
    expect(facts.orders[0]?.promiseAt).toBeGreaterThan(bot.now());
    expect(facts.to).toBeGreaterThan(Number(facts.orders[0]?.promiseAt));
  });

  it("shows no wait that is over", async () => {
    await setAside();
    await bringTo(bot, "gluedOn");
    bot.later(7);
    expect(
      board()
        .waits.flat()
        .filter(({ kind }) => kind === "bondSet"),
    ).toEqual([]);
  });

  it("lets no bars of a row overlap, all within what is shown", async () => {
    await bot.say(maren, "build toll 7i 8i 9i pw like gamer go");
    await bot.settle();
    const facts = board();
    const rows = [...facts.technicians.map(({ bars }) => bars), ...facts.stations.map(({ bars }) => bars), ...facts.waits];
    expect(rows.flat().length).toBeGreaterThan(20);
    for (const bars of rows) {
      bars.forEach((bar, at) => {
        expect(bar.fromAt).toBeGreaterThanOrEqual(Math.max(facts.from, bars[at - 1]?.toAt ?? 0));
        expect(bar.toAt).toBeGreaterThan(bar.fromAt);
        expect(bar.toAt).toBeLessThanOrEqual(facts.to);
      });
    }
  });

  it("ends when the workshop closes, and shows the next day once it has", async () => {
    bot.moveTo(venueTime("2027-05-03T17:50"));
    expect(board().to).toBe(venueTime("2027-05-03T18:00"));
    bot.moveTo(venueTime("2027-05-03T19:00"));
    expect(board().from).toBe(venueTime("2027-05-04T07:00"));
    expect(board().closed).toEqual([]);
  });

  it("goes no further than roll-out", () => {
    bot.moveTo(venueTime("2027-05-05T17:30"));
    const facts = board();
    expect(facts.to).toBeLessThanOrEqual(Number(facts.rollOutAt ?? facts.to));
  });
});

describe("readyBoardPrintOf", () => {
  it("names technicians, stations and what sets, and each bar by its order", async () => {
    await setAside();
    await bringTo(bot, "gluedOn");
    const print = readyBoardPrintOf(board());
    expect(print.truck).toBe("Plover");
    expect(print.rows.map(({ label }) => label)).toEqual(expect.arrayContaining(["Dessa", "Callan", "Bench", "Setting"]));
    expect(new Set(print.rows.map(({ label }) => label)).size).toBe(print.rows.length);
    expect(print.rows.find(({ label }) => label === "Setting")?.bars.map(({ label, wait }) => [label, wait])).toEqual(
      expect.arrayContaining([["6 glue", true]]),
    );
    expect(print.rows.filter(({ kind }) => kind === "technician").flatMap(({ bars }) => bars.map(({ label }) => label))).toContain("6 driver");
    expect(print.orders).toEqual([expect.objectContaining({ number: DRIVER_NUMBER, title: "6 OXTOBY RH driver" })]);
    expect(JSON.parse(JSON.stringify(print))).toEqual(print);
  });

  it("numbers a station's second place", async () => {
    await bot.say(maren, "build toll 7i 8i 9i pw like gamer go");
    await bot.settle();
    const labels = readyBoardPrintOf(board()).rows.map(({ label }) => label);
    expect(labels).toContain("Setting 2");
    expect(labels.filter((label) => label === "Bench")).toHaveLength(1);
  });
});
