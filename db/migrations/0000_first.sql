CREATE TABLE `build_order` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`number` integer NOT NULL,
	`truck_id` integer NOT NULL,
	`event_id` integer NOT NULL,
	`player_id` integer NOT NULL,
	`posted_by_id` integer NOT NULL,
	`source_key` text NOT NULL,
	`channel` text NOT NULL,
	`kind` text NOT NULL,
	`clubs` text NOT NULL,
	`state` text NOT NULL,
	`held_reason` text,
	`version` integer NOT NULL,
	`revision` integer NOT NULL,
	`by_at` integer,
	`urgent` integer NOT NULL,
	`given_promise_at` integer,
	`likely_at` integer,
	`playable_at` integer,
	`told_late_at` integer,
	`told_late_version` integer,
	`nudged_at` integer,
	`taken_by` text,
	`answer` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`posted_by_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "build_order_clubs_json" CHECK(json_valid("build_order"."clubs"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `build_order_source_key_unique` ON `build_order` (`source_key`);--> statement-breakpoint
CREATE INDEX `build_order_open` ON `build_order` (`truck_id`,`state`);--> statement-breakpoint
CREATE INDEX `build_order_player` ON `build_order` (`player_id`,`state`);--> statement-breakpoint
CREATE UNIQUE INDEX `build_order_truck_id_event_id_number_unique` ON `build_order` (`truck_id`,`event_id`,`number`);--> statement-breakpoint
CREATE TABLE `form_page` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`person_id` integer NOT NULL,
	`page` integer NOT NULL,
	`answers` text NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "form_page_answers_json" CHECK(json_valid("form_page"."answers"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `kept_post` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`source_key` text NOT NULL,
	`channel` text NOT NULL,
	`person_id` integer NOT NULL,
	`text` text NOT NULL,
	`version` integer NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `kept_post_source_key_unique` ON `kept_post` (`source_key`);--> statement-breakpoint
CREATE TABLE `measurement` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`sheet_id` integer NOT NULL,
	`quantity` text NOT NULL,
	`value` real NOT NULL,
	`as_written` text NOT NULL,
	`gauge` text NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`sheet_id`) REFERENCES `sheet`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `measurement_sheet` ON `measurement` (`sheet_id`);--> statement-breakpoint
CREATE TABLE `order_revision` (
	`order_id` integer NOT NULL,
	`revision` integer NOT NULL,
	`as_written` text NOT NULL,
	`request` text NOT NULL,
	`state` text NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	PRIMARY KEY(`order_id`, `revision`),
	FOREIGN KEY (`order_id`) REFERENCES `build_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "order_revision_request_json" CHECK(json_valid("order_revision"."request"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `sheet` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`order_id` integer NOT NULL,
	`revision` integer NOT NULL,
	`club` text NOT NULL,
	`plan` text NOT NULL,
	FOREIGN KEY (`order_id`,`revision`) REFERENCES `order_revision`(`order_id`,`revision`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "sheet_plan_json" CHECK(json_valid("sheet"."plan"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `sheet_order_id_revision_club_unique` ON `sheet` (`order_id`,`revision`,`club`);--> statement-breakpoint
CREATE TABLE `step` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`sheet_id` integer NOT NULL,
	`position` integer NOT NULL,
	`kind` text NOT NULL,
	`route` text NOT NULL,
	`state` text NOT NULL,
	`person_id` integer,
	`started_at` integer,
	`finished_at` integer,
	`worked_ms` integer DEFAULT 0 NOT NULL,
	FOREIGN KEY (`sheet_id`) REFERENCES `sheet`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "step_route_json" CHECK(json_valid("step"."route"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `step_sheet_id_position_unique` ON `step` (`sheet_id`,`position`);--> statement-breakpoint
CREATE TABLE `channel` (
	`name` text PRIMARY KEY NOT NULL,
	`purpose` text NOT NULL,
	`truck_id` integer,
	`last_seen_message_id` text,
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "channel_purpose" CHECK("channel"."purpose" IN ('orders','bench','week','general','lead'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `event` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`course` text NOT NULL,
	`zone` text NOT NULL,
	`monday` text NOT NULL,
	`first_practice_round` text NOT NULL,
	`walk_min` integer NOT NULL,
	`keeps_list_for_play` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `event_name_unique` ON `event` (`name`);--> statement-breakpoint
CREATE TABLE `event_player` (
	`event_id` integer NOT NULL,
	`player_id` integer NOT NULL,
	`withdrawn_at` integer,
	PRIMARY KEY(`event_id`, `player_id`),
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `opening` (
	`truck_id` integer NOT NULL,
	`opens_at` integer NOT NULL,
	`closes_at` integer NOT NULL,
	PRIMARY KEY(`truck_id`, `opens_at`),
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "opening_order" CHECK("opening"."opens_at" < "opening"."closes_at")
) STRICT;
--> statement-breakpoint
CREATE TABLE `person` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text,
	`zone` text NOT NULL,
	`length_unit` text NOT NULL,
	`retired_at` integer,
	`erased_at` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `person_identity` (
	`platform` text NOT NULL,
	`platform_user_id` text NOT NULL,
	`person_id` integer NOT NULL,
	`rehearsal_roles` text DEFAULT '[]' NOT NULL,
	PRIMARY KEY(`platform`, `platform_user_id`),
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `player` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text,
	`hand` text NOT NULL,
	`region` text,
	`note` text,
	`restricted_code` text,
	`balls` integer,
	`hats` integer,
	`gloves` integer,
	`hat_size` text NOT NULL,
	`glove_size` text NOT NULL,
	`erased_at` integer
) STRICT;
--> statement-breakpoint
CREATE TABLE `player_alias` (
	`alias` text NOT NULL,
	`player_id` integer NOT NULL,
	PRIMARY KEY(`alias`, `player_id`),
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `tee_time` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`event_id` integer NOT NULL,
	`player_id` integer NOT NULL,
	`kind` text NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `truck` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`name` text NOT NULL,
	`bench_version` integer DEFAULT 0 NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `truck_name_unique` ON `truck` (`name`);--> statement-breakpoint
CREATE TABLE `truck_event` (
	`truck_id` integer NOT NULL,
	`event_id` integer NOT NULL,
	`arrives_at` integer NOT NULL,
	`roll_out_at` integer NOT NULL,
	PRIMARY KEY(`truck_id`, `event_id`),
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `truck_technician` (
	`truck_id` integer NOT NULL,
	`person_id` integer NOT NULL,
	PRIMARY KEY(`truck_id`, `person_id`),
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `audit` (
	`seq` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`at` integer NOT NULL,
	`person_id` integer,
	`action` text NOT NULL,
	`subject` text NOT NULL,
	`body_digest` text NOT NULL,
	`hash` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `audit_hash_unique` ON `audit` (`hash`);--> statement-breakpoint
CREATE TABLE `audit_body` (
	`seq` integer PRIMARY KEY NOT NULL,
	`salt` text,
	`body` text,
	`player_id` integer,
	`erased_at` integer,
	FOREIGN KEY (`seq`) REFERENCES `audit`(`seq`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "audit_body_json" CHECK("audit_body"."body" IS NULL OR json_valid("audit_body"."body")),
	CONSTRAINT "audit_body_erased" CHECK(("audit_body"."erased_at" IS NULL) = ("audit_body"."body" IS NOT NULL AND "audit_body"."salt" IS NOT NULL))
) STRICT;
--> statement-breakpoint
CREATE INDEX `audit_body_player` ON `audit_body` (`player_id`);--> statement-breakpoint
CREATE TABLE `due` (
	`reminder` text NOT NULL,
	`local_date` text NOT NULL,
	`state` text NOT NULL,
	`outbox_id` integer,
	PRIMARY KEY(`reminder`, `local_date`),
	FOREIGN KEY (`outbox_id`) REFERENCES `outbox`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "due_state" CHECK("due"."state" IN ('posted','skipped','done')),
	CONSTRAINT "due_local_date" CHECK("due"."local_date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE TABLE `inbound` (
	`key` text PRIMARY KEY NOT NULL,
	`at` integer NOT NULL,
	`person_id` integer,
	`reply` text NOT NULL,
	CONSTRAINT "inbound_reply_json" CHECK(json_valid("inbound"."reply"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `live_post` (
	`subject` text NOT NULL,
	`channel` text NOT NULL,
	`outbox_id` integer NOT NULL,
	`wanted` integer NOT NULL,
	`shown` integer NOT NULL,
	`refused` integer DEFAULT 0 NOT NULL,
	`card` text NOT NULL,
	`attempts` integer DEFAULT 0 NOT NULL,
	`next_at` integer NOT NULL,
	`last_error` text,
	PRIMARY KEY(`subject`, `channel`),
	FOREIGN KEY (`outbox_id`) REFERENCES `outbox`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "live_post_card_json" CHECK(json_valid("live_post"."card"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `live_post_behind` ON `live_post` (`channel`,`next_at`) WHERE wanted > shown;--> statement-breakpoint
CREATE TABLE `meta` (
	`key` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `outbox` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`channel` text NOT NULL,
	`dedupe_key` text NOT NULL,
	`nonce` text NOT NULL,
	`ref` text NOT NULL,
	`card` text NOT NULL,
	`state` text DEFAULT 'pending' NOT NULL,
	`attempts` integer DEFAULT 0 NOT NULL,
	`first_try_at` integer,
	`next_at` integer NOT NULL,
	`message_id` text,
	`last_error` text,
	CONSTRAINT "outbox_card_json" CHECK(json_valid("outbox"."card")),
	CONSTRAINT "outbox_nonce_length" CHECK(length("outbox"."nonce") BETWEEN 1 AND 25),
	CONSTRAINT "outbox_state" CHECK("outbox"."state" IN ('pending','sent','dead')),
	CONSTRAINT "outbox_sent_has_message" CHECK("outbox"."state" <> 'sent' OR "outbox"."message_id" IS NOT NULL)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `outbox_dedupe_key_unique` ON `outbox` (`dedupe_key`);--> statement-breakpoint
CREATE UNIQUE INDEX `outbox_nonce_unique` ON `outbox` (`nonce`);--> statement-breakpoint
CREATE UNIQUE INDEX `outbox_channel_ref` ON `outbox` (`channel`,`ref`);--> statement-breakpoint
CREATE INDEX `outbox_lane` ON `outbox` (`channel`,`id`) WHERE state = 'pending';--> statement-breakpoint
CREATE TABLE `head` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`serial` text NOT NULL,
	`model_id` integer NOT NULL,
	`hand` text NOT NULL,
	`stamped_loft_deg` real NOT NULL,
	`soled_loft_deg` real NOT NULL,
	`design_lie_deg` real NOT NULL,
	`soled_face_deg` real NOT NULL,
	`bounce_deg` real,
	`mass_g` real NOT NULL,
	`measured_at` integer NOT NULL,
	`place_id` integer,
	`retired_at` integer,
	FOREIGN KEY (`model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `head_serial_unique` ON `head` (`serial`);--> statement-breakpoint
CREATE INDEX `head_model` ON `head` (`model_id`,`hand`);--> statement-breakpoint
CREATE TABLE `part_model` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`kind` text NOT NULL,
	`name` text NOT NULL,
	`facts` text NOT NULL,
	`restricted_code` text,
	CONSTRAINT "part_model_facts_json" CHECK(json_valid("part_model"."facts"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `part_model_kind_name_unique` ON `part_model` (`kind`,`name`);--> statement-breakpoint
CREATE TABLE `place` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`truck_id` integer,
	`kind` text NOT NULL,
	`label` text NOT NULL,
	`player_id` integer,
	FOREIGN KEY (`truck_id`) REFERENCES `truck`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `reservation` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`sheet_id` integer NOT NULL,
	`head_id` integer,
	`part_model_id` integer,
	`place_id` integer,
	`quantity` integer DEFAULT 1 NOT NULL,
	`state` text NOT NULL,
	FOREIGN KEY (`sheet_id`) REFERENCES `sheet`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`head_id`) REFERENCES `head`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "reservation_one_thing" CHECK(("reservation"."head_id" IS NULL) <> ("reservation"."part_model_id" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `reservation_one_head` ON `reservation` (`head_id`) WHERE state = 'held';--> statement-breakpoint
CREATE INDEX `reservation_sheet` ON `reservation` (`sheet_id`);--> statement-breakpoint
CREATE TABLE `stock_entry` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`part_model_id` integer NOT NULL,
	`place_id` integer NOT NULL,
	`quantity_change` integer NOT NULL,
	`reason` text NOT NULL,
	`person_id` integer,
	`at` integer NOT NULL,
	FOREIGN KEY (`part_model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `stock_entry_model` ON `stock_entry` (`part_model_id`,`place_id`);--> statement-breakpoint
CREATE TABLE `allowance_entry` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`event_id` integer NOT NULL,
	`player_id` integer NOT NULL,
	`balls` integer NOT NULL,
	`hats` integer NOT NULL,
	`gloves` integer NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `allowance_entry_event_id_player_id_unique` ON `allowance_entry` (`event_id`,`player_id`);--> statement-breakpoint
CREATE TABLE `marking` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`player_id` integer NOT NULL,
	`club` text NOT NULL,
	`text` text NOT NULL,
	`for_win` integer NOT NULL,
	`state` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`done_at` integer,
	`done_by_id` integer,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`done_by_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `marking_owed` ON `marking` (`player_id`,`state`);--> statement-breakpoint
CREATE TABLE `spec_version` (
	`player_id` integer NOT NULL,
	`version` integer NOT NULL,
	`valid_from` integer NOT NULL,
	`person_id` integer NOT NULL,
	`event_id` integer,
	`taken_at` text NOT NULL,
	`bag` text NOT NULL,
	PRIMARY KEY(`player_id`, `version`),
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "spec_version_bag_json" CHECK(json_valid("spec_version"."bag"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `win` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`player_id` integer NOT NULL,
	`event_id` integer NOT NULL,
	`won_on` text NOT NULL,
	FOREIGN KEY (`player_id`) REFERENCES `player`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`event_id`) REFERENCES `event`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `win_player_id_event_id_unique` ON `win` (`player_id`,`event_id`);
--> statement-breakpoint
CREATE TRIGGER `audit_no_update` BEFORE UPDATE ON `audit` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER `audit_no_delete` BEFORE DELETE ON `audit` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER `audit_body_no_delete` BEFORE DELETE ON `audit_body` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER `audit_body_only_erased` BEFORE UPDATE ON `audit_body`
WHEN OLD.`erased_at` IS NOT NULL OR NEW.`erased_at` IS NULL OR NEW.`seq` <> OLD.`seq` OR NEW.`player_id` IS NOT OLD.`player_id`
BEGIN SELECT RAISE(ABORT, 'an audit body can only be erased'); END;
