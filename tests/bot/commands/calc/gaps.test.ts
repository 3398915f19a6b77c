import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { player } from "../../../../db/schema/people.ts";
import gauge from "../../../../fixtures/published/gaugeError.json" with { type: "json" };
import published from "../../../../fixtures/published/setSteps.json" with { type: "json" };
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

const flagsOf = async (text: string): Promise<readonly unknown[]> => {
  const { gaps } = (await askCalc(bot, "gaps", text)).data;
  return (gaps as readonly { readonly flag: unknown }[]).map(({ flag }) => flag);
};

describe(`calc gaps: ${published.source}`, () => {
  it("finds every gap of a set and what is wrong with it, in whatever order the clubs are typed", async () => {
    for (const lofts of [published.lofts, [...published.lofts].reverse()]) {
      const { data } = await askCalc(bot, "gaps", lofts.map(([club, loft]) => `${club} ${loft}`).join(", "));
      expect(data.gaps).toMatchObject(published.gaps.map(([stronger, weaker, gapDeg, flag]) => ({ stronger, weaker, gapDeg, flag })));
    }
  });
});

describe(`calc gaps: ${gauge.source}`, () => {
  it.each(gauge.verdicts.slice(0, 2))("tells lofts $apartDeg° apart from equal ones: $verdict", async ({ apartDeg, verdict }) => {
    expect(await flagsOf(`pw 46 gw ${46 + apartDeg}`)).toEqual([verdict === "same" ? "equal" : "narrow"]);
  });
});

