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
CREATE INDEX `outbox_lane` ON `outbox` (`channel`,`id`) WHERE state = 'pending';
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
