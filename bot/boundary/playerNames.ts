import { editDistance, forgivenSlips } from "./editDistance.ts";
import type { NamedPlayer } from "./reading.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

/** Who may be meant by a name as typed. */
export type PlayerMatch =
  | { readonly kind: "one"; readonly player: NamedPlayer; readonly misspelt: boolean }
  | { readonly kind: "several"; readonly players: readonly NamedPlayer[] }
  | { readonly kind: "none"; readonly nearest: readonly NamedPlayer[] };

const LONGEST_NAME_WORDS = 4;
const MOST_CHOICES = 5;
const NEAREST_SLIPS = 3;
const SHORTEST_BEGINNING = 3;
const known = new WeakMap<readonly NamedPlayer[], ReadonlyMap<string, readonly NamedPlayer[]>>();

/** A name without marks inside, so that `o'brien` and `obrien` are one. */
const plain = (folded: string): string => folded.replace(/['\-.]/g, "");
const keyOf = (words: readonly string[]): string => words.map(plain).join(" ");

function keysOf(player: NamedPlayer): readonly string[] {
  const words = wordsOf(player.name).words.map((word) => word.text);
  const [first, last] = [words[0], words.at(-1)];
  if (first === undefined || last === undefined) return [];
  const parts = wordsOf(player.name.replace(/-/g, " ")).words.map((word) => word.text);
  const names = [parts, parts.slice(1), parts.slice(-1), words, words.slice(1), [first], [last], [first.slice(0, 1), last], [last, first]];
  const aliases = player.aliases.map((alias) => wordsOf(alias).words.map((word) => word.text));
  return [...new Set([...names, ...aliases].filter((name) => name.length > 0).map(keyOf))];
}

function indexOf(players: readonly NamedPlayer[]): ReadonlyMap<string, readonly NamedPlayer[]> {
  const before = known.get(players);
  if (before !== undefined) return before;
  const index = new Map<string, NamedPlayer[]>();
  for (const player of players) {
    for (const key of keysOf(player)) {
      const named = index.get(key);
      if (named === undefined) index.set(key, [player]);
      else named.push(player);
    }
  }
  known.set(players, index);
  return index;
}

/** The players a name at a word says exactly: full, last, first or alias; a possessive `'s` or `s` is dropped. */
export function playersAt(
  words: readonly Word[],
  at: number,
  players: readonly NamedPlayer[],
): { readonly players: readonly NamedPlayer[]; readonly next: number } | null {
  const index = indexOf(players);
  const name: string[] = [];
  let found: { readonly players: readonly NamedPlayer[]; readonly next: number } | null = null;
  for (let width = 1; width <= LONGEST_NAME_WORDS; width += 1) {
    const word = words[at + width - 1];
    if (word === undefined || (width > 1 && word.gap !== "space" && word.gap !== "tight" && !isInitial(words[at]))) break;
    name.push(plain(word.text));
    const key = name.join(" ");
    const hit = index.get(key) ?? (key.endsWith("s") ? index.get(key.slice(0, -1)) : undefined);
    if (hit !== undefined) found = { players: hit, next: at + width };
  }
  return found;
}

const isInitial = (word: Word | undefined): boolean => word !== undefined && word.text.length === 1;

/** Who a misspelt word may mean: one when clearly nearest, several when not, else the nearest few. */
export function playerNear(word: string, players: readonly NamedPlayer[], steps?: { count: number }): PlayerMatch {
  const typed = plain(word);
  const forms = typed.endsWith("s") ? [typed, typed.slice(0, -1)] : [typed];
  const best = new Map<NamedPlayer, number>();
  for (const [key, named] of indexOf(players)) {
    if (key.length < 4) continue;
    if (steps !== undefined) steps.count += 1;
    const distances = forms.map((form) => editDistance(form, key, NEAREST_SLIPS)).filter((distance) => distance !== null);
    if (distances.length === 0) continue;
    for (const player of named) best.set(player, Math.min(best.get(player) ?? NEAREST_SLIPS, ...distances));
  }
  const ranked = [...best].sort((one, other) => one[1] - other[1]);
  const limit = forgivenSlips(typed.length);
  const within = ranked.filter(([, distance]) => distance <= limit);
  const [first, second] = within;
  if (first !== undefined && (second === undefined || second[1] > first[1])) return { kind: "one", player: first[0], misspelt: true };
  if (within.length > 1) return { kind: "several", players: within.slice(0, MOST_CHOICES).map(([player]) => player) };
  return { kind: "none", nearest: ranked.slice(0, 3).map(([player]) => player) };
}

/** The player whose name begins with the letters typed, when only one does. */
export function playerBeginning(word: string, players: readonly NamedPlayer[]): NamedPlayer | null {
  const typed = plain(word);
  if (typed.length < SHORTEST_BEGINNING) return null;
  const begun = new Set<NamedPlayer>();
  for (const [key, named] of indexOf(players)) if (key.startsWith(typed)) for (const player of named) begun.add(player);
  const [only] = begun;
  return begun.size === 1 && only !== undefined ? only : null;
}

/** Who a whole text names, for commands and forms. */
export function matchPlayer(text: string, players: readonly NamedPlayer[]): PlayerMatch {
  const { words } = wordsOf(text.slice(0, 100));
  const joined = words.map((word) => word.text).join(" ");
  const hit = playersAt(words, 0, players);
  if (hit !== null && hit.next === words.length) {
    const [only] = hit.players;
    return hit.players.length === 1 && only !== undefined
      ? { kind: "one", player: only, misspelt: false }
      : { kind: "several", players: hit.players };
  }
  return playerNear(joined, players);
}
