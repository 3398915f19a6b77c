import { follows, type Notepad, wordAt } from "./notepad.ts";
import { partAt } from "./partAt.ts";
import { recordPartAt } from "./recordPartAt.ts";
import { finishPart, namesOf, type PartKey, takePart } from "./takePart.ts";
import { isClauseWord } from "./vocabulary.ts";

/** A part's name standing alone: `dunlin 60 x`, `60x`, `gorse std round`, `cairn 9`. */
export function readBarePart(pad: Notepad, at: number): number {
  const grind = readBareGrind(pad, at);
  if (grind > at) return grind;
  const keys: readonly PartKey[] = ["headModel", "shaft", "grip"];
  for (const mends of [false, true]) {
    const word = wordAt(pad, at);
    if (mends && (word.length < 5 || !/^[a-z]+$/.test(word) || isClauseWord(word) || pad.nearLooks <= 0)) return at;
    for (const key of keys) {
      if (mends && !startsLikeBrand(word, namesOf(pad, key))) continue;
      if (mends) pad.nearLooks -= 1;
      const hit = recordPartAt(pad.words, at, namesOf(pad, key), { ...pad.context, byNumbers: key === "shaft", mends });
      if (hit === null || (mends && !hit.misspelt && hit.next === at + 1)) continue;
      const next = takePart(pad, key, at, hit);
      return finishPart(pad, key, next);
    }
  }
  return at;
}

/** `full grind`; alone only where sole work is the job, or in a name of two words. */
function readBareGrind(pad: Notepad, at: number): number {
  const hit = partAt(pad.words, at, pad.context.grinds, { byNumbers: false, mends: false });
  if (hit === null || hit.models.length !== 1) return at;
  const named = /^(grind|sole)$/.test(wordAt(pad, hit.next)) && follows(pad, hit.next);
  const isClear = named || pad.kind === "grind" || hit.next > at + 1 || wordAt(pad, at).includes("-");
  if (!isClear) return at;
  takePart(pad, "grind", at, hit);
  return named ? hit.next + 1 : hit.next;
}

const startsLikeBrand = (word: string, names: readonly string[]): boolean => names.some((name) => name.toLowerCase().startsWith(word.slice(0, 2)));
