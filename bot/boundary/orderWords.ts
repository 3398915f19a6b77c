import type { BroughtBy, ByWish, Destination, Like, Purpose } from "../../core/buildSheet/buildRequest.ts";
import { clockAt, minutesFromNow } from "./clockAt.ts";
import { editDistance, forgivenSlips } from "./editDistance.ts";
import { ask, asOptions, follows, lean, mend, type Notepad, placeOf, typed, wish, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { isClauseWord, isFiller } from "./vocabulary.ts";

const FURTHEST_BEFORE_TEE_MIN = 600;
const FURTHEST_AHEAD_MIN = 24 * 60;
const destinations: Readonly<Record<string, Destination>> = {
  range: "range",
  locker: "locker",
  lockers: "locker",
  caddie: "caddie",
  caddy: "caddie",
  courier: "courier",
};
const purposes: Readonly<Record<string, Purpose>> = {
  backup: "backup",
  backups: "backup",
  gamer: "gamer",
  test: "test",
  testing: "test",
  trial: "test",
};
const bagWords = new Set(["bag", "set", "full", "whole", "clubs", "all"]);
const own = <T>(record: Readonly<Record<string, T>>, key: string): T | null => (Object.hasOwn(record, key) ? (record[key] ?? null) : null);
const skipAll = (pad: Notepad, at: number, skipped: readonly string[]): number => {
  let next = at;
  while (next < at + 3 && skipped.includes(wordAt(pad, next))) next += 1;
  return next;
};

/** `note …` and `stamp …` take the rest of their line, as typed. */
export function readRestOfLine(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word !== "note" && word !== "notes" && word !== "stamp") return at;
  return takeRestOfLine(pad, word === "stamp" ? "stamp" : "note", at, at + 1);
}

export function takeRestOfLine(pad: Notepad, what: "note" | "stamp", at: number, start: number): number {
  let next = start;
  while (next < pad.end && pad.words[next]?.gap !== "line") next += 1;
  const from = pad.words[start]?.from;
  const lineEnd = pad.words[next]?.from ?? pad.text.length;
  const rest = from === undefined || next === start ? "" : (pad.text.slice(from, lineEnd).split(/[\n\r\u2028\u2029]/)[0] ?? "").trim();
  if (rest === "") ask(pad, "value-unreadable", placeOf(pad, at, at + 1), `${what} and the words`);
  else if (what === "note") pad.note = pad.note === null ? rest : `${pad.note}; ${rest}`;
  else {
    wish(pad, "stamp", rest, start, next);
    const noted = pad.wishes.get("stamp");
    if (noted !== undefined) pad.wishes.set("stamp", { ...noted, wish: { value: rest, asWritten: rest } });
  }
  return next;
}

/** `like gamer`, `same as his backup`, `from gamer`, `like order 57`. */
export function readLike(pad: Notepad, at: number): number {
  const start = likeStart(pad, at);
  if (start === null) return at;
  const named = skipAll(pad, start, ["the", "his", "her", "their", "current", "as"]);
  const word = wordAt(pad, named).replace(/'s$/, "");
  if (/^gamers?$/.test(word)) return takeLike(pad, { from: "gamer" }, at, named + 1);
  if (/^backups?$/.test(word)) return takeLike(pad, { from: "backup" }, at, named + 1);
  const numberAtWord = word === "order" ? named + 1 : named;
  const number = /^\d{1,7}$/.test(wordAt(pad, numberAtWord)) ? Number(wordAt(pad, numberAtWord)) : null;
  if (number !== null && wordAt(pad, at) !== "from" && wordAt(pad, at) !== "than")
    return takeLike(pad, { from: "order", number }, at, numberAtWord + 1);
  if (wordAt(pad, at) !== "like") return at;
  const meant = (["gamer", "backup"] as const).find((known) => editDistance(word, known, forgivenSlips(word.length)) !== null);
  if (meant !== undefined) {
    mend(pad, named, named + 1, meant, "misspelt");
    return takeLike(pad, { from: meant }, at, named + 1);
  }
  const next = follows(pad, named) && !isClauseWord(word) ? named + 1 : named;
  ask(
    pad,
    "value-unreadable",
    placeOf(pad, at, Math.max(next, at + 1)),
    "like gamer, like backup or like order 57",
    asOptions(["like gamer", "like backup"]),
  );
  return Math.max(next, at + 1);
}

function likeStart(pad: Notepad, at: number): number | null {
  const word = wordAt(pad, at);
  if (["like", "from", "than", "off", "copy"].includes(word)) return wordAt(pad, at + 1) === "of" ? at + 2 : at + 1;
  if (word === "as" && wordAt(pad, at - 2) === "same") return at + 1;
  if (word !== "same") return null;
  const next = wordAt(pad, at + 1);
  if (word === "same" && (next === "as" || next === "like")) return at + 2;
  return /^(gamer|backup)$/.test(next) ? at + 1 : null;
}

function takeLike(pad: Notepad, like: Like, at: number, next: number): number {
  if (pad.like !== null && JSON.stringify(pad.like) !== JSON.stringify(like)) ask(pad, "twice", placeOf(pad, at, next), "one club to be like");
  else pad.like = like;
  return next;
}

/** `by 2:30pm`, `by tue 7:00`, `by tee -20`, `in 20 min`, `now`, `asap`. */
export function readWhen(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word === "asap" || word === "urgent" || word === "rush") {
    pad.urgent = true;
    return at + 1;
  }
  if (word === "now" && wordAt(pad, at + 1) !== "make") return takeNow(pad, at, at + 1);
  if (word === "in" || word === "within") return readInMinutes(pad, at);
  const led = ["by", "before", "b4", "at", "for"].includes(word);
  const beforeTee = led ? at : readTee(pad, at, at);
  if (beforeTee > at && /^\d/.test(word)) return beforeTee;
  if (!led) return /^\d{1,2}:\d{2}([ap]m?)?$/.test(word) || /^\d{1,2}[ap]m$/.test(word) ? readClock(pad, at, at, false) : at;
  const isBy = word === "by";
  const start = isBy ? skipAll(pad, at + 1, ["the", "his", "her", "about"]) : at + 1;
  if (wordAt(pad, start) === "now" && isBy) return takeNow(pad, start, start + 1);
  if (wordAt(pad, start) === "asap" && isBy) return readWhen(pad, start);
  const tee = readTee(pad, at, start);
  if (tee !== at) return tee;
  const clock = readClock(pad, at, start, isBy);
  if (clock !== at || !isBy) return clock;
  return noTime(pad, at, start);
}

