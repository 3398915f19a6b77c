import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { clockAtMinute } from "../../../../bot/prints/ready/boardTime.ts";
import { drawReadyBoard, readyBoardSvg } from "../../../../bot/prints/ready/drawReadyBoard.ts";
import type { ReadyBoardPrint } from "../../../../bot/prints/ready/readyBoardPrint.ts";

const MIN = 60_000;
/** 2027-05-03 08:00 UTC. */
const from = Date.UTC(2027, 4, 3, 8);

const board = (extra: Partial<ReadyBoardPrint> = {}): ReadyBoardPrint => ({
  truck: "Plover",
  zone: "Europe/Lisbon",
  now: from + 10 * MIN,
  from,
  to: from + 120 * MIN,
  rollOutAt: from + 110 * MIN,
  closed: [{ from: from + 60 * MIN, to: from + 75 * MIN }],
  rows: [
    { label: "Dessa", kind: "technician", bars: [{ from: from + 12 * MIN, to: from + 40 * MIN, label: "57 driver", wait: false, underWay: true }] },
    { label: "Setting", kind: "station", bars: [{ from: from + 40 * MIN, to: from + 60 * MIN, label: "57 glue", wait: true, underWay: false }] },
  ],
  orders: [{ number: 57, title: "57 OXTOBY RH driver", likelyAt: from + 70 * MIN, promiseAt: from + 80 * MIN, byAt: from + 75 * MIN }],
  ...extra,
});

const sizeOf = (png: Uint8Array): readonly [number, number] => {
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
};

describe("drawReadyBoard", () => {
  it("draws a PNG as wide as a phone shows it sharp, with the same bytes each time", async () => {
    const [first, second] = [await drawReadyBoard(board()), await drawReadyBoard(board())];
    expect([...first.slice(1, 4)].map((code) => String.fromCharCode(code)).join("")).toBe("PNG");
    expect(sizeOf(first)[0]).toBe(1080);
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  it("names people, orders, roll-out and the venue's clock, an hour ahead of UTC in May", async () => {
    const svg = await readyBoardSvg(board());
    for (const text of ["Plover: ready board", "Dessa", "57 driver", "57 OXTOBY RH driver", "roll-out", "now 09:10", "10:00"])
      expect(svg).toContain(text);
  });

  it("hatches a wait and not work", async () => {
    const hatched = await readyBoardSvg(board());
    const worked = await readyBoardSvg(board({ rows: board().rows.slice(0, 1) }));
    expect(hatched).toContain("<pattern");
    expect(worked).not.toContain("<pattern");
    const hasStripes = (svg: string): boolean => Buffer.from(new Resvg(svg).render().pixels).includes(Buffer.from([122, 90, 18, 255]));
    expect([hatched, worked].map(hasStripes)).toEqual([true, false]);
  });

  it("says that nothing is on the bench", async () => {
    expect(await readyBoardSvg(board({ rows: [], orders: [] }))).toContain("Nothing on the bench");
  });

  it("says how many orders it leaves out, and cuts long names", async () => {
    const orders = Array.from({ length: 40 }, (_, at) => ({
      ...board().orders[0],
      number: at,
      title: `${at} WENTWORTHY-LONGNAME LH reshaft driver ×3`,
      likelyAt: null,
      promiseAt: null,
      byAt: null,
    }));
    const svg = await readyBoardSvg(board({ orders }));
    expect(svg).toContain("16 more orders");
    expect(svg).toContain("...");
  });
});

describe("clockAtMinute", () => {
  it.each([
    ["Europe/Lisbon", 0, "09:00"],
    ["Pacific/Auckland", 90, "21:30"],
    ["America/St_Johns", 15, "05:45"],
  ])("shows the clock of %s %d minutes after 08:00 UTC as %s", (zone, minute, shown) => expect(clockAtMinute({ from, zone }, minute)).toBe(shown));
});
