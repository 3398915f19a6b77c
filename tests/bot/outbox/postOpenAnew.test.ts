import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { postOpenAnew } from "../../../bot/outbox/postOpenAnew.ts";
import { findLivePost, livePostsSent } from "../../../db/repositories/livePosts.ts";
import { findPost } from "../../../db/repositories/outbox.ts";
import { buildOrder } from "../../../db/schema/orders.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { venueTime } from "../../support/readCard.ts";

let bot: MemoryBot;
let marks = 0;
const newMark = () => {
  marks += 1;
  return { nonce: `anew${marks}`, ref: `anew${marks}` };
};
const messageOf = (subject: string, channel: string): string | null => {
  const live = findLivePost(bot.db, { subject, channel });
  return live === null ? null : (findPost(bot.db, live.outboxId)?.messageId ?? null);
};

beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T06:30"));
  await bot.settle();
});
afterEach(() => bot.close());

describe("postOpenAnew", () => {
  it("posts each open order, sheet and board once more, and edits the new post from then on", async () => {
    const before = new Map(livePostsSent(bot.db).map(({ subject, channel }) => [`${subject} ${channel}`, messageOf(subject, channel)]));
    expect(before.size).toBeGreaterThan(5);
    write(bot.db, (tx) => postOpenAnew(tx, bot.now(), newMark));
    await bot.settle();
    const after = new Map(livePostsSent(bot.db).map(({ subject, channel }) => [`${subject} ${channel}`, messageOf(subject, channel)]));
    expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
    for (const [key, message] of after) {
      expect(message).toMatch(/^anew/);
      expect(message).not.toBe(before.get(key));
    }
    expect(new Set(after.values()).size).toBe(before.size);
  });

  it("leaves out what is closed", async () => {
    const [order] = bot.db.select().from(buildOrder).all();
    if (order === undefined) throw new Error("the demo has orders");
    write(bot.db, (tx) => void tx.update(buildOrder).set({ state: "closed" }).run());
    const before = messageOf(`order:${order.id}`, order.channel);
    write(bot.db, (tx) => postOpenAnew(tx, bot.now(), newMark));
    await bot.settle();
    expect(before).not.toBeNull();
    expect(messageOf(`order:${order.id}`, order.channel)).toBe(before);
  });
});
