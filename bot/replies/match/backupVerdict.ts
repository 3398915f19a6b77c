import type { NearHead } from "../../flows/match/nearestHeads.ts";
import { clubWords } from "../shown.ts";
import { headWords } from "./candidateLine.ts";
import { offWords } from "./deltaWords.ts";
import type { MatchedClub, MatchReader, RankedFinished } from "./matchTypes.ts";

interface Verdict {
  readonly answer: "yes" | "no" | "unknown" | "none";
  readonly words: string;
}

/** The backup nearest to the gamer, or null without one. */
const nearestBackup = ({ finished }: MatchedClub): RankedFinished | null => finished.find(({ twin }) => twin.where.kind === "drawer") ?? null;

function withoutBackup({ club, finished }: MatchedClub, head: NearHead | null): Verdict {
  const ready = finished.find(({ twin }) => twin.where.kind === "ready")?.twin.where;
  const others = [
    ...(ready?.kind === "ready" ? [`order ${ready.order} is ready in ${ready.truck}`] : []),
    ...(head === null ? [] : [`nearest head ${headWords(head)}`]),
  ];
  return { answer: "none", words: [`No backup ${clubWords(club)} on record`, ...others].join("; ") };
}

/** Whether the backup can go in, in plain words: yes, not as it is and why, or that there is none. */
export function backupVerdict(matched: MatchedClub, head: NearHead | null, { unit }: MatchReader): Verdict {
  const backup = nearestBackup(matched);
  if (backup === null) return withoutBackup(matched, head);
  const { gamer, club, listed } = matched;
  const { comparison, twin, unknownCount } = backup;
  /** What is stamped on it is no reason to leave it in the drawer. */
  const differing = comparison.differing.filter((part) => part !== "stamp");
  const off = offWords(gamer, twin.club, { ...comparison, differing }, unit);
  const isUnlisted = listed !== null && twin.club.headModel !== null && listed.get(twin.club.headModel) === false;
  const against = [...off, ...(isUnlisted ? ["its head is not on the list for play"] : [])];
  if (against.length > 0) {
    const isFeelAlone =
      !isUnlisted && differing.length === 0 && comparison.rows.every(({ verdict, concerns }) => verdict !== "off" || concerns === "feel");
    return { answer: "no", words: `Not as it is: ${against.join(", ")}${isFeelAlone ? " (feel alone: the player's to accept)" : ""}` };
  }
  if (comparison.rows.length === 0) return { answer: "unknown", words: `Cannot say: no reading of both the gamer and the backup ${clubWords(club)}` };
  const unread = unknownCount > 0 ? ", as far as both are on record" : "";
  return { answer: "yes", words: `Yes: the backup ${clubWords(club)} matches the gamer${unread}` };
}
