import { describe, expect, it } from "vitest";
import { instant } from "../../core/kinds.ts";
import { chatMarkup } from "./chatMarkup.ts";

const place = { at: instant(Date.parse("2027-05-03T08:00Z")), zone: "Europe/Paris" };

describe("chatMarkup", () => {
  it("reads bold words, escaped signs, mentions and moments", () => {
    const seconds = Date.parse("2027-05-03T09:06Z") / 1000;
    expect(chatMarkup(`**late\\***, <@500> <@&600> <t:${seconds}:t>`, place)).toEqual([
      {
        small: false,
        pieces: [
          { text: "late", bold: true },
          { text: "*", bold: true },
          { text: ", ", bold: false },
          { text: "@500", bold: false },
          { text: " ", bold: false },
          { text: "@&600", bold: false },
          { text: " ", bold: false },
          { text: "11:06", bold: false },
        ],
      },
    ]);
  });

  it("takes a line of subtext for small print", () => {
    expect(chatMarkup("a\n-# b", place)).toEqual([
      { small: false, pieces: [{ text: "a", bold: false }] },
      { small: true, pieces: [{ text: "b", bold: false }] },
    ]);
  });
});
