import { describe, expect, it } from "vitest";
import { rankTyped } from "../../../bot/desk/rankTyped.ts";

const known = ["Bram Oxtoby", "Noor Halloway", "Boxwell Toll", "Siôn O'Marren", "Linnea Corwen-Ashgrave"].map((text) => ({ text }));
const ranked = (typed: string): readonly string[] => rankTyped(typed, known).map(({ text }) => text);

describe("rankTyped", () => {
  it.each([
    ["a first name begun", "br", ["Bram Oxtoby"]],
    ["a family name begun, in capitals", "OXT", ["Bram Oxtoby"]],
    ["both begun, in either order", "ox br", ["Bram Oxtoby"]],
    ["what a word begins with before what one contains", "ox", ["Bram Oxtoby", "Boxwell Toll"]],
    ["a name without its accent", "sion", ["Siôn O'Marren"]],
    ["a name without its apostrophe", "omarr", ["Siôn O'Marren"]],
    ["the second half of a double name", "ashg", ["Linnea Corwen-Ashgrave"]],
    ["a letter too many", "hallloway", ["Noor Halloway"]],
    ["a letter too few", "oxoby", ["Bram Oxtoby"]],
    ["two letters swapped in a name begun", "oxtbo", ["Bram Oxtoby"]],
    ["a wrong letter", "ashgtave", ["Linnea Corwen-Ashgrave"]],
    ["nothing two slips away", "oxxxby", []],
    ["nothing near two letters", "oy", []],
  ])("finds %s", (_, typed, names) => {
    expect(ranked(typed)).toEqual(names);
  });

  it.each(["", "  "])("keeps all in the order given where nothing is typed (%j)", (typed) => {
    expect(ranked(typed)).toEqual(known.map(({ text }) => text));
  });

  it("takes any text for what it is", () => {
    expect(ranked("(.*")).toEqual([]);
    expect(ranked("x".repeat(5000))).toEqual([]);
  });
});
