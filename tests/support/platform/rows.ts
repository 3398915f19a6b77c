import { idOf, type World } from "./world.ts";

/** What the platform sends of people, roles and the guild, as far as the client reads it. */
export const userRow = (id: string, bot: boolean) => ({
  id,
  username: `user${id.slice(-2)}`,
  discriminator: "0",
  avatar: null,
  bot,
  global_name: null,
});

export function memberRow(world: World, userId: string) {
  const handle = [...world.people].find(([, id]) => id === userId)?.[0];
  const held = handle === undefined ? [] : (world.held.get(handle) ?? []);
  return {
    user: userRow(userId, userId === world.bot),
    roles: held.map((name) => idOf(world.roles, name)),
    joined_at: "2026-01-01T00:00:00.000Z",
    deaf: false,
    mute: false,
    flags: 0,
    permissions: "0",
  };
}

const roleRow = (id: string, name: string) => ({
  id,
  name,
  color: 0,
  hoist: false,
  position: 0,
  permissions: "0",
  managed: false,
  mentionable: false,
  flags: 0,
});

/** A member's overwrite, as the bot has no role of its own here. */
const MEMBER_OVERWRITE = 1;

export const channelRow = (world: World, id: string) => ({
  id,
  type: 0,
  name: [...world.channels].find(([, known]) => known === id)?.[0] ?? "unknown",
  guild_id: world.guild,
  position: 0,
  permission_overwrites: [{ id: world.bot, type: MEMBER_OVERWRITE, allow: String(world.allowed.get(id) ?? 0n), deny: "0" }],
});

export const guildRow = (world: World) => ({
  id: world.guild,
  name: "Guild",
  unavailable: false,
  owner_id: "100000000000000001",
  roles: [roleRow(world.guild, "@everyone"), ...[...world.roles].map(([name, id]) => roleRow(id, name))],
  emojis: [],
  stickers: [],
  features: [],
  member_count: world.people.size + 1,
  members: [memberRow(world, world.bot)],
  channels: [...world.channels.values()].map((id) => channelRow(world, id)),
  threads: [],
  presences: [],
  voice_states: [],
  stage_instances: [],
  guild_scheduled_events: [],
});

/** The application has the message content switch as the platform grants it to small ones. */
const GATEWAY_MESSAGE_CONTENT_LIMITED = 1 << 19;

export const applicationRow = (world: World) => ({ id: world.bot, flags: GATEWAY_MESSAGE_CONTENT_LIMITED, name: "bot", description: "" });
