import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Card } from "../../../bot/chat/types.ts";
import { allPlayers } from "../../../db/repositories/people.ts";
import { liveSpec } from "../../../db/repositories/week.ts";
import { handToPlayer } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, iver, maren } from "../../support/people.ts";
import { calls, cardOf, cardText, labels, orderPost, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-04T09:00"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

/** The first order a test posts is the sixth of the truck's week. */
const NUMBER = 6;
const ruben = { person: "ruben", channel: "avocet-orders" };
const order = (number = NUMBER, channel?: string): Card => orderPost(bot, number, channel).card;
const sheet = (): Card => sheetPost(bot, NUMBER).card;

async function say(who: typeof maren, text: string): Promise<string> {
  const reply = await bot.say(who, text);
  await bot.settle();
  return reply === null ? "" : cardText(cardOf(reply));
}

async function press(who: typeof maren, card: Card, label: string): Promise<string> {
  const reply = await bot.press(who, card, label);
  await bot.settle();
  return reply === null ? "" : cardText(cardOf(reply));
}

/** Everything that stands in the order channel. */
const posted = (): string =>
  bot
    .posts("plover-orders")
    .map(({ card }) => cardText(card))
    .join("\n");

describe("an order that cannot be built as written", () => {
  it("says why, offers no finished club and gives no time", async () => {
    await say(maren, "turn quarrie 7i to strong 1");
    expect(cardText(order())).not.toMatch(/No finished|referee|In hand|No time/);
    expect(cardText(order())).toContain("there is no sleeve to turn");
  });

  it("is not said to need what was written: like gamer", async () => {
    await say(maren, "build toll out 4i in 7w like gamer");
    expect(cardText(order())).toContain("Still needed");
    expect(cardText(order())).not.toContain("Or add: like gamer");
  });

  it("does not take a confirmed order from the bench: the change is refused", async () => {
    await say(maren, "regrip oxtoby driver gorse standard +1 wrap go");
    await say(maren, `${NUMBER} make it d4`);
    expect(posted()).toContain(`${NUMBER} stays as it was confirmed`);
    expect(order().title).toContain("confirmed");
  });

  it("is nudged without a Go, and told what to press instead", async () => {
    await say(iver, "linnea broke sw");
    await say(iver, "turn toll 7i to strong 1");
    bot.later(4);
    await bot.settle();
    const [broken] = calls(bot, "call.nudge", NUMBER);
    const [turn] = calls(bot, "call.nudge", NUMBER + 1);
    expect([broken, turn].map((card) => (card === undefined ? [] : labels(card)))).toEqual([["Build one", "Drop"], ["Drop"]]);
    expect(turn === undefined ? "" : cardText(turn)).toContain("it cannot be built as written");
  });

  it("tells the technician to stop when a confirmed one becomes a draft again", async () => {
    await say(maren, "regrip oxtoby driver +1 wrap, in the truck go");
    await say(maren, `${NUMBER} grip gorse standard round`);
    expect(cardText(sheet())).toContain("Stop: its rep changes it");
    expect(cardText(sheet())).not.toContain("Caution");
  });
});

describe("what was written", () => {
  it.each([
    ["build toll driver head cairn 9 loft 9 like gamer", "Wrote cairn, stamped 9, 9, like gamer"],
    ["bend toll lw bounce 12", "Wrote bounce 12"],
    ["build wexcombe sw like gamer, grind wide", "Wrote grind wide, like gamer"],
  ])("is named where a number alone would not say of what: %s", async (text, wrote) => {
    await say(maren, text);
    expect(cardText(order())).toContain(wrote);
  });

  it("is not said twice, nor that nothing was", async () => {
    await say(maren, "repair wexcombe driver rattles");
    expect(cardText(order()).match(/rattles/g)).toHaveLength(1);
    expect(cardText(order())).not.toContain("Wrote");
  });

  it("shows until when it is wanted", async () => {
    await say(maren, "build oxtoby driver like gamer by tue 14:00");
    expect(cardText(order())).toContain("wanted by 14:00");
  });

  it("stays secret though misspelt: no card shows a restricted name with one letter wrong", async () => {
    await say(maren, "build toll driver head menhr 9 like gamer");
    expect(posted()).not.toMatch(/menhi?r/i);
  });
});

describe("a text to stamp", () => {
  it.each([
    ["stamp oxtoby lw THE KING", "Stamp THE KING"],
    ["stamp oxtoby lw the KING", "Stamp KING"],
    ["stamp oxtoby lw, BO 27", "Stamp BO 27"],
  ])("is taken as typed in capitals: %s", async (text, stamped) => {
    await say(maren, text);
    expect(cardText(order()).split("\n")).toContain(stamped);
  });

  it("goes on several clubs named with a comma", async () => {
    await say(maren, "stamp toll pw, gw MT");
    expect(order().title).toContain("stamp PW GW");
    expect(cardText(order())).toContain("GW MT");
  });
});

describe("the same order a moment ago", () => {
  it("is another one when something else is wrong with the club", async () => {
    await say(maren, "repair quarrie 7i rattles");
    await say(maren, "repair quarrie 7i cracked");
    expect(order(NUMBER + 1).title).toContain("repair 7i");
    await say(maren, "repair quarrie 7i cracked");
    expect(posted()).toContain("asks for the very same");
  });
});

describe("scratch", () => {
  it("names what was pulled once the work has begun, to be counted back in; nothing before", async () => {
    await say(maren, "regrip oxtoby driver +1 wrap, in the truck go");
    await say(maren, "regrip quarrie driver, in the truck go");
    expect(await press(maren, order(NUMBER + 1), "Scratch")).not.toContain("Pulled");
    await press(dessa, sheet(), "Start");
    expect(await press(maren, order(), "Scratch")).toContain("Pulled from stock: Gorse Standard. Count what is whole back in (/stock count)");
    expect(cardText(sheet())).toContain("Stop: withdrawn");
  });

  it("is typed as drop as well", async () => {
    await say(maren, "build oxtoby driver like gamer");
    await say(maren, `drop ${NUMBER}`);
    expect(order().kind).toBe("order.withdrawn");
  });
});

describe("a held order", () => {
  it("has no time, and keeps what was promised in sight", async () => {
    await say(maren, "regrip oxtoby driver +1 wrap, in the truck go");
    await press(maren, order(), "Hold");
    expect(cardText(order())).toMatch(/No time while held; promised \d\d:\d\d/);
    expect(cardText(order())).not.toContain("In hand");
  });
});

describe("a hand-over", () => {
  it("warns of nothing that sets where nothing was glued or gripped", async () => {
    await say(maren, "bend oxtoby 7i 1 weak, in the truck go");
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} 7i 35>36 61>61`);
    expect(await press(maren, order(), "To player")).toContain("It may take full swings now");
  });

  it("asks anew whether it is in the bag after the club came back and went out again", async () => {
    await say(maren, "bend oxtoby 7i 1 weak, in the truck go");
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} 7i 35>36 61>61`);
    await press(maren, order(), "To caddie");
    await press(maren, order(), "Coming back");
    await press(maren, order(), "To player");
    expect(cardText(order())).toContain("Taken by player; in the bag?");
  });
});

