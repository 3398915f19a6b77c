import { sql } from "drizzle-orm";
import { check, integer, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import type { Id, Instant } from "../../core/kinds.ts";

export const person = sqliteTable("person", {
  id: integer("id").$type<Id<"person">>().primaryKey({ autoIncrement: true }),
  name: text("name"),
  zone: text("zone").notNull(),
  lengthUnit: text("length_unit", { enum: ["in", "mm"] }).notNull(),
  retiredAt: integer("retired_at").$type<Instant>(),
  erasedAt: integer("erased_at").$type<Instant>(),
});

export const personIdentity = sqliteTable(
  "person_identity",
  {
    platform: text("platform").notNull(),
    platformUserId: text("platform_user_id").notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    /** What the rehearsal, being its own platform, says of its members; empty for a real one. */
    rehearsalRoles: text("rehearsal_roles").notNull().default("[]"),
  },
  (table) => [primaryKey({ columns: [table.platform, table.platformUserId] })],
);

export const player = sqliteTable("player", {
  id: integer("id").$type<Id<"player">>().primaryKey({ autoIncrement: true }),
  name: text("name"),
  hand: text("hand", { enum: ["left", "right"] }).notNull(),
  region: text("region"),
  note: text("note"),
  /** Shown in place of the name on shared cards while set. */
  restrictedCode: text("restricted_code"),
  balls: integer("balls"),
  hats: integer("hats"),
  gloves: integer("gloves"),
  hatSize: text("hat_size").notNull(),
  gloveSize: text("glove_size").notNull(),
  erasedAt: integer("erased_at").$type<Instant>(),
});

export const playerAlias = sqliteTable(
  "player_alias",
  {
    alias: text("alias").notNull(),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
  },
  (table) => [primaryKey({ columns: [table.alias, table.playerId] })],
);

export const truck = sqliteTable("truck", {
  id: integer("id").$type<Id<"truck">>().primaryKey({ autoIncrement: true }),
  name: text("name").notNull().unique(),
  /** Grows with every change of this truck's bench: what an estimate rests on. */
  benchVersion: integer("bench_version").notNull().default(0),
  /** The version the times on record were made on, and when. */
  estimatedVersion: integer("estimated_version").notNull().default(-1),
  estimatedAt: integer("estimated_at").$type<Instant>(),
  /** How the bench is run, as JSON; null before anything was simulated. */
  policy: text("policy"),
});

export const truckTechnician = sqliteTable(
  "truck_technician",
  {
    truckId: integer("truck_id")
      .$type<Id<"truck">>()
      .notNull()
      .references(() => truck.id),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    /** What they may do beside what everybody may, as JSON; null is the usual. */
    skills: text("skills"),
    /** Signed off from a moment, and until when if that is known. */
    awayFrom: integer("away_from").$type<Instant>(),
    awayUntil: integer("away_until").$type<Instant>(),
  },
  (table) => [primaryKey({ columns: [table.truckId, table.personId] })],
);

export const channel = sqliteTable(
  "channel",
  {
    /** The platform's own id or name. */
    name: text("name").primaryKey(),
    purpose: text("purpose", { enum: ["orders", "bench", "week", "general", "lead"] }).notNull(),
    truckId: integer("truck_id")
      .$type<Id<"truck">>()
      .references(() => truck.id),
    lastSeenMessageId: text("last_seen_message_id"),
  },
  (table) => [check("channel_purpose", sql`${table.purpose} IN ('orders','bench','week','general','lead')`)],
);

export const event = sqliteTable("event", {
  id: integer("id").$type<Id<"event">>().primaryKey({ autoIncrement: true }),
  name: text("name").notNull().unique(),
  course: text("course").notNull(),
  zone: text("zone").notNull(),
  monday: text("monday").notNull(),
  firstPracticeRound: text("first_practice_round").notNull(),
  walkMin: integer("walk_min").notNull(),
  keepsListForPlay: integer("keeps_list_for_play", { mode: "boolean" }).notNull(),
});

export const truckEvent = sqliteTable(
  "truck_event",
  {
    truckId: integer("truck_id")
      .$type<Id<"truck">>()
      .notNull()
      .references(() => truck.id),
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .notNull()
      .references(() => event.id),
    arrivesAt: integer("arrives_at").$type<Instant>().notNull(),
    rollOutAt: integer("roll_out_at").$type<Instant>().notNull(),
  },
  (table) => [primaryKey({ columns: [table.truckId, table.eventId] })],
);

export const opening = sqliteTable(
  "opening",
  {
    truckId: integer("truck_id")
      .$type<Id<"truck">>()
      .notNull()
      .references(() => truck.id),
    opensAt: integer("opens_at").$type<Instant>().notNull(),
    closesAt: integer("closes_at").$type<Instant>().notNull(),
  },
  (table) => [primaryKey({ columns: [table.truckId, table.opensAt] }), check("opening_order", sql`${table.opensAt} < ${table.closesAt}`)],
);

export const eventPlayer = sqliteTable(
  "event_player",
  {
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .notNull()
      .references(() => event.id),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    withdrawnAt: integer("withdrawn_at").$type<Instant>(),
  },
  (table) => [primaryKey({ columns: [table.eventId, table.playerId] })],
);

export const teeTime = sqliteTable("tee_time", {
  id: integer("id").primaryKey({ autoIncrement: true }),
  eventId: integer("event_id")
    .$type<Id<"event">>()
    .notNull()
    .references(() => event.id),
  playerId: integer("player_id")
    .$type<Id<"player">>()
    .notNull()
    .references(() => player.id),
  kind: text("kind", { enum: ["range", "practice", "round"] }).notNull(),
  at: integer("at").$type<Instant>().notNull(),
});
