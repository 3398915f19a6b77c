import { afterEach, beforeEach, describe, expect, it } from "vitest";
import boreToGround from "../../../../fixtures/published/boreToGround.json" with { type: "json" };
import cantilever from "../../../../fixtures/published/cantileverTipMass.json" with { type: "json" };
import published from "../../../../fixtures/published/shaftTrimming.json" with { type: "json" };
import taperedBeam from "../../../../fixtures/published/taperedBeam.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { akiko, maren, petra } from "../../../support/people.ts";
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

const MM_PER_INCH = 25.4;
const inches = (mm: unknown): number => Number(mm) / MM_PER_INCH;
const ask = (text: string, who: typeof maren = maren) => askCalc(bot, "trim", text, who);
const EXAMPLE = "length 45, bore 1.25, cap 1/8, raw 46, tip 1/2, mass 65, balance 24";

describe(`calc trim: ${published.source}`, () => {
  it.each(published.cuts)("cuts $cutIn in for $lengthIn in", async ({ lengthIn, boreIn, capIn, cutIn, rawIn, trimIn }) => {
    const raw = rawIn === undefined ? "" : `, raw ${rawIn}`;
    const { data } = await ask(`length ${lengthIn}, bore ${boreIn}, cap ${capIn}${raw}`);
    expect(inches(data.bareCutMm)).toBeCloseTo(cutIn, 9);
    expect(data.buttTrimMm === null ? null : inches(data.buttTrimMm)).toEqual(trimIn === undefined ? null : expect.closeTo(trimIn, 9));
  });

  it.each(published.rows)("weighs what is left of $rawMassG g", async ({ rawMassG, rawIn, balanceFromTipIn, tipIn, buttIn, ...left }) => {
    const lengthIn = rawIn - tipIn - buttIn;
    const { data } = await ask(
      `length ${lengthIn}, through bore, cap 0, raw ${rawIn}, tip ${tipIn}, mass ${rawMassG}, balance ${balanceFromTipIn}, parallel 6`,
    );
    expect(lengthIn).toBe(left.lengthIn);
    expect(Number(data.trimmedMassG)).toBeCloseTo(left.massG, 3);
    expect(inches(data.trimmedBalanceFromTipMm)).toBeCloseTo(left.trimmedFromTipIn, 3);
    expect(inches(data.trimmedBalanceFromButtMm)).toBeCloseTo(left.trimmedFromButtIn, 3);
  });
});

describe(`calc trim: ${boreToGround.source}`, () => {
  it.each(boreToGround.hosels)("takes a hosel of $hoselLengthIn in", async ({ hoselLengthIn, insertionDepthIn, boreIn }) => {
    const { data } = await ask(`length 45, hosel ${hoselLengthIn}, insertion ${insertionDepthIn}`);
    expect(inches(data.boreToGroundMm)).toBeCloseTo(boreIn, 9);
  });

  it.each([
    ["blind bore", 0.5],
    ["bore blind", 0.5],
    ["through", 0],
    ["bore to ground 1.0", 1],
    ["sleeve stop 31.75 mm", 1.25],
  ])("takes %s", async (written, boreIn) => {
    expect(inches((await ask(`length 45, ${written}`)).data.boreToGroundMm)).toBeCloseTo(boreIn, 9);
  });
});

