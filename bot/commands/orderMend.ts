import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { keepPost, keptPostById } from "../../db/repositories/keptPosts.ts";
import { orderBySource } from "../../db/repositories/orders.ts";
import { readMessage } from "../boundary/readMessage.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { readingContext } from "../desk/readingContext.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { note, reply } from "../replies/card.ts";
import { problemsCard } from "../replies/problemsCard.ts";

/** A press on a guess puts it in place of the word at fault, in the post as it was kept. */
export const orderMend = defineCommand({
  name: "order mend",
  summary: "Put the guess in place of a word at fault",
  options: [
    { name: "post", summary: "The post that was kept", required: true },
    { name: "argument", summary: "Which guess for which word, such as 0:0", required: true },
  ],
  roles: ["rep", "lead"],
  audience: "channel",
  input: z.object({ post: z.string().regex(/^id:\d{1,9}$/), argument: z.string().regex(/^(\d{1,3}:\d{1,3}|anyway)$/) }),
  run: async ({ post, argument }, context) => {
    const kept = context.read((reader) => keptPostById(reader, id<"keptPost">(Number(post.slice(3)))));
    const { person } = context.actor;
    if (kept === null || person === null) {
      return note("stale", "That post is not kept any more", "attention", "Send the order anew.");
    }
    const reading = context.read((reader) => readMessage(kept.text, readingContext(reader, context.actor, context.now)));
    if (argument === "anyway" && reading.kind === "order") {
      const sourceKey = `anyway:${kept.id}`;
      return context.read((reader) => orderBySource(reader, sourceKey)) === null
        ? draftFlow(context, { ...reading, text: kept.text, sourceKey, replaces: null, anyway: true })
        : note("stale", "Another one was ordered by that button", "attention", "Nothing was changed.");
    }
    const [fault = 0, choice = 0] = argument.split(":").map(Number);
    const problem = reading.kind === "problems" ? reading.problems[fault] : undefined;
    const option = problem?.options[choice];
    if (problem === undefined || option === undefined) {
      return note("stale", "That was mended before", "attention", "Nothing was changed.");
    }
    const text = kept.text.slice(0, problem.place.from) + option.replacement + kept.text.slice(problem.place.to);
    const again = context.read((reader) => readMessage(text, readingContext(reader, context.actor, context.now)));
    if (again.kind === "order") {
      const earlier = context.read((reader) => orderBySource(reader, kept.sourceKey));
      return draftFlow(context, {
        ...again,
        go: false,
        text,
        sourceKey: earlier === null ? kept.sourceKey : context.key,
        replaces: null,
        anyway: false,
      });
    }
    if (again.kind !== "problems") {
      return note("order.hint", "Not read as an order", "attention", "Send it anew.");
    }
    return context.commit((tx) => {
      const keptId = keepPost(tx, { sourceKey: kept.sourceKey, channel: kept.channel, personId: person, text, at: context.now });
      return { reply: reply(problemsCard(again.problems, again.mendings, { id: keptId, version: 0 }), "channel"), changes: [], posts: [] };
    });
  },
});
