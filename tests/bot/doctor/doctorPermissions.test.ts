import { PermissionsBitField } from "discord.js";
import { describe, expect, it } from "vitest";
import { channelPermissions, type GuildSeen } from "../../../bot/discord/doctorPermissions.ts";

const [GUILD, OWN, OTHER, BOT] = ["1", "2", "3", "4"];
const VIEW = PermissionsBitField.Flags.ViewChannel;
const SEND = PermissionsBitField.Flags.SendMessages;
const guild: GuildSeen = {
  id: GUILD,
  ownerId: "9",
  roles: [
    { id: GUILD, permissions: String(VIEW) },
    { id: OWN, permissions: String(SEND) },
    { id: OTHER, permissions: String(PermissionsBitField.Flags.Administrator) },
  ],
  channels: [],
  self: { id: BOT, roles: [OWN] },
};
const layer = (id: string, allow: bigint, deny: bigint) => ({ id, type: id === BOT ? 1 : 0, allow: String(allow), deny: String(deny) });

describe("channelPermissions", () => {
  it.each([
    ["everyone's and its roles' permissions, no other role's", [], VIEW | SEND],
    ["less what the channel denies everyone", [layer(GUILD, 0n, SEND)], VIEW],
    ["with what its role is allowed after all", [layer(GUILD, 0n, SEND), layer(OWN, SEND, 0n)], VIEW | SEND],
    ["the same in any order of the overwrites", [layer(OWN, SEND, 0n), layer(GUILD, 0n, SEND)], VIEW | SEND],
    ["less what its role is denied", [layer(OWN, 0n, SEND)], VIEW],
    ["its own overwrite last", [layer(BOT, 0n, VIEW), layer(OWN, VIEW, 0n)], SEND],
    ["nothing of another role's overwrite", [layer(OTHER, 0n, VIEW)], VIEW | SEND],
  ])("gives %s", (_what, overwrites, allowed) => {
    expect(channelPermissions(guild, overwrites)).toBe(allowed);
  });

  it.each([
    ["the owner", { ...guild, ownerId: BOT }],
    ["an administrator", { ...guild, self: { id: BOT, roles: [OTHER] } }],
  ])("lets %s do everything whatever a channel denies", (_who, seen) => {
    expect(channelPermissions(seen, [layer(BOT, 0n, VIEW)])).toBe(PermissionsBitField.All);
  });
});
