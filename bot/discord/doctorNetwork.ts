import {
  type APIApplication,
  type APIGuild,
  type APIGuildMember,
  type APIUser,
  ApplicationFlags,
  DiscordAPIError,
  type RESTGetAPIGatewayBotResult,
  Routes,
} from "discord.js";
import type { DiscordSettings } from "../config/environment.ts";
import { type Check, type Finding, fault, ok, skipped, type Verdict, warn } from "../doctor/finding.ts";
import { runChecks } from "../doctor/runChecks.ts";
import { doctorFault } from "./doctorFault.ts";
import { guildChecks } from "./doctorGuild.ts";
import type { GuildSeen } from "./doctorPermissions.ts";
import { type DoctorRest, type DoctorRestParts, doctorRest } from "./doctorRest.ts";

const CLOCK_WARN_MS = 5000;
const CLOCK_FAULT_MS = 60_000;
const MINUTE_MS = 60_000;
const CONTENT = ApplicationFlags.GatewayMessageContent | ApplicationFlags.GatewayMessageContentLimited;
const NOT_IN_GUILD = [403, 404];

/** Asks the platform what a start in the chat would run into; a token that is not taken is tried once only. */
export async function doctorNetwork(parts: DoctorRestParts & { readonly settings: DiscordSettings }): Promise<readonly Finding[]> {
  const rest = doctorRest(parts);
  const user = await asked(() => rest.get<APIUser>(Routes.user()));
  if ("state" in user) {
    return [...(await runChecks([{ name: "token", look: () => user }])), ...(await passedOver("the platform was not asked further"))];
  }
  const first = [
    { name: "token", look: () => ok(`the platform takes it for ${user.id}`) },
    { name: "clock of the platform", look: () => clock(rest.clockAheadMs()) },
    asking("message content", async () => application(await rest.get<APIApplication>(Routes.currentApplication()))),
    asking("starts left", async () => starts(await rest.get<RESTGetAPIGatewayBotResult>(Routes.gatewayBot()))),
  ];
  return [...(await runChecks(first)), ...(await lookAtGuild(rest, parts.settings, user.id))];
}

async function lookAtGuild(rest: DoctorRest, settings: DiscordSettings, self: string): Promise<readonly Finding[]> {
  const guild = await asked(() => readGuild(rest, settings.guildId, self));
  if ("state" in guild) {
    return runChecks([
      { name: "guild", look: () => guild },
      { name: "roles and channels", look: () => skipped("the guild is not seen") },
    ]);
  }
  return runChecks([{ name: "guild", look: () => ok(`the bot is in guild ${guild.id}`) }, ...guildChecks(guild, settings)]);
}

async function readGuild(rest: DoctorRest, guildId: string, self: string): Promise<GuildSeen | Verdict> {
  try {
    const guild = await rest.get<APIGuild>(Routes.guild(guildId));
    const channels = await rest.get<GuildSeen["channels"]>(Routes.guildChannels(guildId));
    const member = await rest.get<APIGuildMember>(Routes.guildMember(guildId, self));
    return { id: guild.id, ownerId: guild.owner_id, roles: guild.roles, channels, self: { id: self, roles: member.roles } };
  } catch (error) {
    if (error instanceof DiscordAPIError && NOT_IN_GUILD.includes(error.status)) {
      return fault(
        `the bot is not in guild ${guildId}`,
        "Check DISCORD_GUILD_ID; to add the bot: Developer Portal > OAuth2 > URL Generator, scopes bot and applications.commands, and open the URL",
      );
    }
    throw error;
  }
}

function clock(aheadMs: number | null): Verdict {
  if (aheadMs === null) {
    return skipped("the platform sent no time");
  }
  const off = Math.abs(aheadMs);
  const found = `this machine is ${Math.round(off / 1000)} s ${aheadMs < 0 ? "behind" : "ahead of"} the platform`;
  const remedy = "Set the clock of this machine, such as by timedatectl set-ntp true";
  if (off > CLOCK_FAULT_MS) {
    return fault(found, remedy);
  }
  return off > CLOCK_WARN_MS ? warn(found, remedy) : ok(found);
}

function application({ flags, interactions_endpoint_url: endpoint = null }: APIApplication): Verdict {
  if (((flags ?? 0) & CONTENT) === 0) {
    return fault(
      "Message Content Intent is off: the chat refuses the bot",
      "Developer Portal > your application > Bot > Privileged Gateway Intents > Message Content Intent: switch it on",
    );
  }
  return endpoint === null || endpoint === ""
    ? ok("Message Content Intent is on")
    : fault("an Interactions Endpoint URL is set: commands and buttons never reach the bot", "Developer Portal > General Information: empty it");
}

function starts({ session_start_limit: { remaining, total, reset_after: resetAfter } }: RESTGetAPIGatewayBotResult): Verdict {
  return remaining > 0
    ? ok(`${remaining} of ${total}`)
    : fault(`none of ${total}`, `Wait ${Math.ceil(resetAfter / MINUTE_MS)} min before npm start, and find out what restarts it so often`);
}

const asking = (name: string, look: () => Promise<Verdict>): Check => ({ name, look: () => asked(look) });

async function asked<T>(ask: () => Promise<T>): Promise<T | Verdict> {
  try {
    return await ask();
  } catch (error) {
    return doctorFault(error);
  }
}

const passedOver = (why: string): Promise<readonly Finding[]> => runChecks([{ name: "application, guild and channels", look: () => skipped(why) }]);
