import type { BroughtBy } from "../../core/buildSheet/buildRequest.ts";
import { type Notepad, wordAt } from "./notepad.ts";
import { own } from "./own.ts";
import { skipAll } from "./skipAll.ts";

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
const brings = new Set(["brings", "bringing", "bring", "has", "got", "drops", "dropping", "have"]);
const things = ["it", "them", "one", "club", "clubs", "that", "the"];
const asides = ["already", "right", "is", "are"];

/** `caddie brings it`, `brought by rep`, `he has it`, `in the truck`, `got it here`. */
export function readBroughtBy(pad: Notepad, at: number): number {
  const here = hereAt(pad, at);
  if (here > at) {
    pad.broughtBy = "inTruck";
    return here;
  }
  const word = wordAt(pad, at);
  const isLed = word === "brought" && wordAt(pad, at + 1) === "by";
  const who = bringerOf(isLed ? wordAt(pad, at + 2) : word);
  if (who === null) return at;
  const verb = isLed ? at + 2 : skipAll(pad, at + 1, ["is", "will", "ll"]);
  if (!isLed && !brings.has(wordAt(pad, verb))) return at;
  pad.broughtBy = who;
  const next = wordAt(pad, verb + 1) === "it" ? verb + 2 : verb + 1;
  return isLed ? next : behindTime(pad, at, next);
}

/** `caddie brings it at 3`: when the club comes, not by when it is wanted back; kept as said. */
function behindTime(pad: Notepad, at: number, next: number): number {
  const time = ["at", "around", "about"].includes(wordAt(pad, next)) ? next + 1 : next;
  if (time === next || !/^\d{1,2}([:.]\d{2})?([ap]m?)?$/.test(wordAt(pad, time))) return next;
  const end = /^[ap]m$/.test(wordAt(pad, time + 1)) ? time + 2 : time + 1;
  for (let word = at; word < end; word += 1) pad.remarks.push(word);
  return end;
}

/** `hes`, `he'll`, `caddies` and the like. */
const bringerOf = (word: string): BroughtBy | null => own(bringers, word) ?? own(bringers, word.replace(/'?(s|ll)$/, ""));

/** `in the truck`, `its here already`, `got it here`, `dropped it off`: behind it, or where it began when it is not said. */
function hereAt(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word === "in" || word === "at") {
    const truck = skipAll(pad, at + 1, ["the", "our"]);
    return wordAt(pad, truck) === "truck" ? truck + 1 : at;
  }
  if (word === "dropped") {
    const off = skipAll(pad, at + 1, things);
    return wordAt(pad, off) === "off" ? off + 1 : at;
  }
  if (word === "here" || word === "already") return wordAt(pad, at + 1) === (word === "here" ? "already" : "here") ? at + 2 : at;
  if (!/^(got|have|club|clubs|it|it's|its|they're|theyre)$/.test(word)) return at;
  const here = skipAll(pad, skipAll(pad, at + 1, things), asides);
  const isHere = wordAt(pad, here) === "here" && (word !== "have" || here > at + 1);
  return isHere ? here + 1 : at;
}
