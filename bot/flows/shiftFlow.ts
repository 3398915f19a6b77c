import type { Id } from "../../core/kinds.ts";
import { peopleNamed, personName } from "../../db/repositories/people.ts";
import type { Tx } from "../../db/write.ts";
import type { Context, Post } from "../chat/context.ts";
import type { Json, Reply } from "../chat/types.ts";
import { shiftNotes } from "../replies/shiftNotes.ts";
import { benchPosts } from "./benchPosts.ts";

interface OnShift {
  readonly id: Id<"person">;
  readonly name: string;
  readonly truck: Id<"truck">;
}

type ShiftChange =
  | { readonly reply: Reply; readonly changed: false }
  | { readonly reply: Reply; readonly changed: true; readonly before: Json; readonly after: Json; readonly posts?: readonly Post[] };

/** Somebody's hours or skills at the channel's truck change: one's own, or anybody's when the lead says so. */
export function shiftFlow(context: Context, action: string, written: string | undefined, work: (tx: Tx, who: OnShift) => ShiftChange): Reply | null {
  const { truck, person, roles } = context.actor;
  if (truck === null || person === null) {
    return shiftNotes.noTruck();
  }
  const own = { id: person, name: context.read((reader) => personName(reader, person)) };
  const found = written === undefined ? [own] : context.read((reader) => peopleNamed(reader, written));
  const [who, another] = found;
  if (who === undefined || another !== undefined) {
    return shiftNotes.whom(
      written ?? "",
      found.map(({ name }) => name),
    );
  }
  if (who.id !== person && !roles.includes("lead")) {
    return shiftNotes.leadOnly(who.name);
  }
  return context.commit((tx) => {
    const done = work(tx, { ...who, truck });
    if (!done.changed) {
      return { reply: done.reply, changes: [], posts: [] };
    }
    const { reply, before, after, posts = [] } = done;
    const board = benchPosts(tx, truck, context.now);
    return { reply, changes: [{ action, subject: `person:${who.id}`, before, after: { truck, is: after } }], posts: [...posts, ...board] };
  });
}
