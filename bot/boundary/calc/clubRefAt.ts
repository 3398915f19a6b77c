import type { ClubName } from "../../../core/kinds.ts";
import { clubAt } from "../clubAt.ts";
import { playerNear, playersAt } from "../playerNames.ts";
import type { NamedPlayer } from "../reading.ts";
import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import type { CalcFault } from "./fields.ts";

/** A club of the record, as people name it. */
export type ClubRef =
  | { readonly kind: "bag"; readonly player: NamedPlayer; readonly club: ClubName; readonly from: "gamer" | "backup" }
  | { readonly kind: "order"; readonly number: number };

export interface ClubRefHit {
  readonly ref: ClubRef | null;
  readonly fault: CalcFault | null;
  readonly next: number;
}

const MOST_CHOICES = 5;

/** Reads `oxtoby driver`, `oxtoby driver backup`, `order 57` at a word; null when no club of the record is named there. */
export function clubRefAt(source: CalcWords, at: number, players: readonly NamedPlayer[]): ClubRefHit | null {
  const [word, following] = [source.words[at]?.text ?? "", source.words[at + 1]?.text ?? ""];
  if (word === "order" && /^\d{1,9}$/.test(following)) return { ref: { kind: "order", number: Number(following) }, fault: null, next: at + 2 };
  const named = playersAt(source.words, at, players);
  if (named === null) return misspeltAt(source, at, players);
  const typed = typedBetween(source, at, named.next);
  const [player, ...others] = named.players;
  if (player === undefined) return null;
  if (others.length > 0) {
    const next = clubAt(source.words, named.next)?.next ?? named.next;
    return asked(typed, "player", named.players.map(({ name }) => name).slice(0, MOST_CHOICES), next);
  }
  return withClub(source, at, player, named.next);
}

function withClub(source: CalcWords, at: number, player: NamedPlayer, behindName: number): ClubRefHit {
  const said = (place: number): "gamer" | "backup" | null => {
    const text = goesOn(source, place) ? source.words[place]?.text : "";
    return text === "backup" || text === "gamer" ? text : null;
  };
  const before = said(behindName);
  const clubFrom = before === null ? behindName : behindName + 1;
  const hit = clubAt(source.words, clubFrom);
  const club = hit?.kind === "clubs" && hit.clubs.length === 1 ? hit.clubs[0] : undefined;
  if (hit === null || club === undefined) {
    const choices = hit?.kind === "which" ? hit.choices : hit?.kind === "unknown" ? hit.nearest : ["driver", "3w", "7i", "sw"];
    return asked(typedBetween(source, at, Math.max(hit?.next ?? clubFrom, clubFrom)), "club", choices, hit?.next ?? clubFrom);
  }
  const after = before === null ? said(hit.next) : null;
  return { ref: { kind: "bag", player, club, from: before ?? after ?? "gamer" }, fault: null, next: after === null ? hit.next : hit.next + 1 };
}

const asked = (word: string, name: string, words: readonly string[], next: number): ClubRefHit => ({
  ref: null,
  fault: { word, accepted: { kind: "words", name, words }, guess: null },
  next,
});

/** A misspelt player is guessed only before a club: a part of a club may have any name. */
function misspeltAt(source: CalcWords, at: number, players: readonly NamedPlayer[]): ClubRefHit | null {
  const hit = clubAt(source.words, at + 1);
  const near = hit === null ? null : playerNear(source.words[at]?.text ?? "", players);
  if (hit === null || near?.kind !== "one") return null;
  const word = typedBetween(source, at, at + 1);
  return {
    ref: null,
    fault: { word, accepted: { kind: "words", name: "player", words: [near.player.name] }, guess: near.player.name },
    next: hit.next,
  };
}
