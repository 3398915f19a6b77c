import type { Instant } from "../../core/kinds.ts";
import type { NextFacts, TechnicianNext } from "../operations/nextFacts.ts";
import { firstName, plural, timeText } from "./shown.ts";

/** What is left to whom when one more at the bench would be slower. */
function leftWords(one: TechnicianNext, { technicians }: NextFacts): string {
  const others = technicians.filter((other) => other !== one && other.now !== null);
  const numbers = [...new Set(others.flatMap((other) => other.now?.order.number ?? []))];
  const names = others.map(({ name }) => firstName(name));
  return others.length === 0
    ? "nothing now: one more at the bench would be slower"
    : `leave ${numbers.join(", ")} to ${names.join(" and ")}: one more at it would be slower`;
}

const minutes = (min: number): string => plural(Math.round(min), "minute");

/** Why somebody does this now, or why there is nothing for them, in a few words. */
export function nextWhyWords(one: TechnicianNext, facts: NextFacts, now: Instant): string {
  const at = (moment: Instant): string => timeText(moment, now, facts.zone);
  const { why, waitsFor } = one;
  switch (why.kind) {
    case "underWay":
      return one.now === null ? "under way" : `under way, till about ${at(one.now.endAt)}`;
    case "onlyWork":
      return "the only order there is work on";
    case "urgent":
      return "first in line: the player waits";
    case "due":
      return `due ${at(why.dueAt)}, ${Math.round(why.spareMin) < 1 ? "no time" : minutes(why.spareMin)} to spare`;
    case "late":
      return `due ${at(why.dueAt)}, likely ${minutes(Math.max(1, why.lateMin))} late`;
    case "noRush":
      return "nothing is due before it";
    case "waiting":
      return `nothing to do till ${at(why.till)}${waitsFor === null ? "" : `, then ${waitsFor.number}`}`;
    case "closed":
      return why.till === null ? "closed" : `closed till ${at(why.till)}`;
    case "away":
      return why.till === null ? "off" : `off till ${at(why.till)}`;
    case "idle":
      return leftWords(one, facts);
    case "noWork":
      return "nothing to do";
  }
}
