import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Values } from "../../../bot/chat/types.ts";
import { bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { openEmptyBench, ploverBench, workedMin } from "../../support/emptyBench.ts";
import type { MemoryBot } from "../../support/memoryBot.ts";
import { akiko, callan, dessa, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, labels, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openEmptyBench();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const shift = async (who: typeof maren, command: string, values: Values = {}) => {
  const card = cardOf(await bot.invoke(who, `shift ${command}`, values));
  await bot.settle();
  return card;
};
const likelyAt = (): number => Number(orderPost(bot, DRIVER_NUMBER).card.data.likelyAt);
const crew = () => ploverBench(bot).technicians;
const awayNow = (): number => crew().filter(({ away }) => away.some(({ from, to }) => from <= bot.now() && bot.now() < to)).length;

describe("/shift off and /shift on", () => {
  it("take a technician from the bench till a time: what nobody else does is ready after it", async () => {
    await bringTo(bot, "confirmed");
    await shift(petra, "off", { person: "callan" });
    expect(cardText(await shift(dessa, "off", { till: "13:30" }))).toContain("Dessa Corrigane is off till 13:30");
    expect(likelyAt()).toBeGreaterThan(venueTime("2027-05-03T13:30"));
    expect(likelyAt()).toBeLessThan(venueTime("2027-05-03T14:00"));
    expect(awayNow()).toBe(2);
    await shift(dessa, "on");
    expect(likelyAt()).toBeLessThan(venueTime("2027-05-03T11:00"));
    expect(recorded(bot).filter(({ action }) => action.startsWith("shift."))).toHaveLength(3);
  });

  it("without a time last until the next day opens, so that tomorrow's times stand", async () => {
    await bringTo(bot, "confirmed");
    await shift(petra, "off", { person: "callan" });
    expect(cardText(await shift(dessa, "off"))).toContain("is off till Tue 07:00");
    expect(likelyAt()).toBeGreaterThan(venueTime("2027-05-04T07:00"));
    expect(likelyAt()).toBeLessThan(venueTime("2027-05-04T07:30"));
    bot.moveTo(venueTime("2027-05-04T07:00"));
    expect(awayNow()).toBe(0);
  });

  it("end by themselves at the time said", async () => {
    await shift(dessa, "off", { till: "11:00" });
    bot.moveTo(venueTime("2027-05-03T10:59"));
    expect(awayNow()).toBe(1);
    bot.moveTo(venueTime("2027-05-03T11:00"));
    expect(awayNow()).toBe(0);
  });

  it("pause what the technician is at, and say so", async () => {
    await bringTo(bot, "building");
    bot.later(2);
    const text = cardText(await shift(dessa, "off", { till: "12:00" }));
    expect(text).toContain("6 is paused: hand back what somebody else goes on with.");
    bot.later(30);
    expect(workedMin(ploverBench(bot).jobs[0], bot.now())).toBeCloseTo(2, 6);
    expect(labels(sheetPost(bot, DRIVER_NUMBER).card)).toContain("Resume");
  });

  it("leave what a colleague is at alone", async () => {
    await bringTo(bot, "building");
    expect(cardText(await shift(callan, "off"))).not.toContain("paused");
    expect(sheetPost(bot, DRIVER_NUMBER).card.title).toContain("building, Dessa");
  });

  it("are said for others by the lead alone, and only of who is known", async () => {
    expect(cardText(await shift(dessa, "off", { person: "callan" }))).toContain("the lead says that for others");
    expect(cardText(await shift(petra, "off", { person: "nobody" }))).toContain("Nobody here is called nobody");
    expect((await shift(maren, "off")).tone).toBe("refusal");
    expect(cardText(await shift({ ...petra, channel: akiko.channel }, "on"))).toContain("This channel has no truck");
    expect(awayNow()).toBe(0);
  });

  it("refuse a time that has passed or is none", async () => {
    expect(cardText(await shift(dessa, "off", { till: "25:70" }))).toContain("is no time");
    expect(cardText(await shift(dessa, "off", { till: "today 07:00" }))).toContain("has passed");
    expect(cardText(await shift(dessa, "off", { till: "soon" }))).toContain("is no time");
    expect(awayNow()).toBe(0);
  });

  it("add to the bench whoever signs on, and take them off the bench they were at", async () => {
    const before = crew().length;
    expect(cardText(await shift(petra, "off", { person: "sorrel" }))).toContain("Sorrel Penhagen is not at this bench");
    await shift(petra, "on", { person: "sorrel" });
    expect(crew()).toHaveLength(before + 1);
    await shift({ person: "sorrel", channel: "knot-bench" }, "on");
    expect(awayNow()).toBe(1);
  });
});

describe("/shift skills", () => {
  it("say who may do what: nobody who grinds, no promise", async () => {
    await bot.say(maren, "grind oxtoby sw like gamer go");
    await bot.settle();
    const answer = cardText(await shift(petra, "skills", { person: "dessa", skills: "stamping; wood-bending" }));
    expect(answer).toContain("Dessa Corrigane: stamping, wood bending");
    expect(crew().map(({ skills }) => skills)).toEqual(expect.arrayContaining([["stamping", "woodBending"]]));
    await shift(petra, "skills", { person: "dessa", skills: "usual" });
    expect(crew().some(({ skills }) => skills.length === 2 && skills.includes("grinding"))).toBe(true);
    await shift(petra, "skills", { person: "dessa", skills: "none" });
    expect(crew().some(({ skills }) => skills.length === 0)).toBe(true);
  });

  it("refuse a word that is no skill, somebody of no bench here, and anybody but the lead", async () => {
    expect(cardText(await shift(petra, "skills", { person: "dessa", skills: "stamping, welding" }))).toContain("welding is no skill");
    expect(cardText(await shift(petra, "skills", { person: "maren", skills: "stamping" }))).toContain("is not at this bench");
    expect((await shift(dessa, "skills", { person: "dessa", skills: "grinding" })).tone).toBe("refusal");
    expect(recorded(bot).filter(({ action }) => action === "shift.skills")).toHaveLength(0);
  });
});
