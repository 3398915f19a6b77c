import { readFileSync } from "node:fs";
import fc from "fast-check";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { attitudeOf } from "../../../../core/head/attitudeOf.ts";
import { NO_TILT } from "../../../../core/head/sleeveTilt.ts";
import type { Hand } from "../../../../core/kinds.ts";
import { degrees } from "../../../../core/quantity/units.ts";
import { headsOnRecord } from "../../../../db/repositories/stockCount.ts";
import { partModel, place, shaftPiece } from "../../../../db/schema/stock.ts";
import { bringTo, DRIVER_NUMBER } from "../../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { maren, petra } from "../../../support/people.ts";
import { cardText, lineText, orderPost, venueTime } from "../../../support/readCard.ts";
import { askStock } from "./stockDesk.ts";

let bot: MemoryBot;
beforeAll(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bringTo(bot, "confirmed");
});
afterEach(() => expect(bot.bugs).toEqual([]));
afterAll(() => bot.close());

const find = (text: string, who: typeof maren = maren) => askStock(bot, "find", text, who);

const rowsOf = (file: string): readonly Readonly<Record<string, string>>[] => {
  const [header = "", ...lines] = readFileSync(new URL(`../../../../fixtures/scenario/${file}`, import.meta.url), "utf8")
    .trim()
    .split("\n");
  return lines.map((line) => Object.fromEntries(line.split(",").map((cell, at) => [header.split(",")[at] ?? "", cell])));
};
const models = new Map(rowsOf("head-models.csv").map((row) => [row.name ?? "", row]));

/** Every head of the week's file with what it reads at standard: in fixtures/scenario the shaft leans 1° flat there, clock 270. */
const heads = rowsOf("heads.csv").map((row) => {
  const model = models.get(row.model ?? "");
  const bare = {
    soledLoftDeg: degrees(Number(row.soled_loft_deg)),
    soledFaceDeg: degrees(Number(row.soled_face_deg)),
    designLieDeg: degrees(Number(row.design_lie_deg)),
    hand: row.hand as Hand,
  };
  const reads = attitudeOf(bare, model?.sleeve_family === "" ? NO_TILT : { tiltDeg: degrees(1), clockDeg: degrees(270) });
  return {
    serial: row.serial ?? "",
    model: row.model,
    family: model?.family,
    grind: model?.grind,
    hand: row.hand,
    stamped: Number(row.stamped_loft_deg),
    massG: Number(row.mass_g),
    here: row.truck === "Plover",
    trueDeg: reads.squaredLoftDeg as number,
  };
});
type Head = (typeof heads)[number];

/** What a plain loop over the file finds: this truck first, then elsewhere, then what orders hold; heads in clubs left out. */
function expected(fits: (head: Head) => boolean, by: (head: Head) => number = ({ trueDeg }) => trueDeg): readonly string[] {
  const record = new Map(headsOnRecord(bot.db).map((row) => [row.head.serial, row]));
  const group = ({ serial, here }: Head): number => (record.get(serial)?.heldBy != null ? 2 : here ? 0 : 1);
  return heads
    .filter((head) => record.get(head.serial)?.place != null && fits(head))
    .sort((one, other) => group(one) - group(other) || by(one) - by(other) || (one.serial < other.serial ? -1 : 1))
    .map(({ serial }) => serial);
}

const serialsOf = (data: Readonly<Record<string, unknown>>): readonly string[] =>
  (data.heads as { readonly serial: string }[]).map(({ serial }) => serial);

