import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { drawFile } from "../../../../bot/prints/drawFile.ts";
import { drawReadyBoard, readyBoardSvg } from "../../../../bot/prints/ready/drawReadyBoard.ts";
import type { ReadyBoardPrint } from "../../../../bot/prints/ready/readyBoardPrint.ts";
import { driverAlone, emptyBoard, fullBench, twoTechnicians } from "./someBoards.ts";

const sizeOf = (png: Uint8Array): readonly [number, number] => {
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
};
/** All texts of a drawing, one below the other. */
const textsOf = (svg: string): string => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text?.trim()).join("\n");
const texts = async (board: ReadyBoardPrint): Promise<string> => textsOf(await readyBoardSvg(board));
/** The colours that a drawing without texts shows, each with its count of pixels. */
function coloursOf(svg: string): ReadonlyMap<number, number> {
  const pixels = new Resvg(svg, { font: { loadSystemFonts: false } }).render().pixels;
  const counts = new Map<number, number>();
  for (let at = 0; at < pixels.length; at += 4) {
    const colour = pixels.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return counts;
}
const [work, stripe, wait, late, closed] = [0x2f6f9f, 0x7a5a12, 0xf0cf86, 0xb3261e, 0xe3e7eb] as const;

describe("drawReadyBoard", () => {
  it("draws a PNG of 1080 pixels across, with the same bytes each time and from what was stored as JSON", async () => {
    const [first, second] = [
      await drawReadyBoard(twoTechnicians),
      await drawReadyBoard(JSON.parse(JSON.stringify(twoTechnicians)) as ReadyBoardPrint),
    ];
    expect(Buffer.from(first.slice(0, 8)).toString("hex")).toBe("89504e470d0a1a0a");
    expect(sizeOf(first)[0]).toBe(1080);
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  it("is drawn by its recipe, as a PNG with a safe name", async () => {
    const { name, type, bytes } = await drawFile({ name: "../ready board.png", draw: "readyBoard", board: driverAlone });
    expect([name, type]).toEqual(["ready-board.png", "image/png"]);
    expect(Buffer.from(bytes).equals(Buffer.from(await drawReadyBoard(driverAlone)))).toBe(true);
  });

  it("stays a picture whatever a name holds", async () => {
    const odd = 'O\u0000x\ud800\n<b>&"{work|x}\u202e 🙂';
    const board = {
      ...driverAlone,
      truck: odd,
      rows: driverAlone.rows.map((row) => ({ ...row, label: odd, bars: row.bars.map((bar) => ({ ...bar, label: odd })) })),
      orders: driverAlone.orders.map((order) => ({ ...order, title: odd })),
    };
    expect(await texts(board)).toContain("O x &lt;b&gt;&amp;&quot;{work|x} 🙂: ready board");
    expect(sizeOf(await drawReadyBoard(board))[0]).toBe(1080);
  });
});

describe("readyBoardSvg", () => {
  it("names the truck, the day, people, stations, orders and roll-out, by the clock of the venue", async () => {
    const all = (await texts(twoTechnicians)).split("\n");
    const expected = ["Plover: ready board", "Mon 3 May 09:06 · roll-out 13:00", "Dessa", "Loft and lie", "Setting 2", "58 HALLOWAY LH driver"];
    expect(all).toEqual(expect.arrayContaining([...expected, "now", "roll-out", "09:00", "12:30", "60 4i–PW", "57"]));
  });

  it("says each promise and what is wanted, and late where the promise is after it", async () => {
    const all = (await texts(twoTechnicians)).split("\n");
    const expected = ["promise 09:37, by 09:45", "promise 09:52, by 09:50: late", "promise 10:22", "no promise, by 12:00"];
    expect(all).toEqual(expect.arrayContaining(expected));
  });

  it("hatches a wait and not work", async () => {
    const worked = { ...driverAlone, rows: driverAlone.rows.slice(0, 4) };
    const waiting = { ...driverAlone, rows: driverAlone.rows.slice(4) };
    const [ofWork, ofWait] = [coloursOf(await readyBoardSvg(worked)), coloursOf(await readyBoardSvg(waiting))];
    expect(ofWork.get(work)).toBeGreaterThan(1000);
    expect([ofWork.get(stripe), ofWork.get(wait)]).toEqual([undefined, undefined]);
    for (const colour of [stripe, wait]) expect(ofWait.get(colour)).toBeGreaterThan(100);
  });

  it("shades closed hours, and marks red only what is wanted before it is promised", async () => {
    const open = coloursOf(await readyBoardSvg(driverAlone));
    expect([open.get(late), open.get(closed)]).toEqual([undefined, undefined]);
    const both = coloursOf(await readyBoardSvg(twoTechnicians));
    expect(both.get(late)).toBeGreaterThan(100);
    expect(both.get(closed)).toBeGreaterThan(10_000);
  });

  it("names roll-out alone when it is close to now", async () => {
    const all = (await texts({ ...driverAlone, rollOutAt: driverAlone.now + 5 * 60_000 })).split("\n");
    expect(all).toContain("roll-out");
    expect(all).not.toContain("now");
  });

  it("says that nothing is on the bench, or that what is on it can wait", async () => {
    expect(await texts(emptyBoard)).toContain("Nothing on the bench");
    expect(await texts({ ...emptyBoard, rows: [] })).toContain("Nothing on the bench");
    expect(await texts({ ...emptyBoard, orders: driverAlone.orders })).toContain("Nothing to do now");
    expect(await texts(driverAlone)).not.toContain("Nothing");
  });

  it("says what it leaves out of forty orders, and cuts a long name", async () => {
    const all = await texts(fullBench);
    expect(all).toContain("Left out: 24 orders (8 late), 11 rows, bars after 15:00");
    expect(all).toMatch(/^Maxi[a-z]+…$/m);
    expect(all).not.toContain("Maximilienne-Aurelia");
    expect(await texts(twoTechnicians)).not.toContain("Left out");
  });
});
