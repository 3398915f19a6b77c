import { eq } from "drizzle-orm";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { id } from "../../../../core/kinds.ts";
import { oweToBin } from "../../../../db/repositories/replenishment.ts";
import { head, place, replenishment, stockEntry } from "../../../../db/schema/stock.ts";
import { write } from "../../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { akiko, dessa, maren, petra } from "../../../support/people.ts";
import { cardOf, cardText, recorded, venueTime } from "../../../support/readCard.ts";
import { askStock, digest, headOf, lastEntry, lyingIn, placeOfHead } from "./stockDesk.ts";

let bot: MemoryBot;
// Every test here adds to the same record: each looks at what it has changed alone.
beforeAll(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => expect(bot.bugs).toEqual([]));
afterAll(() => bot.close());

/** The week's own orders have taken parts from bins: their rows are settled, so that a test sees its own. */
const settleOwed = () => bot.db.update(replenishment).set({ refilledAt: bot.now() }).run();
const receive = (text: string, who: typeof dessa = dessa) => askStock(bot, "receive", text, who);
const count = (text: string, who: typeof dessa = dessa) => askStock(bot, "count", text, who);
const aHead = "head 4711 Cairn right stamped 9 loft 9.1 lie 58 face 0.3 open mass 197.2 D-7";
const headHeader = "serial,model,hand,stamped_loft_deg,soled_loft_deg,design_lie_deg,soled_face_deg,bounce_deg,mass_g,measured_at,zone,place";

describe("stock: who may", () => {
  it.each(["receive", "count"])("refuses a rep who would %s, on record", async (view) => {
    const before = digest(bot);
    const card = await askStock(bot, view, "dunlin 60 x 4", maren);
    expect(card).toMatchObject({ kind: "refusal", tone: "refusal", title: `stock ${view} is for technician or lead` });
    expect(recorded(bot).at(-1)?.action).toBe(`refused stock ${view}`);
    expect(digest(bot)).toEqual(before);
  });

  it("refuses a viewer every view", async () => {
    expect((await askStock(bot, "find", "cairn 9", akiko)).kind).toBe("refusal");
  });

  it("lets the lead receive, and a rep find and see what bins are owed", async () => {
    expect((await receive("dunlin 60 x 1", petra)).kind).toBe("stock.received");
    expect((await askStock(bot, "find", "cairn 9", maren)).kind).toBe("stock.heads");
    expect((await askStock(bot, "replenish", "", maren)).kind).toBe("stock.replenish");
  });

  it("lists its views with an example each when none is named, and for one that is none", async () => {
    const help = cardOf(await bot.invoke(maren, "stock", {}));
    expect(help.data.views).toEqual(["receive", "count", "find", "replenish"]);
    expect(cardText(help)).toContain("/stock count D-7 0417 0422 0588");
    expect((await askStock(bot, "recieve", "x")).title).toBe("/stock has no recieve");
  });

  it("says where to ask when the channel has no truck", async () => {
    const nowhere = { person: "petra", channel: "general" };
    for (const [view, text] of [
      ["receive", "dunlin 60 x 1"],
      ["count", "dunlin 60 x 1"],
      ["replenish", ""],
    ] as const)
      expect((await askStock(bot, view, text, nowhere)).title).toBe("This channel has no truck");
  });
});

