import { z } from "zod";
import { keepPost, orderBySource } from "../../db/repositories/orders.ts";
import { orderTextFromOptions } from "../boundary/orderTextFromOptions.ts";
import { readMessage } from "../boundary/readMessage.ts";
import type { Context } from "../chat/context.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import type { Reply } from "../chat/types.ts";
import { readingContext } from "../desk/readingContext.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { note, reply } from "../replies/card.ts";
import { problemsCard } from "../replies/problemsCard.ts";

const fields = ["kind", "player", "club", "like", "loft", "face", "length", "swing", "shaft", "grip", "head", "sleeve", "by", "to", "note"] as const;

/** Reads a post as an order: a draft, all its faults at once, or a hint. */
async function orderFromText(context: Context, text: string, sourceKey: string): Promise<Reply | null> {
  const reading = context.read((reader) => readMessage(text, readingContext(reader, context.actor, context.now)));
  const earlier = context.read((reader) => orderBySource(reader, sourceKey));
  const { person } = context.actor;
  if (earlier !== null && earlier.state !== "draft") {
    return note(
      "order.noted",
      `${earlier.number} is under way: an edit changes nothing`,
      "attention",
      `To change it type: ${earlier.number} and what should change.`,
    );
  }
  if (reading.kind === "order") {
    return draftFlow(context, { ...reading, text, sourceKey, replaces: earlier, anyway: false });
  }
  if (reading.kind === "problems" && person !== null) {
    return context.commit((tx) => {
      const id = keepPost(tx, { sourceKey, channel: context.channel.name, personId: person, text, at: context.now });
      return { reply: reply(problemsCard(reading.problems, reading.mendings, { id, version: 0 }), "channel"), changes: [], posts: [] };
    });
  }
  return note("order.hint", "Not read as an order", "attention", "Write for instance: build oxtoby driver like gamer loft 9.25 by 14:30");
}

export const orderNew = defineCommand({
  name: "order new",
  summary: "Order work on a player's club",
  options: [
    { name: "text", summary: "The whole order, as in a message", required: false },
    ...fields.map((name) => ({ name, summary: `The order's ${name}`, required: false })),
  ],
  roles: ["rep", "lead"],
  audience: "channel",
  input: z.object({ text: z.string().max(4000).optional(), ...Object.fromEntries(fields.map((name) => [name, z.string().max(200).optional()])) }),
  run: async (input, context) => {
    const values = Object.fromEntries(Object.entries(input).flatMap(([name, value]) => (typeof value === "string" ? [[name, value]] : [])));
    const text = values.text ?? orderTextFromOptions(values);
    return orderFromText(context, text, context.key.split(":").slice(0, 2).join(":"));
  },
});
