import type { Interaction, Message } from "discord.js";
import type { Db } from "../../db/write.ts";
import type { Desk } from "../chat/types.ts";
import type { Answers } from "../desk/answers.ts";
import { answerInteraction, turnAway } from "./answerInteraction.ts";
import { noteSeen } from "./catchUp.ts";
import type { Channels } from "./channels.ts";
import { interactionArrival, isAnswerable } from "./interactionArrival.ts";
import type { Members } from "./members.ts";
import { messageArrival } from "./messageArrival.ts";
import { typingOf } from "./typingOf.ts";

interface DoorParts {
  readonly guildId: string;
  readonly db: Db;
  readonly desk: Desk;
  readonly answers: Answers;
  readonly channels: Channels;
  readonly members: Members;
  readonly opensForm: ReadonlySet<string>;
  /** Something may have been planned. */
  readonly changed: () => Promise<void>;
  readonly log: (error: unknown, doing: string) => void;
}

/** Whether a message came by the gateway just now, and whether none before it is missing. */
interface Coming {
  readonly isLive: boolean;
  readonly isInOrder: boolean;
}

/** Where what people do comes in. */
export interface Doors {
  /** Messages of a channel are taken one after another. */
  readonly message: (message: Message, coming: Coming) => Promise<void>;
  readonly interaction: (interaction: Interaction) => Promise<void>;
  /** From now on nothing is taken: messages are read at the next start, an interaction is told to come again. */
  readonly close: () => void;
}

const REMEMBERED = 2000;

/** The newest so many keys, for what the platform delivers twice or out of order. */
function newestOf<V>(count: number): Map<string, V> & { readonly put: (key: string, value: V) => void } {
  const kept = new Map<string, V>();
  const put = (key: string, value: V): void => {
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.size > count ? kept.keys().next().value : undefined;
    if (oldest !== undefined) {
      kept.delete(oldest);
    }
  };
  return Object.assign(kept, { put });
}

export function openDoors(parts: DoorParts): Doors {
  const lanes = new Map<string, Promise<void>>();
  const editedAt = newestOf<number>(REMEMBERED);
  const answered = newestOf<true>(REMEMBERED);
  let isOpen = true;
  return {
    message: (message, coming) => {
      const before = lanes.get(message.channelId) ?? Promise.resolve();
      const taken = before.then(async () => {
        const edited = message.editedTimestamp ?? 0;
        if (isOpen && edited >= (editedAt.get(message.id) ?? 0)) {
          editedAt.put(message.id, edited);
          await takeMessage(parts, message, coming);
        }
      });
      lanes.set(
        message.channelId,
        taken.catch(() => {}),
      );
      return taken;
    },
    interaction: async (interaction) => {
      if (!answered.has(interaction.id)) {
        answered.put(interaction.id, true);
        await (isOpen ? takeInteraction(parts, interaction) : turnAway(interaction));
      }
    },
    close: () => {
      isOpen = false;
    },
  };
}

async function takeMessage(parts: DoorParts, message: Message, { isLive, isInOrder }: Coming): Promise<void> {
  const channel = parts.channels.nameOf(message.channelId);
  if (channel === null) {
    return;
  }
  const arrival = await messageArrival(message, isLive, parts);
  if (arrival !== null) {
    await parts.desk.receive(arrival);
  }
  if (isInOrder) {
    noteSeen(parts.db, channel, message.id);
  }
  if (arrival !== null) {
    void parts.changed().catch((error: unknown) => parts.log(error, "the outbox"));
  }
}

async function takeInteraction(parts: DoorParts, interaction: Interaction): Promise<void> {
  if (interaction.isAutocomplete()) {
    const typing = typingOf(interaction, parts);
    await interaction.respond(typing === null ? [] : parts.desk.suggest(typing).map(({ label, value }) => ({ name: label, value })));
    return;
  }
  const arriving = isAnswerable(interaction) ? interactionArrival(interaction, parts) : null;
  if (!isAnswerable(interaction) || arriving === null) {
    return;
  }
  const { answers, opensForm, log } = parts;
  const { calledOf } = parts.members;
  try {
    await answerInteraction(interaction, arriving, { receive: parts.desk.receive, answers, opensForm, calledOf, log });
  } finally {
    await parts.changed();
  }
}
