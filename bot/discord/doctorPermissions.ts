import { type APIGuildMember, type APIOverwrite, type APIRole, type ChannelType, OverwriteType, PermissionFlagsBits } from "discord.js";

export interface GuildSeen {
  readonly id: string;
  readonly ownerId: string;
  readonly roles: readonly Pick<APIRole, "id" | "permissions">[];
  readonly channels: readonly {
    readonly id: string;
    readonly type: ChannelType;
    readonly permission_overwrites?: readonly APIOverwrite[] | undefined;
  }[];
  readonly self: { readonly id: string; readonly roles: APIGuildMember["roles"] };
}

const EVERYTHING = Object.values(PermissionFlagsBits).reduce((all, bit) => all | bit, 0n);
const either = (bits: readonly string[]): bigint => bits.reduce((all, each) => all | BigInt(each), 0n);

/** What the bot may do in the whole guild: everyone's permissions and those of its roles. */
export function basePermissions({ id, ownerId, roles, self }: GuildSeen): bigint {
  const base = either(roles.filter((role) => role.id === id || self.roles.includes(role.id)).map(({ permissions }) => permissions));
  return ownerId === self.id || (base & PermissionFlagsBits.Administrator) !== 0n ? EVERYTHING : base;
}

/** What the bot may do in one channel: overwrites of everyone, then of its roles taken together, then its own. */
export function channelPermissions(guild: GuildSeen, overwrites: readonly APIOverwrite[]): bigint {
  const base = basePermissions(guild);
  if ((base & PermissionFlagsBits.Administrator) !== 0n) {
    return base;
  }
  const everyone = overwrites.filter(({ id }) => id === guild.id);
  const ofRoles = overwrites.filter(({ id, type }) => type === OverwriteType.Role && id !== guild.id && guild.self.roles.includes(id));
  const own = overwrites.filter(({ id, type }) => type === OverwriteType.Member && id === guild.self.id);
  return [everyone, ofRoles, own].reduce(
    (allowed, layer) => (allowed & ~either(layer.map(({ deny }) => deny))) | either(layer.map(({ allow }) => allow)),
    base,
  );
}
