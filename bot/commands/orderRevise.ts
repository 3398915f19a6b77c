import { z } from "zod";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import { requestOf } from "../../db/repositories/orders.ts";
import { readMessage } from "../boundary/readMessage.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { readingContext } from "../desk/readingContext.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { doneForGood } from "../operations/doneForGood.ts";
import { deadlineOf, reviseUnderWay } from "../operations/draftOrder.ts";
import { planOrder } from "../operations/planOrder.ts";
import { note, reply } from "../replies/card.ts";
import { deadlineNote } from "../replies/draftNotes.ts";
import { faultLines } from "../replies/faultWords.ts";
import { irreversibleNote, revisedNote, staysNote } from "../replies/orderNotes.ts";
import { problemsCard } from "../replies/problemsCard.ts";
import { stateWords } from "../replies/stateWords.ts";

/** A change of a draft plans it anew; before the first step so does one of a confirmed order, which is then a draft again. */
export const orderRevise = defineCommand({
  name: "order revise",
  summary: "Change an order, such as: 57 make it d4",
  options: [orderOption, { name: "text", summary: "What should change", required: true }],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, text: z.string().min(1).max(2000) }),
  run: async ({ order: written, text }, context) => {
    const order = context.read((reader) => findOrder(reader, context, written));
    const whole = /^\s*\d/.test(text) ? text : `${order.number} ${text}`;
    const reading = context.read((reader) => readMessage(whole, readingContext(reader, context.actor, context.now)));
    if (reading.kind === "problems") {
      return reply(problemsCard(reading.problems, reading.mendings, null));
    }
    if (reading.kind !== "revise") {
      return note("refusal", `Not read as a change of ${order.number}`, "attention", `Write for instance: ${order.number} make it d4`);
    }
    const before = context.read((reader) => requestOf(reader, order));
    const request: BuildRequest = {
      ...before.request,
      clauses: { ...before.request.clauses, ...reading.clauses },
      by: reading.by ?? before.request.by,
      to: reading.to ?? before.request.to,
      like: reading.like ?? before.request.like,
      urgent: reading.urgent || before.request.urgent,
      note: reading.note ?? before.request.note,
    };
    const asWritten = `${before.asWritten}\n${whole}`;
    if (order.state === "draft") {
      return draftFlow(context, {
        request,
        text: asWritten,
        mendings: reading.mendings,
        go: false,
        sourceKey: order.sourceKey,
        replaces: order,
        anyway: true,
      });
    }
    const changesClub = Object.keys(reading.clauses).length > 0;
    if (order.state !== "confirmed" && order.state !== "building" && order.state !== "finalCheck") {
      return note(
        "refusal",
        `${order.number} is ${stateWords[order.state]}: it cannot be revised`,
        "refusal",
        "Send a new order, such as a swap or a turn.",
      );
    }
    const deadline = context.read((reader) => deadlineOf(reader, request, order.truckId, context.now));
    if (deadline.kind !== "none" && deadline.kind !== "at") {
      return deadlineNote(deadline, context.now, context.actor.zone);
    }
    const { person } = context.actor;
    if (person === null) {
      throw new Error("a revision has an author");
    }
    if (changesClub && order.state !== "confirmed") {
      return irreversibleNote(
        order.number,
        context.read((reader) => doneForGood(reader, order)),
      );
    }
    if (changesClub) {
      const planned = context.read((reader) => planOrder(reader, { request, truckId: order.truckId, now: context.now, replaces: order.id }));
      const faults = planned.flatMap(({ club, copy, faults: own }) => own.map((fault) => ({ club, copy, fault })));
      if (faults.length > 0) {
        return staysNote(order.number, faultLines({ faults, request }, planned.length > 1));
      }
      return draftFlow(context, {
        request,
        text: asWritten,
        mendings: reading.mendings,
        go: false,
        sourceKey: order.sourceKey,
        replaces: order,
        anyway: true,
      });
    }
    const byAt = deadline.kind === "at" ? deadline.at : order.byAt;
    return changeOrderFlow(context, written, null, "order.revise", (tx, found) => ({
      order: reviseUnderWay(tx, found, { request, asWritten, byAt, personId: person, now: context.now }),
      changed: true,
      reply: revisedNote(order.number),
    }));
  },
});
