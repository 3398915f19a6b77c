import { editDistance, forgivenSlips } from "./editDistance.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

/** Which models of the record a name at a word may mean. */
export interface PartHit {
  /** One when it is clear; the nearest few when not. */
  readonly models: readonly string[];
  readonly next: number;
  readonly misspelt: boolean;
}

const MOST_CHOICES = 5;
const SHORTEST_BEGINNING = 3;
const sameWords: Readonly<Record<string, string>> = {
  std: "standard",
  stnd: "standard",
  stand: "standard",
  rnd: "round",
  stiff: "s",
  regular: "r",
  reg: "r",
  xstiff: "x",
  relief: "relieved",
};

/** `60x` is two words, `heel-relieved` too; flexes and sizes in one spelling. */
function partWords(text: string): readonly string[] {
  const parts = text.match(/\d+(?:\.\d+)?|[^\d\s-]+/g) ?? [];
  return parts.map((part) => (Object.hasOwn(sameWords, part) ? (sameWords[part] ?? part) : part));
}

interface Model {
  readonly name: string;
  readonly words: readonly string[];
}
interface Models {
  readonly all: readonly Model[];
  readonly whole: readonly Remaining[];
  readonly brands: ReadonlySet<string | undefined>;
  readonly words: ReadonlySet<string>;
}
const known = new WeakMap<readonly string[], Models>();

function modelsOf(names: readonly string[]): Models {
  const before = known.get(names);
  if (before !== undefined) return before;
  const all = names.map((name) => ({ name, words: wordsOf(name).words.flatMap((word) => partWords(word.text)) }));
  const whole = all.map((model) => ({ model, left: model.words }));
  const models = { all, whole, brands: new Set(all.map((model) => model.words[0])), words: new Set(all.flatMap((model) => model.words)) };
  known.set(names, models);
  return models;
}

interface Wishes {
  /** A weight with a flex may begin the name: `60x`. */
  readonly byNumbers: boolean;
  readonly mends: boolean;
}

interface Remaining {
  readonly model: Model;
  readonly left: readonly string[];
}

function without(remaining: readonly Remaining[], word: string): readonly Remaining[] {
  return remaining.flatMap(({ model, left }) => {
    const at = left.indexOf(word);
    return at < 0 ? [] : [{ model, left: [...left.slice(0, at), ...left.slice(at + 1)] }];
  });
}

/** The one word of the models a misspelt or shortened word is clearly nearest to. */
function nearWord(typed: string, remaining: readonly Remaining[]): { readonly word: string; readonly misspelt: boolean } | null {
  const candidates = [...new Set(remaining.flatMap(({ left }) => left))].filter((word) => /^\D{4,}$/.test(word));
  const begun = candidates.filter((word) => typed.length >= SHORTEST_BEGINNING && word.startsWith(typed));
  if (begun.length === 1 && begun[0] !== undefined) return { word: begun[0], misspelt: false };
  const scored = candidates
    .map((word) => ({ word, distance: editDistance(typed, word, forgivenSlips(typed.length)) }))
    .filter((scored) => scored.distance !== null)
    .sort((one, other) => (one.distance ?? 0) - (other.distance ?? 0));
  const [first, second] = scored;
  if (first === undefined || (second !== undefined && second.distance === first.distance)) return null;
  return { word: first.word, misspelt: true };
}

function take(
  remaining: readonly Remaining[],
  text: string,
  mends: boolean,
): { readonly remaining: readonly Remaining[]; readonly misspelt: boolean } | null {
  const exact = partWords(text).reduce(without, remaining);
  if (exact.length > 0) return { remaining: exact, misspelt: false };
  const close = mends && /^\p{L}+$/u.test(text) ? nearWord(text, remaining) : null;
  return close === null ? null : { remaining: without(remaining, close.word), misspelt: close.misspelt };
}

/** Where a name may begin: with a model's own word, or (for shafts) with its weight and flex, as in `60x`. */
function beginnings(models: Models, text: string, wishes: Wishes): readonly Remaining[] {
  if (!wishes.mends && !partWords(text).every((word) => models.words.has(word))) return [];
  if (/^\d/.test(text)) return wishes.byNumbers && /^\d{2,3}[a-z]{1,2}$/.test(text) ? models.whole : [];
  return models.whole;
}

/**
 * Reads a part's name that begins at a word, as many words as still fit some model. `mends` allows a misspelt or
 * shortened word; without it only words of the record count.
 */
export function partAt(words: readonly Word[], at: number, names: readonly string[], wishes: Wishes): PartHit | null {
  const models = modelsOf(names);
  const first = words[at];
  if (first === undefined) return null;
  const start = take(beginnings(models, first.text, wishes), first.text, wishes.mends);
  if (start === null) return null;
  const isBrand = partWords(first.text).some((word) => models.brands.has(word)) || start.misspelt || /^\d/.test(first.text) || wishes.mends;
  if (!isBrand) return null;
  let { remaining, misspelt } = start;
  let next = at + 1;
  let taken = partWords(first.text).length;
  for (let word = words[next]; word !== undefined && (word.gap === "space" || word.gap === "tight"); word = words[next]) {
    const more = take(remaining, word.text, true);
    if (more === null) break;
    remaining = more.remaining;
    misspelt ||= more.misspelt;
    taken += partWords(word.text).length;
    next += 1;
  }
  return { models: resolved(remaining, taken), next, misspelt };
}

function resolved(remaining: readonly Remaining[], taken: number): readonly string[] {
  const whole = remaining.filter(({ model }) => model.words.length === taken);
  return (whole.length === 1 ? whole : remaining).slice(0, MOST_CHOICES).map(({ model }) => model.name);
}

/** The models nearest to a word that names none: those of a like beginning first. */
export function nearestParts(word: string, names: readonly string[]): readonly string[] {
  const scored = modelsOf(names)
    .all.map(({ name, words }) => ({ name, distance: editDistance(word, words[0] ?? "", 4) ?? 9 }))
    .sort((one, other) => one.distance - other.distance);
  return scored.slice(0, 3).map(({ name }) => name);
}
