import { foldText } from "../foldText.ts";
import { nearestParts, partAt } from "../partAt.ts";
import { type Word, wordsOf } from "../wordsOf.ts";
import { type CountedKind, countedKinds, type KnownHeadModel, type KnownPart, type StockKnown, shownName } from "./stockKnown.ts";

interface Model {
  readonly name: string;
  readonly code: string | null;
}

/** Models to look up by name or code word. */
export interface Named<M extends Model> {
  readonly names: readonly string[];
  readonly byName: ReadonlyMap<string, readonly M[]>;
  /** What may be offered: code words in place of unreleased names. */
  readonly offered: readonly string[];
  readonly words: ReadonlySet<string>;
}

/** All names of the record, made ready once a reading. */
export interface Lexicon {
  readonly known: StockKnown;
  readonly parts: Named<KnownPart>;
  readonly ofKind: Readonly<Record<CountedKind, Named<KnownPart>>>;
  readonly heads: Named<KnownHeadModel>;
}

/** Which model a name means. `next` is the word behind it. */
export type NameHit<M> =
  | { readonly kind: "one"; readonly model: M; readonly next: number; readonly guesses?: undefined }
  | { readonly kind: "several"; readonly guesses: readonly string[]; readonly next: number }
  | { readonly kind: "none"; readonly guesses: readonly string[] };

function named<M extends Model>(models: readonly M[]): Named<M> {
  const spellings = models.flatMap((model) =>
    [model.name, ...(model.code === null ? [] : [model.code])].map((name) => [foldText(name), model] as const),
  );
  const byName = new Map<string, M[]>();
  for (const [name, model] of spellings) byName.set(name, [...(byName.get(name) ?? []), model]);
  const names = [...byName.keys()];
  return { names, byName, offered: models.map(shownName), words: new Set(names.flatMap((name) => name.split(/[\s-]+/))) };
}

export function lexiconOf(known: StockKnown): Lexicon {
  const ofKind = (kind: CountedKind) => [kind, named(known.parts.filter((part) => part.kind === kind))] as const;
  return {
    known,
    parts: named(known.parts),
    ofKind: Object.fromEntries(countedKinds.map(ofKind)) as unknown as Lexicon["ofKind"],
    heads: named(known.headModels),
  };
}

/** `screws` is `screw`, where a name has the one and none the other. */
export function singular<M extends Model>(words: readonly Word[], { words: known }: Named<M>): readonly Word[] {
  return words.map((word) => {
    const one = word.text.replace(/s$/, "");
    return one !== word.text && !known.has(word.text) && known.has(one) ? { ...word, text: one } : word;
  });
}

/** Reads the model named at a word. A misspelt or shortened name is never taken for granted: it is offered. */
export function modelAt<M extends Model>(words: readonly Word[], at: number, { names, byName, offered }: Named<M>): NameHit<M> {
  const hit = partAt(words, at, names, { byNumbers: false, mends: true });
  if (hit === null) return { kind: "none", guesses: nearestParts(words[at]?.text ?? "", offered) };
  const models = [...new Set(hit.models.flatMap((name) => byName.get(name) ?? []))];
  const [only] = models;
  return only !== undefined && models.length === 1 && !hit.misspelt
    ? { kind: "one", model: only, next: hit.next }
    : { kind: "several", guesses: models.map(shownName), next: hit.next };
}

/** Reads a name that must be the whole of a text. */
export function modelOf<M extends Model>(text: string, models: Named<M>): NameHit<M> {
  const exact = models.byName.get(foldText(text).trim()) ?? [];
  const words = singular(wordsOf(text).words, models);
  const [only] = exact;
  if (only !== undefined && exact.length === 1) return { kind: "one", model: only, next: words.length };
  const hit = modelAt(words, 0, models);
  return hit.kind === "one" && hit.next < words.length ? { kind: "none", guesses: [shownName(hit.model)] } : hit;
}

/** What would be accepted in place of a name that is none, or not clear: a choice, the one that was meant, the nearest. */
export function modelWanted(
  { kind, guesses }: Exclude<NameHit<unknown>, { kind: "one" }>,
  wanted: string,
): { readonly accepted: string; readonly guess: string | null } {
  const [only = null, other] = guesses;
  if (kind === "none")
    return { accepted: guesses.length === 0 ? `${wanted}: there is none` : `${wanted}, the nearest ${guesses.join(", ")}`, guess: null };
  return other === undefined ? { accepted: wanted, guess: only } : { accepted: `one of ${guesses.join(", ")}`, guess: null };
}
