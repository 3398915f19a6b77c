import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import {
  enqueuePost,
  findPost,
  markDead,
  markLater,
  markSent,
  markTrying,
  newestPost,
  nextPost,
  pendingChannels,
} from "../../../db/repositories/outbox.ts";
import { type Tx, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);
const post = (channel: string, name: string) => ({
  channel,
  dedupeKey: name,
  nonce: `nonce-${name}`,
  ref: `ref-${name}`,
  card: { title: name },
  at: MONDAY,
});

describe("outbox", () => {
  it("plans the same dedupe key once", () => {
    const first = change((tx) => enqueuePost(tx, post("orders", "a")));
    const second = change((tx) => enqueuePost(tx, { ...post("orders", "b"), dedupeKey: "a" }));
    expect([first.isNew, second]).toEqual([true, { id: first.id, isNew: false }]);
    expect(newestPost(database.db)).toBe(first.id);
  });

  it.each([
    ["a nonce used before", { nonce: "nonce-a" }],
    ["a reference used before in the channel", { ref: "ref-a" }],
    ["a nonce too long for the platform", { nonce: "n".repeat(26) }],
  ])("refuses %s", (_what, marks) => {
    change((tx) => enqueuePost(tx, post("orders", "a")));
    expect(() => change((tx) => enqueuePost(tx, { ...post("orders", "b"), ...marks }))).toThrow();
  });

  it("gives the lowest id of a channel, also when it is to wait", () => {
    const first = change((tx) => enqueuePost(tx, post("orders", "a")));
    change((tx) => enqueuePost(tx, post("orders", "b")));
    change((tx) => markLater(tx, first.id, instant(MONDAY + 60_000), "slow down"));
    expect(nextPost(database.db, "orders")).toMatchObject({ id: first.id, nextAt: MONDAY + 60_000, lastError: "slow down" });
    expect(nextPost(database.db, "bench")).toBeNull();
  });

  it("lists the channels that wait, the oldest post first", () => {
    const first = change((tx) => enqueuePost(tx, post("week", "a")));
    change((tx) => enqueuePost(tx, post("bench", "b")));
    change((tx) => enqueuePost(tx, post("week", "c")));
    expect(pendingChannels(database.db)).toEqual(["week", "bench"]);
    change((tx) => markSent(tx, first.id, "m1"));
    expect(pendingChannels(database.db)).toEqual(["bench", "week"]);
  });

  it("keeps the moment of the first try", () => {
    const { id } = change((tx) => enqueuePost(tx, post("orders", "a")));
    change((tx) => markTrying(tx, id, instant(MONDAY + 1)));
    change((tx) => markTrying(tx, id, instant(MONDAY + 2)));
    expect(findPost(database.db, id)).toMatchObject({ attempts: 2, firstTryAt: MONDAY + 1 });
  });

  it("never brings back what was sent or given up", () => {
    const sent = change((tx) => enqueuePost(tx, post("orders", "a")));
    const dead = change((tx) => enqueuePost(tx, post("orders", "b")));
    change((tx) => markSent(tx, sent.id, "m1"));
    change((tx) => markDead(tx, dead.id, "refused"));
    change((tx) => markDead(tx, sent.id, "refused"));
    change((tx) => markSent(tx, dead.id, "m2"));
    expect([findPost(database.db, sent.id), findPost(database.db, dead.id)]).toMatchObject([
      { state: "sent", messageId: "m1" },
      { state: "dead", messageId: null },
    ]);
  });
});
