import type { PostName } from "../../../bot/rehearsal/rehearsalWorld.ts";
import { findLivePost } from "../../../db/repositories/livePosts.ts";
import { orderByNumber } from "../../../db/repositories/orders.ts";
import { findPost } from "../../../db/repositories/outbox.ts";
import { channelByName, currentEvent } from "../../../db/repositories/people.ts";
import type { Interaction } from "./interactions.ts";
import type { JoinedWeek } from "./joinedWeek.ts";
import { idOf } from "./world.ts";

type Row = Readonly<Record<string, unknown>>;

/** A card as somebody has it on the screen: a post, or an answer that only they see. */
export interface Seen {
  readonly id: string;
  readonly channel: string;
  readonly to: string | null;
  readonly components: readonly Row[];
}

/** A button, a list to choose from, or a part of a form. */
export interface Part {
  readonly type: number;
  readonly label?: string;
  readonly custom_id: string;
  readonly value?: string;
  readonly options?: readonly { readonly label: string; readonly value: string; readonly default?: boolean }[];
}

export const BUTTON = 2;
export const SELECT = 3;

export const partsOf = ({ components }: Pick<Seen, "components">, type: number): readonly Part[] =>
  components.flatMap((row) => (row.components ?? []) as readonly Part[]).filter((part) => part.type === type);

/** What people in a place have before them: the newest card with such parts, or the post of an order. */
export interface ChatScreen {
  /** Takes in every post that is new or has changed. */
  readonly look: () => void;
  readonly answered: (interaction: Interaction, channel: string, who: string) => void;
  readonly find: (on: PostName | null, at: { readonly channel: string; readonly who: string }, type: number) => Seen;
}

export function chatScreen({ db, platform, now }: Pick<JoinedWeek, "db" | "platform" | "now">): ChatScreen {
  const seen: Seen[] = [];
  const drawn = new Map<string, string>();
  const look = (): void => {
    for (const [channel, id] of platform.world.channels) {
      for (const post of platform.posts(channel)) {
        const shown = JSON.stringify([post.embeds, post.components]);
        if (drawn.get(id + post.id) !== shown) {
          drawn.set(id + post.id, shown);
          seen.push({ id: post.id, channel, to: null, components: post.components });
        }
      }
    }
  };
  const postOf = (number: number, name: string): Seen | undefined => {
    const channel = channelByName(db, name);
    const truck = channel?.truckId ?? null;
    const order = truck === null ? null : orderByNumber(db, truck, currentEvent(db, truck, now())?.event.id ?? null, number);
    if (channel === null || order === null) {
      return undefined;
    }
    const isBench = channel.purpose === "bench";
    const live = findLivePost(db, { subject: `${isBench ? "sheet" : "order"}:${order.id}`, channel: isBench ? name : order.channel });
    const messageId = live === null ? null : (findPost(db, live.outboxId)?.messageId ?? null);
    const post = live === null || messageId === null ? null : platform.store.find(idOf(platform.world.channels, live.channel), messageId);
    return live === null || post === null ? undefined : { id: post.id, channel: live.channel, to: null, components: post.components };
  };
  return {
    look,
    answered: ({ id, shown }, channel, who) => {
      seen.push({ id, channel, to: who, components: (shown?.components ?? []) as readonly Row[] });
    },
    find: (on, { channel, who }, type) => {
      const fits = (one: Seen): boolean => one.channel === channel && (one.to === null || one.to === who) && partsOf(one, type).length > 0;
      const found = on?.kind === "order" ? postOf(on.number, channel) : seen.findLast(fits);
      if (found === undefined) {
        throw new Error(`nothing to press or choose in ${channel} for ${who}`);
      }
      return found;
    },
  };
}
