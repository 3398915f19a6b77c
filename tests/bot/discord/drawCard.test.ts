import { describe, expect, it } from "vitest";
import type { Button, Card } from "../../../bot/chat/types.ts";
import { drawCard } from "../../../bot/discord/drawCard.ts";
import { type CalledOf, drawLine } from "../../../bot/discord/drawLine.ts";
import { type Id, instant } from "../../../core/kinds.ts";

const blank: Card = { kind: "note", title: "57 OXTOBY", tone: "plain", lines: [], fields: [], buttons: [], choices: null, files: [], data: {} };
const nobody: CalledOf = () => null;
const person = 4 as Id<"person">;
const known: CalledOf = (called) => (called === person ? { kind: "person", id: "500" } : called === "lead" ? { kind: "role", id: "600" } : null);
const button = (index: number, argument = `a${index}`): Button => ({
  label: `B${index}`,
  weight: "plain",
  action: { command: "order bag", subject: "order:1", version: 1, argument },
});
const buttons = (count: number): readonly Button[] => Array.from({ length: count }, (_none, index) => button(index));
const items = (count: number) => Array.from({ length: count }, (_none, index) => ({ label: `Item ${index}`, value: `v${index}` }));
const choices = (count: number): Card["choices"] => ({
  label: "Which?",
  action: { command: "order heads", subject: "order:1", version: 1 },
  items: items(count),
});

describe("drawLine", () => {
  // A backslash before punctuation shows it as it is: the platform's public guide to message markup, from memory.
  it.each([
    ["styles", ["*a* _b_ ~c~ `d` ||e||"], "\\*a\\* \\_b\\_ \\~c\\~ \\`d\\` \\|\\|e\\|\\|"],
    ["a mention of everyone", ["@everyone"], "\\@everyone"],
    ["a mention written out", ["<@500>"], "\\<\\@500\\>"],
    ["a time written out", ["<t:1:t>"], "\\<t\\:1\\:t\\>"],
    ["a masked link", ["[here](https://a.b)"], "\\[here\\]\\(https\\://a.b\\)"],
    ["a heading and a list", ["# a", " - b"], "\\# a \\- b"],
    ["a link in two pieces", ["https:", "//a.b"], "https\\://a.b"],
    ["a face spelled out", [":smile: and so: on"], "\\:smile: and so: on"],
    ["half of a character", ["a\ud83d"], "a\ufffd"],
    ["a numbered item", ["57. driver"], "57\\. driver"],
    ["a decimal number", ["9.25 true"], "9.25 true"],
    ["a backslash", ["a\\"], "a\\\\"],
    ["line breaks and reading direction", ["a\nb\u202ec"], "a b c"],
  ])("shows %s as typed", (_what, line, drawn) => {
    expect(drawLine(line, nobody)).toBe(drawn);
  });

  it("keeps the blanks at the ends of strong words outside, and makes one of two that meet", () => {
    expect(drawLine([{ strong: "99 in? " }, "known"], nobody)).toBe("**99 in?** known");
    expect(drawLine([{ strong: "a" }, "", { strong: "b" }, { strong: " " }], nobody)).toBe("**ab** ");
    expect(drawLine([{ strong: " " }, "a"], nobody)).toBe(" a");
  });

  it("draws strong words, moments in whole seconds, and calls by id or else by name", () => {
    expect(drawLine([{ strong: "late*" }, " ", { at: instant(1_800_000_059_999), zone: "UTC" }], nobody)).toBe("**late\\*** <t:1800000059:t>");
    expect(drawLine([{ call: person, name: "Ma_ren" }, " ", { call: "lead", name: "leads" }], known)).toBe("<@500> <@&600>");
    expect(drawLine([{ call: person, name: "Ma_ren" }], nobody)).toBe("Ma\\_ren");
  });
});

