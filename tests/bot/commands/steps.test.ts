import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Values } from "../../../bot/chat/types.ts";
import { AS_WRITTEN, bringTo, DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { openEmptyBench, plannedSteps, ploverBench, workedMin } from "../../support/emptyBench.ts";
import type { MemoryBot } from "../../support/memoryBot.ts";
import { callan, dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, labels, newest, orderPost, recorded, sheetPost } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openEmptyBench();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const order = { order: String(DRIVER_NUMBER) };
const step = async (who: typeof maren, command: string, values: Values = {}) => {
  const card = cardOf(await bot.invoke(who, `step ${command}`, { ...order, ...values }));
  await bot.settle();
  return card;
};
const sheet = () => sheetPost(bot, DRIVER_NUMBER).card;
const post = () => orderPost(bot, DRIVER_NUMBER).card;
const likelyAt = (): number => Number(post().data.likelyAt);
const worked = (): number => workedMin(ploverBench(bot).jobs[0], bot.now());

describe("/step pause and /step resume", () => {
  it("keep the time worked over a lunch, and the likely time moves by the lunch", async () => {
    await bringTo(bot, "building");
    const before = likelyAt();
    bot.later(2);
    await step(dessa, "pause");
    bot.later(45);
    await bot.settle();
    expect(worked()).toBeCloseTo(2, 6);
    expect(sheet().title).toContain("paused by Dessa");
    await bot.press(dessa, sheet(), "Resume");
    await bot.settle();
    bot.later(1);
    expect(worked()).toBeCloseTo(3, 6);
    expect(Math.abs(likelyAt() - before - 45 * 60_000)).toBeLessThanOrEqual(2 * 60_000);
  });

  it("leave the glue to set by itself", async () => {
    await bringTo(bot, "gluedOn");
    bot.later(1);
    await step(dessa, "pause");
    const set = ploverBench(bot).jobs[0]?.steps.find(({ route }) => route.kind === "bondSet");
    expect(set?.state).toBe("running");
    expect(post().kind).toBe("order.building");
  });

  it("are refused where they make no sense, and change nothing then", async () => {
    await bringTo(bot, "confirmed");
    expect(cardText(await step(dessa, "pause"))).toContain("6: it is confirmed");
    await step(dessa, "start");
    expect(cardText(await step(dessa, "resume"))).toContain("6: it is not paused");
    await step(dessa, "pause");
    const version = post().data.orderVersion;
    expect(cardText(await step(dessa, "pause"))).toContain("6: it is paused already");
    expect(post().data.orderVersion).toBe(version);
    expect((await step(maren, "resume")).tone).toBe("refusal");
  });

  it("take no press of an older card", async () => {
    await bringTo(bot, "building");
    const older = sheet();
    await bot.press(dessa, older, "Pause");
    expect(cardOf(await bot.press(dessa, older, "Pause")).kind).toBe("stale");
  });

  it("are read as a line: pause 6", async () => {
    await bringTo(bot, "building");
    await bot.say(dessa, "pause 6");
    await bot.settle();
    expect(sheet().title).toContain("paused by Dessa");
  });

  it("rest at the bench what is held while somebody is at it", async () => {
    await bringTo(bot, "building");
    bot.later(3);
    await bot.say(maren, "hold 6 player is thinking");
    bot.later(20);
    expect(cardText(await step(dessa, "resume"))).toContain("6: it is held: player is thinking");
    await bot.say(maren, "resume 6");
    await bot.settle();
    expect(cardText(newest(bot, "plover-orders", ({ kind }) => kind === "order.moved").card)).toContain("Resume on its sheet takes it up");
    expect(worked()).toBeCloseTo(3, 6);
    expect(labels(sheet())).toContain("Resume");
  });
});

describe("/step back", () => {
  it("gives the order to whoever is free, with what is done for good and where it lies", async () => {
    await bringTo(bot, "gluedOn");
    bot.later(8);
    const answer = cardText(await step(dessa, "back", { lies: "rack 2, left" }));
    expect(answer).toContain("6 handed back");
    expect(answer).toContain("Not to be undone: tip trimmed, glued.");
    expect(answer).toContain("It lies: rack 2, left");
    expect(cardText(cardOf(await bot.invoke(maren, "where", { what: "6" })))).toContain("Handed back at the bench; it lies: rack 2, left");
    expect(ploverBench(bot).jobs[0]?.steps.some(({ state, route }) => state === "running" && !route.unattended)).toBe(false);
    await bot.press(callan, sheet(), "Resume");
    await bot.settle();
    expect(sheet().title).toContain("building, Callan");
    expect(cardText(post())).not.toContain("rack 2");
    await bot.press(callan, sheet(), "Done");
    await bot.settle();
    expect(post().kind).toBe("order.finalCheck");
    expect(recorded(bot).filter(({ action }) => action === "step.handBack")).toHaveLength(1);
  });

  it("asks where it lies, and takes the answer once more", async () => {
    await bringTo(bot, "building");
    expect(cardText(await step(dessa, "back"))).toContain("Say where it lies");
    expect(cardText(await step(dessa, "back"))).toContain("handed back already");
    expect(cardText(await step(dessa, "back", { lies: "rack 1" }))).toContain("It lies: rack 1");
    expect(cardText(post())).toContain("it lies: rack 1");
  });
});

describe("/step again", () => {
  it("glues anew: the head waits for the second set, and the likely time moves", async () => {
    await bringTo(bot, "gluedOn");
    bot.later(8);
    await bot.settle();
    const before = likelyAt();
    const answer = cardText(await step(dessa, "again", { step: "re-glue", reason: "slipped" }));
    expect(answer).toContain("6 driver: again glue, glue sets");
    expect(likelyAt()).toBeGreaterThan(before + 5 * 60_000);
    const [first, second] = plannedSteps(bot, "bondSet");
    const setAt = (second ?? first)?.endAt ?? 0;
    expect(setAt).toBeGreaterThan(bot.now() + 6 * 60_000);
    expect(plannedSteps(bot, "headOn")[0]?.startAt).toBeGreaterThanOrEqual(setAt);
    expect(cardText(sheet())).toContain("glue again: slipped");
    expect(cardText(sheet())).not.toContain("Glue set");
    await bot.press(dessa, sheet(), "Glue on");
    await bot.settle();
    expect(cardText(sheet())).toContain("Glue again till");
    const sets = ploverBench(bot).jobs[0]?.steps.filter(({ route }) => route.kind === "bondSet");
    expect(sets?.map(({ startedAt }) => startedAt)).toEqual([bot.now() - 8 * 60_000, bot.now()]);
  });

  it("holds back what is still to be done, also where steps in between are done", async () => {
    await bringTo(bot, "finalCheck");
    const answer = cardText(await step(dessa, "again", { step: "cut" }));
    expect(answer).toContain("no second shaft is kept for it");
    expect(post().kind).toBe("order.building");
    const [cut] = plannedSteps(bot, "cut");
    const [measure] = plannedSteps(bot, "measure");
    expect(cut?.endAt).toBeGreaterThan(bot.now());
    expect(measure?.startAt).toBeGreaterThanOrEqual(cut?.endAt ?? Number.POSITIVE_INFINITY);
    await bot.press(dessa, sheet(), "Done");
    await bot.settle();
    await bot.say(dessa, AS_WRITTEN);
    await bot.settle();
    expect(post().kind).toBe("order.ready");
  });

  it.each([
    [{ step: "cut" }, "that step is still to be done"],
    [{ step: "stamp" }, "it has no such step"],
    [{ step: "polish" }, "polish is no step"],
    [{ step: "glue", club: "7i" }, "of which club"],
  ])("refuses %o", async (values, words) => {
    await bringTo(bot, "gluedOn");
    expect(cardText(await step(dessa, "again", values))).toContain(words);
  });

  it("makes no sense before the bench has begun", async () => {
    await bringTo(bot, "confirmed");
    expect(cardText(await step(dessa, "again", { step: "glue" }))).toContain("6: it is confirmed");
  });

  it("asks which club of a set", async () => {
    await bot.say(maren, "build oxtoby 6i, 7i like gamer go");
    await bot.settle();
    await step(dessa, "start");
    await step(dessa, "glue");
    expect(cardText(await step(dessa, "again", { step: "glue" }))).toContain("of which club?");
    expect(cardText(await step(dessa, "again", { step: "glue", club: "7 iron" }))).toContain("7i: again glue");
    const again = ploverBench(bot).jobs.map(({ steps }) => steps.filter(({ route }) => route.kind === "bond").length);
    expect(again).toEqual([1, 2]);
  });
});

describe("/step skip", () => {
  it("leaves a step out, with the reason on the sheet, and the bench counts without it", async () => {
    await bringTo(bot, "confirmed");
    const before = plannedSteps(bot, "walk")[0]?.endAt ?? 0;
    expect(cardText(await step(dessa, "skip", { step: "weigh", reason: "same head as last week" }))).toContain("6 driver: left out weigh dry");
    expect(cardText(sheet())).toContain("weigh dry left out: same head as last week");
    // One minute of weighing, by the driver's route (common practice, no source).
    expect(before - (plannedSteps(bot, "walk")[0]?.endAt ?? 0)).toBe(60_000);
  });

  it.each(["measure", "sign"])("never leaves out to %s: the final check is the contract", async (name) => {
    await bringTo(bot, "building");
    expect(cardText(await step(dessa, "skip", { step: name }))).toContain("are never left out");
  });

  it("has no word for what has to set, so that nothing sets shorter", async () => {
    await bringTo(bot, "gluedOn");
    expect(cardText(await step(dessa, "skip", { step: "bondSet" }))).toContain("is no step");
    expect(cardText(await step(dessa, "skip", { step: "glue" }))).toContain("no such step");
  });
});
