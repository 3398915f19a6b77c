import { createHash, randomBytes } from "node:crypto";
import { and, desc, eq, gt, isNull, sql } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { audit, auditBody } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

/** One change: who, when, what, and before and after as JSON. */
export interface AuditEntry {
  readonly at: Instant;
  /** Null when the clock did it. */
  readonly personId: Id<"person"> | null;
  readonly action: string;
  readonly subject: string;
  readonly body: unknown;
  /** Whose personal data the body holds, when it does: it is erased with that player. */
  readonly playerId?: Id<"player"> | null;
}

interface AuditHead {
  readonly seq: number;
  readonly hash: string;
}

type AuditCheck =
  | { readonly kind: "sound"; readonly entries: number; readonly erased: number; readonly head: AuditHead | null }
  | { readonly kind: "broken"; readonly seq: number; readonly reason: string };

type AuditRow = typeof audit.$inferSelect;
type BodyRow = typeof auditBody.$inferSelect;

const PAGE = 1000;

const sha256 = (...parts: readonly string[]): string => createHash("sha256").update(JSON.stringify(parts)).digest("hex");

/** A row's hash covers its place, all its columns and the row before. */
function chained(previousHash: string, row: Omit<AuditRow, "hash">): string {
  return sha256(previousHash, String(row.seq), String(row.at), String(row.personId), row.action, row.subject, row.bodyDigest);
}

/**
 * Appends a change to the audit.
 *
 *     digest = SHA-256(salt, body),  hash = SHA-256(hash of the row before, place, time, person, action, subject, digest)
 *
 * @param tx - the transaction that makes the change itself
 * @param entry - what changed; `body` is any JSON value
 * @returns place and hash of the new row
 */
export function appendAudit(tx: Tx, entry: AuditEntry): AuditHead {
  const previous = auditHead(tx);
  const salt = randomBytes(16).toString("hex");
  const body = JSON.stringify(entry.body ?? null);
  const unhashed = {
    seq: Math.max(previous?.seq ?? 0, highestSeqEver(tx)) + 1,
    at: entry.at,
    personId: entry.personId,
    action: entry.action,
    subject: entry.subject,
    bodyDigest: sha256(salt, body),
  };
  const row = { ...unhashed, hash: chained(previous?.hash ?? "", unhashed) };
  tx.insert(audit).values(row).run();
  tx.insert(auditBody)
    .values({ seq: row.seq, salt, body, playerId: entry.playerId ?? null })
    .run();
  return { seq: row.seq, hash: row.hash };
}

/**
 * Reads the newest row of the audit: its hash, posted somewhere else, fixes everything before it.
 *
 * @param reader - database or transaction
 * @returns place and hash, or null when nothing was ever changed
 */
export function auditHead(reader: Reader): AuditHead | null {
  return reader.select({ seq: audit.seq, hash: audit.hash }).from(audit).orderBy(desc(audit.seq)).limit(1).get() ?? null;
}

/**
 * Computes the whole chain again: rows, their order, the newest place ever given, and every body that is not erased.
 *
 * Linear, a thousand rows at a time. What it cannot see alone is a chain computed anew from the start by someone with
 * the file: the head posted elsewhere shows that.
 *
 * @param reader - database or transaction
 * @returns how much was checked and the head, or the first row that does not fit
 */
export function verifyChain(reader: Reader): AuditCheck {
  let head: AuditHead | null = null;
  let entries = 0;
  let erased = 0;
  for (;;) {
    const page = rowsAfter(reader, head?.seq ?? 0);
    for (const { row, body } of page) {
      const reason = faultOf(row, body, head?.hash ?? "");
      if (reason !== null) {
        return { kind: "broken", seq: row.seq, reason };
      }
      head = { seq: row.seq, hash: row.hash };
      entries += 1;
      erased += body?.erasedAt === null ? 0 : 1;
    }
    if (page.length < PAGE) {
      break;
    }
  }
  const highest = highestSeqEver(reader);
  return highest > (head?.seq ?? 0)
    ? { kind: "broken", seq: highest, reason: "the newest entries are missing" }
    : { kind: "sound", entries, erased, head };
}

/**
 * Erases what the audit holds about a player: salts and bodies go, the chain still verifies.
 *
 * @param tx - a transaction
 * @param playerId - whose personal data
 * @param at - the moment
 * @returns how many bodies were erased
 */
export function eraseBodies(tx: Tx, playerId: Id<"player">, at: Instant): number {
  return tx
    .update(auditBody)
    .set({ salt: null, body: null, erasedAt: at })
    .where(and(eq(auditBody.playerId, playerId), isNull(auditBody.erasedAt)))
    .run().changes;
}

function rowsAfter(reader: Reader, seq: number): readonly { readonly row: AuditRow; readonly body: BodyRow | null }[] {
  return reader
    .select({ row: audit, body: auditBody })
    .from(audit)
    .leftJoin(auditBody, eq(auditBody.seq, audit.seq))
    .where(gt(audit.seq, seq))
    .orderBy(audit.seq)
    .limit(PAGE)
    .all();
}

function faultOf(row: AuditRow, body: BodyRow | null, previousHash: string): string | null {
  if (row.hash !== chained(previousHash, row)) {
    return "the entry does not follow from the one before";
  }
  if (body === null) {
    return "its body is missing";
  }
  if (body.erasedAt !== null) {
    return null;
  }
  return row.bodyDigest === sha256(body.salt ?? "", body.body ?? "") ? null : "its body was changed";
}

/** SQLite remembers the highest place ever given, so that a cut-off end shows. */
function highestSeqEver(reader: Reader): number {
  const found = reader.get<{ seq: number } | undefined>(sql`SELECT seq FROM sqlite_sequence WHERE name = 'audit'`);
  return Number(found?.seq ?? 0);
}
