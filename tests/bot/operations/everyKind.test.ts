import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Card } from "../../../bot/chat/types.ts";
import type { Bag, SpecClub } from "../../../core/bag/specClub.ts";
import { bendsOf, headBySerial } from "../../../db/repositories/heads.ts";
import { openOrdersOf } from "../../../db/repositories/orders.ts";
import { partsInReach } from "../../../db/repositories/partsInReach.ts";
import { allPlayers } from "../../../db/repositories/people.ts";
import { owedToBins } from "../../../db/repositories/replenishment.ts";
import { sheetsOf } from "../../../db/repositories/sheets.ts";
import { liveSpec } from "../../../db/repositories/week.ts";
import { handToPlayer } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, maren } from "../../support/people.ts";
import { cardOf, cardText, labels, newest, orderPost, sheetPost, venueTime } from "../../support/readCard.ts";

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
const order = (): Card => orderPost(bot, NUMBER).card;
const sheet = (): Card => sheetPost(bot, NUMBER).card;

async function say(who: typeof maren, text: string): Promise<void> {
  await bot.say(who, text);
  await bot.settle();
}

async function press(who: typeof maren, card: Card, label: string): Promise<void> {
  await bot.press(who, card, label);
  await bot.settle();
}

/** The technician's presses, without glue. */
async function work(): Promise<void> {
  await press(dessa, sheet(), "Start");
  await press(dessa, sheet(), "Done");
}

const playerId = (alias: string) => allPlayers(bot.db).find(({ name }) => name?.toLowerCase().includes(alias))?.id ?? (0 as never);
const bagOf = (alias: string): Bag => liveSpec(bot.db, playerId(alias))?.bag ?? { version: 1, clubs: [], backups: [] };
const clubOf = (alias: string, club: string): SpecClub | undefined => bagOf(alias).clubs.find((known) => known.club === club);

async function intoTheBag(): Promise<void> {
  await handToPlayer(bot, NUMBER);
  await bot.settle();
  await press(maren, order(), "In the bag");
}

describe("a turn (common practice, no source)", () => {
  it("shows what it changes, is read and looked at, and leaves mark and readings in the spec", async () => {
    const before = clubOf("halloway", "driver");
    await say(maren, "turn halloway driver to strong 1, its in the truck go");
    expect(order().kind).toBe("order.confirmed");
    expect(cardText(order())).toContain("Sleeve standard > strong 1");
    expect(cardText(order())).toContain("logo down > turned to the side");
    await work();
    await say(dessa, `measured ${NUMBER} loft 8.8 face 2.5 open`);
    expect(order().kind).toBe("order.finalCheck");
    expect(cardText(sheet())).toContain("Still to measure: look at the sleeve mark");
    await press(dessa, sheet(), "Looks as written");
    expect(order().kind).toBe("order.ready");
    await intoTheBag();
    expect(clubOf("halloway", "driver")).toMatchObject({ sleeveMark: "strong 1", squaredLoftDeg: 8.8, soledFaceDeg: 2.5, logo: null });
    expect(clubOf("halloway", "driver")?.headSerial).toBe(before?.headSerial);
  });

  it("is not ready at another mark than the one written, and only the lead may take that", async () => {
    await say(maren, "turn halloway driver to strong 1, its in the truck go");
    await work();
    await say(dessa, `measured ${NUMBER} loft 8.8 face 2.5 open sleeve strong ½`);
    expect(cardText(sheet())).toContain("sleeve mark strong 1 > strong ½ off");
    expect(order().kind).toBe("order.finalCheck");
    expect(cardText(cardOf(await bot.invoke(maren, "order accept", { order: String(NUMBER), reason: "he likes it" })))).toContain("lead only");
  });

  it("has no sleeve to turn on a bonded head, and says what would do", async () => {
    await say(maren, "turn oxtoby 7i to strong 1 go");
    expect(order().kind).toBe("order.draft");
    expect(cardText(order())).toContain("there is no sleeve to turn");
    expect(labels(order())).not.toContain("Go");
  });
});