describe("stock receive", () => {
  it.each([
    ["12 x Dunlin 60 X to main rack", "main rack", "Dunlin 60 X", 12],
    ["12 Dunlin 60X", "main rack", "Dunlin 60 X", 12],
    ["shaft Dunlin 60 X 4 bin Oxtoby", "bin Bram Oxtoby", "Dunlin 60 X", 4],
    ["3 dunlin 60 x oxtoby's bin", "bin Bram Oxtoby", "Dunlin 60 X", 3],
    ["grip Gorse Standard 20", "main rack", "Gorse Standard", 20],
    ["gorse std round x 5", "main rack", "Gorse Standard Round", 5],
    ["screw 4 g 10", "main rack", "screw 4 g", 10],
    ["10 x screws 4 g", "main rack", "screw 4 g", 10],
    ["sleeve Cairn driver sleeve 6", "main rack", "Cairn driver sleeve", 6],
    ["36 balls", "float", "ball", 36],
    ["goods hat L 4 to main rack", "main rack", "hat L", 4],
    ["kind,model,place,quantity\nshaft,dunlin 60 x,BIN BRAM OXTOBY,4", "bin Bram Oxtoby", "Dunlin 60 X", 4],
    ["Kind,Model,Place,Quantity\nscrew,Screw 4 g,,2", "main rack", "screw 4 g", 2],
  ])("takes in %j", async (text, where, model, quantity) => {
    const before = lyingIn(bot, where, model);
    const card = await receive(text);
    expect(cardText(card)).toContain(`${quantity} × ${model} to ${where}`);
    expect(lyingIn(bot, where, model) - before).toBe(quantity);
    expect(lastEntry(bot)).toMatchObject({ reason: "received", quantityChange: quantity, at: bot.now() });
  });

  it("takes in a measured head, its face closed as less than nothing, for either hand", async () => {
    const card = await receive(
      `${aHead.replace("4711", "5711")}\nhead 5712 tarn heel-relieved LH d41 stamped 58 loft 57,9 lie 64 bounce 10 face 0.2 closed mass 305 g`,
    );
    expect(card.title).toBe("Received: 2 heads");
    expect(cardText(card)).toContain("Head 5712 Tarn Heel-Relieved LH stamped 58, 305 g, to D-41");
    expect(headOf(bot, "5711")).toMatchObject({
      hand: "right",
      soledFaceDeg: 0.3,
      designLieDeg: 58,
      soledLoftDeg: 9.1,
      massG: 197.2,
    });
    expect(headOf(bot, "5712")).toMatchObject({ hand: "left", soledFaceDeg: -0.2, bounceDeg: 10, soledLoftDeg: 57.9 });
    expect(placeOfHead(bot, "5712")).toBe("D-41 Plover");
  });

  it("takes in a table of heads with the moment each was measured", async () => {
    await receive(`${headHeader}\n0042,cairn,left,9,9.1,56,-0.4,,197.1,2027-04-30T10:00,Europe/Berlin,D-2`);
    expect(headOf(bot, "0042")).toMatchObject({ hand: "left", soledFaceDeg: -0.4, measuredAt: Date.parse("2027-04-30T10:00+02:00") });
  });

  it("takes an unreleased model by its code word, and shows that alone", async () => {
    const card = await receive(aHead.replace("Cairn", "lamplight").replace("4711", "5713"));
    expect(cardText(card)).toContain("Head 5713 lamplight");
    expect(JSON.stringify(card)).not.toMatch(/menhir/i);
  });

  it.each([
    ["0 x dunlin 60 x", "quantity", "0"],
    ["-3 x dunlin 60 x", "quantity", "-3"],
    ["2.5 x dunlin 60 x", "quantity", "2.5"],
    ["100001 x dunlin 60 x", "quantity", "100001"],
    ["dunlin 60 x", "quantity", null],
    ["4 dunlin 60", "model", "dunlin 60"],
    ["4 dunln 60 x", "model", "dunln 60 x"],
    ["4 xyzzy", "model", "xyzzy"],
    ["4 x Rill", "model", "Rill"],
    ["4 dunlin 60 x to D-99", "place", "D-99"],
    ["4 dunlin 60 x to the moon", "place", "the moon"],
    ["4 dunlin 60 x bin ashgrave", "place", "bin ashgrave"],
    ["bin oxtby 4 dunlin 60 x", "place", "bin oxtby"],
    ["4 x dunlin 60 x 5", "text", "5"],
    ["kind,model,place,quantity\nshaft,Dunlin 60 X,main rack,1.5", "quantity", "1.5"],
    ["kind,model,place,quantity\ngrip,Dunlin 60 X,main rack,1", "model", "Dunlin 60 X"],
    ["kind,model,place,quantity\nshaft,Dunlin 60 X,attic,1", "place", "attic"],
    ["kind,model,place\nshaft,Dunlin 60 X,attic", "quantity", null],
    [aHead.replace("loft 9.1 ", ""), "loft", null],
    [aHead.replace("lie 58 ", ""), "lie", null],
    [aHead.replace("face 0.3 open ", ""), "face", null],
    [aHead.replace("mass 197.2 ", ""), "mass", null],
    [aHead.replace("right ", ""), "hand", null],
    [aHead.replace("D-7", ""), "place", null],
    [aHead.replace("D-7", "main rack"), "place", "main rack"],
    [aHead.replace("D-7", "D-77"), "place", "D-77"],
    [aHead.replace("4711", "0417"), "serial", "0417"],
    [aHead.replace("9.1", "5.9"), "loft", "5.9"],
    [aHead.replace("58", "64.1"), "lie", "64.1"],
    [aHead.replace("0.3", "6.1"), "face", "6.1"],
    [aHead.replace("197.2", "230.1"), "mass", "230.1"],
    [aHead.replace("Cairn", "Carn"), "model", "Carn"],
    [aHead.replace("loft 9.1", "loft heavy"), "loft", "loft heavy"],
    [`${aHead} shiny`, "text", "shiny"],
    ["head 4711 tarn full right stamped 56 loft 56 lie 64 face 0 mass 300 d-7", "bounce", null],
    [`${headHeader}\n4711,Cairn,left,9,9.1,56,,,197,2027-04-30T10:00,Europe/Berlin,D-2`, "soled_face_deg", ""],
    [`${headHeader}\n4711,Cairn,left,9,9.1,56,0,,197,2027-05-30T10:00,Europe/Berlin,D-2`, "measured_at", "2027-05-30T10:00"],
    [`${headHeader}\n4711,Cairn,left,19,9.1,56,0,,197,2027-04-30T10:00,Europe/Berlin,D-2`, "stamped_loft_deg", "19"],
  ])("refuses %j at its own column", async (text, column, written) => {
    const before = digest(bot);
    const card = await receive(text);
    expect(card.kind).toBe("stock.faults");
    expect(card.data.faults).toEqual([expect.objectContaining({ column, written })]);
    expect(digest(bot)).toEqual(before);
  });

  it.each([["lie 52"], ["lie 64"], ["mass 150"], ["mass 230"], ["loft 6"], ["loft 14"], ["face 6 open"], ["face 6 closed"]])(
    "takes a driver head at the end of its range, %s",
    async (value) => {
      const [name = ""] = value.split(" ");
      const text = aHead.replace("4711", value.replaceAll(" ", "")).replace(new RegExp(`${name} [\\d.]+( open)?`), value);
      expect((await receive(text)).kind).toBe("stock.received");
    },
  );

  it("names the nearest for a name it does not know, and a choice where several fit", async () => {
    expect((await receive("4 dunln 60 x")).data.faults).toEqual([expect.objectContaining({ guess: "Dunlin 60 X" })]);
    expect(cardText(await receive("4 dunlin 60"))).toContain("one of Dunlin 60 R, Dunlin 60 S, Dunlin 60 X");
    expect(cardText(await receive("4 x dunlin 60 x bin oxtby"))).toContain("Meant bin Bram Oxtoby?");
    expect(cardText(await receive("4 x dunlin 60 x bin ashgrave"))).toContain("one of bin Corwen Ashgrave, bin Linnea Ashgrave");
  });

  it("says every fault of every row at once, twenty-five shown and the rest counted, and takes in nothing", async () => {
    const before = digest(bot);
    const bad = Array.from({ length: 14 }, () => "0 dunln 60 x").join("\n");
    const card = await receive(`5 dunlin 60 x\n${bad}`);
    expect(card.data.faultCount).toBe(28);
    expect(card.lines).toHaveLength(27);
    expect(cardText(card)).toContain("and 3 more");
    expect(card.data.faults).toEqual(expect.arrayContaining([expect.objectContaining({ rowNumber: 2, column: "model" })]));
    expect(digest(bot)).toEqual(before);
  });

  it("refuses a serial that is written twice, whatever its case", async () => {
    const card = await receive(`${aHead.replace("4711", "a1")}\n\n${aHead.replace("4711", "A1")}`);
    expect(cardText(card)).toContain("Row 3, serial: A1? each serial once: row 1 has it");
  });

  it("marks what a bin was owed as refilled, as far as it goes", async () => {
    settleOwed();
    const bin = bot.db.select().from(place).where(eq(place.label, "bin Bram Oxtoby")).get();
    const part = bot.db
      .select()
      .from(stockEntry)
      .where(eq(stockEntry.placeId, bin?.id ?? id<"place">(0)))
      .get();
    write(bot.db, (tx) => {
      for (const quantity of [1, 3])
        oweToBin(tx, {
          placeId: bin?.id ?? id<"place">(0),
          partModelId: part?.partModelId ?? id<"partModel">(0),
          quantity,
          orderId: null,
          at: bot.now(),
        });
    });
    expect(cardText(await receive("dunlin 60 x 2 bin oxtoby"))).toContain("2 × Dunlin 60 X to bin Bram Oxtoby, 2 of it owed to the bin");
    expect(cardText(await askStock(bot, "replenish", ""))).toContain("bin Bram Oxtoby: 2 × Dunlin 60 X");
    expect(cardText(await receive("dunlin 60 x 5 bin oxtoby"))).toContain("2 of it owed to the bin");
    expect((await askStock(bot, "replenish", "")).title).toBe("No bin is owed anything");
    expect(
      bot.db
        .select()
        .from(replenishment)
        .all()
        .every(({ refilledAt }) => refilledAt !== null),
    ).toBe(true);
  });

  it("changes nothing when the same message is delivered twice", async () => {
    const at = { ...dessa, key: "invoke:twice" };
    const before = lyingIn(bot, "main rack", "Dunlin 60 X");
    for (const _again of [1, 2]) await bot.invoke(at, "stock", { view: "receive", text: "dunlin 60 x 4" });
    expect(lyingIn(bot, "main rack", "Dunlin 60 X")).toBe(before + 4);
  });
});

