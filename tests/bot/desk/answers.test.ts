import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Reply } from "../../../bot/chat/types.ts";
import { WEEK_PLATFORM } from "../../../bot/chat/weekPlatform.ts";
import { type Answers, type Asking, makeAnswers } from "../../../bot/desk/answers.ts";
import { note } from "../../../bot/replies/card.ts";
import { allAsked } from "../../../db/repositories/asked.ts";
import { insertInbound } from "../../../db/repositories/inbound.ts";
import { write } from "../../../db/write.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { cardText, venueTime } from "../../support/readCard.ts";

const KEY = "press:1234567890123456789";
const asking: Asking = {
  key: KEY,
  channel: "plover-orders",
  sender: { platform: WEEK_PLATFORM, platformId: "maren", roleIds: [] },
  command: "order confirm",
};
const answer = note("order", "57 confirmed", "good");

let bot: MemoryBot;
let marks = 0;
/** Those of a process that starts on the same database. */
const process = (): Answers => makeAnswers({ db: bot.db, now: bot.now, newMark: () => ({ nonce: `nonce${++marks}`, ref: `ref${marks}` }) });
const commitReply = (reply: Reply): void =>
  write(bot.db, (tx) => {
    insertInbound(tx, { key: KEY, at: bot.now(), personId: null, reply });
  });

async function posted(): Promise<readonly string[]> {
  await bot.settle();
  return bot
    .posts("plover-orders")
    .filter(({ card }) => ["cutShort", "lateAnswer"].includes(card.kind))
    .map(({ card }) => cardText(card));
}

beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
  await bot.settle();
});
afterEach(() => bot.close());

describe("makeAnswers", () => {
  it("says nothing more of what has reached its asker", async () => {
    const answers = process();
    answers.asked(asking);
    commitReply(answer);
    answers.reached(KEY);
    process().missedBefore();
    expect(await posted()).toEqual([]);
    expect(allAsked(bot.db)).toEqual([]);
  });

  it("posts once that nothing was done, when the process ended before the commit", async () => {
    process().asked(asking);
    bot.later(2);
    process().missedBefore();
    process().missedBefore();
    const [post, ...others] = await posted();
    expect(others).toEqual([]);
    expect(post).toMatch(/^Not done: order confirm\n@Maren Aldersea: asked for at 2027-05-03T09:30.*Nothing was changed/);
  });

  it("posts what the answer was about, when the process ended after the commit", async () => {
    process().asked(asking);
    commitReply(answer);
    process().missedBefore();
    process().missedBefore();
    const [post, ...others] = await posted();
    expect(others).toEqual([]);
    expect(post).toMatch(/57 confirmed/);
  });

  it("posts once an answer that the chat did not take", async () => {
    const answers = process();
    answers.asked(asking);
    answers.missed(asking, answer);
    process().missedBefore();
    expect(await posted()).toEqual([expect.stringMatching(/57 confirmed/)]);
  });

  it("posts nothing of what was asked more than an hour ago, and forgets it", async () => {
    process().asked(asking);
    bot.later(61);
    process().missedBefore();
    expect(await posted()).toEqual([]);
    expect(allAsked(bot.db)).toEqual([]);
  });

  it("calls nobody where the asker is not known", async () => {
    process().asked({ ...asking, sender: { ...asking.sender, platformId: "nobody" } });
    process().missedBefore();
    expect(await posted()).toEqual([expect.stringMatching(/Not done: order confirm/)]);
    expect(bot.posts("plover-orders").at(-1)?.card.lines.flat()).not.toContainEqual(expect.objectContaining({ call: expect.anything() }));
  });
});