describe(`calc trim: ${taperedBeam.source}`, () => {
  const { clubs, tolerance, clampIn } = taperedBeam;
  const asked = Object.entries(clubs).flatMap(([club, of]) =>
    taperedBeam.rows.filter((row) => row.club === club && row.massMoreG === 0 && row.clampIn === clampIn).map((row) => ({ ...row, of })),
  );

  it.each(asked)("predicts a reading: $club, $change", async ({ of, tipMoreIn, buttMoreIn, effectCpm }) => {
    // The bore goes to the sole and there is no cap: the playing length is the bare cut.
    const readIn = of.rawIn - of.tipTrimIn - of.buttTrimIn;
    const { data } = await ask(
      `length ${readIn - tipMoreIn - buttMoreIn}, through, cap 0, raw ${of.rawIn}, tip ${of.tipTrimIn + tipMoreIn}, parallel 6, mass ${of.rawMassG}, ` +
        `balance ${of.rawIn / 2}, cpm ${of.readCpm}, clamp ${clampIn}, tip mass ${of.tipMassG}, read length ${readIn}, read tip ${of.tipTrimIn}`,
    );
    expect(Math.abs(Number(data.frequencyCpm) - of.readCpm - effectCpm)).toBeLessThanOrEqual(tolerance.modelCpm);
    expect(data).toMatchObject({ readCpm: of.readCpm, tipMassG: of.tipMassG });
    expect(inches(data.clampMm)).toBeCloseTo(clampIn, 9);
  });
});

describe(`calc trim: ${cantilever.source}`, () => {
  it.each(cantilever.rows)("tells the frequency of a stiffness of $bendingStiffnessNm2 N·m²", async ({ bendingStiffnessNm2, exactCpm }) => {
    // 1 m free past a clamp of 127 mm; 60 g on that metre are 67.62 g on the whole cut.
    const { data } = await ask(
      `length 1127 mm, through, cap 0, raw 1127 mm, mass ${(60 * 1127) / 1000}, balance 563.5 mm, ei ${bendingStiffnessNm2}, tip mass 200, clamp 127 mm`,
    );
    expect(data.uniformCpm).toBeCloseTo(exactCpm, 2);
  });
});

