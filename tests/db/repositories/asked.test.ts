import { afterEach, beforeEach, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { allAsked, deleteAsked, insertAsked } from "../../../db/repositories/asked.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

it("keeps what waits for its answer as it first came, the longest waiting first, until it waits no more", () => {
  const { db } = database;
  const first = { key: "press:9", at: MONDAY, channel: "plover-orders", platform: "rehearsal", platformId: "maren", command: "order confirm" };
  const later = { ...first, key: "press:1", at: instant(MONDAY + 1) };
  write(db, (tx) => insertAsked(tx, later));
  write(db, (tx) => insertAsked(tx, first));
  write(db, (tx) => insertAsked(tx, { ...first, at: instant(MONDAY + 9) }));
  expect(allAsked(db)).toEqual([first, later]);
  write(db, (tx) => deleteAsked(tx, "press:9"));
  expect(allAsked(db)).toEqual([later]);
});