describe("stock count", () => {
  // fixtures/scenario/stock.csv: 6 Dunlin 60 X and 27 Gorse Standard on Plover's main rack, before the orders of the week.
  it("shows each difference with its sign, and sets the record right", async () => {
    const [shafts, grips] = [lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "main rack", "Gorse Standard")];
    const card = await count(`main rack dunlin 60 x ${shafts - 2}, gorse standard ${grips + 3}`);
    expect(cardText(card)).toContain(`Dunlin 60 X: ${shafts} on record, ${shafts - 2} counted: −2`);
    expect(cardText(card)).toContain(`Gorse Standard: ${grips} on record, ${grips + 3} counted: +3`);
    expect([lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "main rack", "Gorse Standard")]).toEqual([shafts - 2, grips + 3]);
    expect(lastEntry(bot)).toMatchObject({ reason: "counted", quantityChange: 3 });
    expect(recorded(bot).filter(({ action }) => action === "stock.count")).toHaveLength(2);
  });

  it("counts down to none, and a part that was never there", async () => {
    await count("main rack Dunlin 60 X 0\nbin oxtoby Curlew 95 S 3");
    expect([lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "bin Bram Oxtoby", "Curlew 95 S")]).toEqual([0, 3]);
  });

  it("says that nothing changed, and writes nothing", async () => {
    const text = `place,model,quantity\nmain rack,Dunlin 60 X,${lyingIn(bot, "main rack", "Dunlin 60 X")}`;
    const before = digest(bot);
    expect((await count(text)).title).toBe("Counted 1 part: as on record, nothing changed");
    expect(digest(bot)).toEqual(before);
  });

  it.each([
    ["dunlin 60 x -1", "quantity", "-1"],
    ["dunlin 60 x 1.5", "quantity", "1.5"],
    ["place,model,quantity\nmain rack,Dunlin 60 X,-1", "quantity", "-1"],
    ["dunlin 60 x 4, dunlin 60 x 5", "model", "Dunlin 60 X, main rack"],
    ["D-7 9999", "serial", "9999"],
    ["D-7", "serial", null],
    ["D-1 0288\nD-2 0288", "serial", "0288"],
    ["D-1 empty\nD-1 empty", "place", "D-1"],
    ["D-99 0288", "place", "D-99"],
  ])("refuses %j and changes nothing", async (text, column, written) => {
    const before = digest(bot);
    expect((await count(text)).data.faults).toEqual([expect.objectContaining({ column, written })]);
    expect(digest(bot)).toEqual(before);
  });

  // fixtures/scenario/heads.csv: D-12 holds 0325, 0332 and 0843; 0718 lies in D-2, 0817 in no drawer of this truck.
  it("takes the place of a head that was not found, and moves one that was", async () => {
    const card = await count("D-12 0325, 0843 0718");
    expect(cardText(card)).toContain("0332 Cairn 7 not found in D-12: it has no place now");
    expect(cardText(card)).toContain("0718 Cairn found in D-12: moved here from D-2");
    expect(["0325", "0332", "0843", "0718"].map((serial) => placeOfHead(bot, serial))).toEqual(["D-12 Plover", null, "D-12 Plover", "D-12 Plover"]);
    expect(cardText(await count("D-2 empty\nD-12 0325 0843 0718 0332"))).toContain("0332 Cairn 7 found in D-12: it had no place on record");
  });

  it("moves a head between two drawers counted together", async () => {
    const card = await count("D-12 0325 0332 0718\nD-1 0288 0843");
    expect(cardText(card)).toContain("0843 Cairn 7 found in D-1: moved here from D-12");
    expect(placeOfHead(bot, "0843")).toBe("D-1 Plover");
    expect(cardText(card)).not.toContain("not found");
  });

  it("says from which truck a head has come", async () => {
    const elsewhere = bot.db
      .select()
      .from(place)
      .all()
      .find(({ label, truckId }) => label === "D-1" && truckId === 2);
    const visitor = bot.db
      .select()
      .from(head)
      .all()
      .find(({ placeId }) => placeId === elsewhere?.id);
    const card = await count(`D-1 0288 ${visitor?.serial}`);
    expect(cardText(card)).toContain("moved here from D-1, truck Avocet");
  });
});