describe("calc trim", () => {
  it("says what it read and assumed, the cut in inches and mm, and the set-up beside every frequency", async () => {
    const card = await ask(`${EXAMPLE}, cpm 245, tip mass 200`);
    expect(card.title).toBe("Bare cut 43 5/8 in (1108 mm)");
    const lines = card.lines.map(lineText);
    expect(lines[1]).toBe("Assumed shaft tip parallel; clamp 5 in; read on the raw shaft");
    // 46 − 1/2 − 43 5/8 in.
    expect(lines[2]).toBe("Tip 1/2 in (13 mm) first; after the dry fit butt 1 7/8 in (48 mm)");
    expect(lines.at(-1)).toBe("Set-up: clamp 5 in, tip mass 200 g, grip off");
  });

  it.each([
    ["a shaft by name", "dunlin 60 x, length 45, bore 1.25, tip 1/2"],
    ["a shaft run together and a head by name", "shaft dunlin 60x cairn 45 tip 1/2"],
  ])("takes %s from the record", async (_what, text) => {
    // fixtures/scenario/shafts.csv and head-models.csv: 1168.4 mm, 63.5 g, 611.1 mm; Cairn 31.75 mm.
    expect((await ask(text)).data).toMatchObject({ rawLengthMm: 1168.4, rawMassG: 63.5, rawBalanceFromTipMm: 611.1, boreToGroundMm: 31.75 });
  });

  it("takes a club of the record with its tip trim, and says what comes off the built club", async () => {
    const card = await ask("oxtoby driver, length 45");
    // fixtures/scenario/spec-clubs.csv: 1149.35 mm or near it, tip 12.7 mm; grips.csv: cap 3.2 mm.
    expect(card.data).toMatchObject({ tipTrimMm: 12.7, capMm: 3.2, bareCutMm: expect.closeTo(1143 - 31.75 - 3.2, 9) });
    expect(cardText(card)).toContain("The club as built: 1/4 in (6 mm) off the butt");
  });

  it("does not take over the tip trim of another shaft", async () => {
    expect((await ask("oxtoby driver, dunlin 60 s, length 45")).data.tipTrimMm).toBe(0);
  });

  it("finds a left-hander's club", async () => {
    expect((await ask("halloway driver")).title).toMatch(/^Noor Halloway driver: bare cut /);
  });

  it("weighs by the pieces cut off", async () => {
    const { data } = await ask(`${EXAMPLE}, tip piece 1, butt piece 2.5`);
    expect(data.trimmedMassG).toBeCloseTo(65 - 1 - 2.5, 9);
    // Moments about the tip: 65·24 − 1·0.25 − 2.5·(46 − 1.875/2), less the 1/2 in cut off.
    expect(inches(data.trimmedBalanceFromTipMm)).toBeCloseTo((65 * 24 - 0.25 - 2.5 * (46 - 0.9375)) / 61.5 - 0.5, 6);
  });

  it.each([
    ["too short by name", "length 48, bore 1.25, cap 1/8, raw 46, tip 1/2", "shaft-too-short", "47 1/8 in (1197 mm) needed"],
    ["with too little parallel section", "length 45, bore 1.25, raw 46, tip 2, parallel 3", "tip-section-too-short", "at most 1 1/2 in (38 mm)"],
    ["with a taper tip", "length 36, bore 1, raw 38, tip 1/2, taper", "taper-not-tip-trimmed", "A taper tip is not tip-trimmed"],
  ])("refuses a shaft %s", async (_what, text, code, said) => {
    const card = await ask(text);
    expect([card.tone, card.data.refused]).toEqual(["attention", [expect.objectContaining({ code })]]);
    expect(cardText(card)).toContain(said);
  });

  it("cuts a tip that just keeps its parallel section, and says when it was not checked", async () => {
    expect((await ask("length 45, bore 1.25, raw 47, tip 1.5, parallel 3")).data.refused).toEqual([]);
    expect(cardText(await ask("length 45, bore 1.25, raw 47, tip 1.5"))).toContain("not told and not checked");
    expect(cardText(await ask("length 45, bore 1.25, raw 47"))).not.toContain("not told and not checked");
  });

  it("warns past 46 in", async () => {
    expect(cardText(await ask("length 46 1/16, bore 1.25"))).toContain("Over 46 in");
    expect(cardText(await ask("length 46, bore 1.25"))).not.toContain("Over 46 in");
  });

  it.each([
    ["a length and a bore", "raw 46", ["length (playing length)", "bore (to ground)"]],
    ["the raw shaft of a frequency", "length 45, bore 1.25, cpm 260", ["raw (its length)", "mass (", "balance (", "tip mass ("]],
    ["the other half of mass and balance", "length 45, bore 1.25, raw 46, mass 65", ["balance ("]],
    ["a hosel's insertion", "length 45, hosel 2.375", ["insertion"]],
    ["one way to the bore", "length 45, bore 1, blind", ["one of bore, bore class"]],
    ["a balance the model holds for", "length 45, bore 1.25, raw 46, mass 65, balance 10", ["balance 390 to 778 mm"]],
    ["a tip for its piece", "length 45, bore 1.25, raw 46, mass 65, balance 24, tip piece 2", ["tip (how much"]],
    ["a reading the shaft allows", `${EXAMPLE}, cpm 260, tip mass 200, read length 50`, ["a read length that the raw shaft allows"]],
    ["a known shaft", "shaft dunlin 60, length 45, bore 1.25", ["Dunlin 60 R, Dunlin 60 S, Dunlin 60 X"]],
    ["every word", "lenght 45, bore 12, raw 460", ["Meant length?", "bore 0 to 3.937 in", "raw 500 to 1500 mm"]],
  ])("asks for %s", async (_what, text, said) => {
    const card = await ask(text);
    expect(card.kind).toBe("calc.faults");
    for (const words of said) expect(cardText(card)).toContain(words);
  });

  it("keeps unreleased heads to the lead", async () => {
    // fixtures/scenario/head-models.csv: Menhir goes by the code word lamplight.
    expect(cardText(await ask("length 45, head menhir", akiko))).not.toContain("Menhir");
    expect((await ask("length 45, head menhir", petra)).data.boreToGroundMm).toBe(31.75);
  });
});
