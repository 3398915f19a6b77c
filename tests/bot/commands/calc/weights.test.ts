import { afterEach, beforeEach, describe, expect, it } from "vitest";
import centre from "../../../../fixtures/published/centreOfMassShift.json" with { type: "json" };
import published from "../../../../fixtures/published/leadTape.json" with { type: "json" };
import sensitivity from "../../../../fixtures/published/swingWeightSensitivity.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { akiko, maren, petra } from "../../../support/people.ts";
import { cardText, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const ask = (text: string, who: typeof maren = maren) => askCalc(bot, "weights", text, who);
/** By definition: 1.75 in-oz a point, 14 in to the fulcrum. */
const GRAM_INCHES_PER_POINT = 1.75 * 28.349523125;
const pointsAt = (massG: number, placeIn: number): number => (massG * (placeIn - 14)) / GRAM_INCHES_PER_POINT;

describe(`calc weights: ${published.source}`, () => {
  it.each(published.rows)("weighs $lengthIn in of $widthIn in lead", async ({ widthIn, thicknessMm, lengthIn, massG }) => {
    const { data } = await ask(`lead ${lengthIn} in, width ${widthIn} in, thickness ${thicknessMm}`);
    expect(Math.abs(Number(data.leadG) - massG)).toBeLessThanOrEqual(published.tolerance.massG);
  });

  it.each(published.published)("cuts 2 g near the $lengthIn in of the trade", async ({ lengthIn, massG }) => {
    const { data } = await ask(`lead ${massG}`);
    expect(Math.abs(Number(data.leadLengthMm) / 25.4 / lengthIn - 1)).toBeLessThanOrEqual(published.tolerance.publishedFraction);
  });
});

describe(`calc weights: ${sensitivity.source}`, () => {
  it("says what lead does on a head", async () => {
    // A gram at 44.5 in is 1 / 1.627 points.
    const { data } = await ask("lead 2 head 196 at 44.5");
    expect(data.clubs).toEqual([{ name: "This head", swingWeightPoints: expect.closeTo(2 / 1.627, 2) }]);
  });
});

describe(`calc weights: ${centre.source}`, () => {
  it.each(centre.adding)("moves the centre by adding $addedG g", async ({ addedG, distanceMm, headMassG, shiftMm }) => {
    const { data } = await ask(`head ${headMassG} at 44.5, back ${shiftMm}, rear port ${distanceMm}, screws ${addedG}, no lead`);
    expect(Number(data.centreBackMm)).toBeCloseTo(shiftMm, 4);
    expect(data).toMatchObject({ isReached: true, headMassG: headMassG + addedG });
  });

  it.each([
    ["forward 1.9048, front port 40", { centreBackMm: expect.closeTo(-1.9048, 4) }],
    ["toe 1.9048, toe port 40", { centreToeMm: expect.closeTo(1.9048, 4) }],
    ["heel 1.9048, heel port 40", { centreToeMm: expect.closeTo(-1.9048, 4) }],
  ])("moves it %s", async (text, moved) => {
    expect((await ask(`head 200 at 44.5, ${text}, screws 10, no lead`)).data).toMatchObject(moved);
  });
});

describe("calc weights", () => {
  it("chooses screws for a swing weight, says what is left and the order of the bench", async () => {
    const card = await ask("swing d3, head 196 at 44.5, now d0, screws 2 2 4 6 8, ports 2, no lead");
    // 3 points ± 0.5 at 44.5 in are 4.07 to 5.7 g: 4 g come to D2.46, so nothing does without lead but the nearest.
    expect(Number(card.data.swingWeightPoints)).toBeCloseTo(pointsAt(4, 44.5), 6);
    expect(card.data).toMatchObject({ isReached: false, leadG: 0, screws: [{ port: "port 1", name: "screw 4 g", massG: 4 }] });
    expect(cardText(card)).toContain("Port 1: screw 4 g");
    expect(cardText(card)).toContain("points too light");
    expect(card.data.misses).toEqual([
      { swingWeightPoints: card.data.swingWeightPoints, wantedSwingWeightPoints: 3, toleranceSwingWeightPoints: 0.5 },
    ]);
    expect(card.data.left).toContainEqual(expect.objectContaining({ name: "screw 4 g", leftCount: 0 }));
    expect(cardText(card)).toContain("Order: screws; melt only when wished; tip weight before bonding; lead last. Never length");
  });

  it("fills up with lead to the wish, and cuts it", async () => {
    const { data } = await ask("swing d3, head 196 at 44.5, now d0, screws 4, ports 1");
    expect(data.isReached).toBe(true);
    expect(Number(data.swingWeightPoints)).toBeCloseTo(pointsAt(4 + Number(data.leadG), 44.5), 6);
    // fixtures/published/leadTape.json: 0.5121 g an inch.
    expect(Number(data.leadLengthMm) / 25.4).toBeCloseTo(Number(data.leadG) / 0.5121, 3);
  });

  it("reaches a head mass exactly, in ports at their places", async () => {
    const { data } = await ask("head 196 at 44.5, head 200, rear port 55, front port 20, back 1, screws 2 2 4");
    expect(data).toMatchObject({ isReached: true, headMassG: 200, screws: [{ port: "rear port", massG: 4 }] });
    expect(Number(data.centreBackMm)).toBeCloseTo((4 * 55) / 200, 6);
  });

  it("takes a club of the record from its gauge and the truck's stock", async () => {
    const card = await ask("oxtoby driver swing d4");
    // fixtures/scenario: D3 on the gauge, head 197.3 g, 20 screws of 2 g in the truck.
    expect(card.data).toMatchObject({ isReached: true, swingWeightBeforePoints: 3, headMassBeforeG: 197.3, headMassG: expect.closeTo(199.3, 9) });
    expect(card.data.left).toContainEqual(expect.objectContaining({ name: "screw 2 g", leftCount: 19 }));
    expect(cardText(card)).toContain("screws of this truck");
  });

  it("takes out first what is in it", async () => {
    const { data } = await ask("oxtoby driver swing d3, screws in 4 4");
    expect(data).toMatchObject({ headMassBeforeG: expect.closeTo(189.3, 9), isReached: true });
    expect(Number(data.headMassG)).toBeCloseTo(197.3, 0);
  });

  it("finds a left-hander's club", async () => {
    expect((await ask("halloway driver d5")).title).toBe("Noor Halloway driver: weights for D5");
  });

  it("adds up a typed club", async () => {
    // fixtures/published/pointMassClubs.json, the driver without its sleeve, epoxy and tape, by the definition of the scale.
    const { data } = await ask("head 200 at 44.5, shaft 60 at 21, grip 50 at 4.25, d4, screws 2, no lead");
    const sumGramInches = 200 * 30.5 + 60 * 7 - 50 * 9.75;
    expect(Number(data.swingWeightBeforePoints)).toBeCloseTo((sumGramInches / 28.349523125 - 213.5) / 1.75, 6);
  });

  it("uses a tip weight and melt only when they are written, and says what they are", async () => {
    const card = await ask("oxtoby 7i d4, tip weights 2 4 6, no lead");
    expect(card.data).toMatchObject({ tipWeightG: 4, headMassG: 272.5 });
    expect(cardText(card)).toContain("before bonding");
    expect(cardText(await ask("head 196 at 44.5, now d0, d2, melt 4, no lead, screws 30, ports 0"))).toContain("it cannot be taken out again");
  });

  it("says when weight has to come off", async () => {
    const card = await ask("oxtoby driver swing d0");
    expect([card.tone, card.data.isReached]).toEqual(["attention", false]);
    expect(cardText(card)).toContain("3 points too heavy");
    expect(cardText(card)).toContain("Weight has to come off");
  });

  it.each(["lead 4 1/2 in", 'lead 4 1/2"', "lead tape 4.5 in"])("reads %s as a length", async (text) => {
    expect((await ask(text)).data.leadLengthMm).toBeCloseTo(4.5 * 25.4, 9);
  });

  it("goes by a weighed roll", async () => {
    const { data } = await ask("lead 2, roll 4.6 g, roll length 10 in");
    expect(Number(data.leadLengthMm) / 25.4).toBeCloseTo((2 / 4.6) * 10, 6);
  });

  it("keeps the truck's stock to its team", async () => {
    expect(cardText(await ask("oxtoby driver swing d4", akiko))).toContain("no truck's stock is open to you here");
    expect((await ask("oxtoby driver swing d4, screws 2 4", akiko)).kind).toBe("calc.weights");
    expect((await ask("oxtoby driver swing d4", petra)).data.isReached).toBe(true);
  });

  it.each([
    ["a wish and a club", "screws 2 4", ["a wish: swing d3", "the club: oxtoby driver"]],
    ["what the club reads now", "head 196 at 44.5, d3, screws 2", ["now (what it reads"]],
    ["where the ports lie", "oxtoby driver, back 1", ["where the ports lie"]],
    ["one way only", "oxtoby driver, back 1, forward 1, toe 1, heel 1, rear port 50", ["back or forward, not both", "toe or heel, not both"]],
    ["fewer kinds of screws", `oxtoby driver d4, screws ${Array.from({ length: 17 }, (_, at) => at + 1).join(" ")}`, ["16 different screws at most"]],
    ["every word", "swing d33, head 1960 at 44.5, ports 9, xyz", ["swing A0 to G10", "1960 g?", "ports 0 to 4", "xyz?"]],
  ])("asks for %s", async (_what, text, said) => {
    const card = await ask(text);
    expect(card.kind).toBe("calc.faults");
    for (const words of said) expect(cardText(card)).toContain(words);
  });
});
