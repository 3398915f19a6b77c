import type { Instant } from "../../core/kinds.ts";
import type { Card, Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { firstName, sheetName, timeText } from "./shown.ts";
import { stepSaid } from "./stepWords.ts";
import { waitWords } from "./waitWords.ts";

const underWay = ({ state }: OrderFacts): boolean => state === "building" || state === "finalCheck";

/** Steps of a club that are done again, or left out. */
function changedLines(club: ClubFacts, of: string): readonly Line[] {
  return club.steps.flatMap(({ route, state, reason, repeatsStepId }) => {
    const why = reason === null ? "" : `: ${reason}`;
    const isAgain = repeatsStepId !== null && state !== "done" && !route.unattended;
    return [
      ...(isAgain ? [line({ strong: `${of}${stepSaid(route.kind)} again` }, why)] : []),
      ...(state === "skipped" ? [line(`${of}${stepSaid(route.kind)} left out${why}`)] : []),
    ];
  });
}

/** What sets, and what is done again or left out: said once, at the top. */
export function underWayLines(facts: OrderFacts, now: Instant): readonly Line[] {
  const wait = underWay(facts) ? waitWords(facts, now) : null;
  const several = facts.clubs.length > 1;
  const isOnBench = underWay(facts) || facts.state === "confirmed";
  return [
    ...(facts.atBench.lies === null ? [] : [line(`It lies: ${facts.atBench.lies}`)]),
    ...(wait === null ? [] : [line({ strong: wait.charAt(0).toUpperCase() + wait.slice(1) })]),
    ...(isOnBench ? facts.clubs.flatMap((club) => changedLines(club, several ? `${sheetName(club)} ` : "")) : []),
  ];
}

/** Whose hands it is in, and whether it rests. */
export function handsWords({ atBench }: OrderFacts): string {
  switch (atBench.resting) {
    case "paused":
      return atBench.hands === null ? ", paused" : `, paused by ${firstName(atBench.hands.name)}`;
    case "handedBack":
      return ", handed back";
    case null:
      return atBench.hands === null ? "" : `, ${firstName(atBench.hands.name)}`;
  }
}

/** How far a club is, and when it is likely in hand where an order has several. */
export function clubField({ clubs, zone }: OrderFacts, club: ClubFacts, now: Instant): Card["fields"][number] {
  const counted = club.steps.filter(({ state }) => state !== "skipped");
  const done = counted.filter(({ state }) => state === "done").length;
  const likely = clubs.length > 1 && club.likelyAt !== null ? `, likely ${timeText(club.likelyAt, now, zone)}` : "";
  return { label: sheetName(club), value: line(`${done} of ${counted.length} steps done${likely}`) };
}
