import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Actor } from "../../../bot/chat/types.ts";
import { commands } from "../../../bot/registry.ts";
import { player } from "../../../db/schema/people.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { venueTime } from "../../support/readCard.ts";
import { actorWith, suggested, valuesOf } from "./someSuggestions.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** fixtures/scenario/players.csv has no restricted player: one is made. */
function restrict(name: string, code: string): void {
  write(bot.db, (tx) => void tx.update(player).set({ restrictedCode: code }).where(eq(player.name, name)).run());
}

describe("suggest: who may know", () => {
  it("has nothing for a person without the command's roles", () => {
    expect(suggested(bot.db, "where", "player", "", { actor: actorWith(bot.db, ["viewer"]) })).toEqual([]);
    expect(suggested(bot.db, "spec", "player", "", { actor: actorWith(bot.db, []) })).toEqual([]);
    expect(suggested(bot.db, "shift skills", "person", "", { actor: actorWith(bot.db, ["technician"]) })).toEqual([]);
    expect(suggested(bot.db, "spec", "player", "oxt", { actor: actorWith(bot.db, ["viewer"]) })).toHaveLength(1);
  });

  // fixtures/scenario/head-models.csv: Menhir is unreleased, its code word is lamplight.
  it("tells a restricted head's name to the lead alone, and does not find it by it for others", () => {
    expect(suggested(bot.db, "order new", "head", "lamp")).toEqual([{ label: "lamplight", value: "lamplight" }]);
    expect(suggested(bot.db, "order new", "head", "menh")).toEqual([]);
    expect(valuesOf(bot.db, "order new", "head", "menh", { actor: actorWith(bot.db, ["lead"]) })).toEqual(["Menhir"]);
    expect(valuesOf(bot.db, "order new", "head", "lamp", { actor: actorWith(bot.db, ["lead"]) })).toEqual(["Menhir"]);
  });

  it("tells a restricted player's name to the lead alone, whatever is typed", () => {
    restrict("Tomas Ferreval", "harbour");
    const texts = (actor: Actor): string =>
      JSON.stringify(
        commands.flatMap(({ name, options }) =>
          options.flatMap((option) => ["", "ferreval", "tomas", "4"].flatMap((typed) => suggested(bot.db, name, option.name, typed, { actor }))),
        ),
      );
    expect(texts(actorWith(bot.db, ["rep", "technician"]))).not.toMatch(/ferreval|tomas/i);
    expect(texts(actorWith(bot.db, ["lead"]))).toContain("Tomas Ferreval");
    expect(suggested(bot.db, "where", "what", "harb")).toEqual([{ label: "4 harbour swap driver · confirmed", value: "4" }]);
  });

  it("does not show a restricted player's bag", () => {
    restrict("Bram Oxtoby", "harbour");
    const named = { values: { player: "Bram Oxtoby" } };
    expect(valuesOf(bot.db, "spec", "club", "", named)).toEqual(valuesOf(bot.db, "spec", "club", ""));
  });
});
