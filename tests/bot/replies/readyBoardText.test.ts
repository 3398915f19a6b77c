import { describe, expect, it } from "vitest";
import { readyBoardRows } from "../../../bot/replies/readyBoardText.ts";
import { driverAlone, emptyBoard, fullBench, twoTechnicians } from "../prints/ready/someBoards.ts";

const text = (board: typeof driverAlone): readonly string[] => readyBoardRows(board).map(({ label, value }) => `${label}: ${value.join("")}`);

describe("readyBoardRows", () => {
  it("says who does what from when to when, what sets, and what was promised", () => {
    expect(text(driverAlone)).toEqual([
      "Dessa: 57 driver 09:03–09:12; 57 driver 09:18–09:21; 57 driver 09:22–09:24",
      "Setting: 57 glue till 09:18",
      "57 OXTOBY RH driver: promise 09:29, by 09:45",
    ]);
  });

  it("says when the truck leaves, which order has no promise, and which is promised too late", () => {
    const all = text(twoTechnicians);
    expect(all).toContain("Roll-out: 13:00");
    expect(all).toContain("62 CASTABEL RH swap putter: no promise, by 12:00");
    expect(all).toContain("58 HALLOWAY LH driver: promise 09:52, by 09:50: late");
    expect(all).toContain("59 WEXCOMBE RH 7w: promise 10:22");
    expect(all).toContain(
      "Setting: 57 glue till 09:26; 58 glue till 09:42; 59 glue till 10:04; 60 glue till 10:34; 60 glue till 10:40; 63 glue till 12:17",
    );
  });

  it("names the day of a time that is not today's", () => {
    const tomorrow = driverAlone.now + 24 * 60 * 60_000;
    const orders = driverAlone.orders.map((order) => ({ ...order, promiseAt: tomorrow, byAt: tomorrow }));
    expect(text({ ...driverAlone, orders, rollOutAt: tomorrow })).toEqual(
      expect.arrayContaining(["57 OXTOBY RH driver: promise Tue 09:06, by Tue 09:06", "Roll-out: Tue 09:06"]),
    );
  });

  it("counts what it does not name, within the 25 fields of a post", () => {
    const all = text(fullBench);
    expect(all.length).toBeLessThanOrEqual(25);
    expect(all[0]).toMatch(/^Dessa: 101 driver 09:04–09:15; .*; 34 more$/);
    expect(all).toContain("Later: 24 more orders");
    expect(text({ ...fullBench, orders: fullBench.orders.slice(0, 17) })).toContain("Later: 1 more order");
  });

  it("says that nothing is on the bench, or nothing to do on what is", () => {
    expect(text(emptyBoard)).toEqual(["Bench: nothing on it"]);
    expect(text({ ...emptyBoard, orders: driverAlone.orders })).toContain("Bench: nothing to do now");
  });
});
