import { PermissionFlagsBits } from "discord.js";
import type { DiscordSettings } from "../../../bot/config/environment.ts";

/** Everybody and everything of one guild, by name. */
export interface World {
  readonly guild: string;
  readonly bot: string;
  readonly token: string;
  /** Handles to user ids. */
  readonly people: ReadonlyMap<string, string>;
  /** Handles to the names of the roles they hold; tests may change it. */
  readonly held: Map<string, readonly string[]>;
  readonly roles: ReadonlyMap<string, string>;
  readonly channels: ReadonlyMap<string, string>;
  /** What the bot may do, by channel id; tests may change it. */
  readonly allowed: Map<string, bigint>;
}

const { ViewChannel, SendMessages, EmbedLinks, AttachFiles, ReadMessageHistory, PinMessages } = PermissionFlagsBits;

/** The least the bot needs in each channel. */
const needed = ViewChannel | SendMessages | EmbedLinks | AttachFiles | ReadMessageHistory | PinMessages;

const numbered = (kind: number, names: readonly string[]): ReadonlyMap<string, string> =>
  new Map(names.map((name, index) => [name, `${kind}0000000000000${String(index + 1).padStart(4, "0")}`]));

/** People with their roles and channels of the names given, all ids made up. */
export function makeWorld(people: Readonly<Record<string, readonly string[]>>, channelNames: readonly string[]): World {
  const channels = numbered(3, channelNames);
  return {
    guild: "200000000000000001",
    bot: "400000000000000001",
    token: "local.token.of-nobody",
    people: numbered(5, Object.keys(people)),
    held: new Map(Object.entries(people)),
    roles: numbered(6, ["viewer", "rep", "technician", "lead"]),
    channels,
    allowed: new Map([...channels.values()].map((id) => [id, needed])),
  };
}

/** The demo week's people and channels. */
export const demoWorld = (): World =>
  makeWorld(
    {
      maren: ["rep"],
      iver: ["rep"],
      dessa: ["technician"],
      callan: ["technician"],
      petra: ["lead"],
      ruben: ["rep"],
      aino: ["technician"],
      sorrel: ["rep", "technician"],
      jonty: ["technician"],
      henrike: ["lead", "rep"],
      akiko: ["viewer"],
      lowell: ["viewer"],
      stranger: [],
    },
    [...["plover", "avocet", "knot"].flatMap((truck) => [`${truck}-orders`, `${truck}-bench`, `${truck}-week`]), "general", "lead"],
  );

/** The settings that bind the bot to a world; `stranger` is nobody the week knows. */
export function settingsOf({ guild, people, roles, channels }: World): DiscordSettings {
  const role = (name: string): string | null => roles.get(name) ?? null;
  return {
    guildId: guild,
    roleIds: { viewer: role("viewer"), rep: role("rep"), technician: role("technician"), lead: role("lead") },
    channels,
    people: new Map([...people].filter(([handle]) => handle !== "stranger")),
  };
}

export function idOf(ids: ReadonlyMap<string, string>, name: string): string {
  const id = ids.get(name);
  if (id === undefined) {
    throw new Error(`nothing is called ${name} here: ${[...ids.keys()].join(", ")}`);
  }
  return id;
}
