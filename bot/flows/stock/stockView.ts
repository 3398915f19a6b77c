import type { Context } from "../../chat/context.ts";
import type { Reply, Role } from "../../chat/types.ts";
import { refusalCard } from "../../replies/refusals.ts";

/** A view of `/stock`: its first example stands in the list of views. */
export interface StockView {
  readonly name: string;
  readonly summary: string;
  readonly takes: readonly string[];
  readonly answer: (text: string, context: Context) => Reply | null;
}

/** Who may change the stock; others only look. */
const changesStock: readonly Role[] = ["technician", "lead"];

export const mayChangeStock = ({ actor }: Context): boolean => changesStock.some((role) => actor.roles.includes(role));

/** A change of stock by whoever may not: refused and on record. */
export const refuseChange = (context: Context, view: string): Reply | null =>
  context.commit(() => ({
    reply: refusalCard(context.actor, `stock ${view}`, changesStock),
    changes: [{ action: `refused stock ${view}`, subject: `channel:${context.channel.name}`, before: null, after: null }],
    posts: [],
  }));
