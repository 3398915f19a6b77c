import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeCustomId, encodeCustomId } from "../../../bot/discord/customId.ts";

describe("encodeCustomId", () => {
  it.each([
    ["order confirm|order:12|3", { command: "order confirm", subject: "order:12", version: 3 }],
    ["order bag|order:12|3|in the bag", { command: "order bag", subject: "order:12", version: 3, argument: "in the bag" }],
    ["order mend|post:0|0|", { command: "order mend", subject: "post:0", version: 0, argument: "" }],
    ["a%7Cb|50%25|0|%25257C", { command: "a|b", subject: "50%", version: 0, argument: "%257C" }],
  ])("writes %s and reads it back", (written, action) => {
    expect(encodeCustomId(action)).toBe(written);
    expect(decodeCustomId(written)).toEqual(action);
  });

  it("gives back any action that fits, and takes none longer than the platform's 100 characters", () => {
    const text = fc.string({ minLength: 1, maxLength: 40 });
    const action = fc.record({ command: text, subject: text, version: fc.nat(), argument: text });
    fc.assert(
      fc.property(action, (given) => {
        const written = encodeCustomId(given);
        const needed = `${given.command}|${given.subject}|${given.version}|${given.argument}`.length;
        expect(written === null ? needed > 30 : written.length <= 100).toBe(true);
        expect(written === null ? given : decodeCustomId(written)).toEqual(given);
      }),
      { seed: 3 },
    );
  });

  it("takes exactly 100 characters and not 101", () => {
    const action = { command: "c", subject: "s", version: 1 };
    expect(encodeCustomId({ ...action, argument: "x".repeat(94) })).toHaveLength(100);
    expect(encodeCustomId({ ...action, argument: "x".repeat(95) })).toBeNull();
  });
});

describe("decodeCustomId", () => {
  it.each([
    [""],
    ["order confirm"],
    ["order confirm|order:1"],
    ["order confirm|order:1|x"],
    ["order confirm|order:1|1e9"],
    ["|order:1|1"],
    ["a|b|1|c|d"],
    ["a|b|1|".padEnd(101, "x")],
  ])("takes %j for none of ours", (written) => {
    expect(decodeCustomId(written)).toBeNull();
  });
});
