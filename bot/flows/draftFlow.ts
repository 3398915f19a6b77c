import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { Instant } from "../../core/kinds.ts";
import { keepPost } from "../../db/repositories/keptPosts.ts";
import { noteOnOrder, type OrderRow, orderById } from "../../db/repositories/orders.ts";
import { currentEvent, truckChannel } from "../../db/repositories/people.ts";
import type { Tx } from "../../db/write.ts";
import type { Mending } from "../boundary/reading.ts";
import type { Committed, Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { awaitsClub } from "../operations/awaitsClub.ts";
import { extraOrder } from "../operations/benchExtra.ts";
import { confirmOrder } from "../operations/confirmOrder.ts";
import { deadlineOf, draftOrder, redraftOrder, sameOrder } from "../operations/draftOrder.ts";
import { noTimes, timesOf } from "../operations/orderTimes.ts";
import { PlanMoved } from "../operations/planMoved.ts";
import { planOrder } from "../operations/planOrder.ts";
import { deadlineNote, draftNote, noTruckNote, sameOrderNote } from "../replies/draftNotes.ts";
import { movedChanges, movedPosts } from "./movedPosts.ts";
import { orderPosts } from "./orderPosts.ts";

export interface DraftWish {
  readonly request: BuildRequest;
  readonly text: string;
  readonly mendings: readonly Mending[];
  readonly go: boolean;
  /** The message it came from, without its edits: an edit replaces its open draft. */
  readonly sourceKey: string;
  /** The draft to replace, or null for a new one. */
  readonly replaces: OrderRow | null;
  /** The same order a moment ago was shown, and this one is wanted all the same. */
  readonly anyway: boolean;
  /** The one head to build with, when the rep chose it. */
  readonly headSerial?: string;
  /** What the asker is told in place of the usual. */
  readonly answer?: Reply;
}

const MOST_TRIES = 3;

/** Plans a request, estimates it on the bench as it is, and opens its draft; a plain `go` confirms it at once. */
export async function draftFlow(context: Context, wish: DraftWish): Promise<Reply | null> {
  const { now } = context;
  const truckId = wish.replaces?.truckId ?? context.actor.truck;
  const current = truckId === null ? null : context.read((reader) => currentEvent(reader, truckId, now));
  if (truckId === null || current === null || context.actor.person === null) {
    return noTruckNote();
  }
  const deadline = context.read((reader) => deadlineOf(reader, wish.request, truckId, now));
  if (deadline.kind !== "none" && deadline.kind !== "at") {
    return deadlineNote(deadline, now, context.actor.zone);
  }
  const twin = wish.replaces !== null || wish.anyway ? null : context.read((reader) => sameOrder(reader, wish.request, now));
  if (twin !== null) {
    return askSame(context, wish, twin);
  }
  for (let tried = 1; ; tried += 1) {
    const done = await tryDraft(context, wish, {
      truckId,
      eventId: current.event.id,
      byAt: deadline.kind === "at" ? deadline.at : null,
      insist: tried === MOST_TRIES,
    });
    if (done !== "moved") {
      return done;
    }
  }
}

function askSame(context: Context, wish: DraftWish, twin: OrderRow): Reply | null {
  const { person } = context.actor;
  if (person === null) {
    return noTruckNote();
  }
  return context.commit((tx) => {
    const id = keepPost(tx, { sourceKey: wish.sourceKey, channel: context.channel.name, personId: person, text: wish.text, at: context.now });
    return { reply: sameOrderNote(twin.number, id), changes: [], posts: [] };
  });
}

async function tryDraft(
  context: Context,
  wish: DraftWish,
  at: { readonly truckId: OrderRow["truckId"]; readonly eventId: OrderRow["eventId"]; readonly byAt: Instant | null; readonly insist: boolean },
): Promise<Reply | null | "moved"> {
  const { now } = context;
  const { request } = wish;
  const planned = context.read((reader) =>
    planOrder(reader, { request, truckId: at.truckId, now, headSerial: wish.headSerial, replaces: wish.replaces?.id }),
  );
  const awaits = awaitsClub(request, null);
  const extra = { kind: request.kind, clubs: planned, dueAt: at.byAt, urgent: request.urgent, releaseAt: null };
  const estimate = await context.estimate(at.truckId, extra);
  const times = awaits ? noTimes : timesOf(estimate.times, extraOrder);
  const work = (tx: Tx): Committed => {
    const personId = context.actor.person;
    if (personId === null) {
      throw new Error("an order has an author");
    }
    const channel = truckChannel(tx, at.truckId, "orders") ?? context.channel.name;
    const common = { request, asWritten: wish.text, planned, byAt: at.byAt, personId, now };
    const draft =
      wish.replaces === null
        ? draftOrder(tx, { ...common, truckId: at.truckId, eventId: at.eventId, channel, sourceKey: wish.sourceKey })
        : redraftOrder(tx, wish.replaces, common);
    noteOnOrder(tx, draft.id, { likelyAt: times.likelyAt, givenPromiseAt: times.promiseAt, playableAt: times.playableAt });
    const faults = planned.flatMap((club) => club.faults);
    const goes = wish.go && wish.mendings.length === 0 && faults.length === 0 && wish.replaces === null;
    const confirmed = goes ? confirmOrder(tx, draft.id, draft.version, times, now) : null;
    const order = orderById(tx, draft.id) ?? draft;
    return {
      reply: wish.answer ?? draftNote(order.number, wish, confirmed?.kind === "confirmed", context.key.startsWith("message:")),
      changes: [
        {
          action: wish.replaces === null ? "order.draft" : "order.redraft",
          subject: `order:${order.id}`,
          before: null,
          after: { text: wish.text },
          player: order.playerId,
        },
        ...(confirmed?.kind === "confirmed"
          ? [
              { action: "order.confirm", subject: `order:${order.id}`, before: "draft", after: "confirmed", player: order.playerId },
              ...movedChanges(confirmed.moved, order),
            ]
          : []),
      ],
      posts: [...orderPosts(tx, order, now), ...(confirmed?.kind === "confirmed" ? movedPosts(tx, confirmed.moved, order, now) : [])],
    };
  };
  try {
    return at.insist ? context.commit(work) : context.commitAt(at.truckId, estimate.benchVersion, work);
  } catch (error) {
    if (error instanceof PlanMoved) {
      return "moved";
    }
    throw error;
  }
}
