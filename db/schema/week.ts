import { sql } from "drizzle-orm";
import { check, index, integer, primaryKey, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import type { Id, Instant } from "../../core/kinds.ts";
import { event, person, player } from "./people.ts";

/** What a player games, as published: versions are never changed, only followed. */
export const specVersion = sqliteTable(
  "spec_version",
  {
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    version: integer("version").notNull(),
    validFrom: integer("valid_from").$type<Instant>().notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .references(() => event.id),
    takenAt: text("taken_at").notNull(),
    bag: text("bag").notNull(),
  },
  (table) => [primaryKey({ columns: [table.playerId, table.version] }), check("spec_version_bag_json", sql`json_valid(${table.bag})`)],
);

export const win = sqliteTable(
  "win",
  {
    id: integer("id").$type<Id<"win">>().primaryKey({ autoIncrement: true }),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .notNull()
      .references(() => event.id),
    wonOn: text("won_on").notNull(),
  },
  (table) => [unique().on(table.playerId, table.eventId)],
);

export const marking = sqliteTable(
  "marking",
  {
    id: integer("id").$type<Id<"marking">>().primaryKey({ autoIncrement: true }),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    club: text("club").notNull(),
    text: text("text").notNull(),
    forWin: integer("for_win", { mode: "boolean" }).notNull(),
    state: text("state", { enum: ["owed", "done", "withdrawn"] }).notNull(),
    version: integer("version").notNull().default(1),
    doneAt: integer("done_at").$type<Instant>(),
    doneById: integer("done_by_id")
      .$type<Id<"person">>()
      .references(() => person.id),
  },
  (table) => [index("marking_owed").on(table.playerId, table.state)],
);

/** Append-only: what a player got this week. */
export const allowanceEntry = sqliteTable(
  "allowance_entry",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .notNull()
      .references(() => event.id),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    balls: integer("balls").notNull(),
    hats: integer("hats").notNull(),
    gloves: integer("gloves").notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [unique().on(table.eventId, table.playerId)],
);
