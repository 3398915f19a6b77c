ALTER TABLE `build_order` ADD `club_in_at` integer;--> statement-breakpoint
ALTER TABLE `measurement` ADD `stage` text DEFAULT 'left' NOT NULL;