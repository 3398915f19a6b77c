import { createHash } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { id } from "../../../core/kinds.ts";
import { type OpenDatabase, openMemory } from "../../../db/open.ts";
import { type AuditEntry, appendAudit, auditHead, eraseBodies, verifyChain } from "../../../db/repositories/audit.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../migrationsFolder.ts";

let database: OpenDatabase;
beforeEach(() => {
  database = openMemory({ migrationsFolder });
});
afterEach(() => database.close());

const entry = (action: string, more: Partial<AuditEntry> = {}): AuditEntry => ({
  at: MONDAY,
  personId: id<"person">(7),
  action,
  subject: "order:57",
  body: { before: null, after: action },
  ...more,
});
const append = (...entries: readonly AuditEntry[]) =>
  write(database.db, (tx) => {
    for (const each of entries) {
      appendAudit(tx, each);
    }
  });
/** Someone with the file, who does not mind the triggers. */
function tamper(change: string): void {
  const triggers = database.sqlite.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").pluck().all();
  database.sqlite.exec(triggers.map((name) => `DROP TRIGGER "${name}";`).join("\n"));
  database.sqlite.pragma("foreign_keys = OFF");
  database.sqlite.exec(change);
}

describe("verifyChain", () => {
  it("finds an empty audit sound", () => {
    expect(verifyChain(database.db)).toEqual({ kind: "sound", entries: 0, erased: 0, head: null });
  });

  it("finds what was appended sound, past a thousand rows too", () => {
    append(...Array.from({ length: 2001 }, (_, count) => entry(`change ${count}`)));
    expect(verifyChain(database.db)).toEqual({ kind: "sound", entries: 2001, erased: 0, head: auditHead(database.db) });
    expect(auditHead(database.db)?.seq).toBe(2001);
  });

  it.each([
    ["a changed action", "UPDATE audit SET action = 'hold' WHERE seq = 2", 2],
    ["a changed time", "UPDATE audit SET at = at + 1 WHERE seq = 2", 2],
    ["another author", "UPDATE audit SET person_id = 8 WHERE seq = 2", 2],
    ["no author", "UPDATE audit SET person_id = NULL WHERE seq = 2", 2],
    ["another subject", "UPDATE audit SET subject = 'order:58' WHERE seq = 2", 2],
    ["a changed body", 'UPDATE audit_body SET body = \'{"before":null,"after":"draft"}\' WHERE seq = 2', 2],
    ["a body that is gone", "DELETE FROM audit_body WHERE seq = 2", 2],
    ["a row that is gone", "DELETE FROM audit_body WHERE seq = 2; DELETE FROM audit WHERE seq = 2", 3],
    ["the first row gone", "DELETE FROM audit_body WHERE seq = 1; DELETE FROM audit WHERE seq = 1", 2],
    ["the last row gone", "DELETE FROM audit_body WHERE seq = 4; DELETE FROM audit WHERE seq = 4", 4],
    [
      "two bodies exchanged",
      "UPDATE audit_body SET seq = -1 WHERE seq = 2; UPDATE audit_body SET seq = 2 WHERE seq = 3; UPDATE audit_body SET seq = 3 WHERE seq = -1",
      2,
    ],
  ])("finds %s", (_what, change, seq) => {
    append(entry("draft"), entry("confirm"), entry("start"), entry("done"));
    tamper(change);
    expect(verifyChain(database.db)).toMatchObject({ kind: "broken", seq });
  });

  it("goes on after a row that was rolled back", () => {
    append(entry("draft"));
    expect(() =>
      write(database.db, (tx) => {
        appendAudit(tx, entry("confirm"));
        throw new Error("no");
      }),
    ).toThrow("no");
    append(entry("confirm"));
    expect(verifyChain(database.db)).toMatchObject({ kind: "sound", entries: 2 });
  });
});

describe("appendAudit", () => {
  // The same hash computed by hand from the columns, as the docstring says.
  it("chains each row to the one before by SHA-256", () => {
    append(entry("draft"), entry("confirm"));
    const rows = database.sqlite.prepare("SELECT a.*, b.salt, b.body FROM audit a JOIN audit_body b USING (seq) ORDER BY seq").all() as Record<
      string,
      unknown
    >[];
    const sha256 = (parts: readonly unknown[]) => createHash("sha256").update(JSON.stringify(parts)).digest("hex");
    for (const [position, row] of rows.entries()) {
      const previous = position === 0 ? "" : rows[position - 1]?.hash;
      expect(row.body_digest).toBe(sha256([row.salt, row.body]));
      expect(row.hash).toBe(sha256([previous, String(row.seq), String(row.at), String(row.person_id), row.action, row.subject, row.body_digest]));
    }
    expect(rows).toHaveLength(2);
  });

  it("salts bodies, so that equal ones do not look equal", () => {
    append(entry("draft"), entry("draft"));
    expect(new Set(database.sqlite.prepare("SELECT body_digest FROM audit").pluck().all()).size).toBe(2);
  });
});

describe("eraseBodies", () => {
  it("erases one player's bodies with their salts, and the chain still verifies", () => {
    append(
      entry("draft", { playerId: id<"player">(1) }),
      entry("draft", { playerId: id<"player">(2) }),
      entry("confirm", { playerId: id<"player">(1) }),
      entry("start"),
    );
    const erased = write(database.db, (tx) => eraseBodies(tx, id<"player">(1), MONDAY));
    expect(erased).toBe(2);
    expect(database.sqlite.prepare("SELECT seq FROM audit_body WHERE body IS NULL AND salt IS NULL ORDER BY seq").pluck().all()).toEqual([1, 3]);
    expect(verifyChain(database.db)).toMatchObject({ kind: "sound", entries: 4, erased: 2 });
    expect(write(database.db, (tx) => eraseBodies(tx, id<"player">(1), MONDAY))).toBe(0);
  });
});