describe("stock replenish", () => {
  const owe = (quantity: number, orderId: number | null = null) =>
    write(bot.db, (tx) => {
      const bin = tx.select().from(place).where(eq(place.label, "bin Bram Oxtoby")).get();
      const shaft = tx
        .select()
        .from(stockEntry)
        .where(eq(stockEntry.placeId, bin?.id ?? id<"place">(0)))
        .get();
      return oweToBin(tx, {
        placeId: bin?.id ?? id<"place">(0),
        partModelId: shaft?.partModelId ?? id<"partModel">(0),
        quantity,
        orderId: orderId === null ? null : id<"order">(orderId),
        at: bot.now(),
      });
    });
  beforeEach(async () => {
    settleOwed();
    await count("main rack dunlin 60 x 10");
  });
  const list = (who: typeof dessa = dessa) => askStock(bot, "replenish", "", who);

  it("lists what each bin is owed with the orders that took it", async () => {
    owe(1, 1);
    owe(1, 2);
    const card = await list();
    expect(card.title).toBe("1 bin to refill: 2 parts");
    expect(cardText(card)).toContain("bin Bram Oxtoby: 2 × Dunlin 60 X (orders 1, 2)");
  });

  it("moves the parts from the main rack by a press, once", async () => {
    owe(2);
    const before = [lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "bin Bram Oxtoby", "Dunlin 60 X")] as const;
    const card = await list();
    const done = cardOf(await bot.pick(dessa, card, "bin Bram Oxtoby"));
    expect(done).toMatchObject({ title: "bin Bram Oxtoby refilled from the main rack: 2 × Dunlin 60 X", tone: "good" });
    const after = [before[0] - 2, before[1] + 2];
    expect([lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "bin Bram Oxtoby", "Dunlin 60 X")]).toEqual(after);
    expect(cardOf(await bot.pick(dessa, card, "bin Bram Oxtoby")).title).toBe("That was refilled before");
    expect([lyingIn(bot, "main rack", "Dunlin 60 X"), lyingIn(bot, "bin Bram Oxtoby", "Dunlin 60 X")]).toEqual(after);
    expect((await list()).title).toBe("No bin is owed anything");
  });

  it("leaves what is owed since the list was shown", async () => {
    owe(1);
    const card = await list();
    owe(1);
    await bot.pick(dessa, card, "bin Bram Oxtoby");
    expect(cardText(await list())).toContain("1 × Dunlin 60 X");
  });

  it("says what to order from home base when the rack runs out, and goes on owing it", async () => {
    await count("main rack dunlin 60 x 1");
    owe(3);
    const done = cardOf(await bot.pick(dessa, await list(), "bin Bram Oxtoby"));
    // fixtures/scenario/stock.csv: 25 Dunlin 60 X at home base.
    expect(cardText(done)).toBe("bin Bram Oxtoby refilled from the main rack: 1 × Dunlin 60 X\nOrder from home base: 2 × Dunlin 60 X (25 there)");
    expect(cardText(await list())).toContain("2 × Dunlin 60 X");
    expect(cardOf(await bot.pick(dessa, await list(), "bin Bram Oxtoby")).title).toBe("bin Bram Oxtoby: the main rack has none of it");
  });

  it("shows a rep the list without a choice, and refuses a forged press, on record", async () => {
    owe(1);
    expect((await list(maren)).choices).toBeNull();
    const card = await list();
    expect(cardOf(await bot.pick(maren, card, "bin Bram Oxtoby")).kind).toBe("refusal");
    expect(recorded(bot).at(-1)?.action).toBe("refused stock replenish");
    expect((await list()).title).toBe("1 bin to refill: 1 part");
  });
});
