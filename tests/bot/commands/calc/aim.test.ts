import { afterEach, beforeEach, describe, expect, it } from "vitest";
import published from "../../../../fixtures/published/lieError.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { cardText, lineText, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const MM_PER_YARD = 914.4;
const MM_PER_FOOT = 304.8;
const { tolerance } = published;
const near = (value: unknown, wanted: number, within: number) => expect(Math.abs(Number(value) - wanted)).toBeLessThanOrEqual(within);

describe(`calc aim: ${published.source}`, () => {
  it.each(published.rows)("finds where $loftDeg° looks, $lieErrorDeg° upright", async ({ loftDeg, lieErrorDeg, aimLeftDeg }) => {
    const { data } = await askCalc(bot, "aim", `loft ${loftDeg}, lie ${lieErrorDeg} upright`);
    near(data.aimLeftDeg, aimLeftDeg, tolerance.deg);
  });

  it.each(published.playedLoft)("finds the loft played of $loftDeg°", async ({ loftDeg, lieErrorDeg, playedLoftDeg }) => {
    const { data } = await askCalc(bot, "aim", `loft ${loftDeg}, lie ${lieErrorDeg} upright`);
    near(data.playedLoftDeg, playedLoftDeg, tolerance.deg);
    near(data.loftLostDeg, loftDeg - playedLoftDeg, tolerance.deg);
  });

  it("agrees with the published wedge", async () => {
    const { loftDeg, lieErrorDeg, distanceYd, aimLeftDeg, sidewaysFt } = published.published;
    const card = await askCalc(bot, "aim", `loft ${loftDeg}, lie ${lieErrorDeg} upright, ${distanceYd} yd`);
    near(card.data.aimLeftDeg, aimLeftDeg, tolerance.publishedDeg);
    near(Number(card.data.sidewaysLeftMm) / MM_PER_FOOT, sidewaysFt, tolerance.publishedFt);
    expect(card.title).toBe("Face 4.1° left");
    expect(cardText(card)).toContain("At 120 yd: 8.7 yd (26 ft) left");
  });

  it.each(published.yardsPerDegree)("says what a degree of lie is at $distanceYd yd", async ({ loftDeg, distanceYd, sidewaysYd }) => {
    const { data } = await askCalc(bot, "aim", `loft ${loftDeg} lie 2 flat ${distanceYd} yd`);
    near(Number(data.sidewaysPerDegreeMm) / MM_PER_YARD, sidewaysYd, tolerance.yardsPerDegree);
  });
});

describe("calc aim", () => {
  it("says the inputs first with words for signs, what it assumed, and that no ball flies so last", async () => {
    const card = await askCalc(bot, "aim", "loft=46°; 1/2 flat");
    expect(card.lines.slice(0, 2).map(lineText)).toEqual(["Read squared loft 46°; lie error 1/2° flat", "Assumed distance 100 yd; hand right"]);
    expect(lineText(card.fields.at(-1)?.value ?? [])).toContain("not where the ball flies");
  });

  it.each([
    ["loft 46 lie 4 upright", "left"],
    ["loft 46 lie 4 flat", "right"],
    ["loft 46 lie 4 upright, left hand", "right"],
    ["loft 46 lie 4 flat lefty", "left"],
  ])("looks to the side the hand says: %s", async (text, side) => {
    const { title, data } = await askCalc(bot, "aim", text);
    expect([title, Math.sign(Number(data.aimLeftDeg))]).toEqual([`Face 4.1° ${side}`, side === "left" ? 1 : -1]);
  });

  it("says the side it assumed when none is written, and metres when metres are", async () => {
    const text = cardText(await askCalc(bot, "aim", "loft 46 lie 4 110m"));
    expect(text).toContain("Assumed it lies upright; hand right");
    // 110 m · tan 4.1316° (fixtures/published/lieError.json) by hand.
    expect(text).toContain("At 110 m: 7.9 m left");
  });

  it("looks at the target when the lie fits", async () => {
    const card = await askCalc(bot, "aim", "loft 46 lie 0");
    expect([card.title, Number(card.data.aimLeftDeg)]).toEqual(["Face at the target", 0]);
  });

  it("takes loft and hand of a club of the record", async () => {
    // fixtures/scenario/spec-clubs.csv: the 7-irons of oxtoby (right) and halloway (left).
    const right = await askCalc(bot, "aim", "oxtoby 7i, lie 2 upright, 160 yd");
    const left = await askCalc(bot, "aim", "halloway 7i, lie 2 upright, 160 yd");
    expect([right.data.squaredLoftDeg, right.data.hand, left.data.hand]).toEqual([35, "right", "left"]);
    expect(Number(right.data.aimLeftDeg)).toBeGreaterThan(0);
    expect(Number(left.data.aimLeftDeg)).toBeLessThan(0);
  });

  it.each([
    ["loft 95, lie 40 upright, 9000 yd", ["95°", "+40°", "9000 yd"]],
    ["loft 46, lie 4 upright, hand lefd", ["lefd"]],
    ["120 yd", ["", ""]],
  ])("says every fault at once: %s", async (text, words) => {
    const { data } = await askCalc(bot, "aim", text);
    expect((data.faults as readonly { readonly word: string }[]).map(({ word }) => word)).toEqual(words);
  });
});
