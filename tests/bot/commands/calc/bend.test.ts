import { afterEach, beforeEach, describe, expect, it } from "vitest";
import bending from "../../../../fixtures/published/bending.json" with { type: "json" };
import limits from "../../../../fixtures/published/bendLimits.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { maren } from "../../../support/people.ts";
import { cardText, lineText, newest, venueTime } from "../../../support/readCard.ts";
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

describe(`calc bend: ${bending.source}`, () => {
  it.each(bending.rows)("moves the bounce of $loftDeg/$bounceDeg", async (row) => {
    const { data } = await askCalc(bot, "bend", `${row.loftDeg} to ${row.loftAfterDeg}, bounce ${row.bounceDeg}`);
    expect(data).toMatchObject({ squaredLoftDeg: row.loftAfterDeg, bounceDeg: row.bounceAfterDeg, loftChangeDeg: row.loftChangeDeg });
  });

  it.each(bending.offset)(
    "moves the offset by $loftChangeDeg° at $bendPointHeightMm mm",
    async ({ bendPointHeightMm, loftChangeDeg, offsetChangeMm }) => {
      const way = loftChangeDeg < 0 ? "stronger" : "weaker";
      const { data } = await askCalc(bot, "bend", `loft 30, ${Math.abs(loftChangeDeg)} ${way}, height ${bendPointHeightMm}, offset 3`);
      near(data.offsetChangeMm, offsetChangeMm, bending.tolerance.offsetMm);
      near(data.offsetMm, 3 + offsetChangeMm, bending.tolerance.offsetMm);
    },
  );

  it.each(bending.lift)("lifts the toe by $toeLiftMm mm", async ({ lieChangeDeg, toeLiftMm }) => {
    const { data } = await askCalc(bot, "bend", `lie 63 to ${63 + lieChangeDeg}`);
    near(data.toeLiftMm, toeLiftMm, bending.tolerance.liftMm);
  });
});

describe(`calc bend: ${limits.source}`, () => {
  it.each(limits.rows)("finds $bendDeg° on $material, $construction, $kind", async (row) => {
    const more = `${row.makerLimitDeg === null ? "" : `, maker ${row.makerLimitDeg}`}${row.skilledTechnician ? ", skilled" : ""}`;
    const { data } = await askCalc(bot, "bend", `loft 30, ${row.bendDeg} weaker, ${row.material}, ${row.construction}${more}`);
    expect(data.allowed).toBe(row.kind);
  });
});

