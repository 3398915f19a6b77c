import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { dessa } from "../../../support/people.ts";
import { cardOf, cardText, venueTime } from "../../../support/readCard.ts";
import { lyingIn } from "./stockDesk.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const table = "kind,model,place,quantity\r\nshaft,Dunlin 60 X,main rack,4\r\n";
const lying = (): number => lyingIn(bot, "main rack", "Dunlin 60 X");

describe("stock with a file", () => {
  it("takes in the table of a file", async () => {
    const before = lying();
    await bot.invoke(dessa, "stock", { view: "receive", file: table });
    expect(lying()).toBe(before + 4);
  });

  it("keeps to the text where both are given", async () => {
    const before = lying();
    await bot.invoke(dessa, "stock", { view: "receive", file: table, text: "Dunlin 60 X 1 to main rack" });
    expect(lying()).toBe(before + 1);
  });

  it("names the file when it is too long", async () => {
    const card = cardOf(await bot.invoke(dessa, "stock", { view: "receive", file: "x".repeat(100_001) }));
    expect(cardText(card)).toContain("file");
    expect(card.tone).not.toBe("good");
  });
});
