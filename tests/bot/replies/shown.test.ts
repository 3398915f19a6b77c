import { describe, expect, it } from "vitest";
import { clubsWords, plural, sheetName } from "../../../bot/replies/shown.ts";
import type { ClubName } from "../../../core/kinds.ts";

const [driver, sw] = ["driver", "sw"] as readonly string[] as readonly [ClubName, ClubName];

describe("sheetName", () => {
  it.each([
    [driver, 1, "driver"],
    [driver, 2, "driver 2"],
    [sw, 1, "SW"],
    [sw, 3, "SW 3"],
  ])("calls %s, copy %i, %s", (club, copy, name) => {
    expect(sheetName({ club, copy })).toBe(name);
  });
});

describe("clubsWords", () => {
  it.each([
    [[], ""],
    [["driver"], "driver"],
    [["5i", "7i", "pw"], "5i 7i PW"],
    [["4i", "5i", "6i", "7i"], "4i–7i"],
    [["4i", "5i", "6i", "7i", "8i", "9i", "pw"], "4i–PW"],
    [["4i", "5i", "6i", "8i"], "4 clubs"],
    [["9i", "pw", "gw", "sw"], "4 clubs"],
    [["driver", "3w", "5w", "4h"], "4 clubs"],
  ])("says %j as %s", (clubs, words) => {
    expect(clubsWords(clubs)).toBe(words);
  });
});

describe("plural", () => {
  it.each([
    [0, "0 heads"],
    [1, "1 head"],
    [2, "2 heads"],
  ])("says %i as %s", (count, words) => {
    expect(plural(count, "head")).toBe(words);
  });
});
