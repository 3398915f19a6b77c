import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { calcViews } from "../../../../bot/flows/calc/calcViews.ts";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { maren } from "../../../support/people.ts";
import { cardOf, cardText, lineText, newest, recorded, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const views = Object.values(calcViews);
const examples = views.flatMap((view) => view.examples.map((text) => [view.name, text] as const));

describe("calc", () => {
  it("lists every view, a short line each, when it stands alone", async () => {
    const { lines, data } = cardOf(await bot.invoke(maren, "calc", {}));
    const order = ["swing", "headmass", "trim", "sleeve", "bend", "aim", "weights", "grip", "gaps", "match", "rules"];
    expect(data.views).toEqual(order);
    expect(lines.slice(0, order.length).map((one) => lineText(one).split(" ")[0])).toEqual(order);
    for (const one of lines) expect(lineText(one).length).toBeLessThan(60);
  });

  it("lists the views for one it does not have, with the nearest", async () => {
    const card = await askCalc(bot, "swnig", "head 200 at 44.5");
    expect([card.tone, card.title]).toEqual(["attention", "/calc has no swnig. Meant swing?"]);
  });

  it("takes the beginning of a view's name for the view it is near to", async () => {
    expect((await askCalc(bot, "head", "mass oxtoby driver d4")).title).toBe("/calc has no head. Meant headmass?");
  });

  it.each(views.map(({ name }) => [name]))("says what %s takes when it stands alone", async (name) => {
    expect(cardText(await askCalc(bot, name, " "))).toContain(`/calc ${name} `);
  });

  it.each(examples)("answers the example of %s: %s", async (view, text) => {
    const card = await askCalc(bot, view, text);
    expect([card.kind, lineText(card.lines[0] ?? []).slice(0, 4)]).toEqual([`calc.${view}`, "Read"]);
  });

  it("takes the name of a view in any case", async () => {
    expect((await askCalc(bot, "SWING", "2 more points")).kind).toBe("calc.swing");
  });

  it("refuses more than 2,000 characters and says so", async () => {
    expect(cardText(await askCalc(bot, "swing", "a".repeat(2001)))).toContain("2,000 characters");
  });

  it("is for a member without any role too, but not with a club of the record", async () => {
    const member = { ...maren, roles: [] };
    expect((await askCalc(bot, "swing", "head 200 at 44.5", member)).kind).toBe("calc.swing");
    expect(cardText(await askCalc(bot, "swing", "oxtoby driver", member))).toContain("viewer, rep, technician or lead");
    expect(cardText(await askCalc(bot, "swing", "order 1", member))).toContain("rep, technician or lead");
  });

  it("records nothing but the question's answer", async () => {
    const before = recorded(bot).length;
    await askCalc(bot, "swing", "oxtoby driver");
    expect(recorded(bot)).toHaveLength(before);
  });

  it("answers a plain question about points in the channel", async () => {
    await bot.say(maren, "two more points, how much weight?");
    await bot.settle();
    expect(newest(bot, "plover-orders", ({ kind }) => kind === "calc.swing").card.data.wishedPoints).toBe(2);
  });

  it.each([
    ["how much lead for 2 points on tolls 7i?", 2],
    ["2 points on tolls 7i, how many grams?", 2],
    ["what weight for 1 point on toll's 7 iron?", 1],
    // Marrick Toll's 7-iron left the gauge at D2.25 (fixtures/scenario/spec-clubs.csv).
    ["how much lead to get tolls 7i to d4?", 1.75],
  ])("answers %s in the channel with the club's own numbers", async (text, points) => {
    await bot.say(maren, text);
    await bot.settle();
    const { card } = newest(bot, "plover-orders", ({ kind }) => kind === "calc.swing");
    expect(card.title).toContain("Marrick Toll 7i");
    expect(card.data.wishedPoints).toBe(points);
  });

  it("asks for the club by a wording that fits every view", async () => {
    expect(cardText(await askCalc(bot, "bend", "oxtoby 3h, 1 stronger"))).toContain("/calc VIEW alone says what it takes");
  });

  it.each([
    ["a control character", "\u0000"],
    ["a thousand digits", "1".repeat(1000)],
    ["a thousand commas", ",".repeat(1000)],
    ["names only", "head ".repeat(400)],
    ["a record's own words", "__proto__ constructor 3 at 4"],
    ["a place without a mass", "head at, shaft at at 3"],
  ])("answers %s without harm", async (_what, text) => {
    for (const { name } of views) expect((await askCalc(bot, name, text)).kind).toMatch(/^calc\./);
  });
});
