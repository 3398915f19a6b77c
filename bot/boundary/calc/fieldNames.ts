import { editDistance, forgivenSlips } from "../editDistance.ts";
import { type CalcWords, goesOn } from "./calcWords.ts";
import type { Fields } from "./fields.ts";

/** The names of a view's fields in every spelling, looked up word by word. */
export interface FieldNames {
  readonly bySpelling: ReadonlyMap<string, string>;
  /** How many words the longest has. */
  readonly longest: number;
}

export function fieldNames(fields: Fields): FieldNames {
  const spellings = Object.entries(fields).flatMap(([name, { also = [] }]) => [name, ...also].map((spelling) => [spelling, name] as const));
  return { bySpelling: new Map(spellings), longest: Math.max(1, ...spellings.map(([spelling]) => spelling.split(" ").length)) };
}

/** The field named at a word, in its longest spelling, and the word behind it. */
export function nameAt(source: CalcWords, at: number, names: FieldNames): { readonly name: string; readonly next: number } | null {
  let found: { readonly name: string; readonly next: number } | null = null;
  let spelling = "";
  for (let width = 1; width <= names.longest; width += 1) {
    const word = source.words[at + width - 1];
    if (word === undefined || (width > 1 && !goesOn(source, at + width - 1))) break;
    spelling = width === 1 ? word.text : `${spelling} ${word.text}`;
    const name = names.bySpelling.get(spelling);
    if (name !== undefined) found = { name, next: at + width };
  }
  return found;
}

/** The known word that a misspelt one clearly means, or null. */
export function nearestWord(typed: string, known: Iterable<string>): string | null {
  const limit = forgivenSlips(typed.length);
  const near = [...known].flatMap((word) => {
    const distance = limit === 0 ? null : editDistance(typed, word, limit);
    return distance === null ? [] : [{ word, distance }];
  });
  return near.sort((one, other) => one.distance - other.distance)[0]?.word ?? null;
}