describe("work on a club that has to come in", () => {
  it("gives its promise when the club is in the truck, and not before", async () => {
    await say(maren, "bend oxtoby 7i 1 weak, caddie brings it go");
    expect(order().data.promiseAt).toBeNull();
    expect(cardText(order())).toContain("The caddie brings the club; its clock starts when it is in the truck");
    bot.later(30);
    await press(dessa, sheet(), "In the truck");
    expect(order().data.promiseAt).toBeGreaterThan(bot.now());
    expect(labels(order())).not.toContain("In the truck");
  });

  it("asks who brings it, by a press, and Go is there all the same", async () => {
    await say(maren, "regrip oxtoby driver +1 wrap");
    expect(cardText(order())).toContain("Who brings the club?");
    await press(maren, order(), "Player brings it");
    expect(cardText(order())).toContain("The player brings the club");
    await press(maren, order(), "Go");
    expect(order().kind).toBe("order.confirmed");
  });

  it("starts its clock by the press of Start when nobody said that it is in", async () => {
    await say(maren, "bend oxtoby 7i 1 weak, caddie brings it go");
    await press(dessa, sheet(), "Start");
    expect(order().kind).toBe("order.building");
  });
});

describe("a bend (arithmetic of one degree; common practice, no source)", () => {
  it("is read as found and as left, counts with every bend before, and leaves its loft in the spec", async () => {
    const loft = clubOf("oxtoby", "7i")?.squaredLoftDeg ?? 0;
    await say(maren, "bend oxtoby 7i 1 weak, in the truck go");
    await work();
    await say(dessa, `measured ${NUMBER} 7i ${loft}>${loft + 1} 61>61`);
    expect(cardText(sheet())).toContain(`As found > as left: loft ${loft.toFixed(1)} > ${(loft + 1).toFixed(1)}`);
    expect(order().kind).toBe("order.ready");
    await intoTheBag();
    expect(clubOf("oxtoby", "7i")?.squaredLoftDeg).toBe(loft + 1);
  });

  it("is kept on the head it was done to, with how far it really went", async () => {
    await say(maren, "build toll 7i like gamer go");
    const { plan } = sheetOf("toll").sheetPlan;
    expect(plan?.choice.bend).not.toBeNull();
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Glue on");
    await press(dessa, sheet(), "Done");
    const { squaredLoftDeg = 0, seatedLieDeg = 0 } = plan?.choice.attitude ?? {};
    await say(dessa, `measured ${NUMBER} loft ${squaredLoftDeg.toFixed(1)} lie ${seatedLieDeg.toFixed(1)} swing d2.25 length 36 3/4`);
    expect(order().kind).toBe("order.ready");
    expect(bendsOf(bot.db, plan?.choice.head.id ?? (0 as never))).toEqual([plan?.choice.bend]);
    const { head, bend } = plan?.choice ?? {};
    expect(headBySerial(bot.db, head?.serial ?? "")?.soledLoftDeg, "it lies in a drawer as it was bent").toBeCloseTo(
      (head?.soledLoftDeg ?? 0) + (bend?.loftChangeDeg ?? 0),
      9,
    );
  });

  it("past the limit is refused with the limit and what would do", async () => {
    await say(maren, "bend oxtoby 7i 5 weak, in the truck go");
    expect(cardText(order())).toContain("Past the loft limit: 5.0 with all its bends, 4.0 at most. Another head would do");
  });

  it("answers two less bounce at the same loft with what can give it", async () => {
    await say(maren, "bend quarrie lw bounce 4, in the truck go");
    expect(cardText(order())).toMatch(/Bounce goes with loft\. .*another grind or sole work by a qualified grinder/);
  });
});

describe("a regrip", () => {
  it("takes the grip from the player's own bin, which is owed it from then on", async () => {
    const id = playerId("oxtoby");
    const truckId = openTruck();
    const inBin = () =>
      partsInReach(bot.db, { truckId, playerId: id }).grips.find(({ inPlayersBin, model }) => inPlayersBin && model.name === "Gorse Standard")?.free;
    const before = inBin() ?? 0;
    await say(maren, "regrip oxtoby driver, in the truck go");
    expect(inBin(), "held at confirm").toBe(before - 1);
    await work();
    expect(inBin(), "consumed at pull").toBe(before - 1);
    expect(owedToBins(bot.db, truckId).map(({ part, quantity }) => [part, quantity])).toContainEqual(["Gorse Standard", 1]);
    await press(dessa, sheet(), "Looks as written");
    expect(order().kind).toBe("order.ready");
  });

  it("gives the grip back when it is scratched", async () => {
    const truckId = openTruck();
    const free = () => partsInReach(bot.db, { truckId, playerId: playerId("oxtoby") }).grips.reduce((sum, row) => sum + row.free, 0);
    const before = free();
    await say(maren, "regrip oxtoby driver, in the truck go");
    await press(maren, order(), "Scratch");
    expect(free()).toBe(before);
  });
});

const openTruck = () => {
  const [row] = openOrdersOf(bot.db, playerId("quarrie"));
  return row?.truckId ?? (1 as never);
};

