import { sql } from "drizzle-orm";
import { check, foreignKey, index, integer, primaryKey, real, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import { type Id, type Instant, orderKinds } from "../../core/kinds.ts";
import { event, person, player, truck } from "./people.ts";

export const orderStates = ["draft", "confirmed", "building", "finalCheck", "ready", "outWithPlayer", "closed", "withdrawn"] as const;

export const buildOrder = sqliteTable(
  "build_order",
  {
    id: integer("id").$type<Id<"order">>().primaryKey({ autoIncrement: true }),
    number: integer("number").notNull(),
    truckId: integer("truck_id")
      .$type<Id<"truck">>()
      .notNull()
      .references(() => truck.id),
    eventId: integer("event_id")
      .$type<Id<"event">>()
      .notNull()
      .references(() => event.id),
    playerId: integer("player_id")
      .$type<Id<"player">>()
      .notNull()
      .references(() => player.id),
    postedById: integer("posted_by_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    sourceKey: text("source_key").notNull().unique(),
    channel: text("channel").notNull(),
    kind: text("kind", { enum: orderKinds }).notNull(),
    clubs: text("clubs").notNull(),
    state: text("state", { enum: orderStates }).notNull(),
    heldReason: text("held_reason"),
    /** Grows with every change a card could show: a button pressed on an older card is stale. */
    version: integer("version").notNull(),
    revision: integer("revision").notNull(),
    byAt: integer("by_at").$type<Instant>(),
    /** When the club the work is on came into the truck: its clock starts then. */
    clubInAt: integer("club_in_at").$type<Instant>(),
    /** When the club it works on, or a part it is short of, is said to come. */
    expectedAt: integer("expected_at").$type<Instant>(),
    urgent: integer("urgent", { mode: "boolean" }).notNull(),
    givenPromiseAt: integer("given_promise_at").$type<Instant>(),
    likelyAt: integer("likely_at").$type<Instant>(),
    playableAt: integer("playable_at").$type<Instant>(),
    /** The newest promise told as late, so that one slip is one call. */
    toldLateAt: integer("told_late_at").$type<Instant>(),
    /** The bench's version when that was told: without a press since there is nothing new to tell. */
    toldLateVersion: integer("told_late_version"),
    nudgedAt: integer("nudged_at").$type<Instant>(),
    takenBy: text("taken_by"),
    answer: text("answer"),
    createdAt: integer("created_at").$type<Instant>().notNull(),
  },
  (table) => [
    unique().on(table.truckId, table.eventId, table.number),
    index("build_order_open").on(table.truckId, table.state),
    index("build_order_player").on(table.playerId, table.state),
    check("build_order_clubs_json", sql`json_valid(${table.clubs})`),
  ],
);

export const orderRevision = sqliteTable(
  "order_revision",
  {
    orderId: integer("order_id")
      .$type<Id<"order">>()
      .notNull()
      .references(() => buildOrder.id),
    revision: integer("revision").notNull(),
    asWritten: text("as_written").notNull(),
    request: text("request").notNull(),
    state: text("state", { enum: ["draft", "confirmed", "superseded"] }).notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [primaryKey({ columns: [table.orderId, table.revision] }), check("order_revision_request_json", sql`json_valid(${table.request})`)],
);

export const sheet = sqliteTable(
  "sheet",
  {
    id: integer("id").$type<Id<"sheet">>().primaryKey({ autoIncrement: true }),
    orderId: integer("order_id").$type<Id<"order">>().notNull(),
    revision: integer("revision").notNull(),
    club: text("club").notNull(),
    /** Which of several alike it is, counting from 1: `2 drivers` are two sheets. */
    copy: integer("copy").notNull().default(1),
    plan: text("plan").notNull(),
    /** When this club is ready, of an order of several. */
    likelyAt: integer("likely_at").$type<Instant>(),
    promiseAt: integer("promise_at").$type<Instant>(),
    playableAt: integer("playable_at").$type<Instant>(),
  },
  (table) => [
    unique().on(table.orderId, table.revision, table.club, table.copy),
    foreignKey({ columns: [table.orderId, table.revision], foreignColumns: [orderRevision.orderId, orderRevision.revision] }),
    check("sheet_plan_json", sql`json_valid(${table.plan})`),
  ],
);

export const step = sqliteTable(
  "step",
  {
    id: integer("id").$type<Id<"step">>().primaryKey({ autoIncrement: true }),
    sheetId: integer("sheet_id")
      .$type<Id<"sheet">>()
      .notNull()
      .references(() => sheet.id),
    position: integer("position").notNull(),
    kind: text("kind").notNull(),
    /** The route's step as JSON, floors as they were when the sheet was made. */
    route: text("route").notNull(),
    state: text("state", { enum: ["todo", "running", "paused", "done", "skipped"] }).notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .references(() => person.id),
    startedAt: integer("started_at").$type<Instant>(),
    finishedAt: integer("finished_at").$type<Instant>(),
    workedMs: integer("worked_ms").notNull().default(0),
    /** Why it is done again or left out. */
    reason: text("reason"),
    repeatsStepId: integer("repeats_step_id").$type<Id<"step">>(),
  },
  (table) => [unique().on(table.sheetId, table.position), check("step_route_json", sql`json_valid(${table.route})`)],
);

export const pressKinds = ["start", "glueOn", "done", "checked", "pause", "resume", "handBack"] as const;

/** Append-only: every press at the bench, as it came. What is learned of durations rests on it. */
export const benchPress = sqliteTable(
  "bench_press",
  {
    id: integer("id").$type<Id<"benchPress">>().primaryKey({ autoIncrement: true }),
    orderId: integer("order_id")
      .$type<Id<"order">>()
      .notNull()
      .references(() => buildOrder.id),
    press: text("press", { enum: pressKinds }).notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [index("bench_press_order").on(table.orderId), index("bench_press_person").on(table.personId, table.at)],
);

/** Append-only: every time a rep was given, with what it rested on. */
export const givenPromise = sqliteTable(
  "given_promise",
  {
    id: integer("id").$type<Id<"givenPromise">>().primaryKey({ autoIncrement: true }),
    orderId: integer("order_id")
      .$type<Id<"order">>()
      .notNull()
      .references(() => buildOrder.id),
    revision: integer("revision").notNull(),
    at: integer("at").$type<Instant>().notNull(),
    /** Why it was given: with the order, when the club came in, or as a new time for a slip. */
    cause: text("cause", { enum: ["confirmed", "arrived", "slipped"] }).notNull(),
    likelyAt: integer("likely_at").$type<Instant>(),
    promiseAt: integer("promise_at").$type<Instant>(),
    benchVersion: integer("bench_version").notNull(),
    /** How the bench was run. */
    rule: text("rule").notNull(),
    technicians: integer("technicians").notNull(),
  },
  (table) => [index("given_promise_order").on(table.orderId)],
);

/** What the gauge said of a sheet's club; a later line of the same quantity replaces the earlier one. */
export const measurement = sqliteTable(
  "measurement",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    sheetId: integer("sheet_id")
      .$type<Id<"sheet">>()
      .notNull()
      .references(() => sheet.id),
    quantity: text("quantity").notNull(),
    /** Of something looked at, such as a stamp, what was seen stands in `as_written` and the value is 0. */
    value: real("value").notNull(),
    asWritten: text("as_written").notNull(),
    stage: text("stage", { enum: ["found", "left"] })
      .notNull()
      .default("left"),
    gauge: text("gauge").notNull(),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [index("measurement_sheet").on(table.sheetId)],
);

/** A post with faults: kept whole, so that a press can mend a word of it. */
export const keptPost = sqliteTable("kept_post", {
  id: integer("id").$type<Id<"keptPost">>().primaryKey({ autoIncrement: true }),
  sourceKey: text("source_key").notNull().unique(),
  channel: text("channel").notNull(),
  personId: integer("person_id")
    .$type<Id<"person">>()
    .notNull()
    .references(() => person.id),
  text: text("text").notNull(),
  version: integer("version").notNull(),
  at: integer("at").$type<Instant>().notNull(),
});

/** A guided order under way: its answers so far, one page after another, so that a restart loses none. */
export const formPage = sqliteTable(
  "form_page",
  {
    id: integer("id").$type<Id<"formPage">>().primaryKey({ autoIncrement: true }),
    personId: integer("person_id")
      .$type<Id<"person">>()
      .notNull()
      .references(() => person.id),
    page: integer("page").notNull(),
    answers: text("answers").notNull(),
    at: integer("at").$type<Instant>().notNull(),
  },
  (table) => [check("form_page_answers_json", sql`json_valid(${table.answers})`)],
);
