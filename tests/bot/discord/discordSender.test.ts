import type { GuildTextBasedChannel } from "discord.js";
import { describe, expect, it } from "vitest";
import type { Channels } from "../../../bot/discord/channels.ts";
import { discordSender } from "../../../bot/discord/discordSender.ts";
import type { SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { instant } from "../../../core/kinds.ts";
import { driverBuild } from "../prints/someSheets.ts";
import { card } from "../rehearsal/cards.ts";

interface Posted {
  readonly files?: readonly { readonly name: string; readonly attachment: Buffer }[];
  readonly attachments?: readonly unknown[];
}

/** A channel that keeps what is sent and edited. */
function keepingSender() {
  const posted: Posted[] = [];
  const keep = async (first: unknown, second?: unknown) => {
    posted.push((second ?? first) as Posted);
    return { id: "1", embeds: [] };
  };
  const channel = { send: keep, messages: { fetch: async () => ({ embeds: [] }), edit: keep } } as unknown as GuildTextBasedChannel;
  const channels: Channels = { nameOf: () => null, names: ["range"], open: async () => channel };
  return {
    posted,
    sender: discordSender({ channels, calledOf: () => null, self: () => null, onStop: () => {}, now: () => instant(0), log: () => {} }),
  };
}

describe("discordSender", () => {
  it("draws the files of a card when it is sent or edited, in place of those before, and gives up a post whose file cannot be drawn", async () => {
    const { sender, posted } = keepingSender();
    const withFile = (sheet: SheetPrint) => card("57", { files: [{ name: "sheet-57.pdf", draw: "sheet", sheet }] });
    expect(await sender.send("range", withFile(driverBuild), { nonce: "n", ref: "r" })).toEqual({ kind: "sent", message: "1" });
    await sender.edit("range", "1", withFile(driverBuild));
    expect(posted.map(({ files }) => files?.map(({ name, attachment }) => `${name} ${attachment.subarray(0, 5)}`))).toEqual([
      ["sheet-57.pdf %PDF-"],
      ["sheet-57.pdf %PDF-"],
    ]);
    expect(posted[1]?.attachments).toEqual([]);
    expect(await sender.send("range", withFile({} as SheetPrint), { nonce: "n", ref: "r" })).toMatchObject({ kind: "refused" });
  });
});
