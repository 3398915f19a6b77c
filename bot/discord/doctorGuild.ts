import { ChannelType, PermissionFlagsBits } from "discord.js";
import { roles } from "../chat/types.ts";
import type { DiscordSettings } from "../config/environment.ts";
import { type Check, fault, ok, type Verdict, warn } from "../doctor/finding.ts";
import { basePermissions, channelPermissions, type GuildSeen } from "./doctorPermissions.ts";
import { lacking } from "./neededPermissions.ts";

const PINS = PermissionFlagsBits.PinMessages | PermissionFlagsBits.ManageMessages;
const WHERE = "channel > Edit Channel > Permissions > Advanced permissions > add the bot's role";

/** The settings held against the guild: its roles, its channels, and what the bot may do in each. */
export function guildChecks(guild: GuildSeen, settings: DiscordSettings): readonly Check[] {
  const known = new Set(guild.roles.map(({ id }) => id));
  return [
    ...roles.flatMap((role) => {
      const id = settings.roleIds[role];
      return id === null ? [] : [{ name: `role ${role}`, look: () => roleIn(known, `DISCORD_ROLE_${role.toUpperCase()}`, id) }];
    }),
    { name: "administrator", look: () => administrator(guild) },
    ...[...settings.channels].map(([name, id]) => ({ name: `channel ${name}`, look: () => channel(guild, id) })),
  ];
}

function roleIn(known: ReadonlySet<string>, variable: string, id: string): Verdict {
  return known.has(id)
    ? ok("the guild has it")
    : fault(`${variable} is ${id}, and the guild has no such role`, `Server Settings > Roles > the role > Copy Role ID, and set ${variable}`);
}

function administrator(guild: GuildSeen): Verdict {
  return (basePermissions(guild) & PermissionFlagsBits.Administrator) === 0n
    ? ok("the bot is none")
    : warn(
        "the bot is Administrator, which is more than it needs",
        "Server Settings > Roles > the bot's role > Permissions: switch Administrator off",
      );
}

function channel(guild: GuildSeen, id: string): Verdict {
  const found = guild.channels.find((known) => known.id === id);
  if (found === undefined) {
    return fault(`the guild has no channel ${id}`, "Right click the channel > Copy Channel ID, and set it in DISCORD_CHANNELS");
  }
  if (found.type !== ChannelType.GuildText && found.type !== ChannelType.GuildAnnouncement) {
    return fault(`${id} is no text channel`, "Put the id of a text channel in DISCORD_CHANNELS");
  }
  const allowed = channelPermissions(guild, found.permission_overwrites ?? []);
  const missing = lacking(allowed);
  if (missing.length > 0) {
    return fault(`the bot lacks ${missing.join(", ")}`, `${WHERE}, and allow ${missing.join(", ")}`);
  }
  return (allowed & PINS) === 0n
    ? warn("the bot lacks Pin Messages: the board cannot be pinned", `${WHERE}, and allow Pin Messages`)
    : ok("the bot may do all it needs");
}
