ALTER TABLE `inbound` ADD `channel` text;--> statement-breakpoint
ALTER TABLE `inbound` ADD `answered_at` integer;