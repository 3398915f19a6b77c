import { allChannels, identitiesOf } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { WEEK_PLATFORM } from "../chat/weekPlatform.ts";
import type { DiscordSettings } from "../config/environment.ts";
import { boundGuild } from "../discord/bindGuild.ts";
import { type Check, fault, ok, type Verdict, warn } from "./finding.ts";

const MOST_NAMES = 12;

/** The loaded week held against the settings: the guild, the channels and the people. */
export const weekChecks = (reader: Reader, settings: DiscordSettings): readonly Check[] => [
  { name: "guild of the database", look: () => guild(boundGuild(reader), settings.guildId) },
  {
    name: "channels of the week",
    look: () =>
      channels(
        allChannels(reader).map(({ name }) => name),
        [...settings.channels.keys()],
      ),
  },
  {
    name: "people of the week",
    look: () =>
      people(
        identitiesOf(reader, WEEK_PLATFORM).map(({ platformUserId }) => platformUserId),
        [...settings.people.keys()],
      ),
  },
];

function guild(bound: string | null, guildId: string): Verdict {
  if (bound === null) {
    return ok("no guild yet: the first start in the chat sets it");
  }
  return bound === guildId
    ? ok(`it belongs to guild ${bound}`)
    : fault(
        `it belongs to guild ${bound}, and DISCORD_GUILD_ID is ${guildId}`,
        "Set DISCORD_GUILD_ID back, or name another database with --data DIR",
      );
}

function channels(week: readonly string[], set: readonly string[]): Verdict {
  const missing = week.filter((name) => !set.includes(name));
  const unknown = set.filter((name) => !week.includes(name));
  const remedy =
    "Write name=id pairs in DISCORD_CHANNELS; right click the channel > Copy Channel ID (User Settings > Advanced > Developer Mode shows it)";
  const lines = [
    ...(missing.length === 0 ? [] : [`no id in DISCORD_CHANNELS for ${listed(missing)}: nothing is posted there`]),
    ...(unknown.length === 0 ? [] : [`DISCORD_CHANNELS names ${listed(unknown)}, and the week has no such channel`]),
  ];
  return lines.length === 0 ? ok(`all ${week.length} have an id`) : fault(lines.join("; "), remedy);
}

function people(week: readonly string[], set: readonly string[]): Verdict {
  const unknown = set.filter((handle) => !week.includes(handle));
  const missing = week.filter((handle) => !set.includes(handle));
  if (unknown.length > 0) {
    return fault(`DISCORD_PEOPLE names ${listed(unknown)}, and the week has nobody of that handle`, `The week's handles are ${listed(week)}`);
  }
  return missing.length === 0
    ? ok(`all ${week.length} have an id`)
    : warn(`no id in DISCORD_PEOPLE for ${listed(missing)}`, "Write handle=id pairs in DISCORD_PEOPLE; right click the person > Copy User ID");
}

const listed = (names: readonly string[]): string =>
  names.length > MOST_NAMES ? `${names.slice(0, MOST_NAMES).join(", ")} and ${names.length - MOST_NAMES} more` : names.join(", ");
