import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { claimDue, findDue, finishDue, linkDuePost } from "../../../db/repositories/due.ts";
import { enqueuePost } from "../../../db/repositories/outbox.ts";
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

describe("due", () => {
  it("is claimed once a day", () => {
    expect(change((tx) => claimDue(tx, "monday-fill", "2027-05-03"))).toBe(true);
    expect(change((tx) => claimDue(tx, "monday-fill", "2027-05-03"))).toBe(false);
    expect(change((tx) => claimDue(tx, "monday-fill", "2027-05-10", "skipped"))).toBe(true);
    expect(findDue(database.db, "monday-fill", "2027-05-10")).toMatchObject({ state: "skipped", outboxId: null });
    expect(findDue(database.db, "monday-fill", "2027-05-17")).toBeNull();
  });

  it("names its post, and is done once", () => {
    const outboxId = change((tx) => {
      claimDue(tx, "monday-fill", "2027-05-03");
      const { id } = enqueuePost(tx, post("week", "a"));
      linkDuePost(tx, "monday-fill", "2027-05-03", id);
      return id;
    });
    expect(findDue(database.db, "monday-fill", "2027-05-03")).toMatchObject({ state: "posted", outboxId });
    expect(change((tx) => finishDue(tx, "monday-fill", "2027-05-03"))).toBe(true);
    expect(change((tx) => finishDue(tx, "monday-fill", "2027-05-03"))).toBe(false);
  });

  it("refuses a day that is not written as one", () => {
    expect(() => change((tx) => claimDue(tx, "monday-fill", "Monday"))).toThrow("due_local_date");
  });
});
