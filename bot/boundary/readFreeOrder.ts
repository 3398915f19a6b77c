import { amountAt } from "./amountAt.ts";
import { namedQuantity, valueStart } from "./namedQuantity.ts";
import { follows, type Notepad, type Reader, typed, wordAt } from "./notepad.ts";
import { readBarePart } from "./readBarePart.ts";
import { readBroughtBy } from "./readBroughtBy.ts";
import { readTo } from "./readErrand.ts";
import { readExcept } from "./readExcept.ts";
import { readFromTo } from "./readFromTo.ts";
import { readLeaningAmount } from "./readLeaningAmount.ts";
import { readNamedAmount } from "./readNamedAmount.ts";
import { readNamedPart } from "./readNamedPart.ts";
import { readNumberThenName } from "./readNumberThenName.ts";
import { readRestOfLine } from "./readRestOfLine.ts";
import { readSetChange } from "./readSetChange.ts";
import { readWhen } from "./readWhen.ts";
import { readWholeBag } from "./readWholeBag.ts";
import { settleWords } from "./readWords.ts";
import { isFiller } from "./vocabulary.ts";
import { isHeadPlace, readClub, readPlayer, readPlayerNear } from "./whoAndWhat.ts";

/** Words that say nothing at the ends of a complaint; `on 12` keeps its first. */
const dropped = new Set(
  "just a an the his her its it's it is was be been has have had with and n but because cos bc so for of please pls plz thx thanks ta mate guys".split(
    " ",
  ),
);
/** `lose 2 bounce` asks for less, where `2 bounce` would be the bounce itself. */
const takesAway = new Set(["lose", "take", "drop", "remove", "shave", "cut"]);

const whenAndWho: readonly Reader[] = [readWhen, readTo, readBroughtBy];
const soleAmounts: readonly Reader[] = [readFromTo, readNumberThenName, readLeaningAmount];
const grinds: readonly Reader[] = [readNamedPart, readBarePart];

/**
 * Reads repairs, breakages and sole work, which people describe in their own words: after player and club all that is no
 * time, place or bringer is kept as the note. Of sole work, bounce and the name of a grind are clauses.
 */
export function readFreeOrder(pad: Notepad, start: number): void {
  const said: number[] = [];
  let at = start;
  while (at < pad.end) {
    const next = nextAfter(pad, at, said.at(-1) === at - 1 && follows(pad, at));
    if (next > at) at = next;
    else {
      said.push(at);
      at += 1;
    }
  }
  settleWords(pad);
  if (pad.player === null) pad.unread.push(...strangers(pad, said));
  const words = complaintOf(pad, said);
  if (words !== "") pad.note = pad.note === null ? words : `${words}; ${pad.note}`;
}

/** Where no player was found, the first words nobody read may be a name. */
function strangers(pad: Notepad, said: readonly number[]): Notepad["unread"] {
  const words = said.filter((at) => !isFiller(wordAt(pad, at)));
  return words.filter((at, index) => at === (words[0] ?? at) + index).map((at) => ({ at, guess: null }));
}

function nextAfter(pad: Notepad, at: number, inComplaint: boolean): number {
  if (pad.context.steps !== undefined) pad.context.steps.count += 1;
  const readers: readonly Reader[] = [
    ...(wordAt(pad, at) === "stamp" ? [] : [readRestOfLine]),
    ...(pad.player === null ? [readPlayer] : []),
    ...(pad.clubs.length === 0 || pad.last === "club" ? [readExcept, readSetChange, readClub, readWholeBag] : []),
    ...whenAndWho,
    ...(pad.kind === "grind" ? soleReaders(pad, at, inComplaint) : []),
    ...(isHeadPlace(pad) && !isFiller(wordAt(pad, at)) ? [readNear] : []),
  ];
  for (const read of readers) {
    const next = read(pad, at);
    if (next > at) return next;
  }
  return at;
}

function readNear(pad: Notepad, at: number): number {
  pad.nearLooks -= 1;
  return pad.nearLooks < 0 ? at : readPlayerNear(pad, at);
}

function soleReaders(pad: Notepad, at: number, inComplaint: boolean): readonly Reader[] {
  if (takesAway.has(wordAt(pad, at - 1))) return [];
  const named = namedQuantity(pad, at);
  const hasValue = named !== null && amountAt(pad, named.quantity, valueStart(pad, named.next, wordAt(pad, at))) !== null;
  return [...soleAmounts, ...(hasValue ? [readNamedAmount] : []), ...(inComplaint ? [] : grinds)];
}

/** What was said, a run of neighbours after another, without the words that say nothing at either end. */
function complaintOf(pad: Notepad, said: readonly number[]): string {
  const runs: { readonly from: number; readonly next: number }[] = [];
  for (const at of said) {
    const last = runs.at(-1);
    if (last !== undefined && last.next === at && pad.words[at]?.gap !== "line") runs[runs.length - 1] = { from: last.from, next: at + 1 };
    else runs.push({ from: at, next: at + 1 });
  }
  return runs.flatMap((run) => trimmed(pad, run)).join("; ");
}

function trimmed(pad: Notepad, run: { readonly from: number; readonly next: number }): readonly string[] {
  let { from, next } = run;
  while (from < next && dropped.has(wordAt(pad, from))) from += 1;
  while (next > from && dropped.has(wordAt(pad, next - 1))) next -= 1;
  return from === next ? [] : [typed(pad, from, next)];
}
