import { sql } from "drizzle-orm";
import { check, index, integer, primaryKey, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import type { Id, Instant } from "../../core/kinds.ts";

/** What a person sent, by its key, with the reply it got: the same thing delivered twice gets the stored reply. */
export const inbound = sqliteTable(
  "inbound",
  {
    key: text("key").primaryKey(),
    at: integer("at").$type<Instant>().notNull(),
    personId: integer("person_id").$type<Id<"person">>(),
    reply: text("reply").notNull(),
  },
  (table) => [check("inbound_reply_json", sql`json_valid(${table.reply})`)],
);

/** What waits for its answer in the chat, from the acknowledgement on: a process that ends before leaves it here. */
export const asked = sqliteTable("asked", {
  key: text("key").primaryKey(),
  at: integer("at").$type<Instant>().notNull(),
  channel: text("channel").notNull(),
  platform: text("platform").notNull(),
  platformId: text("platform_id").notNull(),
  command: text("command").notNull(),
});

/** Posts that must leave exactly once. The card is frozen from the first try on. */
export const outbox = sqliteTable(
  "outbox",
  {
    id: integer("id").$type<Id<"outbox">>().primaryKey({ autoIncrement: true }),
    channel: text("channel").notNull(),
    dedupeKey: text("dedupe_key").notNull().unique(),
    nonce: text("nonce").notNull().unique(),
    ref: text("ref").notNull(),
    card: text("card").notNull(),
    state: text("state", { enum: ["pending", "sent", "dead"] })
      .notNull()
      .default("pending"),
    attempts: integer("attempts").notNull().default(0),
    firstTryAt: integer("first_try_at").$type<Instant>(),
    nextAt: integer("next_at").$type<Instant>().notNull(),
    messageId: text("message_id"),
    lastError: text("last_error"),
  },
  (table) => [
    uniqueIndex("outbox_channel_ref").on(table.channel, table.ref),
    index("outbox_lane").on(table.channel, table.id).where(sql`state = 'pending'`),
    check("outbox_card_json", sql`json_valid(${table.card})`),
    check("outbox_nonce_length", sql`length(${table.nonce}) BETWEEN 1 AND 25`),
    check("outbox_state", sql`${table.state} IN ('pending','sent','dead')`),
    check("outbox_sent_has_message", sql`${table.state} <> 'sent' OR ${table.messageId} IS NOT NULL`),
  ],
);

/** A post that is edited in place. `shown` is the version in the post at `outbox_id`; `refused` the last one not taken. */
export const livePost = sqliteTable(
  "live_post",
  {
    subject: text("subject").notNull(),
    channel: text("channel").notNull(),
    outboxId: integer("outbox_id")
      .$type<Id<"outbox">>()
      .notNull()
      .references(() => outbox.id),
    wanted: integer("wanted").notNull(),
    shown: integer("shown").notNull(),
    refused: integer("refused").notNull().default(0),
    card: text("card").notNull(),
    attempts: integer("attempts").notNull().default(0),
    nextAt: integer("next_at").$type<Instant>().notNull(),
    lastError: text("last_error"),
  },
  (table) => [
    primaryKey({ columns: [table.subject, table.channel] }),
    index("live_post_behind").on(table.channel, table.nextAt).where(sql`wanted > shown`),
    check("live_post_card_json", sql`json_valid(${table.card})`),
  ],
);

/** A reminder of one local day, claimed once. */
export const due = sqliteTable(
  "due",
  {
    reminder: text("reminder").notNull(),
    localDate: text("local_date").notNull(),
    state: text("state", { enum: ["posted", "skipped", "done"] }).notNull(),
    outboxId: integer("outbox_id")
      .$type<Id<"outbox">>()
      .references(() => outbox.id),
  },
  (table) => [
    primaryKey({ columns: [table.reminder, table.localDate] }),
    check("due_state", sql`${table.state} IN ('posted','skipped','done')`),
    check("due_local_date", sql`${table.localDate} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'`),
  ],
);

/** Every change, append-only, each row hashed over the one before. */
export const audit = sqliteTable("audit", {
  seq: integer("seq").primaryKey({ autoIncrement: true }),
  at: integer("at").$type<Instant>().notNull(),
  personId: integer("person_id").$type<Id<"person">>(),
  action: text("action").notNull(),
  subject: text("subject").notNull(),
  bodyDigest: text("body_digest").notNull(),
  hash: text("hash").notNull().unique(),
});

/** What changed, apart from the chain: salt and body may be erased, nothing else. */
export const auditBody = sqliteTable(
  "audit_body",
  {
    seq: integer("seq")
      .primaryKey()
      .references(() => audit.seq),
    salt: text("salt"),
    body: text("body"),
    playerId: integer("player_id").$type<Id<"player">>(),
    erasedAt: integer("erased_at").$type<Instant>(),
  },
  (table) => [
    index("audit_body_player").on(table.playerId),
    check("audit_body_json", sql`${table.body} IS NULL OR json_valid(${table.body})`),
    check("audit_body_erased", sql`(${table.erasedAt} IS NULL) = (${table.body} IS NOT NULL AND ${table.salt} IS NOT NULL)`),
  ],
);

export const meta = sqliteTable("meta", {
  key: text("key").primaryKey(),
  value: text("value").notNull(),
});

/** Shop data the lead has changed: a typed default of core stands where there is no row. */
export const setting = sqliteTable(
  "setting",
  {
    name: text("name").primaryKey(),
    value: text("value").notNull(),
    personId: integer("person_id").$type<Id<"person">>().notNull(),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [check("setting_value_json", sql`json_valid(${table.value})`)],
);
