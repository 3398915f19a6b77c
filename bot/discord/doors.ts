import type { Interaction, Message } from "discord.js";
import type { Db } from "../../db/write.ts";
import type { Desk } from "../chat/types.ts";
import { answerInteraction } from "./answerInteraction.ts";
import { interactionArrival, isAnswerable, messageArrival } from "./arrivalOf.ts";
import { noteSeen } from "./catchUp.ts";
import type { Channels } from "./channels.ts";
import type { Members } from "./members.ts";

interface DoorParts {
  readonly guildId: string;
  readonly db: Db;
  readonly desk: Desk;
  readonly channels: Channels;
  readonly members: Members;
  readonly settle: () => Promise<void>;
}

/** Where what people do comes in. */
export interface Doors {
  /** Messages of a channel are taken one after another; `isInOrder` says that none before this one is missing. */
  readonly message: (message: Message, isInOrder: boolean) => Promise<void>;
  readonly interaction: (interaction: Interaction) => Promise<void>;
}

export function openDoors(parts: DoorParts): Doors {
  const lanes = new Map<string, Promise<void>>();
  return {
    message: (message, isInOrder) => {
      const before = lanes.get(message.channelId) ?? Promise.resolve();
      const taken = before.then(() => takeMessage(parts, message, isInOrder));
      lanes.set(
        message.channelId,
        taken.catch(() => {}),
      );
      return taken;
    },
    interaction: (interaction) => takeInteraction(parts, interaction),
  };
}

async function takeMessage(parts: DoorParts, message: Message, isInOrder: boolean): Promise<void> {
  const channel = parts.channels.nameOf(message.channelId);
  if (channel === null) {
    return;
  }
  const arrival = messageArrival(message, parts);
  if (arrival !== null) {
    await parts.desk.receive(arrival);
  }
  if (isInOrder) {
    noteSeen(parts.db, channel, message.id);
  }
  if (arrival !== null) {
    await parts.settle();
  }
}

async function takeInteraction(parts: DoorParts, interaction: Interaction): Promise<void> {
  const arrival = isAnswerable(interaction) ? interactionArrival(interaction, parts) : null;
  if (!isAnswerable(interaction) || arrival === null) {
    return;
  }
  try {
    await answerInteraction(interaction, arrival, () => parts.desk.receive(arrival), parts.members.calledOf);
  } finally {
    await parts.settle();
  }
}
