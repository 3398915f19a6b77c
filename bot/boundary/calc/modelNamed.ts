import { nearestParts, partAt } from "../partAt.ts";
import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import type { CalcFault } from "./fields.ts";
import { reworded } from "./reworded.ts";

export interface NamedModel {
  /** Null when none is named, or it is not clear which. */
  readonly name: string | null;
  readonly fault: CalcFault | null;
  /** The text without the name. */
  readonly rest: string;
}

/** Words behind the kind of a part that begin no name. */
const noNames = new Set(["on", "off", "at", "is", "of"]);

/** Finds a model of the record by its name in a text, with or without its kind before it: `shaft dunlin 60 x`, `dunlin 60x`. */
export function modelNamed(text: string, kind: string, names: readonly string[]): NamedModel {
  const found: { name: string | null; fault: CalcFault | null }[] = [];
  const rest = reworded(text, (source, at) => {
    if (found.length > 0) return null;
    const isKind = source.words[at]?.text === kind && goesOn(source, at + 1);
    const from = isKind ? at + 1 : at;
    const hit = partAt(source.words, from, names, { byNumbers: kind === "shaft", mends: isKind });
    if (hit === null) return isKind ? unknownAt(source, from) : null;
    const typed = typedBetween(source, from, hit.next);
    const [name = null, ...others] = hit.models;
    const isClear = others.length === 0 && !hit.misspelt;
    const fault: CalcFault = { word: typed, accepted: { kind: "words", name: kind, words: hit.models }, guess: others.length === 0 ? name : null };
    found.push(isClear ? { name, fault: null } : { name: null, fault });
    return { words: ", ", next: hit.next };
  });
  const [first] = found;
  return { name: first?.name ?? null, fault: first?.fault ?? null, rest };

  function unknownAt(source: CalcWords, at: number) {
    const typed = source.words[at]?.text ?? "";
    if (!/^\p{L}/u.test(typed) || noNames.has(typed) || names.length === 0) return null;
    const end = endOfClause(source, at);
    const fault: CalcFault = {
      word: typedBetween(source, at, end),
      accepted: { kind: "words", name: kind, words: nearestParts(typed, names) },
      guess: null,
    };
    found.push({ name: null, fault });
    return { words: ", ", next: end };
  }
}

function endOfClause(source: CalcWords, at: number): number {
  let end = at + 1;
  while (end < source.words.length && goesOn(source, end)) end += 1;
  return end;
}
