import { describe, expect, it } from "vitest";
import { openMemory } from "../../db/open.ts";
import { metaValue, setMeta } from "../../db/repositories/meta.ts";
import { write } from "../../db/write.ts";
import { migrationsFolder } from "./migrationsFolder.ts";

describe("write", () => {
  it("gives back what the work returns, with its changes kept", () => {
    const { db, close } = openMemory({ migrationsFolder });
    const seen = write(db, (tx) => {
      setMeta(tx, "guild", "lantern");
      return metaValue(tx, "guild");
    });
    expect([seen, metaValue(db, "guild")]).toEqual(["lantern", "lantern"]);
    close();
  });

  it("keeps nothing when the work throws", () => {
    const { db, close } = openMemory({ migrationsFolder });
    expect(() =>
      write(db, (tx) => {
        setMeta(tx, "guild", "lantern");
        throw new Error("no");
      }),
    ).toThrow("no");
    expect(metaValue(db, "guild")).toBeNull();
    close();
  });

  it("refuses an async callback by type, and at run time", () => {
    const { db, close } = openMemory({ migrationsFolder });
    // @ts-expect-error an async callback would go on after the transaction
    expect(() => write(db, async (tx) => setMeta(tx, "guild", "lantern"))).toThrow("promise");
    expect(metaValue(db, "guild")).toBeNull();
    close();
  });

  it("refuses by type to change anything outside a transaction", () => {
    const { db, close } = openMemory({ migrationsFolder });
    // @ts-expect-error the database itself is for reading
    const outside = () => setMeta(db, "guild", "lantern");
    expect(outside).toBeTypeOf("function");
    close();
  });
});
