import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { addHead, headBySerial } from "../../../db/repositories/heads.ts";
import { heldBy } from "../../../db/repositories/holds.ts";
import { ordersIn } from "../../../db/repositories/orders.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import { sheetsOf } from "../../../db/repositories/sheets.ts";
import { addStockEntry } from "../../../db/repositories/stock.ts";
import { partsLying } from "../../../db/repositories/stockCount.ts";
import { place } from "../../../db/schema/stock.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { dessa, iver, maren } from "../../support/people.ts";
import { calls, cardText, newest, orderPost, recorded, sheetPost, venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const [FIRST, SECOND] = [6, 7];

/** By serial: soled loft and soled face. Turned square, the first reads 12.2 true at standard and the closed one 12.0. */
const OPEN = { "7001": [12.5, 0.5] } as const;
const CLOSED = { "7002": [10.75, -2] } as const;

/** Left-handed driver heads stamped 12: the demo week has none. */
function addHeads(heads: Readonly<Record<string, readonly [number, number]>>): void {
  const model = modelsOf<{ readonly name: string }>(bot.db, "head").find(({ name }) => name === "Cairn") as { readonly id?: never };
  const drawer = bot.db.select().from(place).where(eq(place.label, "D-2")).get();
  write(bot.db, (tx) => {
    for (const [serial, [soledLoftDeg, soledFaceDeg]] of Object.entries(heads)) {
      addHead(tx, {
        serial,
        modelId: model.id ?? (0 as never),
        hand: "left",
        stampedLoftDeg: 12,
        soledLoftDeg,
        designLieDeg: 56.5,
        soledFaceDeg,
        bounceDeg: null,
        massG: 197,
        measuredAt: bot.now(),
        placeId: drawer?.id ?? null,
      });
    }
  });
}

const PARTS = "length 45 swing d2 shaft dunlin 50 s grip gorse standard round";
const serialOf = (number: number) => orderPost(bot, number).card.data.headSerial;

async function say(who: typeof maren, text: string): Promise<void> {
  await bot.say(who, text);
  await bot.settle();
}

async function go(number: number): Promise<void> {
  await bot.press(maren, orderPost(bot, number).card, "Go");
  await bot.settle();
}

describe("heads wanted by several open orders", () => {
  it("a new draft steps aside for a fresh one that was here before, and says so", async () => {
    await say(maren, "build oxtoby driver like gamer loft 9.25, face 0.5 open");
    await say(iver, "build oxtoby driver like gamer loft 9.25, face 0.5 open, for backup");
    expect(serialOf(SECOND)).not.toBe(serialOf(FIRST));
    expect(cardText(orderPost(bot, SECOND).card)).toContain(`Head ${serialOf(FIRST)} is nearer, and goes to ${FIRST}`);
  });

  it("a confirmed order gives its head to one that needs it more, when another is as near to what it wrote", async () => {
    addHeads(OPEN);
    await say(maren, `build halloway driver head cairn stamped 12 ${PARTS}`);
    await go(FIRST);
    expect(serialOf(FIRST)).toBe("7001");
    addHeads(CLOSED);
    await say(iver, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS} for backup`);
    expect(serialOf(SECOND)).toBe("7001");
    expect(serialOf(FIRST), "nothing moves before Go").toBe("7001");
    await go(SECOND);
    expect([serialOf(FIRST), serialOf(SECOND)]).toEqual(["7002", "7001"]);
    expect(orderPost(bot, FIRST).card.kind).toBe("order.confirmed");
    expect(newest(bot, "plover-orders", ({ kind }) => kind === "order.headMoved").card.title).toBe(`${FIRST} takes head 7002 now`);
    expect(recorded(bot).map(({ action }) => action)).toContain("order.headMoved");
    expect(calls(bot, "call.moved", FIRST)).toEqual([]);
    const held = allTrucks(bot.db).flatMap(({ id }) =>
      ordersIn(bot.db, id, ["confirmed"]).flatMap((order) => sheetsOf(bot.db, order).flatMap((sheet) => heldBy(bot.db, sheet.id))),
    );
    for (const serial of ["7001", "7002"]) {
      expect(
        held.filter(({ headId }) => headId === headBySerial(bot.db, serial)?.id),
        serial,
      ).toHaveLength(1);
    }
  });

  it("never takes the head of a confirmed order that would end further from what it wrote", async () => {
    addHeads({ ...OPEN, ...CLOSED });
    await say(maren, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS}`);
    await go(FIRST);
    await say(iver, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS} for backup, now`);
    expect([serialOf(FIRST), serialOf(SECOND)]).toEqual(["7001", "7002"]);
  });

  it("looks past a confirmed order's hold of a head alone: the last grip it holds is short for others", async () => {
    addHeads({ ...OPEN, ...CLOSED });
    await say(maren, `build halloway driver head cairn stamped 12 ${PARTS}`);
    await go(FIRST);
    const truck = allTrucks(bot.db).find(({ id }) => ordersIn(bot.db, id, ["confirmed"]).some(({ number }) => number === FIRST));
    const rival = truck === undefined ? undefined : ordersIn(bot.db, truck.id, ["confirmed"]).find(({ number }) => number === FIRST);
    const [sheet] = rival === undefined ? [] : sheetsOf(bot.db, rival);
    const grip = sheet?.sheetPlan.plan?.grip;
    write(bot.db, (tx) => {
      for (const { model, place: at, lying, held } of partsLying(tx)) {
        if (model.id === grip?.model.id && rival !== undefined) {
          const entry = { partModelId: model.id, placeId: at.id, quantityChange: held - lying };
          addStockEntry(tx, { ...entry, reason: "counted", personId: rival.postedById, at: bot.now() });
        }
      }
    });
    await say(iver, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS} for backup`);
    const { card } = orderPost(bot, SECOND);
    expect(card.data.headSerial).toBeNull();
    expect(card.buttons.map(({ label }) => label)).not.toContain("Go");
  });

  it("never touches a sheet whose first step has begun", async () => {
    addHeads(OPEN);
    await say(maren, `build halloway driver head cairn stamped 12 ${PARTS}`);
    await go(FIRST);
    addHeads(CLOSED);
    await bot.press(dessa, sheetPost(bot, FIRST).card, "Start");
    await bot.settle();
    await say(iver, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS} for backup`);
    expect(serialOf(SECOND)).toBe("7002");
  });

  it("plans anew when the order that was to move has begun by the time of Go", async () => {
    addHeads(OPEN);
    await say(maren, `build halloway driver head cairn stamped 12 ${PARTS}`);
    await go(FIRST);
    addHeads(CLOSED);
    await say(iver, `build halloway driver head cairn stamped 12 face 0.5 open ${PARTS} for backup`);
    const seen = orderPost(bot, SECOND).card;
    await bot.press(dessa, sheetPost(bot, FIRST).card, "Start");
    await bot.settle();
    await bot.press(iver, seen, "Go");
    await bot.settle();
    expect(orderPost(bot, SECOND).card.kind).toBe("order.draft");
    expect([serialOf(FIRST), serialOf(SECOND)]).toEqual(["7001", "7002"]);
  });
});
