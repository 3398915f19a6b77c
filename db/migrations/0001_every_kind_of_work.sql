CREATE TABLE `head_bend` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`head_id` integer NOT NULL,
	`loft_change_deg` real NOT NULL,
	`lie_change_deg` real NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`head_id`) REFERENCES `head`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `head_bend_head` ON `head_bend` (`head_id`);--> statement-breakpoint
CREATE TABLE `replenishment` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`place_id` integer NOT NULL,
	`part_model_id` integer NOT NULL,
	`quantity` integer NOT NULL,
	`order_id` integer,
	`at` integer NOT NULL,
	`refilled_at` integer,
	`refilled_by_id` integer,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`order_id`) REFERENCES `build_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`refilled_by_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `replenishment_owed` ON `replenishment` (`place_id`,`refilled_at`);--> statement-breakpoint
CREATE TABLE `shaft_piece` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`model_id` integer NOT NULL,
	`state` text NOT NULL,
	`tip_trim_mm` real NOT NULL,
	`sleeve_model_id` integer,
	`logo` text,
	`cut_length_mm` real,
	`place_id` integer,
	`added_at` integer NOT NULL,
	`retired_at` integer,
	FOREIGN KEY (`model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`sleeve_model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `shaft_piece_model` ON `shaft_piece` (`model_id`);--> statement-breakpoint
PRAGMA foreign_keys=OFF;--> statement-breakpoint
CREATE TABLE `__new_reservation` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`sheet_id` integer NOT NULL,
	`head_id` integer,
	`part_model_id` integer,
	`piece_id` integer,
	`place_id` integer,
	`quantity` integer DEFAULT 1 NOT NULL,
	`state` text NOT NULL,
	FOREIGN KEY (`sheet_id`) REFERENCES `sheet`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`head_id`) REFERENCES `head`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_model_id`) REFERENCES `part_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`piece_id`) REFERENCES `shaft_piece`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "reservation_one_thing" CHECK(("__new_reservation"."head_id" IS NOT NULL) + ("__new_reservation"."part_model_id" IS NOT NULL) + ("__new_reservation"."piece_id" IS NOT NULL) = 1)
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_reservation`("id", "sheet_id", "head_id", "part_model_id", "piece_id", "place_id", "quantity", "state") SELECT "id", "sheet_id", "head_id", "part_model_id", NULL, "place_id", "quantity", "state" FROM `reservation`;--> statement-breakpoint
DROP TABLE `reservation`;--> statement-breakpoint
ALTER TABLE `__new_reservation` RENAME TO `reservation`;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE UNIQUE INDEX `reservation_one_head` ON `reservation` (`head_id`) WHERE state = 'held';--> statement-breakpoint
CREATE UNIQUE INDEX `reservation_one_piece` ON `reservation` (`piece_id`) WHERE state = 'held';--> statement-breakpoint
CREATE INDEX `reservation_sheet` ON `reservation` (`sheet_id`);--> statement-breakpoint
DROP INDEX `sheet_order_id_revision_club_unique`;--> statement-breakpoint
ALTER TABLE `sheet` ADD `copy` integer DEFAULT 1 NOT NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `sheet_order_id_revision_club_copy_unique` ON `sheet` (`order_id`,`revision`,`club`,`copy`);