import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { findReply, insertInbound } from "../../../db/repositories/inbound.ts";
import { type Tx, write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);

describe("inbound", () => {
  const received = { key: "press:9", at: MONDAY, personId: null, reply: { kind: "card" } };

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
});
