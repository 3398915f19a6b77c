import { describe, expect, it } from "vitest";
import type { Option } from "../../../bot/chat/defineCommand.ts";
import { commandRegistration } from "../../../bot/discord/commandRegistration.ts";
import { commands } from "../../../bot/registry.ts";

/** The platform's own published schema, of a package that states no types. */
const { ApplicationCommandUpdateRequestSchema: published } = (await import("discord-api-spec/zod" as string)) as {
  readonly ApplicationCommandUpdateRequestSchema: { readonly parse: (body: unknown) => unknown };
};

interface Part {
  readonly name: string;
  readonly description?: string;
  readonly options?: readonly Part[];
  readonly choices?: readonly { readonly name: string; readonly value: string }[];
}
const partsOf = (part: Part): readonly Part[] => [part, ...(part.options ?? []).flatMap(partsOf)];
const option = (given: Partial<Option>): Option => ({ name: "note", summary: "A note", required: false, ...given });
const one = (given: Partial<{ name: string; summary: string; options: readonly Option[] }>) =>
  commandRegistration([{ name: "ask", summary: "Ask", options: [], ...given }]);
const many = <T>(count: number, make: (index: number) => T): readonly T[] => Array.from({ length: count }, (_, index) => make(index));
const firstOption = (given: Partial<Option>): unknown => (one({ options: [option(given)] })[0] as Part | undefined)?.options?.[0];
const choicesOf = (count: number, length: number): readonly string[] => many(count, (index) => String(index).padEnd(length, "c"));
/** Everything but the summary comes to 7996 characters. */
const ofCharacters = (count: number) =>
  one({
    summary: "s".repeat(count - 7996),
    options: [option({ oneOf: choicesOf(25, 100) }), option({ name: "two", oneOf: [...choicesOf(14, 100), "c".repeat(87)] })],
  });

describe("commandRegistration", () => {
  it("makes two words a command with a subcommand and sets required options first", () => {
    const shown = [
      { name: "order hold", summary: "Hold it", options: [option({}), option({ name: "order", required: true })] },
      { name: "help", summary: "Help", options: [] },
      { name: "order drop", summary: "Drop it", options: [] },
    ];
    expect(commandRegistration(shown)).toMatchObject([
      {
        name: "order",
        description: "order: hold, drop",
        options: [
          {
            type: 1,
            name: "hold",
            options: [
              { type: 3, name: "order", required: true },
              { name: "note", required: false },
            ],
          },
          { type: 1, name: "drop" },
        ],
      },
      { name: "help", description: "Help", options: [] },
      { type: 3, name: "Read as an order" },
    ]);
  });

  it("counts the subcommands that a group's description has no room for", () => {
    const group = many(25, (index) => ({ name: `order subcommand${index}`, summary: "Do it", options: [] }));
    expect(commandRegistration(group)[0]).toMatchObject({
      description: "order: subcommand0, subcommand1, subcommand2, subcommand3, subcommand4, subcommand5 and 19 more",
    });
  });

  it.each([
    ["free text as text", {}, { type: 3, max_length: 4000 }],
    ["a name of the record as text that completes", { takes: "player" }, { type: 3, max_length: 4000, autocomplete: true }],
    ["25 fixed values as choices", { oneOf: many(25, String) }, { type: 3, choices: many(25, (index) => ({ name: `${index}`, value: `${index}` })) }],
    ["26 fixed values as text that completes", { oneOf: many(26, String) }, { type: 3, max_length: 4000, autocomplete: true }],
    ["a file as an attachment", { takes: "file" }, { type: 11 }],
  ] as const)("registers %s", (_, given, sent) => {
    expect(firstOption(given)).toEqual({ name: "note", description: "A note", required: false, ...sent });
  });

  it.each([
    ["a name in capitals", () => one({ name: "Ask" }), "/Ask is no name"],
    ["a name of 33 letters", () => one({ name: "a".repeat(33) }), /\/a{33} is no name/],
    ["a summary of nothing", () => one({ summary: "" }), "/ask has 0 characters of summary"],
    ["a summary of 101 characters", () => one({ summary: "s".repeat(101) }), "/ask has 101 characters of summary"],
    ["an option's summary of 101 characters", () => one({ options: [option({ summary: "s".repeat(101) })] }), "/ask note has 101 characters"],
    ["26 options", () => one({ options: many(26, (index) => option({ name: `o${index}` })) }), "/ask has 26 options"],
    ["an option twice", () => one({ options: [option({}), option({})] }), "/ask has two options of one name"],
    [
      "26 subcommands",
      () => commandRegistration(many(26, (index) => ({ name: `ask o${index}`, summary: "Ask", options: [] }))),
      "/ask has 26 options",
    ],
    ["a choice of 101 characters", () => one({ options: [option({ oneOf: ["c".repeat(101)] })] }), "/ask note has a choice"],
    ["an empty choice", () => one({ options: [option({ oneOf: [""] })] }), "/ask note has a choice"],
    ["8001 characters in all", () => ofCharacters(8001), "/ask has 8001 characters in all"],
    ["101 commands", () => commandRegistration(many(101, (index) => ({ name: `ask${index}`, summary: "Ask", options: [] }))), "101 commands"],
  ])("refuses %s and names the command", (_, register, words) => {
    expect(register).toThrow(words);
  });

  it("takes 8000 characters in all", () => {
    expect(ofCharacters(8000)).toHaveLength(2);
  });

  // Names, 25 options, 25 choices, descriptions of 1 to 100, 8000 characters in all: the platform's public documentation.
  it.each(commandRegistration(commands).map((command) => [command.name, command as Part] as const))(
    "keeps /%s within the platform's limits",
    (_, command) => {
      const parts = partsOf(command);
      const texts = parts.flatMap(({ name, description = "", choices = [] }) => [
        name,
        description,
        ...choices.flatMap((choice) => Object.values(choice)),
      ]);
      expect(texts.join("").length).toBeLessThanOrEqual(8000);
      for (const { options = [], choices = [] } of parts) {
        expect(options.length).toBeLessThanOrEqual(25);
        expect(choices.length).toBeLessThanOrEqual(25);
        expect(new Set(choices.map(({ value }) => value)).size).toBe(choices.length);
        expect(new Set(options.map(({ name }) => name)).size).toBe(options.length);
      }
      // The schema drops every field it does not know: what comes back whole is all known.
      expect(published.parse(command)).toEqual(command);
    },
  );

  it("registers at most 100 commands", () => {
    expect(commandRegistration(commands).length).toBeLessThanOrEqual(100);
  });

  it("finds no one-word command beside a two-word one of the same first word, which nobody could call", () => {
    const alone = commands.filter((command) => !command.name.includes(" ")).map((command) => command.name);
    expect(commands.filter((command) => alone.some((word) => command.name.startsWith(`${word} `)))).toEqual([]);
  });
});
