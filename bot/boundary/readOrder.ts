import type { BuildRequest, Clauses } from "../../core/buildSheet/buildRequest.ts";
import type { ClubName, OrderKind } from "../../core/kinds.ts";
import { clubAt } from "./clubAt.ts";
import { nearestNames } from "./nearestNames.ts";
import { ask, asOptions, mend, type Notepad, newNotepad, placeOf, typed, wordAt } from "./notepad.ts";
import { takeRestOfLine } from "./orderWords.ts";
import { playersAt } from "./playerNames.ts";
import type { MessageReading, Place, ReadingContext } from "./reading.ts";
import { readWords } from "./readWords.ts";
import { readClub, readPlayer } from "./whoAndWhat.ts";
import type { Word, Words } from "./wordsOf.ts";

export interface Message extends Words {
  readonly text: string;
}

/** Problems and mendings shown at most: a message has no more clauses than that. */
const MOST_SHOWN = 25;
const FURTHEST_PLAYER_WORD = 60;
const clubChoices: readonly string[] = ["driver", "3w", "5w", "4h", "7i", "pw", "sw", "putter"];

/** The clauses noted, as the contract has them. */
export function clausesOf(pad: Notepad): Clauses {
  return Object.fromEntries([...pad.wishes].map(([key, { wish }]) => [key, wish])) as Clauses;
}

/** Drops a last `go` and says whether it was there. */
export function withoutGo(words: readonly Word[]): { readonly words: readonly Word[]; readonly go: boolean } {
  const go = words.length > 1 && words.at(-1)?.text === "go";
  return { words: go ? words.slice(0, -1) : words, go };
}

interface UnreadRun {
  readonly from: number;
  readonly next: number;
  readonly guess: string | null;
}

function runsOf(unread: Notepad["unread"]): readonly UnreadRun[] {
  const runs: UnreadRun[] = [];
  for (const { at, guess } of unread) {
    const last = runs.at(-1);
    if (last !== undefined && last.next === at && guess === null) runs[runs.length - 1] = { ...last, next: at + 1 };
    else runs.push({ from: at, next: at + 1, guess });
  }
  return runs;
}

const destinations = ["range", "locker", "caddie", "courier"];
const isAfterTo = (pad: Notepad, at: number): boolean =>
  wordAt(pad, at - 1) === "to" || (wordAt(pad, at - 1) === "the" && wordAt(pad, at - 2) === "to");

/** Words nobody could read, neighbours together, each a problem with the nearest trade word as a guess. */
export function askUnread(pad: Notepad): void {
  for (const { from, next, guess } of runsOf(pad.unread)) {
    if (isAfterTo(pad, from)) {
      ask(pad, "unknown-destination", placeOf(pad, from, next), destinations.join(", "), asOptions(destinations));
      continue;
    }
    const endsLine = wordAt(pad, next) === "" || pad.words[next]?.gap === "line";
    const note = endsLine ? [{ label: "note", replacement: `note ${typed(pad, from, next)}` }] : [];
    const options = [...asOptions(guess === null ? [] : [guess]), ...note];
    ask(pad, "unknown-word", placeOf(pad, from, next), "a clause such as loft, length, swing, shaft, grip or by; or note and the words", options);
  }
}

export function problemsOf(pad: Notepad, orderKind: OrderKind | null): MessageReading {
  const problems = [...pad.problems].sort((one, other) => one.place.from - other.place.from || one.place.to - other.place.to);
  return { kind: "problems", problems: problems.slice(0, MOST_SHOWN), mendings: mendingsOf(pad), orderKind };
}

export function mendingsOf(pad: Notepad): Notepad["mendings"] {
  return [...pad.mendings].sort((one, other) => one.place.from - other.place.from).slice(0, MOST_SHOWN);
}

function wholeWords(pad: Notepad): Place {
  return placeOf(pad, 0, Math.max(1, Math.min(pad.end, pad.kind === null ? 1 : 2)));
}

function askMissing(pad: Notepad): void {
  if (pad.player === null && !pad.playerAsked) askPlayer(pad);
  if (pad.clubs.length === 0 && !pad.clubAsked && pad.kind !== "check") {
    const place = pad.player === null ? wholeWords(pad) : playerPlace(pad);
    const before = pad.text.slice(place.from, place.to);
    ask(
      pad,
      "which-club",
      place,
      clubChoices.join(", "),
      clubChoices.map((club) => ({ label: club, replacement: `${before} ${club}` })),
    );
  }
  const leans = pad.leaning !== null && pad.like === null && (pad.kind === null || pad.kind === "build");
  if (leans && pad.leaning !== null) {
    const written = pad.text.slice(pad.leaning.from, pad.leaning.to);
    const options = ["like gamer", "like backup"].map((like) => ({ label: like, replacement: `${written} ${like}` }));
    ask(pad, "needs-like", pad.leaning, "like gamer, like backup or like order 57", options);
  }
}

/** Where the player is written: found again, because a place is shown only when something is missing. */
function playerPlace(pad: Notepad): Place {
  for (let at = 0; at < Math.min(pad.end, FURTHEST_PLAYER_WORD); at += 1) {
    const hit = playersAt(pad.words, at, pad.context.players);
    if (hit?.players.some((player) => player.id === pad.player?.id)) return placeOf(pad, at, hit.next);
  }
  return pad.mendings.find((mending) => mending.read === pad.player?.name)?.place ?? wholeWords(pad);
}

