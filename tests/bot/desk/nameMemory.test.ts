import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { nameMemory } from "../../../bot/desk/nameMemory.ts";
import { player } from "../../../db/schema/people.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren } from "../../support/people.ts";
import { venueTime } from "../../support/readCard.ts";

// fixtures/scenario/orders.csv: orders 1 to 5 of Plover are open when the week opens.
let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

describe("nameMemory", () => {
  it("keeps the same names until something is written", async () => {
    const memory = nameMemory(bot.db);
    const before = memory.names();
    memory.refresh();
    expect(memory.names()).toBe(before);
    await bot.say(maren, "build oxtoby driver like gamer by 14:30");
    expect(memory.names()).toBe(before);
    memory.refresh();
    expect(memory.names().orders.length).toBe(before.orders.length + 1);
  });

  it("lists the open orders newest first, and those closed no more", async () => {
    const memory = nameMemory(bot.db);
    const numbers = (): readonly number[] => memory.names().orders.map(({ number }) => number);
    expect(numbers().slice(0, 5)).toEqual([5, 4, 3, 2, 1]);
    await bot.invoke(maren, "order drop", { order: "5" });
    memory.refresh();
    expect(numbers().slice(0, 4)).toEqual([4, 3, 2, 1]);
  });

  it("forgets a player who was erased", () => {
    const memory = nameMemory(bot.db);
    const isKnown = (): boolean => memory.names().players.some(({ name }) => name === "Bram Oxtoby");
    expect(isKnown()).toBe(true);
    write(bot.db, (tx) => void tx.update(player).set({ name: null, erasedAt: bot.now() }).where(eq(player.name, "Bram Oxtoby")).run());
    memory.refresh();
    expect(isKnown()).toBe(false);
  });

  it("knows the people of every bench, the parts by name and the clubs in most bags first", () => {
    const { persons, parts, clubs } = nameMemory(bot.db).names();
    expect(persons.map(({ name }) => name)).toEqual(expect.arrayContaining(["Dessa Corrigane", "Callan Furrow", "Jonty Marchbeck"]));
    expect(parts.head).toContainEqual({ name: "Menhir", code: "lamplight" });
    expect(parts.shaft.map(({ name }) => name)).toContain("Dunlin 60 X");
    expect(clubs.indexOf("driver" as (typeof clubs)[number])).toBeLessThan(clubs.indexOf("7w" as (typeof clubs)[number]));
  });
});
