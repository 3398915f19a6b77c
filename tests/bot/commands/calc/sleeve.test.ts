import { afterEach, beforeEach, describe, expect, it } from "vitest";
import flat from "../../../../fixtures/published/sleeveFromFlatStandard.json" with { type: "json" };
import published from "../../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import hands from "../../../../fixtures/published/sleeveHands.json" with { type: "json" };
import ratings from "../../../../fixtures/published/sleeveRatings.json" with { type: "json" };
import twoPieces from "../../../../fixtures/published/twoPieceSleeves.json" with { type: "json" };
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

const near = (value: unknown, wanted: number, within: number) => expect(Math.abs(Number(value) - wanted)).toBeLessThanOrEqual(within);

type Mark = Readonly<Record<string, number | string | boolean | null>> & { readonly fromStandard: Readonly<Record<string, number>> };
const marksOf = async (text: string) => (await askCalc(bot, "sleeve", text)).data.marks as unknown as readonly Mark[];
const byClock = (marks: readonly Mark[], clockDeg: number, ringClockDeg: number | null = null) =>
  marks.find((mark) => mark.clockDeg === (clockDeg + 360) % 360 && mark.ringClockDeg === ringClockDeg);

describe(`calc sleeve: ${published.source}`, () => {
  it.each(published.rows)("reads tilt $tiltDeg at $clockDeg", async ({ tiltDeg, clockDeg, ...wanted }) => {
    const mark = byClock(await marksOf(`loft 9, lie 58, face 0, tilt ${tiltDeg}, hand right`), clockDeg);
    for (const [reading, deg] of Object.entries(wanted)) near(mark?.[reading], deg, published.tolerance);
    expect(mark?.soledLoftDeg).toBe(9);
  });
});

describe(`calc sleeve: ${flat.source}`, () => {
  it.each(flat.rows)("says what the mark at $clockDeg gains over a flat standard", async ({ clockDeg, ...wanted }) => {
    const mark = byClock(await marksOf(`loft 9 lie 58 face square tilt ${flat.tiltDeg}`), clockDeg);
    for (const [reading, deg] of Object.entries(wanted)) near(mark?.fromStandard[reading], deg, flat.tolerance);
  });
});

describe(`calc sleeve: ${twoPieces.source}`, () => {
  it.each(twoPieces.rows)("adds a ring at $clocksDeg.0 and a sleeve at $clocksDeg.1", async ({ clocksDeg: [ring = 0, inner = 0], ...wanted }) => {
    const marks = await marksOf(`loft 9 lie 58 face 0 tilt ${twoPieces.tiltDeg} ring ${twoPieces.tiltDeg}`);
    expect(marks).toHaveLength(64);
    for (const [reading, deg] of Object.entries(wanted)) near(byClock(marks, inner, ring)?.[reading], deg, twoPieces.tolerance);
  });
});

describe(`calc sleeve: ${ratings.source}`, () => {
  it.each(ratings.rows)("finds the tilt of a sleeve rated $ratingDeg", async ({ ratingDeg, tiltDeg, opensFaceDeg }) => {
    const { data } = await askCalc(bot, "sleeve", `loft 9 lie 58 rated ${ratingDeg}`);
    near(data.tiltDeg, tiltDeg, ratings.tolerance);
    near(byClock(data.marks as unknown as readonly Mark[], 180)?.soledFaceDeg, opensFaceDeg, ratings.tolerance);
  });
});

describe(`calc sleeve: ${hands.source}`, () => {
  it.each(hands.rows)("mirrors the mark at $clockDeg in the $hand hand", async ({ hand, clockDeg, tiltDeg, designLieDeg, seatedLieDeg }) => {
    const mark = byClock(await marksOf(`loft 9 lie ${designLieDeg} tilt ${tiltDeg} hand ${hand}`), clockDeg);
    near(mark?.seatedLieDeg, seatedLieDeg, hands.tolerance);
    expect(mark?.mark).toBe(hand === "right" ? "upright" : "flat");
  });

  it.each(hands.turns.filter(({ fromClockDeg }) => fromClockDeg === 270))("turns a logo to $toClockDeg, $hand hand", async (turn) => {
    const standard = turn.hand === "right" ? "flat" : "upright";
    const mark = byClock(await marksOf(`loft 9 tilt 1.5 logo ${turn.logo} standard ${standard} hand ${turn.hand}`), turn.toClockDeg);
    near(mark?.logoClockDeg, turn.logoClockDeg, hands.tolerance);
  });
});