describe("a reshaft", () => {
  it("keeps head, sleeve and mark, takes a shaft, and is measured as a build is", async () => {
    const before = clubOf("wexcombe", "3w");
    await say(maren, "reshaft wexcombe 3w dunlin 70 x, in the truck go");
    const { plan } = sheetOf("wexcombe").sheetPlan;
    expect(plan?.choice.head.serial).toBe(before?.headSerial);
    expect(plan?.choice.mark).toBe(before?.sleeveMark);
    expect(plan?.shaft?.model.name).toBe("Dunlin 70 X");
    /** The head reads as it does on record: nothing of it was changed. */
    expect(plan?.choice.attitude.squaredLoftDeg).toBeCloseTo(before?.squaredLoftDeg ?? 0, 6);
    expect(plan?.predicted.lengthMm).toBe(before?.lengthMm);
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Glue on");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} loft 14.5 face 0.3 open length 43 1/4`);
    expect(cardText(sheet())).toContain("Still to measure: swing");
  });
});

const sheetOf = (alias: string) => {
  const row = openOrdersOf(bot.db, playerId(alias)).find(({ number }) => number === NUMBER);
  const [first] = row === undefined ? [] : sheetsOf(bot.db, row);
  if (first === undefined) {
    throw new Error("no sheet");
  }
  return first;
};

describe("a swap", () => {
  it("lays the old head into the player's bin", async () => {
    const before = clubOf("oxtoby", "driver");
    await say(maren, "swap oxtoby driver head cairn 9 loft 9.0, in the truck go");
    await work();
    const old = headBySerial(bot.db, before?.headSerial ?? "");
    expect(old?.place).toBe("bin Bram Oxtoby");
    expect(old?.massG).toBe(before?.headMassG);
    /** Back on the sleeve at the mark it was played at it would read as it did. */
    expect(old?.soledFaceDeg).toBeDefined();
  });

  it("lays it there too when it is measured without a press of Done", async () => {
    const before = clubOf("oxtoby", "driver");
    await say(maren, "swap oxtoby driver head cairn 9 loft 9.0, in the truck go");
    await press(dessa, sheet(), "Start");
    expect(headBySerial(bot.db, before?.headSerial ?? "")).toBeNull();
    const { squaredLoftDeg: loft, soledFaceDeg: face } = sheetOf("oxtoby").sheetPlan.plan?.choice.attitude ?? {};
    const { swingWeightPoints } = sheetOf("oxtoby").sheetPlan.plan?.predicted ?? {};
    const text = `loft ${loft?.toFixed(2)} face ${Math.abs(face ?? 0).toFixed(2)} ${(face ?? 0) < 0 ? "closed" : "open"} swing d${swingWeightPoints?.toFixed(1)}`;
    await say(dessa, `measured ${NUMBER} ${text}`);
    expect(order().kind).toBe("order.ready");
    expect(headBySerial(bot.db, before?.headSerial ?? "")?.place).toBe("bin Bram Oxtoby");
  });
});

describe("another grind", () => {
  it("frees the model of the gamer: a fresh wedge of the grind written is found", async () => {
    await say(maren, "build toll lw like gamer grind heel-relieved");
    expect(sheetOf("toll").sheetPlan.plan?.choice.head.model).toMatchObject({ name: "Tarn Heel-Relieved", grind: "heel-relieved" });
  });
});

describe("grind, stamp, repair and check", () => {
  it("measures mass and bounce after sole work, wished or not", async () => {
    await say(maren, "grind quarrie lw more heel relief, in the truck go");
    expect(cardText(order())).toContain("By a qualified grinder");
    await work();
    await say(dessa, `measured ${NUMBER} bounce 7`);
    expect(cardText(sheet())).toContain("Still to measure: head");
    await say(dessa, `measured ${NUMBER} headweight 297`);
    expect(order().kind).toBe("order.ready");
  });

  it("looks at a stamp, which is off when it reads otherwise", async () => {
    await say(maren, "stamp oxtoby lw BRAM 27\nin the truck go");
    await work();
    await say(dessa, `measured ${NUMBER} stamp BRAN 27`);
    expect(cardText(sheet())).toContain("stamp BRAM 27 > BRAN 27 off");
    await press(dessa, sheet(), "Looks as written");
    expect(order().kind).toBe("order.ready");
  });

  it("asks of a repair what is wrong", async () => {
    await say(maren, "repair wexcombe driver, in the truck go");
    expect(cardText(order())).toContain("what is wrong");
  });

  it("reads every club of a bag check, and is ready when all are", async () => {
    await say(maren, "check toll 7i 8i, in the truck go");
    await work();
    await say(dessa, `measured ${NUMBER} loft 34.8 lie 62`);
    expect(newest(bot, "plover-bench", ({ kind }) => kind === "ask").card.title).toContain("of which club?");
    await say(dessa, `measured ${NUMBER} 7i 34.5>34.8 62.5>62`);
    expect(order().kind).toBe("order.finalCheck");
    await say(dessa, `measured ${NUMBER} 8i 39 62.8`);
    expect(order().kind).toBe("order.ready");
  });
});

