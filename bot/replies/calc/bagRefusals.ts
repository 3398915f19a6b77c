import type { Reply } from "../../chat/types.ts";
import { note } from "../card.ts";

export const noBagReply = (player: string, part: string): Reply =>
  note("refusal", `No ${part} of ${player} on record`, "attention", "A bag check publishes the first. Or type the values.");

export const noTwinReply = (club: string, twin: string): Reply =>
  note(
    "refusal",
    `${club} has no ${twin} on record`,
    "attention",
    "Name the other club: /calc match toll driver, oxtoby driver. Or type values in pairs.",
  );
