import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { player } from "../../../../db/schema/people.ts";
import published from "../../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { akiko, maren, petra } from "../../../support/people.ts";
import { cardText, lineText, venueTime } from "../../../support/readCard.ts";
import { askCalc, typedParts } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const MM_PER_INCH = 25.4;
const { tolerance } = published;
const DRIVER = typedParts(published.rows[0]?.parts ?? []);

describe(`calc swing: ${published.source}`, () => {
  it.each(published.rows)("adds up the $club", async (row) => {
    const { data } = await askCalc(bot, "swing", `${typedParts(row.parts)}, cut ${row.shaftLengthIn}`);
    const near = (value: unknown, wanted: number, within: number) => expect(Math.abs(Number(value) - wanted)).toBeLessThanOrEqual(within);
    near(data.totalMassG, row.totalMassG, 1e-9);
    near(Number(data.balancePointMm) / MM_PER_INCH, row.balancePointIn, tolerance.balancePointIn);
    near(data.swingWeightPoints, row.swingWeightPoints, tolerance.points);
    near(data.swingWeightInOz, row.swingWeightInOz, tolerance.inOz);
    near(data.oldScaleInOz, row.oldScaleInOz, tolerance.inOz);
    near(data.pointInertiaKgCm2, row.inertiaKgCm2, tolerance.inertiaKgCm2);
    near(data.inertiaKgCm2, row.withOwnInertiaKgCm2, tolerance.withOwnInertiaKgCm2);
  });
});

