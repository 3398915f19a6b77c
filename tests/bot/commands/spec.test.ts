import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, maren } from "../../support/people.ts";
import { cardOf, cardText, newest, recorded, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const lowell = { person: "lowell", channel: "general" };
const asked = async (who: typeof akiko, values: Readonly<Record<string, string>>) => cardOf(await bot.invoke(who, "spec", values));

describe("spec", () => {
  // fixtures/scenario/spec-versions.csv: Oxtoby's version 3 went into play at 16:40 in St John's, 2.5 hours behind UTC on that day.
  it.each([
    ["akiko, nine hours ahead of UTC, in mm", akiko, "Thu 04:10 your time", "1149 mm"],
    ["lowell, five hours behind UTC, in inches", lowell, "Wed 14:10 your time", "45 1/4"],
  ])("answers %s", async (_who, who, time, length) => {
    const text = cardText(await asked(who, { player: "oxtoby", club: "driver" }));
    expect(text).toContain(`Version 3, ${time} (5 d ago), Driftmoss Downs, truck Plover, by Maren Aldersea`);
    expect(text).toContain(length);
  });

  it("says every value of a club as the gauge left it, with the gauge and its age", async () => {
    const card = await asked(akiko, { player: "Bram Oxtoby", club: "driver" });
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag driver.
    expect(card.data).toMatchObject({
      versionNumber: 3,
      clubs: [
        { squaredLoftDeg: 9.6, soledFaceDeg: 0.7, seatedLieDeg: 57, lengthMm: 1149.3, swingWeightPoints: 3, totalMassG: 320.2, headMassG: 197.3 },
      ],
    });
    expect(cardText(card)).toContain("measured 5 d ago on Plover loft bench");
    expect(cardText(card)).toContain("Dunlin 60 X, tip 13 mm, logo down, Gorse Standard, +1");
  });

  it("answers a plain message in the same words", async () => {
    await bot.say(maren, "what is oxtoby gaming");
    await bot.settle();
    const { card } = newest(bot, "plover-orders", ({ kind }) => kind === "spec");
    expect(card.data.versionNumber).toBe(3);
    // fixtures/scenario/spec-clubs.csv: fourteen clubs are in a full bag.
    expect(card.data.clubs).toHaveLength(14);
  });

  it("takes the club behind the name", async () => {
    expect((await asked(akiko, { player: "oxtoby driver" })).title).toBe("Bram Oxtoby, right-handed, driver");
  });

  it("changes nothing and records nothing but the question's answer", async () => {
    const before = recorded(bot).length;
    await asked(akiko, { player: "oxtoby" });
    expect(recorded(bot)).toHaveLength(before);
  });

  it("says which club is not in the bag", async () => {
    expect(cardText(await asked(akiko, { player: "oxtoby", club: "11w" }))).toContain("No 11w in the bag");
  });

  it("names the nearest player for one it does not know, and asks between two of a name", async () => {
    expect(cardText(await asked(akiko, { player: "oxtobey" }))).toContain("Bram Oxtoby");
    const both = cardText(await asked(akiko, { player: "ashgrave" }));
    expect(both).toContain("Corwen Ashgrave");
    expect(both).toContain("Linnea Ashgrave");
  });

  it.each([
    ["an id of nobody", "id:999999"],
    ["an id that is no number", "id:x"],
    ["nothing", ""],
    ["blanks", "   "],
    ["a control character", "\u0000"],
    ["five thousand letters", "a".repeat(5000)],
    ["a quote and a statement", "'; drop table player; --"],
  ])("answers %s without harm", async (_what, player) => {
    expect(["refusal", "attention"]).toContain((await asked(akiko, { player })).tone);
  });
});
