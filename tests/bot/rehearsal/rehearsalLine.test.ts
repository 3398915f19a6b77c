import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RehearsalLine, readRehearsalLine } from "../../../bot/rehearsal/rehearsalLine.ts";

const HOUR_MS = 3_600_000;

const table: readonly (readonly [string, RehearsalLine])[] = [
  ["", { kind: "nothing" }],
  ["   \t", { kind: "nothing" }],
  ["// what this part shows", { kind: "nothing" }],
  ["build oxtoby driver d3", { kind: "message", text: "build oxtoby driver d3" }],
  ["build oxtoby driver\nloft 9.25", { kind: "message", text: "build oxtoby driver\nloft 9.25" }],
  ["\\press 1", { kind: "message", text: "press 1" }],
  ["\\// shared bay", { kind: "message", text: "// shared bay" }],
  ["\\\\", { kind: "message", text: "\\" }],
  ["/spec oxtoby", { kind: "command", text: "spec oxtoby" }],
  ["/order build oxtoby\nloft 9", { kind: "command", text: "order build oxtoby\nloft 9" }],
  ["@Marta", { kind: "person", name: "marta" }],
  ["@marta can you look", { kind: "message", text: "@marta can you look" }],
  ["#range-one", { kind: "channel", name: "range-one" }],
  ["# not a channel", { kind: "message", text: "# not a channel" }],
  ["+25m", { kind: "forward", ms: 25 * 60_000 }],
  ["+2h", { kind: "forward", ms: 2 * HOUR_MS }],
  ["+1d", { kind: "forward", ms: 24 * HOUR_MS }],
  ["+1 wrap", { kind: "message", text: "+1 wrap" }],
  ["+25", { kind: "message", text: "+25" }],
  ["=2027-05-03T07:00", { kind: "moment", written: "2027-05-03T07:00" }],
  ["=tomorrow", { kind: "message", text: "=tomorrow" }],
  ["press 1", { kind: "press", number: 1, on: null }],
  ["press 2 on order 57", { kind: "press", number: 2, on: { kind: "order", number: 57 } }],
  ["press 2 on k3m9x2a", { kind: "press", number: 2, on: { kind: "ref", ref: "k3m9x2a" } }],
  ["press 2 on 2345678", { kind: "press", number: 2, on: { kind: "ref", ref: "2345678" } }],
  ["press 1 and tell me", { kind: "message", text: "press 1 and tell me" }],
  ["press it", { kind: "message", text: "press it" }],
  ["choose 3", { kind: "choose", number: 3, on: null }],
  ["choose 3 on order 8", { kind: "choose", number: 3, on: { kind: "order", number: 8 } }],
  ["answer 1 Oxtoby, left", { kind: "answer", number: 1, text: "Oxtoby, left" }],
  ["answer me", { kind: "message", text: "answer me" }],
  ["send", { kind: "send" }],
  ["send to range", { kind: "message", text: "send to range" }],
  ["edit build oxtoby 3w\nd2", { kind: "edit", text: "build oxtoby 3w\nd2" }],
  ["attach a folder/week one.csv", { kind: "attach", file: "a folder/week one.csv" }],
  ["again", { kind: "again" }],
  ["same again", { kind: "message", text: "same again" }],
  ["quit", { kind: "quit" }],
  ["quit it", { kind: "message", text: "quit it" }],
];

describe("readRehearsalLine", () => {
  it.each(table)("reads %j", (written, meaning) => {
    expect(readRehearsalLine(written)).toEqual(meaning);
  });

  it("makes any line a message when a backslash leads it", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom(...table.map(([written]) => written))), (text) => {
        expect(readRehearsalLine(`\\${text}`)).toEqual({ kind: "message", text: `\\${text}`.trim().slice(1) });
      }),
      { seed: 57 },
    );
  });

  it("answers every text with a line of some kind", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(readRehearsalLine(text).kind).toMatch(/^[a-z]+$/);
      }),
      { seed: 58 },
    );
  });
});