describe("broken in a round", () => {
  it("is answered with the nearest finished club and where it is, and offers a build", async () => {
    await say(maren, "oxtoby broke driver on 12");
    expect(cardText(order())).toMatch(/Nearest finished: driver 2018, backups Bram Oxtoby, truck Plover/);
    expect(cardText(order())).toContain("ask the referee");
    await press(maren, order(), "Go");
    await work();
    expect(order().kind).toBe("order.ready");
    await intoTheBag();
    expect(clubOf("oxtoby", "driver")?.headSerial).toBe("2018");
    expect(bagOf("oxtoby").backups.some(({ club }) => club === "driver")).toBe(false);
  });

  it("builds one instead", async () => {
    await say(maren, "oxtoby broke driver on 12");
    await press(maren, order(), "Build one");
    expect(order().title).toBe(`${NUMBER} OXTOBY RH driver · draft`);
    expect(labels(order())).toContain("Go");
  });

  it("says when there is no finished club, and Go is not there", async () => {
    await say(maren, "oxtoby broke 7i");
    expect(cardText(order())).toContain("No finished 7i of Bram Oxtoby");
    expect(labels(order())).not.toContain("Go");
    expect(labels(order())).toContain("Build one");
  });
});

describe("sets, copies and set changes", () => {
  it("makes a sheet a club, no part given twice", async () => {
    await say(maren, "build toll irons 4-pw like gamer go");
    const { clubs } = order().data as { clubs: readonly { club: string; headSerial: string }[] };
    expect(clubs.map(({ club }) => club)).toEqual(["4i", "5i", "6i", "7i", "8i", "9i", "pw"]);
    expect(new Set(clubs.map(({ headSerial }) => headSerial)).size).toBe(7);
    expect(order().title).toContain("4i–PW");
  });

  it("makes two sheets of two drivers, each with a head of its own", async () => {
    await say(maren, "2 drivers like gamer for oxtoby to test");
    const { clubs } = order().data as { clubs: readonly { club: string; copyNumber: number; headSerial: string }[] };
    expect(clubs.map(({ copyNumber }) => copyNumber)).toEqual([1, 2]);
    expect(clubs[0]?.headSerial).not.toBe(clubs[1]?.headSerial);
    await press(maren, order(), "Go");
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Glue on");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} driver 2 loft 9.6 face 0.1 open swing d3 length 45 1/4`);
    expect(cardText(sheet())).toContain("driver 2 loft");
    expect(order().kind).toBe("order.finalCheck");
  });

  it("keeps the bag at fourteen over a set change, and takes the old club out when the new one is in", async () => {
    const before = bagOf("toll").clubs.map(({ club }) => club);
    await say(maren, "build toll out 4i in 7w, head cairn 7 loft 21 length 42 shaft dunlin 70 s grip gorse standard round go");
    expect(cardText(order())).toContain("Out: 4i; the bag stays at 14");
    await press(dessa, sheet(), "Start");
    await press(dessa, sheet(), "Glue on");
    await press(dessa, sheet(), "Done");
    await say(dessa, `measured ${NUMBER} loft 21.1 face 0.9 open swing d6.25 length 42`);
    await intoTheBag();
    expect([...bagOf("toll").clubs.map(({ club }) => club)].sort()).toEqual([...before.filter((club) => club !== "4i"), "7w"].sort());
  });

  it("says how many clubs a change makes when it is not fourteen", async () => {
    await say(maren, "build toll out 4i 5i in 7w, head cairn 7 loft 21 length 42 shaft dunlin 70 s grip gorse standard round");
    expect(cardText(order())).toContain("that makes 13 clubs, not 14");
  });

  it("rebuilds a whole bag, fourteen sheets, what is short first", async () => {
    await say(maren, "build oxtoby bag");
    expect(order().title).toContain("14 clubs");
    const { clubs } = order().data as { clubs: readonly unknown[] };
    expect(clubs).toHaveLength(14);
  });
});
