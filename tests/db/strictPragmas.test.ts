import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { strictPragmas } from "../../db/strictPragmas.ts";
import { refusalFrom } from "./openTemporary.ts";

describe("strictPragmas", () => {
  it("refuses a database that cannot keep a write-ahead log", async () => {
    const refusal = await refusalFrom(() => strictPragmas(new Database(":memory:")));
    expect(refusal.code).toBe("pragma");
    expect(refusal.facts).toEqual({ pragma: "journal_mode", wanted: "wal", got: "memory" });
  });
});
