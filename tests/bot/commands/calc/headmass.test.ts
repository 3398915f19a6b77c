import { afterEach, beforeEach, describe, expect, it } from "vitest";
import lengthChange from "../../../../fixtures/published/lengthChange.json" with { type: "json" };
import published from "../../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { cardText, venueTime } from "../../../support/readCard.ts";
import { askCalc, typedParts } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const { tolerance } = published;
const iron = published.rows.find(({ club }) => club === "steel 7-iron");
const others = `${typedParts((iron?.parts ?? []).filter(([name]) => name !== "head"))}, cut ${iron?.shaftLengthIn}, cap 1/8`;
const swingWeights = ["d0", "d2"];

describe(`calc headmass: ${published.source}`, () => {
  it.each(published.ironHeadMasses)("finds the head for D$wantedPoints", async ({ wantedPoints, headMassG }) => {
    expect(swingWeights).toContain(`d${wantedPoints}`);
    const { data } = await askCalc(bot, "headmass", `swing d${wantedPoints}, head at 36.85, ${others}`);
    expect(Math.abs(Number(data.headMassG) - headMassG)).toBeLessThanOrEqual(tolerance.headMassG);
  });

  it("finds the head for an inertia of points", async () => {
    const { pointInertiaKgCm2, headMassG } = published.inertiaHeadMass;
    const { data } = await askCalc(bot, "headmass", `inertia ${pointInertiaKgCm2}, head at 36.85, ${others}`);
    expect(data.aims).toMatchObject([{ kept: "inertia", pointHeadMassG: expect.closeTo(headMassG, 3) }]);
  });

  it.each(lengthChange.rows)("keeps $kept at $changeIn in", async ({ changeIn, kept, headMassG }) => {
    const { data } = await askCalc(bot, "headmass", `length ${changeIn > 0 ? "+" : ""}${changeIn}, head 270 at 36.85, ${others}`);
    const found =
      kept === "swing-weight" ? { kept, changedHeadMassG: expect.closeTo(headMassG, 3) } : { pointChangedHeadMassG: expect.closeTo(headMassG, 3) };
    expect(data.aims).toContainEqual(expect.objectContaining(found));
  });
});

describe("calc headmass", () => {
  it("takes the aim without its name, and a club behind `on`", async () => {
    const card = await askCalc(bot, "headmass", "d4 on oxtoby driver");
    expect(card.title).toBe("Bram Oxtoby driver: head mass for D4");
    // On the gauge it is D3 (fixtures/scenario/spec-clubs.csv); its head lies 44.75 in from the cap, 49.6117 g·in are a point.
    expect(card.data.fromGaugeG).toBeCloseTo(49.6117 / (44.748 - 14), 2);
  });

  it("finds the length that keeps the swing weight with another head, and comes back from there", async () => {
    const { data } = await askCalc(bot, "headmass", `new head 277.521, head 270 at 36.85, ${others}`);
    // fixtures/published/lengthChange.json: half an inch shorter takes 277.521 g.
    expect(data.aims).toContainEqual(expect.objectContaining({ kept: "swing-weight", lengthChangeMm: expect.closeTo(-12.7, 2) }));
  });

  it("says so when no length within reach does", async () => {
    expect(cardText(await askCalc(bot, "headmass", `new head 500, head 270 at 36.85, ${others}`))).toContain("no length within 3 in does");
  });

  it("says so when no head is light enough", async () => {
    const card = await askCalc(bot, "headmass", "swing a0, head at 44, shaft 400 at 30, grip 50 at 4.25");
    expect(cardText(card)).toContain("no head is light enough");
  });

  it.each([
    ["an aim", `head at 36.85, ${others}`, "an aim"],
    ["the head's place, a shaft and a grip", "swing d2", "head at a place"],
    ["the head's mass when nothing else says what to keep", `length +1/2, head at 36.85, ${others}`, "the head's mass"],
  ])("asks for %s", async (_what, text, said) => {
    const card = await askCalc(bot, "headmass", text);
    expect([card.kind, cardText(card)]).toEqual(["calc.faults", expect.stringContaining(said)]);
  });

  it.each([
    ["length +4", "length -3 to 3 in"],
    ["inertia 27500", "inertia 1000 to 5000 kg·cm²"],
    ["swing d14", "swing A0 to G10"],
    ["swing 2", "swing A0 to G10"],
  ])("refuses %s and says what would do", async (text, said) => {
    expect(cardText(await askCalc(bot, "headmass", `${text}, head 270 at 36.85, ${others}`))).toContain(said);
  });
});
