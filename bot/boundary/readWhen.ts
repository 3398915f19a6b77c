import { clockAt, minutesFromNow } from "./clockAt.ts";
import { ask, asOptions, follows, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { readTee } from "./readTee.ts";
import { skipAll } from "./skipAll.ts";
import { takeBy } from "./takeBy.ts";
import { isClauseWord } from "./vocabulary.ts";

const FURTHEST_AHEAD_MIN = 24 * 60;

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