/** An unread word in the player's place is asked as an unknown player, else the player is missing. */
function askPlayer(pad: Notepad): void {
  const index = pad.unread.findIndex(({ at }) => pad.kind !== null && isPlayersPlace(pad, at));
  const unread = pad.unread[index];
  if (unread === undefined) {
    ask(pad, "which-player", wholeWords(pad), "a player's name");
    return;
  }
  let count = 1;
  while (pad.unread[index + count]?.at === unread.at + count) count += 1;
  pad.unread.splice(index, count);
  const nearest = nearestNames(wordAt(pad, unread.at), pad.context.players);
  ask(pad, "unknown-player", placeOf(pad, unread.at, unread.at + count), nearest.join(", ") || "a player's name", asOptions(nearest));
}

const isPlayersPlace = (pad: Notepad, at: number): boolean => {
  const before = wordAt(pad, at - 1);
  return at <= 2 || before === "for" || clubAt(pad.words, at + 1) !== null;
};

export function requestOf(pad: Notepad, kind: OrderKind, player: BuildRequest["player"]): BuildRequest {
  const remark = remarkOf(pad);
  const note = pad.note ?? remark;
  return {
    kind,
    player,
    clubs: pad.clubs,
    count: pad.count,
    like: pad.like ?? (kind === "swap" ? { from: "gamer" } : null),
    clauses: clausesOf(pad),
    by: pad.by,
    to: pad.to,
    purpose: pad.purpose,
    urgent: pad.urgent || kind === "broke",
    broughtBy: pad.broughtBy,
    note,
  };
}

/** What was said in passing (`its swinging light`) is kept as the note. */
function remarkOf(pad: Notepad): string | null {
  const [first] = pad.remarks;
  const last = pad.remarks.at(-1);
  return first === undefined || last === undefined ? null : typed(pad, first, last + 1);
}

/** Reads a message whose kind of work was named; its words start at `start`. */
export function readKindOrder(
  message: Message,
  context: ReadingContext,
  kind: { readonly kind: OrderKind; readonly misspelt: boolean; readonly at: number; readonly start: number },
): MessageReading {
  const { words, go } = withoutGo(message.words);
  const isLed = kind.start > kind.at;
  const readable = isLed ? words : words.filter((_, at) => at !== kind.at);
  const pad = newNotepad(message.text, readable, context, { mode: "order", kind: kind.kind });
  if (kind.misspelt) mend(pad, kind.at, kind.at + 1, kind.kind, "misspelt");
  if (kind.kind === "stamp") readStampOrder(pad, kind.start);
  else readWords(pad, kind.start);
  return settle(pad, kind.kind, go);
}

/** `stamp oxtoby sw BO 27`: after player and club the rest of the line is the text. */
function readStampOrder(pad: Notepad, start: number): void {
  let at = start;
  const skipped = new Set(["the", "a", "his", "her", "for", "on", "stamp", "please", "pls"]);
  for (let read = 0; read < 6 && at < pad.end; read += 1) {
    const gap = pad.words[at]?.gap;
    if (read > 0 && gap === "line") break;
    const next = Math.max(pad.player === null ? readPlayer(pad, at) : at, pad.clubs.length === 0 ? readClub(pad, at) : at);
    if (next > at) at = next;
    else if (skipped.has(wordAt(pad, at))) at += 1;
    else break;
  }
  const hasText = at < pad.end && pad.words[at]?.gap !== "line";
  if (hasText) at = takeRestOfLine(pad, "stamp", start, at);
  readWords(pad, at);
  if (!pad.wishes.has("stamp")) ask(pad, "nothing-to-do", placeOf(pad, start - 1, pad.end), "the text to stamp");
}

function settle(pad: Notepad, kind: OrderKind, go: boolean): MessageReading {
  askMissing(pad);
  askUnread(pad);
  if (pad.problems.length > 0 || pad.player === null) return problemsOf(pad, kind);
  return { kind: "order", request: requestOf(pad, kind, pad.player.id), go, mendings: mendingsOf(pad) };
}

/** Reads a message without a kind: a draft when it names a player, a club and a clause; else a question, a hint or silence. */
export function readKindless(message: Message, context: ReadingContext): MessageReading {
  const { words, go } = withoutGo(message.words);
  const pad = newNotepad(message.text, words, context, { mode: "order", kind: null });
  readWords(pad, 0);
  const clauses =
    pad.wishes.size +
    (pad.like === null ? 0 : 1) +
    pad.problems.filter((problem) => problem.code !== "which-player" && problem.code !== "which-club").length;
  const written = clauses + (pad.by === null ? 0 : 1);
  const startsUnread = pad.unread[0]?.at === 0 || pad.remarks[0] === 0;
  if (pad.player === null || startsUnread || message.asks) return { kind: "silence" };
  const guessedPlayer = pad.mendings.some((mending) => mending.read === pad.player?.name && pad.unread.length > 0);
  if (guessedPlayer) return { kind: "silence" };
  const [club] = pad.clubs;
  if (club === undefined && !pad.clubAsked) {
    const clear = clauses > 0 && pad.unread.length === 0;
    return clear ? settle(pad, "build", go) : { kind: "silence" };
  }
  const tooMuchUnread = pad.unread.length > clauses;
  if (written === 0 || tooMuchUnread) return club === undefined ? { kind: "silence" } : hint(pad, club);
  return settle(pad, "build", go);
}

function hint(pad: Notepad, club: ClubName): MessageReading {
  return pad.player === null ? { kind: "silence" } : { kind: "hint", player: pad.player.id, club };
}
