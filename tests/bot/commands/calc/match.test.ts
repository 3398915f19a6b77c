import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { player } from "../../../../db/schema/people.ts";
import published from "../../../../fixtures/published/gaugeError.json" with { type: "json" };
import setMatch from "../../../../fixtures/published/setMatch.json" with { type: "json" };
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

const [combined] = published.rows;

describe(`calc match: ${published.source}`, () => {
  it.each(published.verdicts)("calls lofts $apartDeg° apart $verdict", async ({ apartDeg, verdict }) => {
    const { data } = await askCalc(bot, "match", `loft 9 ${9 + apartDeg}`);
    expect(data.rows).toMatchObject([{ quantity: "squaredLoftDeg", verdict }]);
  });

  it("says what the gauge alone may do", async () => {
    const { data } = await askCalc(bot, "match", "loft 9 9");
    const [row] = data.rows as readonly { readonly gaugeError: number }[];
    expect(Math.abs(Number(row?.gaugeError) - (combined?.combinedDeg ?? 0))).toBeLessThanOrEqual(published.tolerance);
  });
});

describe(`calc match: ${setMatch.source}`, () => {
  it("adds to every iron what two points take", async () => {
    const { points, target, massG } = setMatch.twoPoints;
    const { clubs } = (await askCalc(bot, "match", `oxtoby irons d${2 + target - points}`)).data;
    // fixtures/scenario/spec-clubs.csv: the 7-iron of oxtoby 3 is D2.
    const seven = (clubs as readonly Record<string, unknown>[]).find(({ club }) => club === "7i");
    expect(Math.abs(Number(seven?.exactMassChangeG) - massG)).toBeLessThanOrEqual(setMatch.tolerance.setMassG);
  });
});

