import { type ClubName, type Id, id } from "../../../core/kinds.ts";
import { clubAt } from "../clubAt.ts";
import { playerNear, playersAt } from "../playerNames.ts";
import type { NamedPlayer } from "../reading.ts";
import { type Word, wordsOf } from "../wordsOf.ts";

/** Whose club is held against what there is, and which; what nobody said is asked. */
interface MatchWanted {
  readonly player:
    | { readonly kind: "one"; readonly id: Id<"player"> }
    /** Several of that name, or the nearest names; none at all when nobody was named. */
    | { readonly kind: "ask"; readonly written: string; readonly choices: readonly NamedPlayer[] };
  readonly club: { readonly kind: "one"; readonly club: ClubName } | { readonly kind: "ask"; readonly written: string };
  /** `can the backup go in?`: a plain yes or no is wanted first. */
  readonly asksBackup: boolean;
}

/** What people give: each part as they wrote it. */
export interface MatchWritten {
  readonly player?: string | undefined;
  readonly club?: string | undefined;
  readonly text?: string | undefined;
}

const MOST_TEXT = 2000;
const SHORTEST_NAME = 4;
const LONGEST_NAME = 40;
const backupWords = new Set(["backup", "backups", "backup's", "trial", "trials", "twin", "twins", "spare"]);
const askingWords = new Set([
  "nearest",
  "match",
  "matches",
  "close",
  "ready",
  "same",
  "does",
  "could",
  "the",
  "can",
  "club",
  "like",
  "gamer",
  "this",
]);

/** Names, clubs and what is left of a text, in the order they stand. */
interface Scanned {
  readonly players: readonly (readonly NamedPlayer[])[];
  readonly clubs: readonly { readonly clubs: readonly ClubName[]; readonly said: string }[];
  readonly others: readonly Word[];
}

const saidBetween = (words: readonly Word[], from: number, to: number): string =>
  words
    .slice(from, to)
    .map(({ text }) => text)
    .join(" ");

function scanned(words: readonly Word[], players: readonly NamedPlayer[]): Scanned {
  const found: { players: (readonly NamedPlayer[])[]; clubs: Scanned["clubs"][number][]; others: Word[] } = { players: [], clubs: [], others: [] };
  for (let at = 0; at < words.length; ) {
    const named = playersAt(words, at, players);
    const hit = named === null ? clubAt(words, at) : null;
    const word = words[at];
    if (named !== null) found.players.push(named.players);
    else if (hit !== null) found.clubs.push({ clubs: hit.kind === "clubs" ? hit.clubs : [], said: saidBetween(words, at, hit.next) });
    else if (word !== undefined) found.others.push(word);
    at = named?.next ?? hit?.next ?? at + 1;
  }
  return found;
}

/** An unread word may be a misspelt name: it is never taken for one, only asked after; the far ones only where a name was wanted. */
function misspelt(
  others: readonly Word[],
  players: readonly NamedPlayer[],
  isName: boolean,
): { readonly written: string; readonly choices: readonly NamedPlayer[] } {
  const words = others
    .map(({ text }) => text)
    .filter((text) => text.length >= SHORTEST_NAME && text.length <= LONGEST_NAME && !backupWords.has(text) && !askingWords.has(text));
  for (const written of words.slice(0, 5)) {
    const near = playerNear(written, players);
    const choices = near.kind === "one" ? [near.player] : near.kind === "several" ? near.players : isName ? near.nearest : [];
    if (choices.length > 0) return { written, choices };
  }
  return { written: "", choices: [] };
}

/**
 * Reads whose club is meant, and which, from a player by name or `id:7`, a club, and free words such as
 * `can brams backup driver go in?`. Linear in the text; of several names or clubs the first counts.
 */
export function readMatchWanted(written: MatchWritten, players: readonly NamedPlayer[]): MatchWanted {
  const all = [written.player, written.club, written.text].map((part) => (part ?? "").slice(0, MOST_TEXT));
  const byId = /(?:^|\s)id:(\d{1,9})(?=\s|$)/.exec(all.join("\n"))?.[1];
  const { words } = wordsOf(all.join("\n").replace(/(^|\s)id:\S{0,20}(?=\s|$)/g, "$1"));
  const found = scanned(words, players);
  const named = found.players[0] ?? [];
  const [only] = named;
  const { clubs, said } = found.clubs[0] ?? { clubs: [], said: (written.club ?? "").trim() };
  const [club] = clubs;
  return {
    player:
      byId !== undefined
        ? { kind: "one", id: id<"player">(Number(byId)) }
        : only !== undefined && named.length === 1
          ? { kind: "one", id: only.id }
          : { kind: "ask", ...(named.length > 1 ? { written: "", choices: named } : misspelt(found.others, players, written.player !== undefined)) },
    club: club !== undefined && clubs.length === 1 ? { kind: "one", club } : { kind: "ask", written: said.slice(0, 40) },
    asksBackup: words.some(({ text }) => backupWords.has(text)),
  };
}
