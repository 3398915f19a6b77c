import type { Instant } from "../../core/kinds.ts";
import type { PostMark } from "../../db/repositories/outbox.ts";
import type { Db } from "../../db/write.ts";
import type { Command } from "../chat/defineCommand.ts";
import type { RolesOf } from "./actorOf.ts";

/** What a desk is made of. */
export interface DeskParts {
  readonly db: Db;
  readonly commands: readonly Command[];
  readonly now: () => Instant;
  readonly newMark: () => PostMark;
  readonly rolesOf: RolesOf;
  readonly seed: number;
  readonly log: (error: unknown, reference: string) => void;
  /** Where a drill may kill the process. */
  readonly crash?: (point: "before-commit" | "after-commit") => void;
}