function noTime(pad: Notepad, at: number, start: number): number {
  const next = follows(pad, start) && !isClauseWord(wordAt(pad, start)) ? start + 1 : start;
  ask(pad, "no-such-time", placeOf(pad, at, next), "by 14:30, by 2:30pm, by tue 7:00, by tee -20 or now");
  return next;
}

function takeNow(pad: Notepad, at: number, next: number): number {
  pad.urgent = true;
  takeBy(pad, { kind: "now" }, at, next);
  return next;
}

function takeBy(pad: Notepad, value: ByWish, at: number, next: number): void {
  const asWritten = typed(pad, at, next);
  if (pad.by !== null && JSON.stringify(pad.by.value) !== JSON.stringify(value)) {
    ask(pad, "twice", placeOf(pad, at, next), "one time to be ready by", asOptions([`by ${pad.by.asWritten}`]));
  } else pad.by = { value, asWritten };
}

function readInMinutes(pad: Notepad, at: number): number {
  const counted = /^(\d{1,4})(m|min|mins|h|hr|hrs)?$/.exec(wordAt(pad, at + 1));
  if (counted === null) return at;
  const unit = counted[2] ?? wordAt(pad, at + 2);
  const next = counted[2] === undefined ? at + 3 : at + 2;
  const isHours = /^(h|hr|hrs|hour|hours)$/.test(unit);
  if (!isHours && !/^(m|min|mins|minute|minutes)$/.test(unit)) return at;
  const minutes = Number(counted[1]) * (isHours ? 60 : 1);
  if (minutes < 1 || minutes > FURTHEST_AHEAD_MIN) ask(pad, "no-such-time", placeOf(pad, at, next), "up to 24 hours");
  else takeBy(pad, { kind: "at", at: minutesFromNow(pad.context.now, minutes) }, at, next);
  return next;
}

/** `tee`, `tee time`, `tee -20`, `tee-20`, `20 min before tee`. */
function readTee(pad: Notepad, at: number, start: number): number {
  const joined = /^tee(?:time)?-(\d{1,4})$/.exec(wordAt(pad, start));
  if (joined !== null) return takeTee(pad, at, start, -Number(joined[1]), start + 1);
  const before = numberAt(pad.words, start);
  if (before !== null) {
    const unitEnd = /^(m|min|mins|minutes)$/.test(wordAt(pad, before.next)) ? before.next + 1 : before.next;
    const tee = wordAt(pad, unitEnd) === "before" || wordAt(pad, unitEnd) === "b4" ? skipAll(pad, unitEnd + 1, ["his", "her", "the"]) : 0;
    return tee > 0 && /^tee$/.test(wordAt(pad, tee)) ? takeTee(pad, at, start, -Math.abs(before.value), teeEnd(pad, tee)) : at;
  }
  if (wordAt(pad, start) !== "tee" && wordAt(pad, start) !== "teetime") return at;
  const named = teeEnd(pad, start);
  const isMinus = wordAt(pad, named) === "minus" || wordAt(pad, named) === "less";
  const offset = numberAt(pad.words, isMinus ? named + 1 : named);
  if (offset === null || (!offset.signed && !isMinus)) return takeTee(pad, at, start, 0, named);
  const next = /^(m|min|mins|minutes)$/.test(wordAt(pad, offset.next)) ? offset.next + 1 : offset.next;
  return takeTee(pad, at, start, isMinus ? -Math.abs(offset.value) : offset.value, next);
}

