import { keepPost } from "../../db/repositories/keptPosts.ts";
import { orderBySource } from "../../db/repositories/orders.ts";
import { readMessage } from "../boundary/readMessage.ts";
import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { readingContext } from "../desk/readingContext.ts";
import { note, reply } from "../replies/card.ts";
import { problemsCard } from "../replies/problemsCard.ts";
import { draftFlow } from "./draftFlow.ts";

/** Reads a post as an order: a draft, all its faults at once, or a hint. */
export async function orderFromText(context: Context, text: string, sourceKey: string): Promise<Reply | null> {
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
