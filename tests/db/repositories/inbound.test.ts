import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { findReply, insertInbound, markAnswered, unansweredSince } from "../../../db/repositories/inbound.ts";
import { type Tx, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);

describe("inbound", () => {
  const received = { key: "press:9", at: MONDAY, channel: "plover-orders", personId: null, reply: { kind: "card" }, answeredAt: null };

  it("keeps the first reply to a key and says that the second is not new", () => {
    expect(findReply(database.db, "press:9")).toBeNull();
    expect(change((tx) => insertInbound(tx, received))).toBe(true);
    expect(change((tx) => insertInbound(tx, { ...received, reply: "another" }))).toBe(false);
    expect(findReply(database.db, "press:9")).toEqual({ reply: { kind: "card" } });
  });

  it("tells a reply of nothing from no reply", () => {
    change((tx) => insertInbound(tx, { ...received, reply: null }));
    expect(findReply(database.db, "press:9")).toEqual({ reply: null });
  });

  it("lists what has not been answered, as it was kept, from a moment on", () => {
    const { answeredAt: _none, ...asked } = received;
    change((tx) => insertInbound(tx, received));
    change((tx) => insertInbound(tx, { ...received, key: "message:1", answeredAt: MONDAY }));
    expect(unansweredSince(database.db, MONDAY)).toEqual([asked]);
    expect(unansweredSince(database.db, instant(MONDAY + 1))).toEqual([]);
  });

  it("lists nothing from before channels were kept", () => {
    change((tx) => insertInbound(tx, received));
    database.sqlite.exec("UPDATE inbound SET channel = NULL");
    expect(unansweredSince(database.db, MONDAY)).toEqual([]);
  });

  it("lists one no more once it is marked answered, and keeps the moment and the others", () => {
    change((tx) => insertInbound(tx, received));
    change((tx) => insertInbound(tx, { ...received, key: "press:10" }));
    change((tx) => markAnswered(tx, "press:9", instant(MONDAY + 5)));
    expect(unansweredSince(database.db, MONDAY).map(({ key }) => key)).toEqual(["press:10"]);
    expect(database.sqlite.prepare("SELECT answered_at FROM inbound ORDER BY key").pluck().all()).toEqual([null, MONDAY + 5]);
  });
});
