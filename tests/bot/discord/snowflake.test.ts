import { describe, expect, it } from "vitest";
import { isYounger, snowflakeAt } from "../../../bot/discord/snowflake.ts";

describe("snowflakeAt", () => {
  // The worked example of the platform's public reference: 175928847299117063 was made at 2016-04-30T11:18:25.796Z.
  it("stands just below the ids of its moment and above those of the moment before", () => {
    const atMs = Date.parse("2016-04-30T11:18:25.796Z");
    expect(isYounger("175928847299117063", snowflakeAt(atMs))).toBe(true);
    expect(isYounger(snowflakeAt(atMs + 1), "175928847299117063")).toBe(true);
  });

  it("begins at nothing before the platform's first moment", () => {
    expect(snowflakeAt(0)).toBe("0");
  });
});
