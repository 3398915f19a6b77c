import type { Reply } from "../../chat/types.ts";
import { note } from "../card.ts";

export const restrictedClubReply = (): Reply => note("refusal", "That player is restricted", "refusal", "The lead can work it out.");

export const notOnRecordReply = (shown: string): Reply =>
  note("refusal", `No club on record: ${shown}`, "attention", "Type its parts instead, such as: head 200 at 44.5, shaft 60 at 21, grip 50 at 4.25");
