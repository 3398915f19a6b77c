import { afterEach, beforeEach, describe, expect, it } from "vitest";
import published from "../../../../fixtures/published/gripBuildUp.json" with { type: "json" };
import sizes from "../../../../fixtures/published/gripSizes.json" with { type: "json" };
import gripTape from "../../../../fixtures/published/gripTape.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { maren } from "../../../support/people.ts";
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
const ask = (text: string) => askCalc(bot, "grip", text, maren);
const at = (data: Record<string, unknown>, place: "upper" | "lower") => data[place] as Record<string, number>;

describe(`calc grip: ${published.source}`, () => {
  it.each(published.rows)(
    "builds up $coreIn on $shaftIn with $layers layers, $wall",
    async ({ wall, nominalIn, coreIn, shaftIn, layers, layerIn, diameterIn }) => {
      const { data } = await ask(`core ${coreIn} butt ${shaftIn} nominal ${nominalIn} layers ${layers} tape ${layerIn}`);
      expect(Math.abs(inches(wall === "rubber" ? data.gripAt2InMm : data.rigidAt2InMm) - diameterIn)).toBeLessThanOrEqual(
        published.tolerance.diameterIn,
      );
    },
  );

  it.each(published.layers)("finds the layers of $layerIn for $size", async ({ size, layerIn, layers }) => {
    const { data } = await ask(`core 600, butt 600, ${size}, tape ${layerIn * 1000}`);
    expect(Math.abs(Number(at(data, "upper").rubberLayersCount) - layers)).toBeLessThanOrEqual(published.tolerance.layers);
    expect(at(data, "upper").layersCount).toBe(Math.round(Number(at(data, "upper").rubberLayersCount)));
  });
});

describe(`calc grip: ${sizes.source}`, () => {
  it.each(sizes.rows)("aims at $size of $standard", async ({ standard, size, diameterIn }) => {
    const { data } = await ask(`core 600, butt 600, size ${size}, ${standard}`);
    expect(Math.abs(inches(at(data, "upper").wantedMm) - diameterIn)).toBeLessThanOrEqual(sizes.tolerance.diameterIn);
  });

  it.each(sizes.hands)("says which hand of a $player-hander is the $place one", async ({ player, place, hand }) => {
    const card = await ask(`core 600, butt 600, ${player}`);
    expect(at(card.data, place as "upper").hand).toBe(hand);
    expect(cardText(card)).toContain(`${place === "upper" ? "Upper" : "Lower"} hand (${hand})`);
  });
});

describe(`calc grip: ${gripTape.source}`, () => {
  it("weighs a wrap of light and of heavy tape, and says what it does", async () => {
    const { data } = await ask("core 600, butt 600, layers 1, tape length 10");
    const [light, heavy] = gripTape.rows;
    expect(Number(data.tapeLeastG)).toBeCloseTo(light?.massG ?? 0, 2);
    expect(Number(data.tapeMostG)).toBeCloseTo(heavy?.massG ?? 0, 2);
    expect(Number(data.tapeLeastPoints) / Number(data.tapeLeastG)).toBeCloseTo(gripTape.effect.pointsPerGram, 1);
  });
});

describe("calc grip", () => {
  it.each(["core 580 butt 600 layers 1", "core .580, butt .600, layers 1", "core=0.58in butt=15.24mm layer 1", "core 14.732 butt 15.24 layers 1"])(
    "reads %s in thousandths, inches and mm",
    async (text) => {
      const { data } = await ask(text);
      // By definition: an inch is 25.4 mm.
      expect(data).toMatchObject({ coreMm: expect.closeTo(0.58 * 25.4, 9), shaftAt2InMm: expect.closeTo(15.24, 9) });
    },
  );

  it("says what it read and assumed, both bounds, and that the caliper wins", async () => {
    const lines = (await ask("core 580, butt 600, layers 0")).lines.map(lineText);
    expect(lines[0]).toBe("Read core 0.58 in; butt 0.6 in; layers 0");
    expect(lines[1]).toBe("Assumed nominal .900 in; butt straight under the grip; tape .005 in a layer; hand right");
    expect(lines[3]).toBe("Upper hand (left), 2 in: no layers, .913 in (23.2 mm), +.013; at most .920");
    expect(lines.at(-1)).toBe("The caliper on the finished grip wins");
  });

  it("builds up the lower hand by itself, and shows its size only when it is told", async () => {
    const { data } = await ask("core 600, butt 600, upper 1, lower 2, left hand");
    // fixtures/published/gripBuildUp.json: one layer .9067, two .9135.
    expect(inches(at(data, "upper").overMm)).toBeCloseTo(0.0067, 4);
    expect(inches(at(data, "lower").overMm)).toBeCloseTo(0.0135, 4);
    expect(data.gripAt6InMm).toBeNull();
    expect((await ask("core 600, butt 600, nominal at 6 800, lower 2")).data.gripAt6InMm).not.toBeNull();
  });

  it("weighs tape under one hand as half of it", async () => {
    const whole = Number((await ask("core 600, butt 600, layers 1")).data.tapeLeastG);
    const { data } = await ask("core 600, butt 600, upper 0, lower 1");
    expect(Number(data.tapeLeastG)).toBeCloseTo(whole / 2, 9);
    // The middle of the lower half lies 1/8 + 7 1/2 in from the cap: 6 3/8 in above the fulcrum at 14 in, 49.6117 g·in a point.
    expect(Number(data.tapeLeastPoints)).toBeCloseTo(((whole / 2) * -6.375) / 49.6117, 6);
  });

  it("warns of a bulge", async () => {
    expect(cardText(await ask("core 600, butt 600, nominal at 6 .895, lower 4, upper 0"))).toContain("no bulge or waist");
    expect(cardText(await ask("core 600, butt 600, nominal at 6 .800, lower 4, upper 0"))).not.toContain("no bulge or waist");
  });

  it("says by how much a grip is too thick without tape", async () => {
    const card = await ask("core 580, butt 600, standard");
    expect([card.tone, card.data.upper]).toEqual([
      "attention",
      expect.objectContaining({ layersCount: 0, tooThickMm: expect.closeTo(0.01302 * 25.4, 2) }),
    ]);
  });

  it("takes a grip and a shaft by name, and a club of the record with its hand and wraps", async () => {
    // fixtures/scenario: Gorse Undersize Round core 14.73 mm, Dunlin 60 X butt 15.3 mm.
    expect((await ask("gorse undersize round, dunlin 60 x, layers 2")).data).toMatchObject({ coreMm: 14.73, shaftAt2InMm: 15.3 });
    const { data, title } = await ask("halloway driver");
    expect(title).toMatch(/^Noor Halloway driver: grip/);
    expect(at(data, "lower").hand).toBe("left");
  });

  it.each([
    ["a core and a butt", "layers 1", ["core (580", "butt (600"]],
    ["layers or a size", "core 600, butt 600, layers 1, +1/32", ["layers or a size to reach"]],
    ["one size", "core 600, butt 600, standard, size .930", ["one size, not two"]],
    ["a nominal size above the core", "core 800, butt 600, nominal .7", ["a nominal size above the core"]],
    ["one grip", "heather, butt 600", ["Heather Cord Round"]],
    ["every word", "core 5800, butt 6, layers 100, xyz", ["core 0.394 to 0.866 in", "butt 10 to 22 mm", "layers 0 to 30", "xyz?"]],
  ])("asks for %s", async (_what, text, said) => {
    const card = await ask(text);
    expect(card.kind).toBe("calc.faults");
    for (const words of said) expect(cardText(card)).toContain(words);
  });
});
