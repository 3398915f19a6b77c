/**
 * Keeps the audit append-only, as SQL that ends the first migration: no row of the chain changes or goes, and a body
 * changes only by being erased whole, once.
 */
export const auditTriggers = [
  "CREATE TRIGGER `audit_no_update` BEFORE UPDATE ON `audit` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;",
  "CREATE TRIGGER `audit_no_delete` BEFORE DELETE ON `audit` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;",
  "CREATE TRIGGER `audit_body_no_delete` BEFORE DELETE ON `audit_body` BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;",
  [
    "CREATE TRIGGER `audit_body_only_erased` BEFORE UPDATE ON `audit_body`",
    "WHEN OLD.`erased_at` IS NOT NULL OR NEW.`erased_at` IS NULL OR NEW.`seq` <> OLD.`seq` OR NEW.`player_id` IS NOT OLD.`player_id`",
    "BEGIN SELECT RAISE(ABORT, 'an audit body can only be erased'); END;",
  ].join("\n"),
].join("\n--> statement-breakpoint\n");
