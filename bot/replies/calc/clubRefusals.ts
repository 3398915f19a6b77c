import type { Reply } from "../../chat/types.ts";
import { note } from "../card.ts";

export const restrictedClubReply = (): Reply => note("refusal", "That player is restricted", "refusal", "The lead can work it out.");

export const notOnRecordReply = (shown: string): Reply =>
  note("refusal", `No club on record: ${shown}`, "attention", "Type its values instead: /calc VIEW alone says what it takes");
