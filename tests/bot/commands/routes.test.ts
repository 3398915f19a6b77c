import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Values } from "../../../bot/chat/types.ts";
import { shopRoutes } from "../../../bot/operations/shopRoutes.ts";
import { defaultRoutes } from "../../../core/bench/routes.ts";
import { id } from "../../../core/kinds.ts";
import { setJson } from "../../../db/repositories/settings.ts";
import { write } from "../../../db/write.ts";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { openEmptyBench, plannedSteps } from "../../support/emptyBench.ts";
import type { MemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, orderPost, recorded } from "../../support/readCard.ts";

const MINUTE_MS = 60_000;

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openEmptyBench();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const routes = async (who: typeof maren, values: Values = {}) => cardText(cardOf(await bot.invoke(who, "routes", values)));
const minutesOf = (name: "turn" | "build sleeve", kind: string) => shopRoutes(bot.db)[name].find((row) => row.kind === kind)?.min;

describe("/routes", () => {
  it("lists every kind of work with its minutes, and one of them row by row (common practice, no source)", async () => {
    const all = await routes(dessa);
    for (const row of ["build sleeve: 15.5", "turn: 2.5", "stamp: 11"]) expect(all).toContain(row);
    expect(await routes(dessa, { name: "Build Sleeve" })).toContain("bondSet 6 min wait, no less than the sheet says; after bond");
  });

  it("has a step's minutes changed by the lead: later orders count them, the record has them", async () => {
    await bringTo(bot, "draft");
    const before = Number(orderPost(bot, DRIVER_NUMBER).card.data.likelyAt);
    await bot.invoke(maren, "order drop", { order: String(DRIVER_NUMBER) });
    expect(await routes(petra, { name: "build sleeve", step: "cut", minutes: "11,5" })).toContain("cut 11.5 min");
    expect(await routes(dessa)).toContain("build sleeve: 25.5, your own");
    await bot.say(maren, "build oxtoby driver like gamer\nloft 9.25, face 0.5 open, length 45 1/4\nswing d3, by 14:30");
    await bot.settle();
    const after = Number(orderPost(bot, DRIVER_NUMBER + 1).card.data.likelyAt);
    expect(Math.abs(after - before - 10 * MINUTE_MS)).toBeLessThanOrEqual(3 * MINUTE_MS);
    await routes(petra, { name: "build sleeve", step: "default" });
    expect(minutesOf("build sleeve", "cut")).toBe(1.5);
    expect(await routes(dessa)).not.toContain("your own");
    expect(recorded(bot).filter(({ action }) => action === "route.change")).toHaveLength(2);
  });

  it("plans no wait shorter than its sheet, whatever its minutes", async () => {
    await routes(petra, { name: "build sleeve", step: "bondSet", minutes: "0" });
    await bringTo(bot, "confirmed");
    const [set] = plannedSteps(bot, "bondSet");
    expect((set?.endAt ?? 0) - (set?.startAt ?? 0)).toBe(6 * MINUTE_MS);
  });

  it("takes a whole route as a table", async () => {
    const text = [
      "kind,min,after,wait,at_least,set_up_share",
      "turnSleeve,3,,,,0.5",
      "measure,1,turnSleeve,,,",
      "sign,0.5,measure,,,",
      "walk,0,sign,walkMin,1,",
    ].join("\n");
    const answer = await routes(petra, { name: "turn", text });
    expect(answer).toContain("turnSleeve 3 min, 50 % of it setting up");
    expect(answer).toContain("walk 0 min wait, no less than the walk says, at least 1; after sign");
    expect(minutesOf("turn", "turnSleeve")).toBe(3);
  });

  it.each<[string, Values, string]>([
    ["an unknown route", { name: "polish" }, "No route polish"],
    ["an unknown step", { name: "turn", step: "cut", minutes: "2" }, "That route has no step cut"],
    ["no minutes", { name: "turn", step: "turnSleeve" }, "No minutes"],
    ["minutes below 0", { name: "turn", step: "turnSleeve", minutes: "-1" }, "-1: minutes from 0 to 600"],
    ["words for minutes", { name: "turn", step: "turnSleeve", minutes: "some" }, "some: minutes from 0 to 600"],
    ["a table without a head", { name: "turn", text: "turnSleeve,3" }, "The table cannot be taken"],
    ["a table with an unknown step", { name: "turn", text: "kind,min,after,wait\npolish,1,," }, "row 1, kind: one of"],
    [
      "a route without its final check",
      { name: "turn", text: "kind,min,after,wait\nturnSleeve,1,,\nsign,1,turnSleeve,\nwalk,0,sign,walkMin" },
      "measure",
    ],
    [
      "a glue that nobody waits for",
      { name: "turn", text: "kind,min,after,wait\nbond,1,,\nmeasure,1,bond,\nsign,1,measure,\nwalk,0,sign,walkMin" },
      "bondSet",
    ],
  ])("refuses %s, and changes nothing", async (_, values, words) => {
    const card = cardOf(await bot.invoke(petra, "routes", values));
    expect(card.tone).toBe("refusal");
    expect(cardText(card)).toContain(words);
    expect(shopRoutes(bot.db)).toEqual(defaultRoutes);
  });

  it("is changed by the lead alone", async () => {
    expect(await routes(dessa, { name: "turn", step: "turnSleeve", minutes: "2" })).toContain("The lead changes routes");
    expect(minutesOf("turn", "turnSleeve")).toBe(1);
  });
});

describe("shopRoutes", () => {
  it.each(["[]", "7", '{"kind":"turn"}', '[{"kind":"turnSleeve","min":"two","after":[]}]', "null"])(
    "takes the usual route for stored %s",
    (stored) => {
      write(bot.db, (tx) => setJson(tx, "route.turn", stored, { personId: id<"person">(1), at: bot.now() }));
      expect(shopRoutes(bot.db)).toEqual(defaultRoutes);
    },
  );
});
