CREATE TABLE `setting` (
	`name` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL,
	`person_id` integer NOT NULL,
	`at` integer NOT NULL,
	CONSTRAINT "setting_value_json" CHECK(json_valid("setting"."value"))
) STRICT;