describe("calc bend", () => {
  it("says the inputs as understood first, what it assumed, and what it leaves out last", async () => {
    const card = await askCalc(bot, "bend", "56 to 54, bounce 10");
    expect(card.lines.slice(0, 2).map(lineText)).toEqual([
      "Read squared loft 56 to 54°; bounce 10°",
      "Assumed the hosel bends 55 mm above the leading edge; material not told; construction cast; never bent before",
    ]);
    expect([card.title, card.tone]).toEqual(["56 to 54, bounce 10 to 8", "plain"]);
    expect(cardText(card)).toContain("Caution: ");
    expect(card.fields.map(({ label }) => label)).toEqual(["Limits", "Source", "Left out"]);
  });

  it("answers the question of the channel without a bounce and asks for it", async () => {
    await bot.say(maren, "56 to 54, what bounce?");
    await bot.settle();
    const { card } = newest(bot, "plover-orders", ({ kind }) => kind === "calc.bend");
    expect(card.data).toMatchObject({ bounceChangeDeg: -2, bounceDeg: null, squaredLoftDeg: 54 });
    expect(cardText(card)).toContain("Bounce 2° less than it has: it goes with the loft\nWhat bounce has it? Then: bounce 10");
  });

  it.each([
    ["56/10 to 54"],
    ["56/10 to 54/8"],
    ["56 > 54 bounce 10"],
    ["loft 56, 2 stronger, bounce 10"],
    ["bending my 56 to 54 from bounce 10, what bounce do i get?"],
    ["sand wedge 56 to 54 bounce 10"],
  ])("reads %s", async (text) => {
    expect((await askCalc(bot, "bend", text)).data).toMatchObject({ squaredLoftDeg: 54, bounceDeg: 8 });
  });

  it.each([
    ["loft 56, bounce 10 to 8", -2, "another grind, or sole work by a qualified grinder"],
    ["56 to 54, bounce 10 to 6", -2, "Bounce 6 cannot come from this bend"],
    ["loft 56, bounce 10 to 12", 2, "another grind or head"],
  ])("says what no bend can do: %s", async (text, missDeg, words) => {
    const card = await askCalc(bot, "bend", text);
    expect(cardText(card)).toContain(words);
    expect(card.data).toMatchObject({ answer: "refused", bounceMissDeg: missDeg });
  });

  it("says where bending alone has the wanted bounce", async () => {
    // Loft and bounce move together: 2° less bounce is 2° stronger, 56 to 54.
    expect((await askCalc(bot, "bend", "loft 56, bounce 10 to 8")).data.loftAtWantedBounceDeg).toBe(54);
    const untold = await askCalc(bot, "bend", "2 less bounce at the same loft");
    expect([untold.title, untold.data.loftAtWantedBounceDeg]).toEqual(["2° less bounce is no bend", null]);
  });

  it("adds up what it was bent before, there and back", async () => {
    const { data, tone } = await askCalc(bot, "bend", "34 to 33, forged carbon, bent 1 stronger before, bent lie 1 1");
    expect([data.totalLoftDeg, data.totalLieDeg, data.allowed, tone]).toEqual([2, 2, "allowed", "plain"]);
    const more = await askCalc(bot, "bend", "34 to 33, soft carbon, bent 1 2");
    expect([more.data.totalLoftDeg, more.data.allowed, more.tone]).toEqual([4, "warned", "attention"]);
    const past = await askCalc(bot, "bend", "34 to 33, soft carbon, bent 2 2");
    expect([past.data.allowed, past.tone]).toEqual(["blocked", "refusal"]);
    expect(cardText(past)).toContain("Do not bend: 5° of loft in all its bends, past the 4° it bears");
    expect(cardText(past)).not.toContain("Caution");
  });

  it("counts plain stainless as the hardest, and shows it", async () => {
    const text = cardText(await askCalc(bot, "bend", "7 iron 34 to 33 stainless"));
    expect(text).toContain("material 17-4 stainless");
    expect(text).toContain("With care: every bend of such a head wants care");
  });

  it("bends a club of the record from what the gauge read, upright and flat in words", async () => {
    const card = await askCalc(bot, "bend", "oxtoby sw, 1 stronger, 1/2 flat");
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag sw: 56.25, lie 63, bounce 10.2.
    expect(card.data).toMatchObject({ squaredLoftDeg: 55.25, seatedLieDeg: 62.5, lieChangeDeg: -0.5 });
    near(card.data.bounceDeg, 9.2, 1e-9);
    expect(cardText(card)).toContain("lie 1/2° flat; squared loft on record 56.25°; lie on record 63°; bounce on record 10.2°");
    expect((await askCalc(bot, "bend", "oxtoby sw 55")).data.squaredLoftDeg).toBe(55);
  });

  it("sends a club on a sleeve to its sleeve", async () => {
    const card = await askCalc(bot, "bend", "oxtoby 3w 1 stronger");
    expect(card.tone).toBe("refusal");
    expect(cardText(card)).toContain("It sits on a sleeve: turn that instead");
  });

  it.each([
    ["56 to 40, hegiht 55", ["hegiht 55", "squared loft 56 to 40"]],
    ["56 54 52", ["56 to 54 to 52"]],
    ["lie 20 to 21", ["lie 20 to 21"]],
    ["loft 56", [""]],
    ["loft 76 carbon maker 30 copper", ["76°", "30°", "copper"]],
    [`56 to 54 bent ${"1 ".repeat(21)}`, ["bent"]],
  ])("says every fault at once: %s", async (text, words) => {
    const { data } = await askCalc(bot, "bend", text);
    expect((data.faults as readonly { readonly word: string }[]).map(({ word }) => word)).toEqual(
      words.filter((word, at) => word !== "" || at === 0),
    );
  });
});