describe("stock find: heads as a plain loop over the week's file finds them", () => {
  it.each<[string, (head: Head) => boolean, ((head: Head) => number)?]>([
    ["under 9 true, left hand?", (head) => head.trueDeg < 9 && head.hand === "left" && head.family !== "putter"],
    ["8.5 to 9 true driver right", (head) => head.trueDeg >= 8.5 && head.trueDeg <= 9 && head.family === "driver" && head.hand === "right"],
    ["driver 8.5-9", (head) => head.trueDeg >= 8.5 && head.trueDeg <= 9 && head.family === "driver"],
    ["cairn 9 under 8.8", (head) => head.model === "Cairn" && head.stamped === 9 && head.trueDeg < 8.8],
    ["scree 7i over 34", (head) => head.model === "Scree" && head.stamped === 35 && head.trueDeg > 34],
    ["scree 7 iron lh", (head) => head.model === "Scree" && head.stamped === 35 && head.hand === "left"],
    ["cairn 3w right", (head) => head.model === "Cairn 3" && head.hand === "right"],
    ["4 hybrid", (head) => head.model === "Rill" && head.stamped === 23],
    ["wedge 56 heel-relieved", (head) => head.family === "wedge" && head.stamped === 56 && head.grind === "heel-relieved"],
    ["any driver head under 197 g", (head) => head.family === "driver" && head.massG < 197, ({ massG }) => massG],
    ["left-handed putters heavier than 355 g", (head) => head.family === "putter" && head.hand === "left" && head.massG > 355, ({ massG }) => massG],
    ["driver nearest 9.25 true", (head) => head.family === "driver", ({ trueDeg }) => Math.abs(trueDeg - 9.25)],
    ["0417", (head) => head.serial === "0417"],
  ])("answers %j", async (question, fits, by) => {
    const card = await find(question);
    const wanted = expected(fits, by);
    expect(wanted.length).toBeGreaterThan(0);
    expect(serialsOf(card.data)).toEqual(wanted.slice(0, 15));
    expect(card.data).toMatchObject({ headCount: wanted.length, moreCount: Math.max(0, wanted.length - 15) });
    expect(cardText(card).includes(`and ${wanted.length - 15} more`)).toBe(wanted.length > 15);
  });

  it("shows stamped and true, the hand of a left-handed head, and where it lies", async () => {
    const { trueDeg } = heads.find(({ serial }) => serial === "0659") ?? { trueDeg: Number.NaN };
    const card = await find("0659");
    expect(card.title).toBe("1 head: serial 0659");
    expect(lineText(card.lines[0] ?? [])).toMatch(
      new RegExp(`^0659 Cairn LH stamped 9, true ${trueDeg.toFixed(1)} at standard, 1.1 open, lie [\\d.]+, 196.2 g, D-2$`),
    );
    expect(card.data.heads).toEqual([expect.objectContaining({ squaredLoftDeg: trueDeg, massG: 196.2, orderNumber: null, at: "here" })]);
  });

  it("shows a bonded head's true loft without a mark, and a wedge's bounce and grind", async () => {
    expect(cardText(await find("0355"))).toMatch(/0355 Tarn Heel-Relieved stamped 56, true 55\.8, .*bounce 9\.9 heel-relieved/);
  });

  it("marks what an order holds with its number, behind all others", async () => {
    const serial = String(orderPost(bot, DRIVER_NUMBER).card.data.headSerial);
    expect(cardText(await find(serial))).toContain(`held by order ${DRIVER_NUMBER}`);
  });

  it("says in which truck a head lies, and asks the same of every truck where there is none", async () => {
    expect(cardText(await find("driver under 7.2"))).toMatch(/D-1, truck Knot/);
    const card = await find("0659", { person: "petra", channel: "general" });
    expect(cardText(card)).toContain("D-2, truck Plover");
  });

  it("names the nearest when there is none, of the hand that was asked", async () => {
    const card = await find("driver under 7 true left");
    expect(card.title).toBe("No head: driver, under 7 true, left hand");
    const left = heads.filter(({ family, hand }) => family === "driver" && hand === "left").sort((one, other) => one.trueDeg - other.trueDeg);
    expect((card.data.nearest as { serial: string }[]).map(({ serial }) => serial)).toEqual(left.slice(0, 3).map(({ serial }) => serial));
    expect(card.data.heads).toEqual([]);
  });

  it("never ignores a word: what was not read is said beside the answer", async () => {
    const card = await find("driver under 9 fluffy");
    expect(card.tone).toBe("attention");
    expect(cardText(card)).toContain("Not read: fluffy");
    expect(cardText(card)).toContain("heads: driver, under 9 true");
    expect(cardText(await find("xyzzy"))).toContain("What is looked for?");
    expect(cardText(await find("dunln 60 x"))).toContain("meant Dunlin 60 X?");
  });

  it("shows an unreleased head by its code word alone, to the lead too", async () => {
    for (const who of [maren, petra])
      for (const question of ["lamplight", "menhir", "0288", "head 0288 under 9"]) {
        const text = JSON.stringify(await find(question, who));
        expect(text).toContain("lamplight");
        expect(text).not.toMatch(/menhir/i);
      }
  });
});

