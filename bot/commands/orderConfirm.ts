import { z } from "zod";
import { requestOf } from "../../db/repositories/orders.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import type { Committed, Context } from "../chat/context.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import type { Reply } from "../chat/types.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { movedChanges, movedPosts } from "../flows/movedPosts.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { orderPosts } from "../flows/orderPosts.ts";
import { awaitsClub } from "../operations/awaitsClub.ts";
import { extraOfOrder, extraOrder } from "../operations/benchExtra.ts";
import { confirmOrder } from "../operations/confirmOrder.ts";
import { noTimes, type OrderTimes, timesOf } from "../operations/orderTimes.ts";
import { PlanMoved } from "../operations/planMoved.ts";
import { note } from "../replies/card.ts";
import { staleNote } from "../replies/orderNotes.ts";
import { stateWords } from "../replies/stateWords.ts";

const MOST_TRIES = 3;

/** Something to build from, something to do, or a finished club to hand over. */
const isPlanned = ({ plan, service = null, finished = null }: SheetPlan): boolean => plan !== null || service !== null || finished !== null;

function commitConfirm(tx: Tx, context: Context, written: string, version: number | null, times: OrderTimes): Committed {
  const found = findOrder(tx, context, written);
  const done = confirmOrder(tx, found.id, version ?? found.version, times, context.now);
  if (done.kind === "confirmed") {
    return {
      reply: note("order.confirmed", `${done.order.number} confirmed`, "good"),
      changes: [
        { action: "order.confirm", subject: `order:${done.order.id}`, before: "draft", after: "confirmed", player: done.order.playerId },
        ...movedChanges(done.moved, done.order),
      ],
      posts: [...orderPosts(tx, done.order, context.now), ...movedPosts(tx, done.moved, done.order, context.now)],
    };
  }
  const { number, state } = done.order;
  const answer =
    done.kind === "stale"
      ? staleNote(number, state)
      : note("stale", `${number} is ${stateWords[state]} already`, "attention", "Nothing was changed.");
  return { reply: answer, changes: [], posts: [] };
}

/** A part of the plan is gone: the draft is planned anew and shown again, never swapped in silence. */
async function planAnew(context: Context, written: string): Promise<Reply | null> {
  const order = context.read((reader) => findOrder(reader, context, written));
  const { request, asWritten } = context.read((reader) => requestOf(reader, order));
  const answer = note(
    "order.replanned",
    `${order.number}: a part was taken meanwhile`,
    "attention",
    "It is planned anew; look at its post and press Go there. Nothing was confirmed.",
  );
  const wish = { request, text: asWritten, mendings: [], go: false, sourceKey: order.sourceKey, replaces: order, anyway: true };
  return draftFlow(context, { ...wish, answer });
}

export const orderConfirm = defineCommand({
  name: "order confirm",
  summary: "Confirm a draft",
  options: [orderIn("draft")],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version }, context) => {
    for (let tried = 1; ; tried += 1) {
      const order = context.read((reader) => findOrder(reader, context, written));
      const sheets = context.read((reader) => sheetsOf(reader, order));
      const { request } = context.read((reader) => requestOf(reader, order));
      if (order.state === "draft" && sheets.some((sheet) => !isPlanned(sheet.sheetPlan))) {
        return note("refusal", `${order.number} cannot be built as written`, "refusal", "Its post says what is missing. Change it first.");
      }
      const estimate = await context.estimate(order.truckId, extraOfOrder(order, sheets));
      try {
        const times = awaitsClub(request, order) ? noTimes : timesOf(estimate.times, extraOrder);
        const work = (tx: Tx): Committed => commitConfirm(tx, context, written, version, times);
        const done = tried === MOST_TRIES ? context.commit(work) : context.commitAt(order.truckId, estimate.benchVersion, work);
        if (done !== "moved") {
          return done;
        }
      } catch (error) {
        if (error instanceof PlanMoved) {
          return planAnew(context, written);
        }
        throw error;
      }
    }
  },
});
