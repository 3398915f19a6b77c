import { describe, expect, it } from "vitest";
import { roles } from "../../../bot/chat/types.ts";
import { commands } from "../../../bot/registry.ts";

const names = commands.map(({ name }) => name);

describe("commands", () => {
  it("have distinct names", () => {
    expect(new Set(names).size).toBe(names.length);
  });

  it.each(commands.map((command) => [command.name, command] as const))("%s has a name and options that the chat takes", (name, command) => {
    // The chat's published limits: each word of a name 1 to 32 small letters, digits or dashes, at most 25 options, 100 characters of summary.
    expect(name).toMatch(/^[a-z][a-z0-9-]*( [a-z][a-z0-9-]*)?$/);
    expect(name.length).toBeLessThanOrEqual(32);
    expect(command.options.length).toBeLessThanOrEqual(25);
    expect(new Set(command.options.map((option) => option.name)).size).toBe(command.options.length);
    for (const { summary } of [command, ...command.options]) {
      expect(summary.length).toBeGreaterThan(0);
      expect(summary.length).toBeLessThanOrEqual(100);
    }
    expect(roles).toEqual(expect.arrayContaining([...command.roles]));
  });

  it("have no two-word sibling of a one-word name: the chat could not invoke both", () => {
    const groups = new Set(names.filter((name) => name.includes(" ")).map((name) => name.split(" ")[0]));
    expect(names.filter((name) => groups.has(name))).toEqual([]);
  });

  it("let a viewer do nothing but ask", () => {
    const open = commands.filter((command) => command.roles.length === 0 || command.roles.includes("viewer"));
    expect(open.map(({ name }) => name).sort()).toEqual(["calc", "help", "spec"]);
  });
});