describe("calc match", () => {
  it("holds typed pairs to the shop's tolerances, with the gauge's error beside", async () => {
    const card = await askCalc(bot, "match", "loft 9.2 9.4, swing d3 d2, length 45 45 1/16");
    expect(card.lines.map(lineText)).toEqual([
      "Read loft 9.2°, 9.4°; swing d3, d2; length 45 in, 45 1/16 in",
      "Assumed both on one gauge and clamp",
      "Squared loft 9.2 > 9.4 close; within 0.25°, gauge 0.18°",
      "Length 45 in > 45 1/16 in close; within 1.6 mm, gauge 1.1 mm",
      "Swing weight D3 > D2 off 1 point lighter; within 0.5 points, gauge 0.4 points",
    ]);
    expect(card.title).toBe("Two clubs: 1 thing off");
  });

  it.each([
    ["loft 9 9.4", "off 0.4° weaker"],
    ["loft 9.4 9", "off 0.4° stronger"],
    ["lie 58 59", "off 1° more upright"],
    ["lie 58 57", "off 1° flatter"],
    ["face 0.5 open 0.5 closed", "off 1° more closed"],
    ["face 0.5 closed 0.5 open", "off 1° more open"],
    ["length 45 45 1/2", "off 12.7 mm longer"],
    ["swing d2 d4", "off 2 points heavier"],
    ["total 320 g 317 g", "off 3 g lighter"],
    ["frequency 250 254", "off 4.0 cpm stiffer"],
    ["wraps 1 2", "off 1 more"],
    ["grip 0.9 0.92", "off 0.020 in thicker"],
    ["bounce 8 10.5; head 200 200", "off 2.5° more"],
    ["balance 33 33.5", "off 12.7 mm nearer the head"],
    ["inertia 2900 2850", "off 50 kg·cm² less"],
    ["offset 3 2", "off 1.0 mm less"],
  ])("says of %s in words: %s", async (text, said) => {
    expect(cardText(await askCalc(bot, "match", text))).toContain(said);
  });

  it("says in words which way typed faces stand", async () => {
    expect(lineText((await askCalc(bot, "match", "face 0.5 open 0.4 closed")).lines[0] ?? [])).toBe("Read face 0.5° open, 0.4° closed");
  });

  it.each([["oxtoby driver"], ["oxtoby driver backup"], ["oxtoby driver, backup"], ["oxtoby driver vs oxtoby driver backup"]])(
    "holds a backup against its gamer: %s",
    async (text) => {
      const card = await askCalc(bot, "match", text);
      expect(card.title).toBe("Bram Oxtoby driver and backup: 1 thing off");
      // fixtures/scenario/spec-clubs.csv, oxtoby 3: heads of 197.3 and 196.4 g, totals of 320.2 and 319.6 g.
      expect(card.data.rows).toContainEqual(
        expect.objectContaining({ quantity: "headMassG", wanted: 197.3, got: 196.4, verdict: "off", tolerance: 0.5 }),
      );
      expect(card.data.rows).toContainEqual(expect.objectContaining({ quantity: "totalMassG", delta: expect.closeTo(-0.6, 9), verdict: "close" }));
      expect(cardText(card)).toContain("Bram Oxtoby driver backup: measured 5 d ago on Plover loft bench");
    },
  );

  it("calls a left-hander's backup close, and says when one club is left-handed", async () => {
    expect((await askCalc(bot, "match", "halloway driver")).title).toBe("Noor Halloway driver and backup: close, within tolerance");
    expect(cardText(await askCalc(bot, "match", "oxtoby driver, halloway driver"))).toContain("One is left-handed");
  });

  it("names the parts that differ, as either club has them", async () => {
    const text = cardText(await askCalc(bot, "match", "oxtoby driver against toll driver"));
    // fixtures/scenario/spec-clubs.csv: Dunlin 60 X tipped 12.7 mm with a ribbed grip; Dunlin 60 S, untipped, no rib.
    expect(text).toContain("shaft Dunlin 60 X > Dunlin 60 S differs");
    expect(text).toContain("tip 1/2 in > none differs");
    expect(text).toContain("rib with > without differs");
  });

  it("warns when the two were not on one gauge", async () => {
    // fixtures/scenario/spec-clubs.csv: oxtoby's 3-wood on the home base's gauge, toll's on Plover's.
    expect(cardText(await askCalc(bot, "match", "oxtoby 3w, toll 3w"))).toContain("Not on one gauge");
    expect(cardText(await askCalc(bot, "match", "oxtoby driver"))).not.toContain("Not on one gauge");
  });

  it("holds an order's club against the gamer, as planned until it is measured", async () => {
    const card = await askCalc(bot, "match", "order 1");
    expect(card.title).toMatch(/^Ysolde Quarrie 7i and order 1 7i: /);
    // fixtures/scenario/orders.csv: like gamer, swing d1; spec-clubs.csv: the gamer is D2.
    expect(card.data.rows).toContainEqual(expect.objectContaining({ quantity: "swingWeightPoints", wanted: 2 }));
    expect(cardText(card)).toContain("order 1 7i: never measured, as planned");
  });

  it("says so when there is no backup, and when there is no such club", async () => {
    expect((await askCalc(bot, "match", "toll 7i")).title).toBe("Marrick Toll 7i has no backup on record");
    expect((await askCalc(bot, "match", "toll driver, oxtoby 7w")).title).toContain("No club on record: Bram Oxtoby 7w");
  });

  it.each([
    ["a swing weight", "oxtoby irons d2", { targetPoints: 2 }],
    ["an inertia", "oxtoby irons inertia 2700", { targetKgCm2: 2700 }],
    ["its middle, and says so", "oxtoby irons", { targetPoints: 2 }],
  ])("brings a set to %s", async (_what, text, data) => {
    const card = await askCalc(bot, "match", text);
    expect(card.data).toMatchObject({ ...data, lacking: [] });
    expect(cardText(card).includes("the middle of the set")).toBe(text === "oxtoby irons");
  });

  it("adds mass to a club below the aim and takes it off one above", async () => {
    const text = cardText(await askCalc(bot, "match", "oxtoby irons d2"));
    expect(text).toContain("4i D1.75: add 0.5 g, then D2");
    expect(text).toContain("5i D2.25: take 0.5 g off, then D2");
  });

  it("names the clubs of a set that cannot be added up", async () => {
    // fixtures/scenario/spec-clubs.csv, ambrelle 1 bag lw: an outside club.
    expect((await askCalc(bot, "match", "ambrelle wedges d4")).data.lacking).toContain("lw");
  });

  it("shows clubs of the record to a viewer, none to those without a role, restricted players to the lead", async () => {
    expect((await askCalc(bot, "match", "oxtoby driver", akiko)).kind).toBe("calc.match");
    const member = { ...maren, roles: [] } as typeof maren;
    for (const text of ["oxtoby driver", "oxtoby irons"]) expect((await askCalc(bot, "match", text, member)).kind).toBe("refusal");
    bot.db.update(player).set({ restrictedCode: "lighthouse" }).where(eq(player.name, "Bram Oxtoby")).run();
    for (const text of ["oxtoby driver", "toll driver, oxtoby driver", "oxtoby irons"]) {
      expect(cardText(await askCalc(bot, "match", text))).not.toMatch(/Bram|197|D3/);
    }
    expect((await askCalc(bot, "match", "oxtoby driver", petra)).title).toContain("lighthouse driver and backup");
  });

  it.each([
    ["a value without its pair", "loft 9.2", "a value for either club, such as loft 9.2 9.2"],
    ["three values", "swing d1 d2 d3", "a value for either club"],
    ["a loft no club has", "loft 9.2 94", "loft -15 to 70°"],
    ["a swing weight without its letter", "swing 3 2", "swing A0 to G10"],
    ["what stands behind two clubs", "oxtoby driver, toll driver d3", "d3?"],
    ["an unknown second club", "oxtoby driver, foo", "foo?"],
    ["two players of a name", "ashgrave driver", "Corwen Ashgrave, Linnea Ashgrave"],
    ["nothing to compare", "please", "Needed: two clubs"],
  ])("asks about %s", async (_what, text, said) => {
    const card = await askCalc(bot, "match", text);
    expect([card.kind, cardText(card)]).toEqual(["calc.faults", expect.stringContaining(said)]);
  });
});