describe("drawCard", () => {
  it("wakes whom the card calls, each once, and nobody else", () => {
    const call = { call: person, name: "Maren" };
    const drawn = drawCard({ ...blank, lines: [[call, " and ", call, "@everyone <@700>"]] }, "ref", known);
    expect(drawn.content).toBe("<@500>");
    expect(drawn.allowedMentions).toEqual({ parse: [], users: ["500"], roles: [] });
    expect(drawCard(blank, "ref", known)).toMatchObject({ content: "", allowedMentions: { parse: [], users: [], roles: [] } });
  });

  it("puts the reference into the footer and leaves an empty one out", () => {
    expect(drawCard(blank, "k7m2", nobody).embeds[0].footer).toEqual({ text: "k7m2" });
    expect(drawCard(blank, "", nobody).embeds[0]).not.toHaveProperty("footer");
  });

  // Rows 5, buttons 5 a row, one select a row of its own with 25 options: the platform's public documentation.
  it.each([
    [0, 0, []],
    [4, 0, [4]],
    [7, 0, [5, 2]],
    [30, 0, [5, 5, 5, 5, 5]],
    [30, 3, [5, 5, 5, 5, 1]],
    [0, 40, [1]],
  ])("sets %i buttons and %i choices in rows of %j", (buttonCount, itemCount, rows) => {
    const card = { ...blank, buttons: buttons(buttonCount), choices: itemCount === 0 ? null : choices(itemCount) };
    const { components } = drawCard(card, "", nobody);
    expect(components.map((row) => row.components.length)).toEqual(rows);
    const options = components.flatMap((row) => row.components.flatMap((part) => ("options" in part ? [part.options.length] : [])));
    expect(options).toEqual(itemCount === 0 ? [] : [Math.min(itemCount, 25)]);
  });

  it("leaves out a second button of the same action and one whose action is too long", () => {
    const { components } = drawCard({ ...blank, buttons: [button(1), button(2, "a1"), button(3, "x".repeat(100))] }, "", nobody);
    expect(components[0]?.components.map((part) => ("label" in part ? part.label : ""))).toEqual(["B1"]);
  });

  // Title 256, description 4096, 6000 in all, label 80: the platform's public documentation.
  it.each([
    ["stars", "*"],
    ["letters", "x"],
    ["faces of two units", "\u{1f600}"],
    ["backslashes", "\\"],
  ])("stays within the limits with a card of endless %s", (_what, letter) => {
    const long = letter.repeat(5001);
    const card: Card = {
      ...blank,
      title: long,
      lines: [[long], [long]],
      fields: Array.from({ length: 30 }, () => ({ label: long, value: [long] })),
      buttons: [{ ...button(1), label: long }],
      choices: { label: long, action: button(2).action, items: [{ label: long, value: "v" }] },
    };
    const { embeds, components } = drawCard(card, "ref", nobody);
    const { title = "", description = "", footer } = embeds[0];
    const all = [title, description, footer?.text ?? ""];
    expect(title.length).toBeLessThanOrEqual(256);
    expect(title.length).toBeGreaterThan(200);
    expect(description.length).toBeLessThanOrEqual(4096);
    expect(description.length).toBeGreaterThan(1900);
    expect(description.endsWith("\n… 32 more lines, the whole title in the file")).toBe(true);
    expect(all.join("").length).toBeLessThanOrEqual(6000);
    expect(all.every((text) => Buffer.from(text, "utf8").toString("utf8") === text)).toBe(true);
    expect(components.flatMap((row) => row.components).every((part) => !("label" in part) || (part.label ?? "").length <= 80)).toBe(true);
  });

  it("shows the fields in small print below the lines, and nothing for an empty title", () => {
    const [embed] = drawCard({ ...blank, title: " ", lines: [["a"]], fields: [{ label: "Posted by", value: ["Ma_ren"] }] }, "", nobody).embeds;
    expect(embed).toMatchObject({ title: "·", description: "a\n-# **Posted by** Ma\\_ren" });
  });
});
