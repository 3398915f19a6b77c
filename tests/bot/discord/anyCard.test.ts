import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Card, Line, Span } from "../../../bot/chat/types.ts";
import { drawCard } from "../../../bot/discord/drawCard.ts";
import { type CalledOf, drawLine } from "../../../bot/discord/drawLine.ts";
import { type Id, instant } from "../../../core/kinds.ts";
import { chatMarkup } from "../../gallery/chatMarkup.ts";
import { faultsOf } from "../../support/platform/bodies.ts";

const person = 4 as Id<"person">;
const known: CalledOf = (called) => (called === person ? { kind: "person", id: "500000000000000001" } : null);
const hostile = [
  ..."@everyone;@here;<@1>;<@&1>;<#1>;</a:1>;<:a:1>;<t:1:R>;<id:guide>;**b**;*i*;__u__;~~s~~;||spoiler||;`c`;```;[a](https://b.c);<https://b.c>".split(
    ";",
  ),
  ...[
    "https://b.c",
    "# h",
    "## h",
    "-# small",
    "- item",
    "* item",
    "1. item",
    "> quote",
    ">>> all",
    ":smile:",
    ":a_b:",
    "\\",
    "\\\\*",
    "\n",
    " ",
    "",
  ],
  ...["\u200b", "\u202e", "\u2066", "\ud83d", "\u{1f600}", "\u0627\u0644", "\0", "57", ". ", "x".repeat(300), "*".repeat(2100), "Ma"],
];
const text = fc.array(fc.oneof(fc.constantFrom(...hostile), fc.string({ unit: "binary" })), { maxLength: 6 }).map((parts) => parts.join(""));
const written: fc.Arbitrary<Span> = fc.oneof(
  text,
  text.map((strong) => ({ strong })),
);
const span: fc.Arbitrary<Span> = fc.oneof(
  { weight: 4, arbitrary: written },
  fc.constant({ at: instant(1_800_000_000_000), zone: "UTC" }),
  fc.record({ call: fc.constantFrom(person, "lead" as const), name: text }),
);
const line: fc.Arbitrary<Line> = fc.array(span, { maxLength: 5 });
const action = fc.record({ command: fc.constant("order bag"), subject: text, version: fc.nat() });
const item = fc.record({ label: text, value: text });
const card: fc.Arbitrary<Card> = fc.record({
  kind: fc.constant("note"),
  title: text,
  tone: fc.constantFrom("plain", "good", "attention", "refusal"),
  lines: fc.array(line, { maxLength: 60, size: "max" }),
  fields: fc.array(fc.record({ label: text, value: line }), { maxLength: 40, size: "max" }),
  buttons: fc.array(fc.record({ label: text, action, weight: fc.constantFrom("main", "plain", "grave") }), { maxLength: 40, size: "max" }),
  choices: fc.option(fc.record({ label: text, action, items: fc.array(item, { maxLength: 40, size: "max" }) })),
  files: fc.constant([]),
  data: fc.constant({}),
});

/** The same text on one line, without what no screen prints, one blank for several. */
const oneLine = (given: string): string =>
  given.replace(/[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\s]+/gu, " ").replace(/\p{Cs}/gu, "\ufffd");
const wordsOf = (spans: Line): string => spans.map((one) => (typeof one === "string" ? one : "strong" in one ? one.strong : "")).join("");
const unescaped = (markup: string): string => markup.replace(/\\[^\sA-Za-z0-9]/g, "\ue000");
/** Of the text between the bot's own marks, what the platform would still read as markup. */
const active = /[*_~`|[\]<>@#]|https?:\/\/|^\s*(?:-|\d+\.)\s|:[^\s:]+:/;

describe("drawCard", () => {
  it("makes of any card a body that the platform takes, within its limits", () => {
    fc.assert(
      fc.property(card, (given) => {
        const { allowedMentions, ...drawn } = drawCard(given, "k7m2", known);
        const body = JSON.parse(JSON.stringify({ ...drawn, allowed_mentions: allowedMentions })) as Record<string, unknown>;
        expect(faultsOf("message", body)).toEqual([]);
        expect(drawn.embeds[0].title?.length).toBeLessThanOrEqual(256);
        expect((drawn.embeds[0].description ?? "").length).toBeLessThanOrEqual(4096);
      }),
      { numRuns: 100 },
    );
  });

  it("wakes nobody by what people write", () => {
    fc.assert(
      fc.property(card, (given) => {
        const lines = [...given.lines, ...given.fields.map(({ value }) => value)].flat();
        const calls = lines.some((one) => typeof one === "object" && "call" in one && one.call === person);
        const { content, allowedMentions } = drawCard(given, "k7m2", known);
        expect(content).toBe(calls ? "<@500000000000000001>" : "");
        expect(allowedMentions).toEqual({ parse: [], users: calls ? ["500000000000000001"] : [], roles: [] });
      }),
      { numRuns: 50 },
    );
  });
});

describe("drawLine", () => {
  it("shows what was written and nothing else, and makes no markup of it", () => {
    fc.assert(
      fc.property(fc.array(written, { maxLength: 5 }), (given) => {
        const drawn = drawLine(given, known);
        const [shown] = chatMarkup(drawn, { at: instant(0), zone: "UTC" });
        expect(shown?.small).toBe(false);
        expect(oneLine(shown?.pieces.map((piece) => piece.text).join("") ?? "")).toBe(oneLine(wordsOf(given)));
        expect(unescaped(drawn).replace(/\*\*/g, "")).not.toMatch(active);
      }),
      { numRuns: 100 },
    );
  });
});
