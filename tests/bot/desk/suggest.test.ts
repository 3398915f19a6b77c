import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { commands } from "../../../bot/registry.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { maren, petra } from "../../support/people.ts";
import { cardOf, cardText, venueTime } from "../../support/readCard.ts";
import { actorWith, suggested, valuesOf } from "./someSuggestions.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

describe("suggest: what may be meant", () => {
  it("lists players by name, 25 at most, until something is typed", () => {
    const names = valuesOf(bot.db, "spec", "player", "");
    expect(names).toHaveLength(25);
    expect(names).toEqual([...names].sort());
  });

  it("finds a player by what the name or an alias begins with", () => {
    expect(valuesOf(bot.db, "spec", "player", "oxt")).toEqual(["Bram Oxtoby"]);
    // fixtures/scenario/players.csv: mimi is Mireille Castabel.
    expect(valuesOf(bot.db, "spec", "player", "mimi")[0]).toBe("Mireille Castabel");
  });

  it("lists the clubs in the bag of the player named, in the order of the bag", () => {
    const clubs = valuesOf(bot.db, "spec", "club", "", { values: { player: "Bram Oxtoby" } });
    expect(clubs.slice(0, 2)).toEqual(["driver", "3w"]);
    expect(clubs.length).toBeLessThanOrEqual(14);
    expect(clubs).not.toContain("7w");
  });

  it.each([
    ["7 iron", "7i"],
    ["sand wedge", "sw"],
    ["dri", "driver"],
    ["11w", "11w"],
  ])("reads the club %s", (typed, club) => {
    expect(valuesOf(bot.db, "spec", "club", typed)[0]).toBe(club);
  });

  it.each(["step again", "step skip"])("lists clubs for %s", (command) => {
    expect(valuesOf(bot.db, command, "club", "dri", { actor: actorWith(bot.db, ["technician"]) })[0]).toBe("driver");
  });

  // fixtures/scenario/orders.csv: orders 1 to 5 of Plover are open, 4 is Ferreval's.
  it("lists the open orders of the channel's truck, newest first, with whose they are", () => {
    expect(valuesOf(bot.db, "where", "what", "")).toEqual(["5", "4", "3", "2", "1"]);
    expect(suggested(bot.db, "order hold", "order", "ferr")).toEqual([{ label: "4 Tomas Ferreval swap driver · confirmed", value: "4" }]);
    expect(valuesOf(bot.db, "where", "what", "", { actor: actorWith(bot.db, ["rep"], "Avocet") })).not.toContain("5");
    expect(valuesOf(bot.db, "where", "what", "", { actor: { ...actorWith(bot.db, ["rep"]), truck: null } })).toEqual([]);
  });

  // fixtures/scenario/orders.csv: 5 is a draft, 4 confirmed, 3 and 2 are being built, 1 is at its final check.
  it.each([
    ["order drop", ["5", "4", "3", "2", "1"]],
    ["step start", ["4", "5", "3", "2", "1"]],
    ["step glue", ["3", "2", "5", "4", "1"]],
    ["step pause", ["3", "2", "1", "5", "4"]],
    ["measured", ["1", "5", "4", "3", "2"]],
  ])("lists first the orders that %s is of use for", (command, numbers) => {
    expect(valuesOf(bot.db, command, "order", "", { actor: actorWith(bot.db, ["rep", "technician"]) })).toEqual(numbers);
  });

  it("lists the other heads of the draft that is named", async () => {
    await bot.invoke(maren, "order new", { player: "Bram Oxtoby", club: "driver", like: "gamer", loft: "9.25", by: "14:30" });
    const heads = suggested(bot.db, "order heads", "argument", "", { values: { order: "6" } });
    expect(heads.length).toBeGreaterThan(0);
    const [first] = heads;
    expect(first?.label).toBe(`${first?.value} Cairn`);
    expect(cardText(cardOf(await bot.invoke(maren, "order heads", { order: "6", argument: first?.value ?? "" })))).toContain(
      `6 takes head ${first?.value}`,
    );
    expect(valuesOf(bot.db, "order heads", "argument", "", { values: { order: "4" } })).toEqual([]);
  });

  it("lists the people of the channel's bench before those of others", () => {
    const names = valuesOf(bot.db, "shift on", "person", "", { actor: actorWith(bot.db, ["lead"]) });
    expect(names.slice(0, 2).sort()).toEqual(["Callan Furrow", "Dessa Corrigane"]);
    expect(names).toContain("Jonty Marchbeck");
  });

  it.each([
    ["settings", "name", "chec lo", "checking-loft"],
    ["routes", "name", "resh", "reshaft sleeve"],
    ["order new", "shaft", "dun 60", "Dunlin 60 X"],
    ["order new", "kind", "reg", "regrip"],
  ])("completes /%s %s=%s", (command, option, typed, value) => {
    expect(valuesOf(bot.db, command, option, typed, { actor: actorWith(bot.db, ["lead"]) })).toContain(value);
  });

  it.each([
    ["free text", "order new", "note"],
    ["a file", "stock", "file"],
    ["an option that is not there", "stock", "nothing"],
  ])("has nothing for %s", (_, command, option) => {
    expect(suggested(bot.db, command, option, "")).toEqual([]);
  });

  it("fits the platform: at most 25 of at most 100 characters, each value once", () => {
    for (const command of commands) {
      for (const option of command.options) {
        const shown = suggested(bot.db, command.name, option.name, "", { actor: actorWith(bot.db, ["lead", "technician"]) });
        expect(shown.length).toBeLessThanOrEqual(25);
        expect(new Set(shown.map(({ value }) => value)).size).toBe(shown.length);
        expect(shown.filter(({ label, value }) => label === "" || value === "" || label.length > 100 || value.length > 100)).toEqual([]);
      }
    }
  });
});

describe("suggest: what is suggested is taken", () => {
  it("by /spec", async () => {
    const [who = ""] = valuesOf(bot.db, "spec", "player", "oxt");
    const [club = ""] = valuesOf(bot.db, "spec", "club", "", { values: { player: who } });
    expect(cardOf(await bot.invoke(maren, "spec", { player: who, club })).kind).toBe("spec");
  });

  it("by /where", async () => {
    const [what = ""] = valuesOf(bot.db, "where", "what", "ferr");
    expect(cardText(cardOf(await bot.invoke(maren, "where", { what })))).toContain("4 FERREVAL");
  });

  it("by /order new", async () => {
    const pick = (option: string, typed: string): string => valuesOf(bot.db, "order new", option, typed)[0] ?? "";
    await bot.invoke(maren, "order new", {
      kind: "build",
      player: pick("player", "oxt"),
      club: pick("club", "dri"),
      like: "gamer",
      head: pick("head", "cai"),
      shaft: pick("shaft", "dun"),
      grip: pick("grip", "gor"),
      by: "14:30",
    });
    expect(suggested(bot.db, "where", "what", "6")).toEqual([{ label: "6 Bram Oxtoby driver · draft", value: "6" }]);
  });

  it("by /shift off", async () => {
    const [person = ""] = valuesOf(bot.db, "shift off", "person", "cal", { actor: actorWith(bot.db, ["lead"]) });
    expect(cardText(cardOf(await bot.invoke(petra, "shift off", { person })))).toContain("Callan");
  });

  it("by /settings", async () => {
    const [name = ""] = valuesOf(bot.db, "settings", "name", "waits gl", { actor: actorWith(bot.db, ["lead"]) });
    expect(cardText(cardOf(await bot.invoke(petra, "settings", { name, value: "30" })))).toContain("waits-glue");
  });
});
