import { ask, asOptions, follows, lean, type Notepad, placeOf, wishAmount, wishStamp, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { nearestParts } from "./partAt.ts";
import { recordPartAt } from "./recordPartAt.ts";
import { noteComma } from "./takeAmount.ts";
import { finishPart, namesOf, type PartKey, takePart } from "./takePart.ts";
import { isClauseWord } from "./vocabulary.ts";

const skipped = new Set(["is", "to", "the", "a", "with", "in", "as", "his", "her", "of"]);

const partWords = new Map<string, PartKey>([
  ["head", "headModel"],
  ["hd", "headModel"],
  ["shaft", "shaft"],
  ["shft", "shaft"],
  ["grip", "grip"],
  ["grp", "grip"],
  ["grind", "grind"],
]);
const keptWords = new Set(["same", "stays", "gamer"]);

/** `shaft …`, `grip …`, `head …`, `grind …`. */
export function readNamedPart(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word === "stamped") return readStamped(pad, at);
  const key = partWords.get(word);
  if (key === undefined) return at;
  let start = at + 1;
  while (start < at + 3 && (skipped.has(wordAt(pad, start)) || wordAt(pad, start) === word)) start += 1;
  if (keptWords.has(wordAt(pad, start))) {
    lean(pad, at, start + 1);
    return start + 1;
  }
  if (key === "headModel") {
    const numbered = readHeadNumber(pad, at, start);
    if (numbered !== at) return numbered;
  }
  if (key === "shaft" && /^(up|down)$/.test(wordAt(pad, start))) return at;
  const hit = recordPartAt(pad.words, start, namesOf(pad, key), { ...pad.context, byNumbers: key === "shaft", mends: true });
  if (hit === null) return unknownPart(pad, key, at, start);
  return finishPart(pad, key, takePart(pad, key, start, hit));
}

function readStamped(pad: Notepad, at: number): number {
  const hit = numberAt(pad.words, at + 1);
  if (hit === null) {
    ask(pad, "value-unreadable", placeOf(pad, at, at + 1), "stamped 9");
    return at + 1;
  }
  noteComma(pad, at + 1, hit.next);
  wishStamp(pad, hit.value, at + 1, hit.next);
  return hit.next;
}

/** `head 9` is a stamp, `head 198g` a mass. */
function readHeadNumber(pad: Notepad, at: number, start: number): number {
  const hit = numberAt(pad.words, start);
  if (hit === null) return at;
  noteComma(pad, start, hit.next);
  if (hit.unit === "g" || hit.value >= 100) {
    const amount = hit.signed ? ({ kind: "by", value: hit.value } as const) : ({ kind: "exactly", value: hit.value } as const);
    wishAmount(pad, "headMassG", start, { amount, perUnit: 1, numberFrom: start, numberEnd: hit.numberEnd, next: hit.next });
  } else wishStamp(pad, hit.value, start, hit.next);
  return hit.next;
}

function unknownPart(pad: Notepad, key: PartKey, at: number, start: number): number {
  let next = start;
  while (
    next < start + 4 &&
    (next === start || follows(pad, next)) &&
    pad.words[next] !== undefined &&
    !isClauseWord(wordAt(pad, next)) &&
    wordAt(pad, next) !== "go"
  )
    next += 1;
  const nearest = nearestParts(wordAt(pad, start), namesOf(pad, key));
  const from = next === start ? at : start;
  ask(pad, "unknown-part", placeOf(pad, from, Math.max(next, from + 1)), nearest.join(", "), asOptions(nearest));
  return Math.max(next, at + 1);
}
