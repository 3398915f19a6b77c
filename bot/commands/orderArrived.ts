import { z } from "zod";
import { changeOrder, requestOf, touchBench } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import type { Committed } from "../chat/context.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { orderPosts } from "../flows/orderPosts.ts";
import { awaitsClub } from "../operations/awaitsClub.ts";
import { extraOfOrder, extraOrder } from "../operations/benchExtra.ts";
import { givePromise } from "../operations/givePromise.ts";
import { timesOf } from "../operations/orderTimes.ts";
import { arrivedNote, staleNote } from "../replies/orderNotes.ts";

const MOST_TRIES = 3;

/** The clock of work on a club that exists starts here; its promise is given now. */
export const orderArrived = defineCommand({
  name: "order arrived",
  summary: "The club an order works on is in the truck",
  options: [orderOption],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version }, context) => {
    for (let tried = 1; ; tried += 1) {
      const order = context.read((reader) => findOrder(reader, context, written));
      const { request } = context.read((reader) => requestOf(reader, order));
      if (version !== null && version !== order.version) {
        return staleNote(order.number, order.state);
      }
      if (order.state !== "confirmed" || !awaitsClub(request, order)) {
        return arrivedNote(order, "not-awaited");
      }
      const sheets = context.read((reader) => sheetsOf(reader, order));
      const estimate = await context.estimate(order.truckId, extraOfOrder(order, sheets));
      const { likelyAt, promiseAt, playableAt } = timesOf(estimate.times, extraOrder);
      const work = (tx: Tx): Committed => {
        const found = findOrder(tx, context, written);
        if (found.version !== order.version) {
          return { reply: staleNote(found.number, found.state), changes: [], posts: [] };
        }
        touchBench(tx, found.truckId);
        const after = changeOrder(tx, found.id, { clubInAt: context.now, expectedAt: null, likelyAt, givenPromiseAt: promiseAt, playableAt });
        if (promiseAt !== null) {
          givePromise(tx, after, "arrived", { likelyAt, promiseAt }, context.now);
        }
        return {
          reply: arrivedNote(after, "arrived"),
          changes: [{ action: "order.arrived", subject: `order:${after.id}`, before: null, after: context.now, player: after.playerId }],
          posts: orderPosts(tx, after, context.now),
        };
      };
      const done = tried === MOST_TRIES ? context.commit(work) : context.commitAt(order.truckId, estimate.benchVersion, work);
      if (done !== "moved") {
        return done;
      }
    }
  },
});