describe("calc swing", () => {
  it("says the inputs as understood first, what it assumed, and what it leaves out last", async () => {
    const card = await askCalc(bot, "swing", 'head=7.05oz @ 1130mm; shaft: 60g at 21" grip 50 at 4,25');
    expect(card.lines.slice(0, 2).map(lineText)).toEqual([
      "Read head 7.05 oz at 1130 mm; shaft 60 g at 21 in; grip 50 g at 4.25 in",
      "Assumed head inertia of its own a driver's; bare cut 43.59 in; cap 1/8 in",
    ]);
    expect(card.fields.at(-1)?.label).toBe("Left out");
    // By definition: an ounce is 28.349523125 g.
    expect(card.data.parts).toMatchObject([
      { name: "head", massG: 7.05 * 28.349523125, fromCapMm: 1130 },
      { fromCapMm: expect.closeTo(533.4, 9) },
      { fromCapMm: expect.closeTo(107.95, 9) },
    ]);
  });

  it("shows swing weight to a quarter point, lengths to 1/16 in and 1 mm, inertia to 1", async () => {
    const text = cardText(await askCalc(bot, "swing", DRIVER));
    expect(text).toContain("Swing weight D4\n");
    expect(text).toContain("Total 321.5 g, balance 33 7/16 in (849 mm) from the cap");
    expect(text).toContain("Inertia about the butt 2904 kg·cm²; 2832 kg·cm² with the parts as points");
  });

  it("says what small changes do to this club", async () => {
    const { data } = await askCalc(bot, "swing", DRIVER);
    // fixtures/published/swingWeightSensitivity.json: 1.627 g a point at the driver's head; half an inch is 2.517 points.
    expect(data.headGramsPerPointG).toBeCloseTo(1.627, 3);
    expect(data.sensitivities).toMatchObject({ halfInchLonger: { swingWeightPoints: expect.closeTo(2.517, 3) } });
  });

  it("adds up a club of the record and shows what the gauge said beside it", async () => {
    const card = await askCalc(bot, "swing", "oxtoby driver");
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag driver: D3, 320.2 g, head 197.3 g.
    expect(cardText(card)).toContain("On the gauge D3, total 320.2 g");
    expect(card.data.parts).toContainEqual(expect.objectContaining({ name: "head", massG: 197.3 }));
    // A bench agrees to 0.3 points and a total to 2 g.
    expect(Math.abs(Number(card.data.swingWeightPoints) - 3)).toBeLessThan(0.5);
    expect(Math.abs(Number(card.data.totalMassG) - 320.2)).toBeLessThan(2);
  });

  it.each([
    ["its backup", "oxtoby driver backup", "head 196.4 g"],
    ["its backup said before the club", "oxtoby backup driver", "head 196.4 g"],
    ["an order's club", "order 1", "order 1 7i"],
  ])("finds %s", async (_what, text, shown) => {
    expect(cardText(await askCalc(bot, "swing", text))).toContain(shown);
  });

  it("says in the reader's own unit where the parts lie", async () => {
    const text = cardText(await askCalc(bot, "swing", "oxtoby driver", akiko));
    expect(text).toContain("head 197.3 g at 1137 mm");
  });

  it.each([
    ["two more points on oxtoby driver, how much weight?", 2],
    ["oxtoby driver +2 points", 2],
    ["oxtoby driver 1.5 points less", -1.5],
  ])("answers %s with the mass at head, tip and butt", async (text, points) => {
    const { data } = await askCalc(bot, "swing", text);
    expect(data.wishedPoints).toBe(points);
    expect(Math.sign(Number(data.wishedHeadG))).toBe(Math.sign(points));
    expect(Math.sign(Number(data.wishedTipG))).toBe(Math.sign(points));
    expect(Math.sign(Number(data.wishedButtG))).toBe(-Math.sign(points));
  });

  it("answers points without a club for the usual driver and 7-iron, and says so", async () => {
    const card = await askCalc(bot, "swing", "+2 points");
    expect(lineText(card.lines[1] ?? [])).toBe("Assumed a usual driver 45 in; a usual 7-iron 37 in");
    // fixtures/published/swingWeightSensitivity.json: 1.627 and 2.171 g a point; 10 g in the butt are 2.7211 points.
    expect(card.data.clubs).toMatchObject([
      { wishedHeadG: expect.closeTo(2 * 1.627, 2), wishedButtG: expect.closeTo(-20 / 2.7211, 3) },
      { wishedHeadG: expect.closeTo(2 * 2.171, 2) },
    ]);
  });

  it("names what is not on record of an outside club", async () => {
    const card = await askCalc(bot, "swing", "ambrelle lw");
    // fixtures/scenario/spec-clubs.csv, ambrelle 1 bag lw: an outside club of 889 mm, D4.5, 472 g.
    expect(cardText(card)).toContain("Not on record: head model, head mass, shaft model, grip model");
    expect(card.data).toMatchObject({ swingWeightPoints: 4.5, totalMassG: 472, lengthMm: 889 });
  });

  it("keeps a restricted player's club to the lead, and his name off the card", async () => {
    bot.db.update(player).set({ restrictedCode: "lighthouse" }).where(eq(player.name, "Bram Oxtoby")).run();
    for (const who of [akiko, maren]) {
      const text = cardText(await askCalc(bot, "swing", "oxtoby driver", who));
      expect(text).not.toMatch(/gauge|Bram|197/);
    }
    expect(cardText(await askCalc(bot, "swing", "oxtoby driver", petra))).toContain("lighthouse driver");
  });

  it("says every fault at once with its word, and keeps what was read", async () => {
    const card = await askCalc(bot, "swing", "haed 200 at 44.5, shaft 6000 at 21, grip 50 kg at 4.25, hot melt 4 at 44, xyz");
    expect(card.data.faults).toEqual([
      { word: "haed 200 at 44.5", guess: "head" },
      { word: "6000 g", guess: "60" },
      { word: "50 kg", guess: null },
      { word: "xyz", guess: null },
    ]);
    expect(lineText(card.lines[0] ?? [])).toBe("Read hot melt 4 g at 44 in");
  });

  it("asks between two players of a name and for a club", async () => {
    expect(cardText(await askCalc(bot, "swing", "ashgrave driver"))).toContain("Corwen Ashgrave, Linnea Ashgrave");
    expect(cardText(await askCalc(bot, "swing", "oxtoby wedge"))).toContain("club: gw, sw, lw");
    expect(cardText(await askCalc(bot, "swing", "oxtobey driver"))).toContain("Meant Bram Oxtoby?");
  });
});
