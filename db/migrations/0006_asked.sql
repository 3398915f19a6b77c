CREATE TABLE `asked` (
	`key` text PRIMARY KEY NOT NULL,
	`at` integer NOT NULL,
	`channel` text NOT NULL,
	`platform` text NOT NULL,
	`platform_id` text NOT NULL,
	`command` text NOT NULL
) STRICT;
--> statement-breakpoint
ALTER TABLE `inbound` DROP COLUMN `channel`;--> statement-breakpoint
ALTER TABLE `inbound` DROP COLUMN `answered_at`;