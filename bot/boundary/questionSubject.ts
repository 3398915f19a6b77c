import type { ClubName } from "../../core/kinds.ts";
import { type ClubHit, clubAt } from "./clubAt.ts";
import { playersAt } from "./playerNames.ts";
import type { NamedPlayer, ReadingContext } from "./reading.ts";
import type { Word } from "./wordsOf.ts";

const polite = new Set("the his her is are please pls at now today currently right of order up we with on for yet a".split(" "));

/** What is left of a question once a player and a club are taken out. */
interface Subject {
  readonly player: NamedPlayer | null;
  readonly club: ClubName | null;
  readonly others: readonly string[];
}

/** Who and which club a question is about, and its other words but for the polite ones. */
export function subjectOf(words: readonly Word[], start: number, context: ReadingContext): Subject {
  let player: NamedPlayer | null = null;
  let club: ClubName | null = null;
  const others: string[] = [];
  for (let at = start; at < words.length; ) {
    const named: ReturnType<typeof playersAt> = player === null ? playersAt(words, at, context.players) : null;
    const played: NamedPlayer | undefined = named?.players.length === 1 ? named.players[0] : undefined;
    const hit: ClubHit | null = named === null && club === null ? clubAt(words, at) : null;
    const text = words[at]?.text ?? "";
    if (named !== null && played !== undefined) {
      player = played;
      at = named.next;
    } else if (hit?.kind === "clubs" && hit.clubs[0] !== undefined) {
      club = hit.clubs[0];
      at = hit.next;
    } else {
      if (!polite.has(text)) others.push(text);
      at += 1;
    }
  }
  return { player, club, others };
}