describe("calc gaps", () => {
  it.each([
    ["wedges step 4 to 6°", "gw 50 sw 54 lw 60", [null, null]],
    ["a wedge step below 4° is narrow", "gw 50 sw 53.9", ["narrow"]],
    ["a wedge step above 6° is wide", "sw 54 lw 60.1", ["wide"]],
    ["other clubs step 3 to 5°", "8i 38 9i 41 pw 46", [null, null]],
    ["a step to the pitching wedge below 3° is narrow", "9i 43 pw 45.9", ["narrow"]],
    ["a step to the pitching wedge above 5° is wide", "9i 41 pw 46.1", ["wide"]],
  ])("holds by common practice that %s", async (_what, text, flags) => {
    expect(await flagsOf(text)).toEqual(flags);
  });

  it("reads lofts alone as wedges, and says so", async () => {
    const card = await askCalc(bot, "gaps", "pw = 47°, 52, 56 and 60");
    expect(lineText(card.lines[0] ?? [])).toBe("Read pw 47°; wedge 52°; wedge 56°; wedge 60°");
    expect(cardText(card)).toContain("PW 47.0 > 52°: 5.0\n52° > 56°: 4.0\n56° > 60°: 4.0");
  });

  it("names a club whose loft nobody measured, and leaves the putter out", async () => {
    const card = await askCalc(bot, "gaps", "4i 24, 5i, 6i 31, putter 3");
    expect(card.data.missing).toEqual(["5i"]);
    expect(card.data.gaps).toMatchObject([{ stronger: "4i", weaker: "6i", gapDeg: 7, flag: "wide" }]);
    expect(cardText(card)).toContain("Not measured: 5i");
  });

  it("says that woods count squared and that a gap of loft is none of carry", async () => {
    const text = cardText(await askCalc(bot, "gaps", "driver 9 3 wood 15"));
    expect(text).toContain("woods' lofts squared, sleeve as set; good gaps 3 to 5°, between wedges 4 to 6°");
    expect(text).toContain("check carry gaps on the range");
  });

  it("finds the gaps of a bag of the record, and the steps of its irons", async () => {
    const { data, lines, fields } = await askCalc(bot, "gaps", "oxtoby");
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag: driver 9.6, 3w 15, 5w 18.3, 4i 24; 9i 914.4 mm and 61.75°, pw 907.5 mm and 62.5°.
    expect(data.gaps).toHaveLength(12);
    expect(data.gaps).toMatchObject({
      0: { stronger: "driver", weaker: "3w", gapDeg: expect.closeTo(5.4, 9), flag: "wide" },
      2: { stronger: "5w", weaker: "4i", gapDeg: expect.closeTo(5.7, 9), flag: "wide" },
    });
    expect(data.steps).toContainEqual({
      longer: "9i",
      shorter: "pw",
      lengthStepMm: expect.closeTo(6.9, 9),
      lengthFlag: "small",
      lieStepDeg: 0.75,
      lieFlag: null,
    });
    expect(lines.map(lineText)).toContain("driver 9.6 > 3w 15.0: 5.4 wide");
    expect(fields.map(({ label }) => label)).toContain("Irons, each so much more upright (0.5° is even)");
  });

  it("brings the irons of the record to their middle swing weight", async () => {
    const { swingWeightMatch } = (await askCalc(bot, "gaps", "oxtoby irons")).data;
    // fixtures/scenario/spec-clubs.csv: D1.75 D2.25 D1.75 D2 D2 D2 D1.75, the middle is D2; the 6-iron is 953 mm, 49.6117 g·in are a point.
    expect(swingWeightMatch).toMatchObject({ targetPoints: 2, spreadBeforePoints: 0.5 });
    const six = (swingWeightMatch as { readonly clubs: readonly Record<string, number>[] }).clubs[2];
    expect(six).toMatchObject({ club: "6i", beforePoints: 1.75, massChangeG: 0.5 });
    expect(Math.abs(Number(six?.exactMassChangeG) - (0.25 * 49.6117) / (953 / 25.4 - 14))).toBeLessThan(0.01);
  });

  it("says when the lofts were read and that two gauges are not one", async () => {
    expect(cardText(await askCalc(bot, "gaps", "oxtoby"))).toMatch(/Oldest measured 8\d d ago, on 2 gauges .*: lofts compare on one/);
    expect(cardText(await askCalc(bot, "gaps", "dravick irons"))).toMatch(/Oldest measured \d+ d ago, on Plover loft bench$/m);
  });

  it("answers for a left-hander's wedges, and in the reader's own unit", async () => {
    const card = await askCalc(bot, "gaps", "halloway wedges");
    expect([card.kind, card.title]).toEqual(["calc.gaps", expect.stringContaining("Noor Halloway")]);
    expect(cardText(await askCalc(bot, "gaps", "oxtoby irons", akiko))).toContain("9i-PW 7 mm (small)");
  });

  it("keeps a restricted player's bag to the lead, and a bag from those without a role", async () => {
    expect(cardText(await askCalc(bot, "gaps", "oxtoby", { ...maren, roles: [] } as typeof maren))).toContain("viewer, rep, technician or lead");
    bot.db.update(player).set({ restrictedCode: "lighthouse" }).where(eq(player.name, "Bram Oxtoby")).run();
    expect(cardText(await askCalc(bot, "gaps", "oxtoby"))).not.toMatch(/Bram|9\.6/);
    expect((await askCalc(bot, "gaps", "oxtoby", petra)).title).toContain("lighthouse");
  });

  it("says every fault at once with its word", async () => {
    const card = await askCalc(bot, "gaps", "24 7i 353 wedge 50 pw 47 pw 48 zz");
    expect(card.data.faults).toEqual([
      { word: "24", guess: null },
      { word: "353°", guess: expect.any(String) },
      { word: "wedge", guess: null },
      { word: "zz", guess: null },
      { word: "pw", guess: null },
    ]);
  });

  it.each([
    ["one club", "pw 47", "Needed: two clubs"],
    ["two players of a name", "ashgrave", "Corwen Ashgrave, Linnea Ashgrave"],
    ["a misspelt player", "oxtobey", "Meant Bram Oxtoby?"],
    ["a club behind a bag", "oxtoby irons driver", "driver?"],
    ["more clubs than anybody carries", "52 ".repeat(41), "clubs 2 to 40"],
  ])("asks about %s", async (_what, text, said) => {
    expect(cardText(await askCalc(bot, "gaps", text))).toContain(said);
  });
});
