import { describe, expect, it } from "vitest";
import { plainText } from "../../../bot/rehearsal/plainText.ts";

describe("plainText", () => {
  it.each([
    ["a line feed", "one\ntwo", "one two"],
    ["a carriage return", "one\r\ntwo", "one two"],
    ["a line separator", "one\u2028two", "one two"],
    ["an escape sequence", "\u001b[2Jgone", "\ufffd[2Jgone"],
    ["an eight-bit control", "\u009b2Jgone", "\ufffd2Jgone"],
    ["a change of reading direction", "abc\u202edef", "abc\ufffddef"],
    ["a rubout", "ab\u007f", "ab\ufffd"],
  ])("takes the power out of %s", (_, text, plain) => {
    expect(plainText(text)).toBe(plain);
  });

  it("leaves letters, fractions and signs of any script as they are", () => {
    expect(plainText('Ysolde 45¼" 9° · 😀 飛')).toBe('Ysolde 45¼" 9° · 😀 飛');
  });
});
