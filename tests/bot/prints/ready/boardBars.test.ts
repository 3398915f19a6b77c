import { describe, expect, it } from "vitest";
import { barText } from "../../../../bot/prints/ready/boardBars.ts";

describe("barText", () => {
  it.each([
    ["57 driver", 200, "57 driver", false],
    ["57 driver", 60, "57", false],
    ["57", 30, "57", false],
    ["57", 24, "57", true],
    ["57", 12, "", true],
    ["7", 20, "7", false],
    ["118 3w", 24, "118", true],
    ["12345 3w", 24, "", true],
    ["", 3, "", true],
  ])("sets of %j on a bar of %d pixels %j, upright: %s", (label, width, text, upright) => {
    const set = barText(label, width);
    expect(set.text).toBe(text);
    if (text !== "") expect(set.upright).toBe(upright);
  });
});