const teeEnd = (pad: Notepad, tee: number): number => (wordAt(pad, tee + 1) === "time" ? tee + 2 : tee + 1);

function takeTee(pad: Notepad, at: number, start: number, offsetMin: number, next: number): number {
  if (offsetMin > 0 || offsetMin < -FURTHEST_BEFORE_TEE_MIN)
    ask(pad, "no-such-time", placeOf(pad, at, next), `tee -${FURTHEST_BEFORE_TEE_MIN} to tee`);
  else takeBy(pad, { kind: "tee", offsetMin }, start, next);
  return next;
}

function readClock(pad: Notepad, at: number, start: number, bare: boolean): number {
  const { now, zone } = pad.context;
  const clock = clockAt(pad.words, start, { now, zone, bare });
  if (clock === null) return at;
  if (clock.kind === "at") takeBy(pad, { kind: "at", at: clock.at }, start, clock.next);
  else {
    const place = placeOf(pad, start, clock.next);
    if (clock.kind === "past") ask(pad, "by-is-past", place, "a time still ahead", asOptions([clock.tomorrow, "now"]));
    else ask(pad, "no-such-time", place, "a time such as 14:10 or 2:10pm", asOptions(clock.guess === null ? [] : [clock.guess]));
  }
  return clock.next;
}

/** `to range`, `send to locker`, `to test`. */
export function readTo(pad: Notepad, at: number): number {
  if (wordAt(pad, at) !== "to") return at;
  const named = skipAll(pad, at + 1, ["the", "his", "her", "a"]);
  const word = wordAt(pad, named).replace(/'s$/, "");
  const destination = own(destinations, word);
  if (destination !== null) {
    if (pad.to !== null && pad.to !== destination) ask(pad, "twice", placeOf(pad, at, named + 1), "one place to take it");
    pad.to ??= destination;
    return wordAt(pad, named + 1) === "room" ? named + 2 : named + 1;
  }
  if (["test", "try", "trial"].includes(word)) {
    pad.purpose = "test";
    return named + 1;
  }
  return at;
}

/** `for backup`, `as a backup`, `for testing`, or the word before the club: `backup driver`. */
export function readPurpose(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const led = word === "for" || word === "as";
  const named = led ? skipAll(pad, at + 1, ["the", "a", "his", "her"]) : at;
  const purpose = own(purposes, wordAt(pad, named));
  if (purpose === null) return at;
  if (!led && purpose === "gamer" && pad.like === null) return at;
  pad.purpose = purpose;
  return named + 1;
}

const bringers: Readonly<Record<string, BroughtBy>> = {
  caddie: "caddie",
  caddy: "caddie",
  player: "player",
  he: "player",
  she: "player",
  rep: "rep",
  i: "rep",
  me: "rep",
};
const brings = new Set(["brings", "bringing", "bring", "has", "drops", "dropping", "have"]);

/** `caddie brings it`, `brought by rep`, `in the truck`. */
export function readBroughtBy(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const truck = word === "in" ? skipAll(pad, at + 1, ["the", "our"]) : at;
  if (truck > at && wordAt(pad, truck) === "truck") {
    pad.broughtBy = "inTruck";
    return truck + 1;
  }
  const who = own(bringers, word === "brought" && wordAt(pad, at + 1) === "by" ? wordAt(pad, at + 2) : word);
  if (who === null) return at;
  const verb = word === "brought" ? at + 2 : skipAll(pad, at + 1, ["is", "will", "ll"]);
  if (word !== "brought" && !brings.has(wordAt(pad, verb))) return at;
  pad.broughtBy = who;
  return wordAt(pad, verb + 1) === "it" ? verb + 2 : verb + 1;
}

/** `not 45 1/4`, `was d2`, `instead of 9`: the old value, skipped. */
export function readNegation(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const led = word === "not" || word === "was" || word === "instead" || word === "rather";
  const old = wordAt(pad, at + 1) === "of" || wordAt(pad, at + 1) === "than" ? at + 2 : at + 1;
  if (!led || pad.words[old] === undefined) return at;
  const hit = numberAt(pad.words, old);
  if (hit !== null) return hit.next;
  const swing = /^[a-g]$/.test(wordAt(pad, old)) && /^\d/.test(wordAt(pad, old + 1));
  return swing ? old + 2 : old + 1;
}

export function readFiller(pad: Notepad, at: number): number {
  if (pad.kind === "check" && bagWords.has(wordAt(pad, at))) return at + 1;
  return isFiller(wordAt(pad, at)) ? at + 1 : at;
}

/** `same` with nothing of its own leans on the club named after `like`. */
export function readSameAlone(pad: Notepad, at: number): number {
  if (wordAt(pad, at) !== "same" || pad.like === null) return at;
  lean(pad, at, at + 1);
  return at + 1;
}
