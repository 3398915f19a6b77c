import { type Skill, skills } from "../../core/bench/benchTypes.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Reply } from "../chat/types.ts";
import { note } from "./card.ts";
import { timeText } from "./shown.ts";

export const skillWords: Readonly<Record<Skill, string>> = { grinding: "grinding", woodBending: "wood bending", stamping: "stamping" };

const listed = (names: readonly string[]): string => (names.length === 0 ? "nothing beside the usual" : names.join(", "));

export const shiftNotes = {
  noTruck: (): Reply => note("refusal", "This channel has no truck", "refusal", "Say it in a truck's channel."),
  whom: (written: string, found: readonly string[]): Reply =>
    note("refusal", found.length === 0 ? `Nobody here is called ${written}` : `Which one: ${found.join(", ")}?`, "refusal", "Nothing was changed."),
  leadOnly: (name: string): Reply => note("refusal", `${name}: the lead says that for others`, "refusal", "Nothing was changed."),
  on: (name: string): Reply => note("shift", `${name} is on`, "good", "Times of open orders are made anew."),
  off: (name: string, until: Instant | null, now: Instant, zone: string): Reply =>
    note("shift", `${name} is off${until === null ? "" : ` till ${timeText(until, now, zone)}`}`, "plain", "Times of open orders are made anew."),
  badTime: (why: "past" | "noSuchTime" | "none", written: string): Reply =>
    note(
      "refusal",
      `${written} ${why === "past" ? "has passed" : "is no time"}`,
      "refusal",
      "Such as: 13:30, 1:30pm, tue 7:00. Nothing was changed.",
    ),
  skills: (name: string, given: readonly Skill[]): Reply => note("shift", `${name}: ${listed(given.map((skill) => skillWords[skill]))}`, "good"),
  badSkill: (written: string): Reply =>
    note(
      "refusal",
      `${written} is no skill that is asked for`,
      "refusal",
      `One or more of: ${skills.map((skill) => skillWords[skill]).join(", ")}; none; or usual. Nothing was changed.`,
    ),
};
