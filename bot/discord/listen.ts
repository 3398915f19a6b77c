import { Events } from "discord.js";
import type { Doors } from "./doors.ts";
import type { InHand } from "./inHand.ts";
import type { MissedReader } from "./missedReader.ts";
import type { OpenClient } from "./openClient.ts";

/** Leads what the gateway tells to the doors, and has what was missed read after every lost connection. */
export function listen(
  { client, end }: OpenClient,
  guildId: string,
  { doors, reader, inHand }: { readonly doors: Doors; readonly reader: MissedReader; readonly inHand: InHand },
): void {
  const readMissed = (): void => {
    reader.regain();
    if (client.isReady()) {
      void inHand.run("reading what was missed", reader.read);
    }
  };
  client.on(
    Events.MessageCreate,
    (message) => void inHand.run("a message", () => doors.message(message, { isLive: true, isInOrder: reader.isComplete() })),
  );
  client.on(Events.MessageUpdate, (_before, message) => {
    if (message.editedTimestamp !== null) {
      void inHand.run("an edited message", async () =>
        doors.message(message.partial ? await message.fetch() : message, { isLive: !message.partial, isInOrder: false }),
      );
    }
  });
  client.on(Events.InteractionCreate, (interaction) => void inHand.run("an interaction", () => doors.interaction(interaction)));
  client.on(Events.ShardReconnecting, reader.lose);
  client.on(Events.ShardReady, readMissed);
  client.on(Events.ShardResume, readMissed);
  client.on(Events.GuildDelete, ({ id }) => {
    if (id === guildId) {
      end("settings", `the bot is no member of the guild ${id} any more: invite it again`);
    }
  });
}
