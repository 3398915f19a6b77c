import { describe, expect, it } from "vitest";
import { commandRegistration } from "../../../bot/discord/commandRegistration.ts";
import { commands } from "../../../bot/registry.ts";

interface Part {
  readonly name: string;
  readonly description: string;
  readonly options?: readonly Part[];
}
const partsOf = (part: Part): readonly Part[] => [part, ...(part.options ?? []).flatMap(partsOf)];
const name = /^[a-z0-9_-]{1,32}$/;

describe("commandRegistration", () => {
  it("makes two words a command with a subcommand and sets required options first", () => {
    const late = { name: "note", summary: "A note", required: false };
    const first = { name: "order", summary: "Which", required: true };
    const shown = [
      { name: "order hold", summary: "Hold it", options: [late, first] },
      { name: "help", summary: "Help", options: [] },
      { name: "order drop", summary: "Drop it", options: [] },
    ];
    expect(commandRegistration(shown)).toMatchObject([
      {
        name: "order",
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
    ]);
  });

  // Names, 25 options, descriptions of 1 to 100, 8000 characters in all: the platform's public documentation.
  it("keeps every command of the bot within the platform's limits", () => {
    const registered = commandRegistration(commands);
    for (const command of registered) {
      const parts = partsOf(command as Part);
      expect(parts.filter((part) => !name.test(part.name) || part.description.length < 1 || part.description.length > 100)).toEqual([]);
      expect(parts.filter(({ options = [] }) => options.length > 25)).toEqual([]);
      expect(parts.map((part) => part.name + part.description).join("").length).toBeLessThanOrEqual(8000);
    }
    expect(registered.length).toBeLessThanOrEqual(100);
  });

  it("finds no one-word command beside a two-word one of the same first word, which nobody could call", () => {
    const alone = commands.filter((command) => !command.name.includes(" ")).map((command) => command.name);
    expect(commands.filter((command) => alone.some((word) => command.name.startsWith(`${word} `)))).toEqual([]);
  });
});
