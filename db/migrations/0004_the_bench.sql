CREATE TABLE `bench_press` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`order_id` integer NOT NULL,
	`press` text NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `build_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `bench_press_order` ON `bench_press` (`order_id`);--> statement-breakpoint
CREATE INDEX `bench_press_person` ON `bench_press` (`person_id`,`at`);--> statement-breakpoint
CREATE TABLE `given_promise` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`order_id` integer NOT NULL,
	`revision` integer NOT NULL,
	`at` integer NOT NULL,
	`cause` text NOT NULL,
	`likely_at` integer,
	`promise_at` integer,
	`bench_version` integer NOT NULL,
	`rule` text NOT NULL,
	`technicians` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `build_order`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `given_promise_order` ON `given_promise` (`order_id`);--> statement-breakpoint
ALTER TABLE `build_order` ADD `expected_at` integer;--> statement-breakpoint
ALTER TABLE `sheet` ADD `likely_at` integer;--> statement-breakpoint
ALTER TABLE `sheet` ADD `promise_at` integer;--> statement-breakpoint
ALTER TABLE `sheet` ADD `playable_at` integer;--> statement-breakpoint
ALTER TABLE `step` ADD `reason` text;--> statement-breakpoint
ALTER TABLE `step` ADD `repeats_step_id` integer;--> statement-breakpoint
ALTER TABLE `truck` ADD `estimated_version` integer DEFAULT -1 NOT NULL;--> statement-breakpoint
ALTER TABLE `truck` ADD `estimated_at` integer;--> statement-breakpoint
ALTER TABLE `truck` ADD `policy` text;--> statement-breakpoint
ALTER TABLE `truck_technician` ADD `skills` text;--> statement-breakpoint
ALTER TABLE `truck_technician` ADD `away_from` integer;--> statement-breakpoint
ALTER TABLE `truck_technician` ADD `away_until` integer;