import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { calcViews } from "../../../../bot/flows/calc/calcViews.ts";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { cardText, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeAll(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterAll(() => bot.close());

const views = Object.values(calcViews).map(({ name }) => name);
const written = Object.values(calcViews).flatMap(({ examples, takes }) => [...examples, ...takes].flatMap((text) => text.split(/[\s,]+/)));
const names = "oxtoby toll's halloway quarrie driver 3w 7i sw putter backup order on for vs irons bag want left lh".split(" ");
const numbers = "0 -1 +2 1/2 45 1/4 9,25 200 1149mm 45.25in 200g@44.5 d3 e14 1e9 999999999 -0.0001 0.5° 2° half one ½".split(" ");
const directions = "more less upright flat open closed stronger weaker shorter longer heavier points point layers wraps at to is = :".split(" ");
const noise = fc.oneof(fc.string({ unit: "binary", maxLength: 12 }), fc.string({ unit: "grapheme", maxLength: 8 }));
const word = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...written) },
  { weight: 3, arbitrary: fc.constantFrom(...numbers) },
  { weight: 2, arbitrary: fc.constantFrom(...names) },
  { weight: 2, arbitrary: fc.constantFrom(...directions) },
  { weight: 1, arbitrary: noise },
);
const text = fc
  .array(fc.tuple(word, fc.constantFrom(" ", " ", ", ", "\n", "", "/")), { minLength: 1, maxLength: 18 })
  .map((pieces) => pieces.flat().join("").slice(0, 2000));

/** An example of a view with other numbers, or none, in it: most of these are answered. */
const nearExample = fc
  .constantFrom(...views)
  .chain((view) =>
    fc
      .tuple(
        fc.constantFrom(...calcViews[view].examples),
        fc.infiniteStream(fc.constantFrom("", "", "", "0", "0.01", "1/2", "2", "9", "30", "46", "200", "999")),
      )
      .map(([example, others]) => [view, example.replace(/[\d.]+(?![\w/])/g, (number) => others.next().value || number)] as const),
  );

const RUNS = 250;

describe("calc with any text", () => {
  it("always answers with a card and never with a bug", async () => {
    const asked = fc.asyncProperty(fc.oneof(fc.tuple(fc.constantFrom(...views), text), nearExample), async ([view, some]) => {
      const card = await askCalc(bot, view, some);
      expect(cardText(card)).not.toMatch(/NaN|Infinity|undefined|null/);
      expect(bot.bugs).toEqual([]);
    });
    await fc.assert(asked, { numRuns: RUNS, seed: 20270503, interruptAfterTimeLimit: 3000 });
  });

  it.each(views)("answers %s within a moment at 2,000 characters", async (view) => {
    const longest = calcViews[view].examples.join(", ").repeat(100).slice(0, 2000);
    const card = await askCalc(bot, view, longest);
    expect([card.kind, bot.bugs]).toEqual([expect.stringMatching(/^calc\./), []]);
  });
});
