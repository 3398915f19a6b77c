import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { metaValue, setMeta } from "../../../db/repositories/meta.ts";
import { type Tx, write } from "../../../db/write.ts";
import { migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

const change = <T>(work: (tx: Tx) => T extends PromiseLike<unknown> ? never : T): T => write(database.db, work);

describe("meta", () => {
  it("keeps the newest value of a key", () => {
    expect(metaValue(database.db, "guild")).toBeNull();
    change((tx) => setMeta(tx, "guild", "one"));
    change((tx) => setMeta(tx, "guild", "two"));
    expect(metaValue(database.db, "guild")).toBe("two");
  });
});
