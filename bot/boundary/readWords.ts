import { editDistance, forgivenSlips } from "./editDistance.ts";
import { fillSets } from "./fillSets.ts";
import { mend, type Notepad, type Reader, wordAt } from "./notepad.ts";
import { readBareNumber } from "./readBareNumber.ts";
import { readBarePart } from "./readBarePart.ts";
import { readBroughtBy } from "./readBroughtBy.ts";
import { readPurpose, readTo } from "./readErrand.ts";
import { readExcept } from "./readExcept.ts";
import { readFlex } from "./readFlex.ts";
import { readFromTo } from "./readFromTo.ts";
import { readGauged } from "./readGauged.ts";
import { readKept } from "./readKept.ts";
import { readLeaningAmount } from "./readLeaningAmount.ts";
import { readLike } from "./readLike.ts";
import { readNamedAmount } from "./readNamedAmount.ts";
import { readNamedPart } from "./readNamedPart.ts";
import { readNumberThenName } from "./readNumberThenName.ts";
import { readOneEach } from "./readOneEach.ts";
import { readRestOfLine } from "./readRestOfLine.ts";
import { readSetChange } from "./readSetChange.ts";
import { readFiller, readNegation, readSameAlone } from "./readSkipped.ts";
import { readSleeve } from "./readSleeve.ts";
import { readSmallClause } from "./readSmallClause.ts";
import { readSwing } from "./readSwing.ts";
import { readToRecord } from "./readToRecord.ts";
import { readUpDown } from "./readUpDown.ts";
import { readWhen } from "./readWhen.ts";
import { readWholeBag } from "./readWholeBag.ts";
import { isClauseWord, mendableWords, startsRemark } from "./vocabulary.ts";
import { isHeadPlace, readClub, readPlayer, readPlayerNear } from "./whoAndWhat.ts";

/** A hand is the player's and on record; written all the same, it is kept as a remark for the card to show. */
const handWords = new Set(["left", "right", "lefty", "righty", "lh", "rh"]);

/** Tried in this order at each word; the first that reads on wins. */
const readers: readonly { readonly read: Reader; readonly isClause: boolean }[] = [
  ...[readExcept, readNegation, readSetChange].map((read) => ({ read, isClause: false })),
  ...[readGauged, readRestOfLine, readLike, readToRecord, readWhen, readOneEach, readFromTo].map((read) => ({ read, isClause: true })),
  ...[readTo, readPurpose, readBroughtBy].map((read) => ({ read, isClause: false })),
  ...[readKept, readNumberThenName].map((read) => ({ read, isClause: true })),
  ...[readNamedAmount, readNamedPart, readFlex].map((read) => ({ read, isClause: true })),
  ...[readClub, readWholeBag].map((read) => ({ read, isClause: false })),
  ...[readUpDown, readSleeve, readLeaningAmount, readSmallClause, readSwing, readBarePart].map((read) => ({ read, isClause: true })),
  ...[readPlayer].map((read) => ({ read, isClause: false })),
  ...[readBareNumber].map((read) => ({ read, isClause: true })),
  ...[readFiller, readSameAlone].map((read) => ({ read, isClause: false })),
];
const ownEnds: ReadonlySet<Reader> = new Set([readClub, readPlayer]);

/** Reads every word of a message once from `start`, leaving what was read, asked and not read on the pad. */
export function readWords(pad: Notepad, start: number): void {
  let at = start;
  while (at < pad.end) {
    const gap = pad.words[at]?.gap;
    if (gap !== "space" && gap !== "tight") pad.inRemark = false;
    at = Math.max(readAt(pad, at), at + 1);
  }
  settleWords(pad);
}

/** Once all words are read: sets are filled, and what needed the club is judged. */
export function settleWords(pad: Notepad): void {
  fillSets(pad);
  for (let next = 0; next < pad.later.length; next += 1) pad.later[next]?.();
}

function readAt(pad: Notepad, at: number): number {
  if (isHeadPlace(pad)) {
    const player = readPlayer(pad, at);
    if (player > at) return player;
  }
  const next = firstReading(pad, at);
  if (next > at) return next;
  if (startsRemark(wordAt(pad, at))) pad.inRemark = true;
  if (pad.inRemark) {
    pad.remarks.push(at);
    return at + 1;
  }
  if (handWords.has(wordAt(pad, at))) {
    const next = /^hand(ed)?$/.test(wordAt(pad, at + 1)) ? at + 2 : at + 1;
    for (let word = at; word < next; word += 1) pad.remarks.push(word);
    return next;
  }
  if (pad.nearLooks <= 0) {
    pad.unread.push({ at, guess: null });
    return at + 1;
  }
  pad.nearLooks -= 1;
  if (isHeadPlace(pad) || pad.kind === null) {
    const near = readPlayerNear(pad, at);
    if (near > at) return near;
  }
  return readMisspelt(pad, at);
}

function firstReading(pad: Notepad, at: number): number {
  for (const { read, isClause } of readers) {
    if (pad.context.steps !== undefined) pad.context.steps.count += 1;
    const grip = pad.last === "grip" && pad.lastEnd === at;
    const next = read(pad, at);
    if (next <= at) continue;
    const setsOwnEnd = ownEnds.has(read) || (pad.last === "grip" && !grip && pad.lastEnd === next);
    if (isClause && !setsOwnEnd) {
      pad.last = "clause";
      pad.lastEnd = next;
    }
    if (isClause) pad.inRemark = false;
    return next;
  }
  return at;
}

/** A trade word misspelt: mended when it is clear and what follows reads; else left unread with the guess. */
function readMisspelt(pad: Notepad, at: number): number {
  const word = pad.words[at];
  if (word === undefined) return at + 1;
  const guess = nearTradeWord(word.text);
  if (guess !== null) {
    const asked = pad.problems.length;
    pad.words[at] = { ...word, text: guess };
    const next = firstReading(pad, at);
    if (next > at && pad.problems.length === asked) {
      mend(pad, at, at + 1, guess, "misspelt");
      return next;
    }
    pad.problems.length = asked;
    pad.words[at] = word;
  }
  const near = readPlayerNear(pad, at);
  if (near > at) return near;
  pad.unread.push({ at, guess });
  return at + 1;
}

function nearTradeWord(word: string): string | null {
  if (!/^[a-z]{4,14}$/.test(word) || isClauseWord(word) || mendableWords.includes(word)) return null;
  const limit = Math.min(forgivenSlips(word.length), 1) + (word.length >= 7 ? 1 : 0);
  const scored = mendableWords
    .map((known) => ({ known, distance: editDistance(word, known, limit) }))
    .filter(({ distance }) => distance !== null)
    .sort((one, other) => (one.distance ?? 0) - (other.distance ?? 0));
  const [first, second] = scored;
  if (first === undefined || (second !== undefined && second.distance === first.distance)) return null;
  return first.known;
}
