import type { Destination, Purpose } from "../../core/buildSheet/buildRequest.ts";
import { ask, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { own } from "./own.ts";
import { skipAll } from "./skipAll.ts";

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
