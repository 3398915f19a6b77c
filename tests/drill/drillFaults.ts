import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { verifyChain } from "../../db/repositories/audit.ts";
import { answersIn, databaseIn, platformIn } from "./drillFolder.ts";
import { drillMessages, drillScript } from "./drillScript.ts";
import { readLines } from "./durableLines.ts";
import type { PlatformLine } from "./filePlatform.ts";

interface OrderFound {
  readonly id: number;
  readonly message: string;
  readonly state: string;
}

type Rows = <T>(sql: string, ...values: readonly (string | number)[]) => readonly T[];

function reading<T>(folder: string, work: (rows: Rows, sqlite: Database.Database) => T): T {
  const sqlite = new Database(databaseIn(folder), { fileMustExist: true });
  try {
    return work((sql, ...values) => sqlite.prepare(sql).all(...values) as never, sqlite);
  } finally {
    sqlite.close();
  }
}

/** How many posts and orders there were before the first round: those are not the drill's. */
export function baseOf(folder: string): { readonly outboxId: number; readonly orders: number; readonly auditEntries: number } {
  return reading(folder, (rows) => {
    const [base] = rows<{ outboxId: number; orders: number; auditEntries: number }>(
      `SELECT (SELECT coalesce(max(id), 0) FROM outbox) AS outboxId, (SELECT count(*) FROM build_order) AS orders,
              (SELECT count(*) FROM audit) AS auditEntries`,
    );
    if (base === undefined) {
      throw new Error("a query of one row gave none");
    }
    return base;
  });
}

const ordersFound = (rows: Rows): readonly OrderFound[] =>
  rows<OrderFound>("SELECT id, substr(source_key, 9) AS message, state FROM build_order WHERE source_key GLOB 'message:d[0-9]*'");

/** What was said to be confirmed, in the channel or in answer to a press, and is not so in the record. */
export function brokenWord(folder: string): readonly string[] {
  return reading(folder, (rows) => {
    const orders = ordersFound(rows);
    const confirmed = new Set(orders.filter(({ state }) => state === "confirmed").map(({ id }) => id));
    const posted = readLines<PlatformLine>(platformIn(folder)).flatMap(({ card }) =>
      card.kind === "order.confirmed" ? [Number(card.data.orderId)] : [],
    );
    const answered = readLines<{ message: string; kind: string | null }>(answersIn(folder)).flatMap(({ message, kind }) =>
      kind === "order.confirmed" ? [orders.find((order) => order.message === message)?.id ?? 0] : [],
    );
    return [...posted, ...answered].filter((id) => !confirmed.has(id)).map((id) => `order ${id} was told to be confirmed and is not`);
  });
}

function orderFaults(rows: Rows, baseOrders: number): readonly string[] {
  const orders = ordersFound(rows);
  const [total] = rows<{ count: number }>("SELECT count(*) AS count FROM build_order");
  const missing = drillMessages.filter((message) => orders.filter((order) => order.message === message && order.state === "confirmed").length !== 1);
  return [
    ...missing.map((message) => `${message} is not exactly one confirmed order`),
    ...(total?.count === baseOrders + drillMessages.length ? [] : [`${total?.count} orders, not ${baseOrders + drillMessages.length}`]),
    ...orders.flatMap(({ id, message }) => historyFaults(rows, id, message)),
  ];
}

/** One draft and one confirmation on record, one revision, one sheet, one head held. */
function historyFaults(rows: Rows, id: number, message: string): readonly string[] {
  const audited = rows<{ action: string }>("SELECT action FROM audit WHERE subject = ? ORDER BY seq", `order:${id}`).map(({ action }) => action);
  const [held] = rows<{ revisions: number; sheets: number; heads: number }>(
    `SELECT (SELECT count(*) FROM order_revision WHERE order_id = ?) AS revisions, (SELECT count(*) FROM sheet WHERE order_id = ?) AS sheets,
            (SELECT count(*) FROM reservation JOIN sheet ON sheet.id = sheet_id WHERE order_id = ? AND head_id IS NOT NULL AND state = 'held') AS heads`,
    id,
    id,
    id,
  );
  const wanted = { revisions: 1, sheets: 1, heads: 1 };
  return [
    ...(audited.join() === "order.draft,order.confirm" ? [] : [`${message} is audited as ${audited.join()}`]),
    ...(JSON.stringify(held) === JSON.stringify(wanted) ? [] : [`${message} has ${JSON.stringify(held)}`]),
  ];
}

function arrivalFaults(rows: Rows): readonly string[] {
  const keys = new Set(drillScript.map(({ key }) => key));
  const known = new Set(rows<{ key: string }>("SELECT key FROM inbound").map(({ key }) => key));
  return [...keys].filter((key) => !known.has(key)).map((key) => `${key} has no stored answer`);
}

function postFaults(rows: Rows, folder: string, after: number): readonly string[] {
  const planned = rows<{ channel: string; ref: string; nonce: string; state: string }>(
    "SELECT channel, ref, nonce, state FROM outbox WHERE id > ? ORDER BY id",
    after,
  );
  const lines = readLines<PlatformLine>(platformIn(folder));
  const posted = lines.flatMap((line) => (line.kind === "post" ? [line.nonce] : []));
  const live = rows<{ channel: string; ref: string; card: string; behind: number }>(
    `SELECT live_post.channel, ref, live_post.card, wanted <> shown AS behind FROM live_post JOIN outbox ON outbox.id = outbox_id WHERE outbox.id > ?`,
    after,
  );
  const stale = live.filter(({ channel, ref, card, behind }) => {
    const shown = lines.filter((line) => line.channel === channel && line.ref === ref).at(-1);
    return behind !== 0 || shown === undefined || JSON.stringify(shown.card) !== card;
  });
  return [
    ...planned.flatMap(({ ref, state }) => (state === "sent" ? [] : [`post ${ref} is ${state}`])),
    ...planned.flatMap(({ ref, nonce }) => {
      const count = posted.filter((each) => each === nonce).length;
      return count === 1 ? [] : [`post ${ref} left ${count} times`];
    }),
    ...posted.filter((nonce) => !planned.some((row) => row.nonce === nonce)).map((nonce) => `post ${nonce} was never planned`),
    ...stale.map(({ ref }) => `live post ${ref} does not show the newest card`),
  ];
}

function auditFaults(rows: Rows, sqlite: Database.Database, entriesBefore: number): readonly string[] {
  const chain = verifyChain(drizzle(sqlite));
  const broken = rows<{ integrity_check: string }>("PRAGMA integrity_check").map((row) => row.integrity_check);
  return [
    ...(chain.kind === "broken" ? [`audit broken at ${chain.seq}: ${chain.reason}`] : []),
    ...(chain.kind === "sound" && chain.entries < entriesBefore ? ["the audit got shorter"] : []),
    ...(broken.join() === "ok" ? [] : [`integrity: ${broken.join()}`]),
  ];
}

/** Everything lost, repeated or out of step in a folder whose script was played to its end. */
export function drillFaults(folder: string, base: ReturnType<typeof baseOf>): readonly string[] {
  const inRecord = reading(folder, (rows, sqlite) => [
    ...orderFaults(rows, base.orders),
    ...arrivalFaults(rows),
    ...postFaults(rows, folder, base.outboxId),
    ...auditFaults(rows, sqlite, base.auditEntries),
  ]);
  return [...inRecord, ...brokenWord(folder)];
}
