import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Reply } from "../../../bot/chat/types.ts";
import type { SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, newest, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T09:00"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** Orders something. @returns its number */
async function ordered(text: string): Promise<number> {
  await bot.say(maren, text);
  await bot.settle();
  return Number(newest(bot, "plover-orders", ({ kind }) => kind === "order.draft").card.data.orderNumber);
}

const printed = (number: number): Promise<Reply | null> => bot.invoke(dessa, "order print", { order: String(number) });

function sheetIn(reply: Reply | null): SheetPrint {
  const [file] = cardOf(reply).files;
  if (file?.draw !== "sheet") {
    throw new Error("the card carries no file");
  }
  return file.sheet;
}
const printOf = async (text: string): Promise<SheetPrint> => sheetIn(await printed(await ordered(text)));
const only = <T>([first, ...others]: readonly T[]): T => {
  expect(others).toEqual([]);
  return first as T;
};

const DRIVER = "build oxtoby driver like gamer, loft 9.25, face 0.5 open, length 45 1/4, swing d3, by 14:30";

describe("order print", () => {
  it("answers the sheet's own button with one page named by the order", async () => {
    const number = await ordered(DRIVER);
    await bot.invoke(maren, "order confirm", { order: String(number) });
    await bot.settle();
    const sheet = newest(bot, "plover-bench", ({ kind, data }) => kind === "sheet" && data.orderNumber === number).card;
    const card = cardOf(await bot.press(dessa, sheet, "Print"));
    expect(card.kind).toBe("sheet.print");
    expect(card.files.map(({ name, draw }) => [name, draw])).toEqual([[`sheet-${number}.pdf`, "sheet"]]);
  });

  it("leads with setting, bare cut, tip, dry target and orientation, as the sheet's card has them", async () => {
    const number = await ordered(DRIVER);
    await bot.invoke(maren, "order confirm", { order: String(number) });
    await bot.settle();
    const words = cardText(newest(bot, "plover-bench", ({ kind, data }) => kind === "sheet" && data.orderNumber === number).card);
    const print = sheetIn(await printed(number));
    const club = only(print.clubs);
    expect(club.setting?.value).toBe("standard");
    expect(club.lead.map(({ label }) => label.split(",")[0])).toEqual(["Bare cut", "Tip", "Dry swing weight", "Orientation"]);
    for (const { value } of club.lead) expect(words).toContain(value);
    expect(club.lead[0]?.value).toMatch(/^\d\d( \d+\/\d+)? in \(\d{4} mm\)$/);
    expect(print).toMatchObject({ due: "by 14:30", hand: "RIGHT-HANDED", printedAt: bot.now() });
  });

  it("lists what is measured with its tolerance, and what was read already", async () => {
    const print = sheetIn(await printed(1));
    expect(only(print.clubs).targets.map(({ what, tolerance, measured }) => [what, tolerance, measured])).toEqual([
      ["loft", "± 0.25", null],
      ["lie", "± 0.25", null],
      ["length", "± 1/16 in", null],
      ["swing", "± 0.5", null],
    ]);
    await bot.invoke(dessa, "measured", { order: "1", text: "loft 34.9 lie 62" });
    expect(
      only(sheetIn(await printed(1)).clubs)
        .targets.slice(0, 2)
        .map(({ measured }) => measured),
    ).toEqual(["34.9", "62.0"]);
  });

  it("ticks the steps that are done, and puts each caution at its own step", async () => {
    const { steps } = sheetIn(await printed(1));
    expect(steps.filter(({ ticks }) => ticks[0] === "todo").map(({ words }) => words)).toEqual(["Measure", "Sign", "Bring it to the player"]);
    const cautionsOf = (words: string) => steps.find((step) => step.words === words)?.cautions;
    expect(cautionsOf("Glue")).toContain("epoxy sensitises skin: gloves on");
    expect(cautionsOf("Bend")).toContain("watch the hosel for cracks");
    expect(cautionsOf("Sign")).toEqual([]);
  });

  it("says whose hand it is, what is awaited, what is done and what people wrote, accents and all", async () => {
    const print = await printOf("bend halloway sw 1 weak, note Señora “Noor” digs");
    expect(print.hand).toBe("LEFT-HANDED");
    expect(print.first).toEqual(["Draft: nothing is held for it yet, do not cut", "The club is not in the truck yet"]);
    expect(only(print.clubs).setting?.value).toMatch(/^Bend true [\d.]+ > [\d.]+/);
    expect(print.notes.map(({ value }) => value).join(" ")).toContain("Señora “Noor” digs");
    expect(print.due).toBeNull();
  });

  it("has a row for each club of a set, and says once what they have alike", async () => {
    const print = await printOf("build quarrie 5i 6i 7i 8i like gamer");
    expect(print.columns.slice(0, 5)).toEqual(["Bare cut", "Tip", "Dry", "Set", "Head"]);
    expect(print.columns).not.toContain("Grip");
    expect(print.first.filter((words) => words.startsWith("Grip, all: "))).toHaveLength(1);
    expect(print.clubs.map(({ name, row }) => [name, row.length])).toEqual(["5i", "6i", "7i", "8i"].map((name) => [name, print.columns.length]));
    expect(print.steps.every(({ ticks }) => ticks.length === 4)).toBe(true);
  });

  it("keeps one order of work for clubs that are built differently", async () => {
    const { steps, clubs } = await printOf("build quarrie driver 7i like gamer");
    expect(clubs).toHaveLength(2);
    const words = steps.map((step) => step.words);
    expect(new Set(words).size).toBe(words.length);
    expect(steps.find((step) => step.words === "Head on")?.ticks).toEqual(["todo", "none"]);
    expect(steps.find((step) => step.words === "Bend")?.ticks).toEqual(["none", "todo"]);
    const inOrder = ["Pull the parts", "Glue", "Glue sets", "Cut to length", "Grip", "Measure", "Sign"].map((step) => words.indexOf(step));
    expect(inOrder).toEqual([...inOrder].sort((a, b) => a - b));
    expect(Math.min(...inOrder)).toBe(0);
  });

  it("says before everything else why it is held", async () => {
    const number = await ordered(DRIVER);
    await bot.invoke(maren, "order confirm", { order: String(number) });
    await bot.invoke(maren, "order hold", { order: String(number), reason: "she is on the course" });
    expect(sheetIn(await printed(number)).first).toEqual(["Held: she is on the course"]);
  });

  it("shows a restricted head by its code word", async () => {
    const print = JSON.stringify(await printOf("build oxtoby driver like gamer, head menhir 9, loft 9"));
    expect(print).toContain("lamplight");
    expect(print).not.toMatch(/menhir/i);
  });

  it("is refused to one who only looks, and for an order that is not there", async () => {
    expect(cardOf(await bot.invoke(akiko, "order print", { order: "1" })).kind).toBe("refusal");
    expect(cardOf(await printed(99)).files).toEqual([]);
  });
});
