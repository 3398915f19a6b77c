import { z } from "zod";
import type { Role } from "../chat/types.ts";

const accepted = {
  RANGECALL_LOG: "error, warn, info or debug",
  id: "an id of 17 to 20 digits",
  pairs: "name=id pairs with commas between them, each name and each id once, such as range-orders=123456789012345678",
} as const;

const idText = /^\d{17,20}$/;
const trimmed = z
  .string()
  .optional()
  .transform((text) => text?.trim() ?? "");
const oneId = trimmed.refine((text) => text === "" || idText.test(text), accepted.id).transform((text) => (text === "" ? null : text));
const pairs = trimmed.transform((text, context): ReadonlyMap<string, string> => {
  const read = readPairs(text);
  if (read === null) {
    context.addIssue({ code: "custom", message: accepted.pairs });
    return z.NEVER;
  }
  return read;
});

const schema = z.object({
  DISCORD_TOKEN: trimmed,
  DISCORD_GUILD_ID: oneId,
  DISCORD_ROLE_VIEWER: oneId,
  DISCORD_ROLE_REP: oneId,
  DISCORD_ROLE_TECHNICIAN: oneId,
  DISCORD_ROLE_LEAD: oneId,
  DISCORD_CHANNELS: pairs,
  DISCORD_PEOPLE: pairs,
  RANGECALL_LOG: z.enum(["error", "warn", "info", "debug"], accepted.RANGECALL_LOG).default("warn"),
});

/** Where the real chat is, and what its ids are called in the loaded week. */
export interface DiscordSettings {
  readonly guildId: string;
  /** Null where the chat has no such role. */
  readonly roleIds: Readonly<Record<Role, string | null>>;
  /** From the week's channel names to the platform's ids. */
  readonly channels: ReadonlyMap<string, string>;
  /** From the week's handles to the platform's ids. */
  readonly people: ReadonlyMap<string, string>;
}

export type EnvironmentReading =
  | {
      readonly kind: "environment";
      readonly token: string | null;
      /** Null as long as there is no token. */
      readonly discord: DiscordSettings | null;
      readonly logLevel: string;
    }
  | { readonly kind: "faulty"; readonly line: string };

/** Reads the environment once; each fault is one clear line. */
export function readEnvironment(variables: NodeJS.ProcessEnv): EnvironmentReading {
  const read = schema.safeParse(variables);
  if (!read.success) {
    const lines = read.error.issues.map(({ path, message }) => `The environment variable ${String(path[0])} is not as expected: it takes ${message}`);
    return { kind: "faulty", line: lines.join("\n") };
  }
  const { DISCORD_TOKEN: token, RANGECALL_LOG: logLevel } = read.data;
  if (token === "") {
    return { kind: "environment", token: null, discord: null, logLevel };
  }
  const missing = missingLines(read.data);
  if (read.data.DISCORD_GUILD_ID === null || missing.length > 0) {
    return { kind: "faulty", line: missing.join("\n") };
  }
  return { kind: "environment", token, discord: settingsOf(read.data, read.data.DISCORD_GUILD_ID), logLevel };
}

function settingsOf(data: z.output<typeof schema>, guildId: string): DiscordSettings {
  return {
    guildId,
    roleIds: {
      viewer: data.DISCORD_ROLE_VIEWER,
      rep: data.DISCORD_ROLE_REP,
      technician: data.DISCORD_ROLE_TECHNICIAN,
      lead: data.DISCORD_ROLE_LEAD,
    },
    channels: data.DISCORD_CHANNELS,
    people: data.DISCORD_PEOPLE,
  };
}

function missingLines(data: z.output<typeof schema>): readonly string[] {
  const guild = data.DISCORD_GUILD_ID === null ? [`DISCORD_TOKEN is set, DISCORD_GUILD_ID is missing: it takes ${accepted.id}`] : [];
  const channels = data.DISCORD_CHANNELS.size === 0 ? [`DISCORD_TOKEN is set, DISCORD_CHANNELS is missing: it takes ${accepted.pairs}`] : [];
  return [...guild, ...channels];
}

/** Reads `name=id,name=id`; null when a pair is not one, or a name or an id stands twice. */
function readPairs(text: string): ReadonlyMap<string, string> | null {
  const read = new Map<string, string>();
  const ids = new Set<string>();
  for (const pair of text === "" ? [] : text.split(",")) {
    const [name = "", id = "", ...more] = pair.split("=").map((part) => part.trim());
    if (name === "" || !idText.test(id) || more.length > 0 || read.has(name) || ids.has(id)) {
      return null;
    }
    read.set(name, id);
    ids.add(id);
  }
  return read;
}
