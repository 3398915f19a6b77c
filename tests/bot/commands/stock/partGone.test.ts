import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { headsOnRecord } from "../../../../db/repositories/stockCount.ts";
import { bringTo, DRIVER_NUMBER } from "../../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { maren } from "../../../support/people.ts";
import { calls, cardText, labels, orderPost, recorded, venueTime } from "../../../support/readCard.ts";
import { askStock, lyingIn } from "./stockDesk.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const count = (text: string) => askStock(bot, "count", text);
const driver = () => orderPost(bot, DRIVER_NUMBER).card;

/** A drawer counted whole, but for one head. */
function withoutHead(serial: string): string {
  const heads = headsOnRecord(bot.db);
  const drawer = heads.find(({ head }) => head.serial === serial)?.place;
  const others = heads.filter(({ place, head }) => place?.id === drawer?.id && head.serial !== serial);
  return `${drawer?.label} ${others.map(({ head }) => head.serial).join(" ")}`;
}

describe("stock count: a part that an order held is gone", () => {
  it("plans the order anew, tells its rep with a call, and waits for another Go", async () => {
    await bringTo(bot, "confirmed");
    const serial = String(driver().data.headSerial);
    const card = await count(withoutHead(serial));
    expect(cardText(card)).toContain(`Order ${DRIVER_NUMBER} held head ${serial}: it is a draft again, and its rep is told`);
    await bot.settle();
    const told = calls(bot, "call.gone", DRIVER_NUMBER);
    expect(told.map(cardText)).toEqual([expect.stringContaining(`@Maren Aldersea the count did not find head ${serial}`)]);
    expect(told.map(labels)).toEqual([["Go", "Drop"]]);
    expect(driver().kind).toBe("order.draft");
    expect(driver().data.headSerial).not.toBe(serial);
    for (const call of told) await bot.press(maren, call, "Go");
    await bot.settle();
    expect(driver().kind).toBe("order.confirmed");
  });

  it("leaves an order alone while what it holds is there, and plans it anew when it is not", async () => {
    await bringTo(bot, "confirmed");
    await count(`bin oxtoby dunlin 60 x ${lyingIn(bot, "bin Bram Oxtoby", "Dunlin 60 X")}`);
    await count("bin oxtoby dunlin 60 x 1");
    await bot.settle();
    expect(driver().kind).toBe("order.confirmed");
    expect(calls(bot, "call.gone", DRIVER_NUMBER)).toEqual([]);
    expect(cardText(await count("bin oxtoby dunlin 60 x 0"))).toContain(`Order ${DRIVER_NUMBER} held Dunlin 60 X`);
    await bot.settle();
    expect(driver().kind).toBe("order.draft");
    expect(recorded(bot).filter(({ action }) => action === "order.replan")).toHaveLength(1);
  });

  it("does not touch an order that is being built: its parts have left the stock", async () => {
    await bringTo(bot, "building");
    await count("bin oxtoby dunlin 60 x 0");
    await bot.settle();
    expect(driver().kind).toBe("order.building");
  });
});
