import { rmSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { baseOf } from "./drillFaults.ts";
import { loadedFolder } from "./drillFolder.ts";
import { drillRound, type Kill } from "./drillRound.ts";

let loaded = "";
beforeAll(async () => {
  loaded = await loadedFolder();
});
afterAll(() => rmSync(loaded, { recursive: true, force: true }));

const pointKills: readonly Kill[] = [
  { at: "before-commit", times: 2 },
  { at: "after-commit", times: 3 },
  { at: "before-send", times: 2 },
  { at: "after-send", times: 4 },
  { at: "before-mark", times: 3 },
];

describe("a bot killed with -9 in the middle of three orders", () => {
  it.each(pointKills)("at $at, time $times, loses nothing and repeats nothing after the next start", async (kill) => {
    expect(await drillRound(loaded, baseOf(loaded), [kill])).toEqual({ faults: [], met: [true] });
  });

  it("and killed again while it recovers, loses nothing and repeats nothing", async () => {
    const kills: readonly Kill[] = [
      { at: "after-send", times: 1 },
      { at: "before-mark", times: 2 },
    ];
    expect(await drillRound(loaded, baseOf(loaded), kills)).toEqual({ faults: [], met: [true, true] });
  });

  it.each([0, 60, 180])("%i ms after it began, loses nothing and repeats nothing", async (afterMs) => {
    expect((await drillRound(loaded, baseOf(loaded), [{ at: "random", afterMs }])).faults).toEqual([]);
  });

  it("would post twice on a platform without history: what is checked can fail", async () => {
    const { faults } = await drillRound(loaded, baseOf(loaded), [{ at: "after-send", times: 2 }], true);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(/left 2 times$/);
  });
});
