import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { cardText, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeAll(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterAll(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** Views and texts as a thumb types them, and what the answer has in it. Bram Oxtoby's driver: fixtures/scenario/spec-clubs.csv. */
const said: readonly (readonly [view: string, text: string, words: string])[] = [
  ["swing", "+2points toll 7i", "Marrick Toll 7i"],
  ["swing", "2 points for halloways driver", "Noor Halloway driver"],
  ["swing", "oxtoby driver swing d4", "+1 point: 1.6 g in the head"],
  ["swing", "order 1", "Planned D0.75"],
  ["headmass", "oxtoby driver d4 length 45", "-1/4 in at the same D4"],
  ["headmass", "oxtoby driver 1/4 in shorter d3", "-1/4 in at the same D3"],
  ["headmass", "oxtoby driver length 1/2 d3", "+1/2 in at the same D3"],
  ["trim", "oxtoby driver 1/2 shorter", "Playing length 44 3/4 in"],
  ["trim", "oxtoby driver tip 1/2 more", "Tip 1 in (25 mm) first"],
  ["trim", "oxtoby driver length 46", "The club as built is 3/4 in (19 mm) too short"],
  ["sleeve", "oxtoby driver 1/2 stronger", "nearest is strong ½"],
  ["bend", "56-54 bounce 10", "56 to 54, bounce 10 to 8"],
  ["bend", "56/10 54", "56 to 54, bounce 10 to 8"],
  ["bend", "toll 7i 2 flat 1 weak", "Lie 62 to 60: 2° flat"],
  ["bend", "56 to 54 10 bounce", "Bounce 10 to 8: 2° less"],
  ["bend", "wood 3 1 stronger", "Read club fairway; squared loft 1° stronger"],
  ["weights", "oxtoby driver +2 points", "weights for D5"],
  ["weights", "head 196@44.5 d3 now d0 screws 2,2,4,6", "screws 2 g, 2 g, 4 g, 6 g"],
  ["grip", "core 580, butt 600, want +1/32", "size +1/32"],
  ["grip", "core 580 butt 600 2 wraps", "layers 2"],
  ["grip", "core 580 butt 600 upper 1 layer lower 3 layers", "upper 1; lower 3"],
  ["headmass", "for oxtoby driver at d4", "D4: head 198.5 g"],
  ["rules", "on oxtoby driver", "Known: length"],
  ["gaps", "for oxtoby irons", "4i 24.0 > 5i 27.0"],
  ["gaps", "46/50/54/58", "46° > 50°: 4.0"],
  ["gaps", "4i 24 5i27", "4i 24.0 > 5i 27.0"],
];

/** Texts that cannot be read, with the word that is wrong and what would do. */
const refused: readonly (readonly [view: string, text: string, words: string])[] = [
  ["swing", "head 200 44.5 shaft 60 21", "Meant head 200 at 44.5?"],
  ["swing", "head 200 at 44.5 head 210 at 45", "head counts once"],
  ["swing", "2 points on tol 7i", "tol? player: Marrick Toll"],
  ["swing", "d3", "Needed: the club"],
  ["swing", "oxtoby driver d4 +2 points", "not both"],
  ["headmass", "head 270 at 36.85 shaft 105 at 17.75 grip 50 at 4.25 length 37", "Needed: length as a change"],
  ["headmass", "oxtoby driver d3 length 30", "length 30? length 43 to 48 in"],
  ["headmass", "d2", "Needed: a club: oxtoby driver, or head at a place, shaft, grip"],
  ["trim", "1/2 shorter", "Needed: a club of the record"],
  ["trim", "oxtoby driver tip 2 less", "a tip trim of 0 or more"],
  ["trim", "length 99 bore 1", "length 18 to 55 in"],
  ["sleeve", "loft 1 weaker tilt 1.5", "soled loft takes its value, not a change"],
  ["aim", "loft 2 weaker lie 2 up", "squared loft takes its value, not a change"],
  ["aim", "pw 2 flat", "pw? whose: oxtoby pw"],
  ["grip", "oxtoby driver 1 more wrap", "layers takes its value, not a change"],
  ["gaps", "oxtoby driver", "driver? after the player: bag, woods, irons, wedges"],
  ["rules", "driver 46.5 in local rule 46", "46.5 in? known here"],
];

describe("calc as its users type it", () => {
  it.each(said)("answers /calc %s %s", async (view, text, words) => {
    const card = await askCalc(bot, view, text);
    expect([card.kind, cardText(card)]).toEqual([`calc.${view}`, expect.stringContaining(words)]);
  });

  it.each(refused)("says what is wrong with /calc %s %s", async (view, text, words) => {
    const card = await askCalc(bot, view, text);
    expect([card.kind, cardText(card)]).toEqual(["calc.faults", expect.stringContaining(words)]);
  });

  it("tells no loft where nobody said one", async () => {
    const card = await askCalc(bot, "bend", "bounce 10 to 8");
    expect(cardText(card)).not.toContain("at loft");
  });
});