describe("stock find: counted parts and prepared shafts", () => {
  const stocked = rowsOf("stock.csv");

  it.each(["Dunlin 60 X", "Gorse Standard Round", "Cairn driver sleeve", "screw 4 g", "hat L"])(
    "says how many %s lie where, in whose bin",
    async (name) => {
      const card = await find(name.toLowerCase());
      const rows = stocked.filter(({ model }) => model === name);
      const parts = card.data.parts as { readonly place: string; readonly truck: string | null; readonly here: boolean; readonly name: string }[];
      expect(new Set(parts.map((part) => `${part.place} ${part.here ? "Plover" : (part.truck ?? "")}`))).toEqual(
        new Set(rows.map((row) => `${row.place} ${row.truck}`)),
      );
      expect(parts.every((part) => part.name === name)).toBe(true);
      expect(parts.map(({ here }) => here)).toEqual([...parts.map(({ here }) => here)].sort((one, other) => Number(other) - Number(one)));
    },
  );

  it("lists every model that a part of a name may mean, and what of them there is none of", async () => {
    expect((await find("which shafts have we, dunlin 60?")).title).toMatch(/^Dunlin 60 R, Dunlin 60 S, Dunlin 60 X: \d+ in this truck, \d+ in all$/);
    expect((await find("any gorse standard round left?")).title).toMatch(/^Gorse Standard Round: /);
  });

  it("says what orders hold of a part", async () => {
    expect(cardText(await find("dunlin 60 x"))).toMatch(/Dunlin 60 X: 2 in bin Bram Oxtoby, 1 held for orders/);
  });

  it("shows prepared shafts with their trim, sleeve, logo and place", async () => {
    const [shaft, sleeve] = ["Dunlin 60 X", "Cairn driver sleeve"].map((name) =>
      bot.db
        .select()
        .from(partModel)
        .all()
        .find((row) => row.name === name),
    );
    const rack = bot.db
      .select()
      .from(place)
      .all()
      .find(({ label }) => label === "main rack");
    if (shaft === undefined || sleeve === undefined || rack === undefined) throw new Error("the week has neither shaft nor rack");
    bot.db
      .insert(shaftPiece)
      .values({ modelId: shaft.id, state: "sleeved", tipTrimMm: 12.7, sleeveModelId: sleeve.id, logo: "down", placeId: rack.id, addedAt: bot.now() })
      .run();
    expect(cardText(await find("dunlin 60 x"))).toContain(
      "Dunlin 60 X, prepared: sleeved, tip 1/2 in (13 mm), Cairn driver sleeve, logo down, butt uncut, main rack",
    );
  });

  it("says that a part lies nowhere, and what is nearest", async () => {
    bot.db.insert(partModel).values({ kind: "grip", name: "Heather Extra Wide", facts: "{}" }).run();
    const card = await find("heather extra wide");
    expect(card.title).toBe("None on record: Heather Extra Wide");
    expect(cardText(card)).toContain("Nearest that there are: Heather Wide");
  });

  it("lists what lies in a place", async () => {
    expect((await find("bin oxtoby")).data).toMatchObject({
      parts: expect.arrayContaining([expect.objectContaining({ name: "Heather Wide", count: 1 })]),
    });
    expect((await find("what is in d12")).data.headCount).toBe(3);
  });
});

describe("stock with any text", () => {
  const words =
    "dunlin 60 x 60x gorse std standard round screw 4 g head heads 4711 0417 0288 D-7 d7 drawer main rack float bin oxtoby oxtoby's to in of cairn lamplight tarn full 3 7i wedge driver left right lh under over between at least and to 8.5 9 9,25 -1 0 1e9 8.5-9 true loft lie face open closed square bounce mass stamped hand kind,model,place,quantity shaft,Dunlin,main,4 serial,model,hand place,model,quantity empty ½ × − ° \" ' ; , / ? ! \u2028 \u0000".split(
      " ",
    );
  const noise = fc.oneof(fc.string({ unit: "binary", maxLength: 10 }), fc.string({ unit: "grapheme", maxLength: 8 }));
  const word = fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...words) }, { weight: 1, arbitrary: noise });
  const text = fc
    .array(fc.tuple(word, fc.constantFrom(" ", " ", " ", ", ", "\n", "")), { minLength: 1, maxLength: 16 })
    .map((pieces) => pieces.flat().join(""));

  it("always answers with a card, without NaN or undefined, and never with a bug", async () => {
    const asked = fc.asyncProperty(fc.constantFrom("receive", "count", "find", "replenish", ""), text, async (view, some) => {
      const card = await askStock(bot, view, some, petra);
      expect(cardText(card)).not.toMatch(/NaN|Infinity|undefined|\[object/);
      expect(bot.bugs).toEqual([]);
    });
    await fc.assert(asked, { numRuns: 100, interruptAfterTimeLimit: 2000 });
  });

  it.each(["receive", "count", "find"])("answers %s to a very long text within a moment", async (view) => {
    for (const piece of ["0 dunln 60 x\n", "D-7 0417 ", "under 9 ", "a,b;c/d "]) {
      const card = await askStock(bot, view, piece.repeat(100_000 / piece.length), petra);
      expect(card.lines.length).toBeLessThan(60);
    }
  });
});
