import { z } from "zod";
import { appendAudit } from "../../db/repositories/audit.ts";
import { setListedForPlay } from "../../db/repositories/partModels.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { playableWords } from "../flows/playableWords.ts";
import { handOver, type Taker, takers } from "../operations/handOver.ts";
import { listEntries } from "../operations/listForPlay.ts";
import { handedOverNote, listedNote } from "../replies/handOverNotes.ts";

const words = new RegExp(`^(yes|no)(?::(${takers.join("|")}))?$`);

/** What the list for play says of an order's head, with the date it was looked up; a yes may hand the club over at once. */
export const orderListed = defineCommand({
  name: "order listed",
  summary: "Say whether an order's driver head is on the list for play",
  options: [
    orderIn("ready"),
    {
      name: "argument",
      summary: "yes or no; yes:player hands it over too",
      required: true,
      oneOf: ["yes", "no", ...takers.map((taker) => `yes:${taker}`)],
    },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, argument: z.string().regex(words) }),
  run: async ({ order: written, version, argument }, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("an entry has a person");
    }
    const [, said, taker] = words.exec(argument) ?? [];
    return changeOrderFlow(context, written, version, "order.listed", (tx, order) => {
      const entries = listEntries(tx, order);
      const listed = said === "yes";
      for (const { modelId, model } of entries) {
        setListedForPlay(tx, modelId, { listedForPlay: listed, listedAt: context.now });
        appendAudit(tx, {
          at: context.now,
          personId: person,
          action: "list.entry",
          subject: `model:${modelId}`,
          body: { model, listed },
          playerId: null,
        });
      }
      if (!listed || taker === undefined || entries.length === 0) {
        return { order, changed: entries.length > 0, reply: listedNote(order.number, entries, listed) };
      }
      const done = handOver(tx, order, taker as Taker, { personId: person, now: context.now, exception: null });
      if (done.kind === "handed-over") {
        const body = { before: order.state, after: done.order.state, taker };
        appendAudit(tx, {
          at: context.now,
          personId: person,
          action: "order.handover",
          subject: `order:${order.id}`,
          body,
          playerId: order.playerId,
        });
      }
      return { order: done.order, changed: true, reply: handedOverNote(done, taker, playableWords(order, context)) };
    });
  },
});
