import { clubAt } from "../clubAt.ts";
import { playerNear, playersAt } from "../playerNames.ts";
import type { NamedPlayer } from "../reading.ts";
import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import type { CalcFault } from "./fields.ts";

export type BagPart = "bag" | "woods" | "irons" | "wedges";

/** A player's bag of the record, or the clubs of a kind in it. */
export interface BagRef {
  readonly player: NamedPlayer;
  readonly part: BagPart;
  /** The part was written: `oxtoby irons`, not just `oxtoby`. */
  readonly said: boolean;
}

interface BagHit {
  readonly ref: BagRef | null;
  readonly fault: CalcFault | null;
  readonly next: number;
}

const parts: Readonly<Record<string, BagPart>> = { bag: "bag", set: "bag", clubs: "bag", woods: "woods", irons: "irons", wedges: "wedges" };
const MOST_CHOICES = 5;
/** A misspelt player is guessed in so short a text only: in a longer one the word may be anything. */
const MOST_WORDS = 2;

/** Reads `oxtoby`, `oxtoby bag`, `oxtoby irons` at a word; null when nobody is named there. */
export function bagRefAt(source: CalcWords, at: number, players: readonly NamedPlayer[]): BagHit | null {
  const named = playersAt(source.words, at, players);
  if (named === null) return misspeltAt(source, at, players);
  const [player, ...others] = named.players;
  if (player === undefined) return null;
  const word = source.words[named.next]?.text ?? "";
  const part = goesOn(source, named.next) && Object.hasOwn(parts, word) ? (parts[word] ?? null) : null;
  const next = part === null ? named.next : named.next + 1;
  if (others.length === 0) return { ref: { player, part: part ?? "bag", said: part !== null }, fault: null, next };
  const words = named.players.map(({ name }) => name).slice(0, MOST_CHOICES);
  return { ref: null, fault: { word: typedBetween(source, at, named.next), accepted: { kind: "words", name: "player", words }, guess: null }, next };
}

function misspeltAt(source: CalcWords, at: number, players: readonly NamedPlayer[]): BagHit | null {
  const typed = source.words[at]?.text ?? "";
  if (source.words.length > at + MOST_WORDS || clubAt(source.words, at) !== null) return null;
  const near = playerNear(typed, players);
  if (near.kind !== "one") return null;
  const { name } = near.player;
  const fault: CalcFault = { word: typedBetween(source, at, at + 1), accepted: { kind: "words", name: "player", words: [name] }, guess: name };
  return { ref: null, fault, next: source.words.length };
}
