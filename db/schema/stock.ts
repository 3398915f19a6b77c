import { sql } from "drizzle-orm";
import { check, index, integer, real, sqliteTable, text, unique, uniqueIndex } from "drizzle-orm/sqlite-core";
import type { Id, Instant } from "../../core/kinds.ts";
import { buildOrder, sheet } from "./orders.ts";
import { person, player, truck } from "./people.ts";

export const place = sqliteTable("place", {
  id: integer("id").$type<Id<"place">>().primaryKey({ autoIncrement: true }),
  truckId: integer("truck_id")
    .$type<Id<"truck">>()
    .references(() => truck.id),
  kind: text("kind", { enum: ["drawer", "mainRack", "playerBin", "homeBase", "float"] }).notNull(),
  label: text("label").notNull(),
  playerId: integer("player_id")
    .$type<Id<"player">>()
    .references(() => player.id),
});

export const partModel = sqliteTable(
  "part_model",
  {
    id: integer("id").$type<Id<"partModel">>().primaryKey({ autoIncrement: true }),
    kind: text("kind", { enum: ["head", "sleeve", "shaft", "grip", "weight", "goods"] }).notNull(),
    name: text("name").notNull(),
    /** JSON with `version` inside: what core's type of this kind of part holds. */
    facts: text("facts").notNull(),
    restrictedCode: text("restricted_code"),
  },
  (table) => [unique().on(table.kind, table.name), check("part_model_facts_json", sql`json_valid(${table.facts})`)],
);

export const head = sqliteTable(
  "head",
  {
    id: integer("id").$type<Id<"head">>().primaryKey({ autoIncrement: true }),
    serial: text("serial").notNull().unique(),
    modelId: integer("model_id")
      .$type<Id<"partModel">>()
      .notNull()
      .references(() => partModel.id),
    hand: text("hand", { enum: ["left", "right"] }).notNull(),
    stampedLoftDeg: real("stamped_loft_deg").notNull(),
    soledLoftDeg: real("soled_loft_deg").notNull(),
    designLieDeg: real("design_lie_deg").notNull(),
    soledFaceDeg: real("soled_face_deg").notNull(),
    bounceDeg: real("bounce_deg"),
    massG: real("mass_g").notNull(),
    measuredAt: integer("measured_at").$type<Instant>().notNull(),
    placeId: integer("place_id")
      .$type<Id<"place">>()
      .references(() => place.id),
    retiredAt: integer("retired_at").$type<Instant>(),
  },
  (table) => [index("head_model").on(table.modelId, table.hand)],
);

/** A bend a head has had: metal hardens, so every one counts. Weaker and upright positive. */
export const headBend = sqliteTable(
  "head_bend",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    headId: integer("head_id")
      .$type<Id<"head">>()
      .notNull()
      .references(() => head.id),
    loftChangeDeg: real("loft_change_deg").notNull(),
    lieChangeDeg: real("lie_change_deg").notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [index("head_bend_head").on(table.headId)],
);

/** A shaft that is no longer raw: one piece by itself, as prepared. Null place: it is in a club. */
export const shaftPiece = sqliteTable(
  "shaft_piece",
  {
    id: integer("id").$type<Id<"shaftPiece">>().primaryKey({ autoIncrement: true }),
    modelId: integer("model_id")
      .$type<Id<"partModel">>()
      .notNull()
      .references(() => partModel.id),
    state: text("state", { enum: ["tipped", "sleeved", "used"] }).notNull(),
    tipTrimMm: real("tip_trim_mm").notNull(),
    /** The sleeve bonded to it, and the logo at that sleeve's standard mark. */
    sleeveModelId: integer("sleeve_model_id")
      .$type<Id<"partModel">>()
      .references(() => partModel.id),
    logo: text("logo", { enum: ["up", "down"] }),
    /** From tip to butt as it is now; null while the butt is uncut. */
    cutLengthMm: real("cut_length_mm"),
    placeId: integer("place_id")
      .$type<Id<"place">>()
      .references(() => place.id),
    addedAt: integer("added_at").$type<Instant>().notNull(),
    retiredAt: integer("retired_at").$type<Instant>(),
  },
  (table) => [index("shaft_piece_model").on(table.modelId)],
);

/** What was taken from a player's bin and is owed back to it. */
export const replenishment = sqliteTable(
  "replenishment",
  {
    id: integer("id").$type<Id<"replenishment">>().primaryKey({ autoIncrement: true }),
    placeId: integer("place_id")
      .$type<Id<"place">>()
      .notNull()
      .references(() => place.id),
    partModelId: integer("part_model_id")
      .$type<Id<"partModel">>()
      .notNull()
      .references(() => partModel.id),
    quantity: integer("quantity").notNull(),
    orderId: integer("order_id")
      .$type<Id<"order">>()
      .references(() => buildOrder.id),
    at: integer("at").$type<Instant>().notNull(),
    refilledAt: integer("refilled_at").$type<Instant>(),
    refilledById: integer("refilled_by_id")
      .$type<Id<"person">>()
      .references(() => person.id),
  },
  (table) => [index("replenishment_owed").on(table.placeId, table.refilledAt)],
);

/** Append-only ledger: what is in a place is the sum of its entries. */
export const stockEntry = sqliteTable(
  "stock_entry",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    partModelId: integer("part_model_id")
      .$type<Id<"partModel">>()
      .notNull()
      .references(() => partModel.id),
    placeId: integer("place_id")
      .$type<Id<"place">>()
      .notNull()
      .references(() => place.id),
    quantityChange: integer("quantity_change").notNull(),
    reason: text("reason").notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [index("stock_entry_model").on(table.partModelId, table.placeId)],
);

export const reservation = sqliteTable(
  "reservation",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    sheetId: integer("sheet_id")
      .$type<Id<"sheet">>()
      .notNull()
      .references(() => sheet.id),
    headId: integer("head_id")
      .$type<Id<"head">>()
      .references(() => head.id),
    partModelId: integer("part_model_id")
      .$type<Id<"partModel">>()
      .references(() => partModel.id),
    pieceId: integer("piece_id")
      .$type<Id<"shaftPiece">>()
      .references(() => shaftPiece.id),
    placeId: integer("place_id")
      .$type<Id<"place">>()
      .references(() => place.id),
    quantity: integer("quantity").notNull().default(1),
    state: text("state", { enum: ["held", "released", "consumed"] }).notNull(),
  },
  (table) => [
    uniqueIndex("reservation_one_head").on(table.headId).where(sql`state = 'held'`),
    uniqueIndex("reservation_one_piece").on(table.pieceId).where(sql`state = 'held'`),
    index("reservation_sheet").on(table.sheetId),
    check("reservation_one_thing", sql`(${table.headId} IS NOT NULL) + (${table.partModelId} IS NOT NULL) + (${table.pieceId} IS NOT NULL) = 1`),
  ],
);