describe("calc sleeve", () => {
  it("shows a line a mark in plain words, the attitudes named, no clock", async () => {
    const card = await askCalc(bot, "sleeve", "loft 9, lie 58, face 0, tilt 1.5, hand right");
    const text = card.lines.map(lineText);
    expect(text.slice(0, 3)).toEqual([
      "Read soled loft 9°; design lie 58°; soled face 0°; tilt 1.5°; hand right",
      "Assumed standard flat; logo down; rib down",
      "True: loft squared, lie seated. Face and lie soled",
    ]);
    expect(text).toContain("stronger: 7.2 true, 2.8 open, lie 58.0");
    expect(text).toContain("flat: 9.0 true, square, lie 56.5 (standard)");
    expect(cardText(card)).toContain("upright: 3.0 more upright than standard; logo up, rib up");
    expect(cardText(card)).not.toMatch(/clock/);
  });

  it("accepts one place on the clock", async () => {
    const card = await askCalc(bot, "sleeve", "loft 9 lie 58 tilt 1.5 clock 45");
    expect([card.title, (card.data.marks as readonly unknown[]).length]).toEqual(["Sleeve: weaker and upright", 1]);
    near(card.data.squaredLoftDeg, 10.2389, published.tolerance);
    expect((await askCalc(bot, "sleeve", "loft 9 lie 58 tilt 1.5 clock 50")).title).toBe("Sleeve: near weaker and upright");
  });

  it("prints the marks of a sleeve of the stock", async () => {
    const card = await askCalc(bot, "sleeve", "loft 9 lie 58 sleeve cairn driver");
    // fixtures/scenario/sleeve-marks.csv.
    expect((card.data.marks as unknown as readonly Mark[]).map(({ mark }) => mark)).toEqual([
      "standard",
      "strong ½",
      "strong 1",
      "strong far",
      "far",
      "weak far",
      "weak 1",
      "weak ½",
    ]);
    expect(cardText(card)).toContain("strong 1: 7.8 true, 1.9 open, lie 58.0");
  });

  it("takes head, sleeve, mark and graphics of a club of the record, and reads what the gauge read there", async () => {
    const card = await askCalc(bot, "sleeve", "oxtoby driver");
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag driver: 9.6, 0.7 open, lie 57, standard, logo down, rib.
    near(card.data.squaredLoftDeg, 9.6, 1e-9);
    near(card.data.soledFaceDeg, 0.7, 1e-9);
    near(card.data.seatedLieDeg, 57, 1e-9);
    expect(lineText(card.lines[0] ?? [])).toContain("hand right; logo down; rib down");
  });

  it("mirrors the record's left-hander: what is far is flat", async () => {
    const right = byClock(await marksOf("oxtoby driver"), 90);
    const left = byClock(await marksOf("halloway driver"), 90);
    expect([Math.sign(right?.fromStandard.seatedLieDeg ?? 0), Math.sign(left?.fromStandard.seatedLieDeg ?? 0)]).toEqual([1, -1]);
  });

  it.each([
    ["loft 9 lie 58 tilt 1.5 want 7.2 true", "stronger", "within tolerance"],
    ["loft 9 lie 58 tilt 1.5 want face 2 open, lie 59", "stronger and upright", "within tolerance"],
    ["loft 9 lie 58 tilt 1.5 want 2.8 closed", "weaker", "within tolerance"],
    ["loft 9 lie 58 tilt 1.5 want 3 upright", "upright", "within tolerance"],
    ["loft 9 lie 58 tilt 1.5 want 13 true", "weaker", "2.2 stronger than wanted"],
    ["loft 9 lie 58 tilt 1.5 want 1 1/4 stronger", "stronger and flat", "within tolerance"],
  ])("finds the mark for a wish: %s", async (text, mark, words) => {
    const card = await askCalc(bot, "sleeve", text);
    // The marks of fixtures/published/sleeveGeometry.json.
    expect(card.title).toBe(`Sleeve: nearest is ${mark}`);
    expect(cardText(card)).toContain(`That is ${words}`);
    expect(card.lines.map(lineText).filter((line) => line.startsWith("Then "))).toHaveLength(2);
  });

  it("says where logo and rib end and that a turned sleeve is refused by many; nothing where it stands", async () => {
    expect(cardText(await askCalc(bot, "sleeve", "oxtoby driver want lie 59"))).toContain(
      "Turned there from standard: logo up, rib up. Many players",
    );
    expect(cardText(await askCalc(bot, "sleeve", "oxtoby driver want 9.6 true"))).toContain("It stands there: nothing to turn");
  });

  it("keeps the lie when only a change of loft is wished, and says so", async () => {
    const card = await askCalc(bot, "sleeve", "oxtoby driver want half stronger");
    expect(card.title).toBe("Bram Oxtoby driver: nearest is strong ½");
    expect(cardText(card)).toContain("Assumed lie as it stands");
    expect(cardText(card)).toContain("Want squared loft 0.5° stronger");
  });

  it.each([
    ["loft 95 tilt 9 lie 30", ["95°", "9°", "30°"]],
    ["sleeve carin driver loft 9 want lie 20", ["carin driver", "lie 20"]],
    ["loft 9 tilt 1.5 rated 2", ["rated"]],
    ["loft 9 tilt 1 ring 1 clock 45", ["clock"]],
    ["loft 9 tilt 3 ring 2.5", ["2.5 and 3"]],
    ["lie 58", ["", ""]],
    ["oxtoby 7i", [""]],
    ["loft 9 tilt 1.5 want", [""]],
  ])("says every fault at once: %s", async (text, words) => {
    const { data } = await askCalc(bot, "sleeve", text);
    expect((data.faults as readonly { readonly word: string }[]).map(({ word }) => word)).toEqual(words);
  });
});
