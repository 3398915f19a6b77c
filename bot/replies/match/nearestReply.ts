import type { Hand } from "../../../core/kinds.ts";
import type { Reply } from "../../chat/types.ts";
import type { NearHead } from "../../flows/match/nearestHeads.ts";
import { card, line, reply } from "../card.ts";
import { clubWords } from "../shown.ts";
import { backupVerdict } from "./backupVerdict.ts";
import { finishedLine, gamerLine, headLine } from "./candidateLine.ts";
import { finishedData, gamerData, headData } from "./matchData.ts";
import type { MatchedClub, MatchReader } from "./matchTypes.ts";

interface NearestFacts {
  readonly player: { readonly shown: string; readonly hand: Hand };
  readonly matched: MatchedClub;
  /** Null where no truck's stock can be looked through. */
  readonly heads: readonly NearHead[] | null;
  readonly asksBackup: boolean;
}

/** The finished clubs and bare heads nearest to one gamer; a question about the backup is answered in the first line. */
export function nearestReply({ player, matched, heads, asksBackup }: NearestFacts, reader: MatchReader): Reply {
  const { club, gamer, finished } = matched;
  const verdict = backupVerdict(matched, heads?.[0] ?? null, reader);
  const none = finished.length === 0 ? [line(`No finished ${clubWords(club)} besides the gamer on record.`)] : [];
  const lacking = heads === null ? "Heads: ask in a truck's channel." : heads.length === 0 ? "No head in reach to hold against it." : null;
  return reply(
    card({
      kind: "match",
      title: `${player.shown}, ${player.hand}-handed, ${clubWords(club)}: nearest to the gamer`,
      tone: verdict.answer === "yes" ? "good" : asksBackup ? "attention" : "plain",
      lines: [
        ...(asksBackup ? [line({ strong: verdict.words })] : []),
        gamerLine(gamer, reader),
        ...(asksBackup && verdict.answer === "none" ? [] : none),
        ...finished.map((candidate) => finishedLine(candidate, matched, reader)),
        ...(heads ?? []).map((near) => headLine(near, matched, reader)),
        ...(lacking === null ? [] : [line(lacking)]),
      ],
      fields: [
        {
          label: "Read as",
          value: line("same is what two readings on one gauge cannot tell apart, close is within tolerance; heads are bare, set at the mark named."),
        },
      ],
      data: {
        club,
        backup: verdict.answer,
        gamer: gamerData(gamer),
        finished: finished.map(finishedData),
        heads: heads === null ? null : heads.map(headData),
      },
    }),
  );
}
