import { describe, expect, it } from "vitest";
import { FILES_MAX, fitCard } from "../../../bot/discord/fitCard.ts";
import { action, card } from "../rehearsal/cards.ts";

const lines = (count: number, length: number) => Array.from({ length: count }, () => ["x".repeat(length)]);
const buttons = (count: number) =>
  Array.from({ length: count }, (_none, index) => ({ label: "B", weight: "plain" as const, action: action("go", index) }));
const choices = (count: number) => ({
  label: "Which?",
  action: action("pick"),
  items: Array.from({ length: count }, (_none, index) => ({ label: `${index}`, value: `${index}` })),
});

describe("fitCard", () => {
  it("keeps a card that fits as it is, its fields in small print", () => {
    const fitted = fitCard(card("57", { lines: lines(2, 10), fields: [{ label: "Posted by", value: ["Maren"] }] }));
    expect(fitted).toEqual({ lines: lines(2, 10), small: [[{ strong: "Posted by" }, " ", "Maren"]], leftOut: null });
  });

  // 4096 characters in a description: the platform's public documentation. A line takes its break too.
  it("keeps lines that just fit, and says how many it leaves out when they do not", () => {
    expect(fitCard(card("57", { lines: lines(64, 63) })).leftOut).toBeNull();
    const over = fitCard(card("57", { lines: lines(65, 63) }));
    expect([over.lines.length, over.leftOut]).toEqual([60, "… 5 more lines in the file"]);
  });

  it("counts what stands behind More among the lines, and leaves it out first", () => {
    const fitted = fitCard(card("57", { lines: lines(1, 3000), fields: [{ label: "More", value: ["y".repeat(2000)] }] }));
    expect(fitted).toEqual({ lines: lines(1, 3000), small: [], leftOut: "… 1 more line in the file" });
  });

  it("counts a call as the longest mention that the platform may make of it", () => {
    const calls = Array.from({ length: 170 }, () => [{ call: "lead" as const, name: "x" }]);
    expect(fitCard(card("57", { lines: calls })).leftOut).toBe("… 15 more lines in the file");
  });

  it("cuts a first line that is too long by itself", () => {
    const fitted = fitCard(card("57", { lines: [[{ strong: "*".repeat(5000) }]] }));
    expect(fitted.lines).toEqual([[`${"*".repeat(1899)}…`]]);
    expect(fitted.leftOut).toBe("… 1 more line in the file");
  });

  it.each([
    ["buttons", { buttons: buttons(27) }, "… 2 more buttons in the file"],
    ["buttons above choices", { buttons: buttons(21), choices: choices(1) }, "… 1 more button in the file"],
    ["choices", { choices: choices(26) }, "… 1 more choice in the file"],
    ["a button whose action is too long", { buttons: [{ ...buttons(1)[0], action: action("x".repeat(100)) }] }, "… 1 more button in the file"],
    ["one button twice", { buttons: [...buttons(1), ...buttons(1)] }, null],
  ] as const)("says what has no room of %s", (_what, rest, leftOut) => {
    expect(fitCard(card("57", rest as never)).leftOut).toBe(leftOut);
  });

  it("says when the title is not whole, and when files are too many", () => {
    expect(fitCard(card("x".repeat(257))).leftOut).toBe("… the whole title in the file");
    const file = { name: "57.pdf", draw: "sheet", sheet: {} } as never;
    expect(fitCard(card("57", { files: Array.from({ length: FILES_MAX + 1 }, () => file) })).leftOut).toBe("… 1 more file than the chat takes");
  });
});
