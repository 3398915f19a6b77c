import { ApplicationCommand, type ApplicationCommandDataResolvable, Client } from "discord.js";
import { describe, expect, it } from "vitest";
import { registerCommands } from "../../../bot/discord/registerCommands.ts";
import { commands } from "../../../bot/registry.ts";

const GUILD = "100000000000000001";
const client = new Client({ intents: [] });

interface Row {
  readonly [field: string]: unknown;
}
const some = commands.filter(({ name }) => ["stock", "order bring", "order hold", "help"].includes(name));

/** What the platform answers for a command it was sent: ids, versions, and its defaults in place of what was left out. */
function answered(command: Row, index: number): Row {
  const { options, ...sent } = command;
  const asked = options as readonly Row[] | undefined;
  return {
    id: `20000000000000000${index}`,
    application_id: "300000000000000001",
    guild_id: GUILD,
    version: "400000000000000001",
    default_member_permissions: null,
    nsfw: false,
    integration_types: [0],
    contexts: null,
    type: 1,
    description: "",
    ...sent,
    ...(asked === undefined || asked.length === 0 ? {} : { options: asked.map(withoutDefaults) }),
  };
}

/** The platform leaves out of an option what is the default: nothing required, no options. */
function withoutDefaults({ required, options, ...option }: Row): Row {
  const within = (options as readonly Row[] | undefined) ?? [];
  return { ...option, ...(required === true ? { required } : {}), ...(within.length === 0 ? {} : { options: within.map(withoutDefaults) }) };
}

/** A guild that keeps what is set, read back through the client's own commands. */
function guildWith(change: (rows: readonly Row[]) => readonly Row[] = (rows) => rows) {
  let standing: readonly Row[] = [];
  const sets: string[] = [];
  const manager = {
    fetch: async ({ guildId }: { readonly guildId: string }) =>
      new Map(standing.map((row) => [String(row.id), Reflect.construct(ApplicationCommand, [client, row, null, guildId]) as ApplicationCommand])),
    set: async (wanted: readonly ApplicationCommandDataResolvable[], guildId: string) => {
      sets.push(guildId);
      standing = change((wanted as unknown as readonly Row[]).map(answered));
    },
  };
  return { manager, sets };
}

const without = (name: string) => (rows: readonly Row[]) => rows.filter((row) => row.name !== name);
const changed = (name: string, change: (row: Row) => Row) => (rows: readonly Row[]) => rows.map((row) => (row.name === name ? change(row) : row));
const firstOption = (change: Row) => (row: Row) => {
  const [first, ...others] = row.options as readonly Row[];
  return { ...row, options: [{ ...first, ...change }, ...others] };
};

describe("registerCommands", () => {
  it("sets the commands of a guild that has none", async () => {
    const { manager, sets } = guildWith();
    expect(await registerCommands(manager, GUILD, commands)).toBe("set");
    expect(sets).toEqual([GUILD]);
  });

  it("leaves every command of the bot alone once it stands there", async () => {
    const { manager, sets } = guildWith();
    await registerCommands(manager, GUILD, commands);
    expect(await registerCommands(manager, GUILD, commands)).toBe("same");
    expect(sets).toHaveLength(1);
  });

  it("leaves commands alone that the platform gives back in another order", async () => {
    const { manager } = guildWith((rows) => [...rows].reverse());
    await registerCommands(manager, GUILD, some);
    expect(await registerCommands(manager, GUILD, some)).toBe("same");
  });

  it.each([
    ["a command is missing", without("help")],
    ["a command is there that the bot has not", (rows: readonly Row[]) => [...rows, answered({ name: "old", description: "Old" }, 9)]],
    ["the command on messages is missing", without("Read as an order")],
    ["a description differs", changed("help", (row) => ({ ...row, description: "Else" }))],
    ["a type differs", changed("Read as an order", (row) => ({ ...row, type: 2 }))],
    ["an option is missing", changed("help", ({ options: _, ...row }) => row)],
    ["an option's description differs", changed("help", firstOption({ description: "Else" }))],
    ["an option is required", changed("help", firstOption({ required: true }))],
    ["an option completes", changed("help", firstOption({ autocomplete: true }))],
    ["an option's length differs", changed("help", firstOption({ max_length: 30 }))],
    ["an option's choices differ", changed("stock", firstOption({ choices: [{ name: "else", value: "else" }] }))],
    ["a subcommand's option is missing", changed("order", firstOption({ options: [] }))],
  ])("sets the commands where %s", async (_, change) => {
    const { manager, sets } = guildWith(change);
    await registerCommands(manager, GUILD, some);
    expect(await registerCommands(manager, GUILD, some)).toBe("set");
    expect(sets).toHaveLength(2);
  });
});