describe("a club of the record", () => {
  const bagOf = (name: string) => {
    const player = allPlayers(bot.db).find((known) => known.name === name);
    return player === undefined ? undefined : liveSpec(bot.db, player.id)?.bag;
  };

  it("weighs its head with the screws that hang on it", async () => {
    await say(maren, "swap toll driver head cairn 9 loft 9.0, in the truck go");
    expect(cardText(sheet())).toMatch(/Head 0414 Cairn, D-7, 195\.4 g\n1 × screw 2 g\nLead 0\.9 g/);
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} loft 9 face 0.5 open swing d2`);
    await handToPlayer(bot, NUMBER);
    await bot.settle();
    await press(maren, order(), "In the bag");
    const driver = bagOf("Marrick Toll")?.clubs.find(({ club }) => club === "driver");
    expect(driver?.headSerial).toBe("0414");
    expect(driver?.headMassG).toBeCloseTo(195.4 + 2 + 0.9, 0);
  });

  it("leaves the backup's place behind when the backup is played", async () => {
    await say(maren, "toll broke driver");
    await press(maren, order(), "Go");
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Done");
    await handToPlayer(bot, NUMBER);
    await bot.settle();
    await press(maren, order(), "In the bag");
    expect(bagOf("Marrick Toll")?.clubs.find(({ club }) => club === "driver")?.note).toBeNull();
  });
});

describe("a broken club", () => {
  it("gets no Go and no time from a truck where its finished twin is not", async () => {
    await say(ruben, "toll broke driver");
    const card = order(1, "avocet-orders");
    expect(cardText(card)).toContain("truck Plover");
    expect(cardText(card)).toContain("It is not in this truck");
    expect(cardText(card)).not.toContain("In hand");
    expect(labels(card)).toEqual(["Build one", "Change", "Drop"]);
  });
});

describe("heads wanted twice", () => {
  it("does not say that the head it takes goes to another order", async () => {
    await say(maren, "build toll driver head menhir 9 like gamer");
    await say(maren, "build oxtoby driver head menhir 9 like gamer");
    expect(cardText(order(NUMBER + 1))).not.toMatch(/Head 0288 is nearer, and goes to/);
  });
});

describe("work on several clubs", () => {
  it("speaks of them in the plural", async () => {
    await say(maren, "check toll 7i 8i, caddie brings it");
    expect(cardText(order())).toContain("No time before the clubs are in the truck");
    expect(cardText(order())).toContain("The caddie brings the clubs; the clock starts when they are in the truck");
  });
});

describe("after roll-out", () => {
  it("takes a time by courier, as it says it would", async () => {
    await say(maren, "build oxtoby driver like gamer by thu 10:00");
    expect(posted()).toContain("add: to courier");
    await say(maren, "build oxtoby driver like gamer by thu 10:00 to courier");
    expect(order().title).toContain("OXTOBY RH driver · draft");
  });
});
