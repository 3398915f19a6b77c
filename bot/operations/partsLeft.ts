import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { partsOfSheet } from "./partsOfSheet.ts";
import { takePart } from "./takePart.ts";

/** What one plan leaves of the parts in reach for the next. */
export const partsLeft = (parts: PartsInReach, plan: ClubPlan): PartsInReach =>
  partsOfSheet({ plan }).reduce((left, part) => takePart(left, part)?.left ?? left, parts);
