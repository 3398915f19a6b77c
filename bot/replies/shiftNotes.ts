import type { Skill } from "../../core/bench/benchTypes.ts";
import type { Instant } from "../../core/kinds.ts";
import type { Card, Reply } from "../chat/types.ts";
import { card, line, note, reply } from "./card.ts";
import { timeText } from "./shown.ts";

const skillWords: Readonly<Record<Skill, string>> = { grinding: "grinding", woodBending: "wood bending", stamping: "stamping" };

interface SignOff {
  readonly name: string;
  readonly until: Instant | null;
  /** Numbers of orders that rest meanwhile. */
  readonly paused: readonly number[];
}

/** The crew sees who is there. */
const told = (title: string, tone: Card["tone"], ...lines: readonly string[]): Reply =>
  reply(card({ kind: "shift", title, tone, lines: lines.map((text) => line(text)) }), "channel");

const listed = (names: readonly string[]): string => (names.length === 0 ? "nothing beside the usual" : names.join(", "));

export const shiftNotes = {
  noTruck: (): Reply => note("refusal", "This channel has no truck", "refusal", "Say it in a truck's channel."),
  whom: (written: string, found: readonly string[]): Reply =>
    note("refusal", found.length === 0 ? `Nobody here is called ${written}` : `Which one: ${found.join(", ")}?`, "refusal", "Nothing was changed."),
  leadOnly: (name: string): Reply => note("refusal", `${name}: the lead says that for others`, "refusal", "Nothing was changed."),
  on: (name: string): Reply => told(`${name} is on`, "good", "Times of open orders are made anew."),
  off: (off: SignOff, { now, zone }: { readonly now: Instant; readonly zone: string }): Reply =>
    told(
      `${off.name} is off${off.until === null ? "" : ` till ${timeText(off.until, now, zone)}`}`,
      "plain",
      ...(off.paused.length === 0
        ? []
        : [`${off.paused.join(", ")} ${off.paused.length === 1 ? "is" : "are"} paused: hand back what somebody else goes on with.`]),
      "Times of open orders are made anew.",
    ),
  notHere: (name: string): Reply => note("refusal", `${name} is not at this bench`, "refusal", "Nothing was changed. /shift on adds somebody."),
  badTime: (why: "past" | "noSuchTime" | "none", written: string): Reply =>
    note(
      "refusal",
      `${written} ${why === "past" ? "has passed" : "is no time"}`,
      "refusal",
      "Such as: 13:30, 1:30pm, tue 7:00. Nothing was changed.",
    ),
  skills: (name: string, given: readonly Skill[]): Reply => note("shift", `${name}: ${listed(given.map((skill) => skillWords[skill]))}`, "good"),
  badSkill: (written: string, names: readonly string[]): Reply =>
    note(
      "refusal",
      `${written} is no skill that is asked for`,
      "refusal",
      `One or more of: ${names.join(", ")}; none; or usual. Nothing was changed.`,
    ),
};
