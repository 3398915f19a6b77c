import type { ClubName, Hand, Id } from "../../../core/kinds.ts";
import type { Reply } from "../../chat/types.ts";
import { card, line, reply } from "../card.ts";
import { clubWords, plural } from "../shown.ts";
import { backupVerdict } from "./backupVerdict.ts";
import { finishedData } from "./matchData.ts";
import { clubChoices } from "./matchRefusals.ts";
import type { MatchedClub, MatchReader } from "./matchTypes.ts";

interface BackupsFacts {
  readonly player: { readonly id: Id<"player">; readonly shown: string; readonly hand: Hand };
  /** Every club that has a backup and a gamer. */
  readonly matched: readonly MatchedClub[];
  /** Backups whose place in the bag is empty. */
  readonly withoutGamer: readonly ClubName[];
  /** All of the bag: what else may be asked after. */
  readonly clubs: readonly ClubName[];
}

/** All backups of a player, one line each: may it go in. */
export function backupsReply({ player, matched, withoutGamer, clubs }: BackupsFacts, reader: MatchReader): Reply {
  const verdicts = matched.map((one) => ({ club: one.club, ...backupVerdict(one, null, reader) }));
  const count = matched.length + withoutGamer.length;
  return reply(
    card({
      kind: "match",
      title: `${player.shown}, ${player.hand}-handed: ${count === 0 ? "no backup on record" : plural(count, "backup")}`,
      tone: count > 0 && verdicts.length === count && verdicts.every(({ answer }) => answer === "yes") ? "good" : "attention",
      lines: [
        ...verdicts.map(({ club, words }) => line({ strong: clubWords(club) }, ` ${words}`)),
        ...withoutGamer.map((club) => line({ strong: clubWords(club) }, ` No ${clubWords(club)} in the bag to hold its backup against`)),
        ...(count === 0 ? [line("Which club? The nearest heads are named for it.")] : []),
      ],
      choices: clubChoices(player.id, clubs),
      data: {
        backups: matched.map((one, at) => ({
          club: one.club,
          backup: verdicts[at]?.answer ?? null,
          nearest: one.finished.slice(0, 1).map(finishedData),
        })),
        withoutGamer,
      },
    }),
  );
}
