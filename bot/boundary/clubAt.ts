import { type ClubName, clubFamily } from "../../core/kinds.ts";
import { own } from "./own.ts";
import type { Word } from "./wordsOf.ts";

/** A set named by a word alone; which clubs it is depends on the bag. */
export type ClubSet = "irons" | "woods" | "hybrids" | "wedges" | "bag";

/** What a club's words at a place say: clubs, a word that needs a choice, or a number no club has. */
export type ClubHit =
  | { readonly kind: "clubs"; readonly clubs: readonly ClubName[]; readonly next: number }
  | { readonly kind: "which"; readonly choices: readonly string[]; readonly set: ClubSet | null; readonly next: number }
  | { readonly kind: "unknown"; readonly nearest: readonly string[]; readonly next: number };

const whole: Readonly<Record<string, string>> = {
  driver: "driver",
  drivers: "driver",
  dr: "driver",
  drv: "driver",
  drvr: "driver",
  drvrs: "driver",
  drver: "driver",
  dvr: "driver",
  "1w": "driver",
  putter: "putter",
  putters: "putter",
  putr: "putter",
  ptr: "putter",
  pw: "pw",
  gw: "gw",
  aw: "gw",
  sw: "sw",
  lw: "lw",
};
const namedWedges: Readonly<Record<string, string>> = {
  pitching: "pw",
  pitch: "pw",
  p: "pw",
  gap: "gw",
  approach: "gw",
  g: "gw",
  sand: "sw",
  s: "sw",
  lob: "lw",
  l: "lw",
};
const families: Readonly<Record<string, "w" | "h" | "i">> = {
  w: "w",
  fw: "w",
  wd: "w",
  wood: "w",
  fairway: "w",
  fwy: "w",
  h: "h",
  hy: "h",
  hyb: "h",
  hybrid: "h",
  hybird: "h",
  rescue: "h",
  i: "i",
  ir: "i",
  irn: "i",
  iron: "i",
};
const bareFamilies: Readonly<Record<string, readonly string[]>> = {
  wood: ["3w", "5w", "7w"],
  woods: ["3w", "5w", "7w"],
  fairway: ["3w", "5w", "7w"],
  hybrid: ["3h", "4h", "5h"],
  hybrids: ["3h", "4h", "5h"],
  iron: ["4i", "7i", "9i"],
  irons: ["irons 4-pw", "irons 5-pw", "irons 4-9"],
  wedge: ["gw", "sw", "lw"],
  wedges: ["gw", "sw", "lw"],
};
const sets: Readonly<Record<string, ClubSet>> = { irons: "irons", woods: "woods", hybrids: "hybrids", wedges: "wedges" };
const setOrder = ["1i", "2i", "3i", "4i", "5i", "6i", "7i", "8i", "9i", "pw", "gw", "sw", "lw"];
const spelled = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const near = (word: Word | undefined): word is Word => word !== undefined && (word.gap === "space" || word.gap === "tight");
const club = (name: string): ClubName => name as ClubName;

function numbered(number: number, family: "w" | "h" | "i", next: number): ClubHit {
  const name = number === 1 && family === "w" ? "driver" : `${number}${family}`;
  if (clubFamily(name) !== null) return { kind: "clubs", clubs: [club(name)], next };
  const known = Array.from({ length: 12 }, (_, index) => `${index}${family}`).filter((candidate) => clubFamily(candidate) !== null);
  const ranked = known.sort((one, other) => Math.abs(Number.parseInt(one, 10) - number) - Math.abs(Number.parseInt(other, 10) - number));
  return { kind: "unknown", nearest: ranked.slice(0, 3), next };
}

/** `4-pw`, `4i-pw`, `5-9`: the clubs of a set from one to another. */
function rangeOfClubs(text: string, besideIrons: boolean): readonly ClubName[] | null {
  const ends = /^(\d|[pgsl]w)(i?)-(\d|[pgsl]w)(i?)$/.exec(text);
  if (ends === null) return null;
  const saysIron = besideIrons || ends[2] === "i" || ends[4] === "i" || /w$/.test(ends[3] ?? "");
  if (!saysIron) return null;
  const named = (end: string | undefined): number => setOrder.indexOf(/^\d$/.test(end ?? "") ? `${end}i` : (end ?? ""));
  const [first, last] = [named(ends[1]), named(ends[3])];
  return first < 0 || last < first ? null : setOrder.slice(first, last + 1).map(club);
}

function setAt(words: readonly Word[], at: number): ClubHit | null {
  const isIrons = (word: Word | undefined): boolean => word !== undefined && /^irons?$/.test(word.text);
  const leads = isIrons(words[at]) || /^wedges?$/.test(words[at]?.text ?? "");
  const range = words[leads ? at + 1 : at];
  if (range === undefined || (leads && !near(range))) return null;
  const follows = !leads && isIrons(words[at + 1]) && near(words[at + 1]);
  const clubs = rangeOfClubs(range.text, leads || follows);
  return clubs === null ? null : { kind: "clubs", clubs, next: at + (leads || follows ? 2 : 1) };
}

/** `3 wood`, `seven iron`, `iron 7`, `3w`. */
function numberedAt(words: readonly Word[], at: number): ClubHit | null {
  const text = words[at]?.text ?? "";
  const tight = /^(\d{1,2})(w|fw|wd|h|hy|hyb|i|ir|irn)$/.exec(text);
  if (tight !== null) return numbered(Number(tight[1]), own(families, tight[2] ?? "") ?? "i", at + 1);
  const following = words[at + 1];
  if (!near(following)) return null;
  const number = /^\d{1,2}$/.test(text) ? Number(text) : spelled.indexOf(text);
  const family = own(families, following.text);
  if (number > 0 && family !== null && (following.text.length > 1 || number < 10)) {
    const wood = following.text === "fairway" && words[at + 2]?.text === "wood" && near(words[at + 2]);
    return numbered(number, family, at + (wood ? 3 : 2));
  }
  const led = text.length > 1 ? own(families, text) : null;
  return led !== null && /^\d{1,2}$/.test(following.text) ? numbered(Number(following.text), led, at + 2) : null;
}

/** Reads a club, or a set of clubs, that begins at a word. */
export function clubAt(words: readonly Word[], at: number): ClubHit | null {
  const text = words[at]?.text ?? "";
  const set = setAt(words, at);
  if (set !== null) return set;
  const following = words[at + 1];
  const wedge = own(namedWedges, text);
  if (wedge !== null && near(following) && /^wedges?$/.test(following.text)) return { kind: "clubs", clubs: [club(wedge)], next: at + 2 };
  const one = own(whole, text.replace(/'s$/, ""));
  if (one !== null) return { kind: "clubs", clubs: [club(one)], next: at + 1 };
  const isD = text === "d" && following !== undefined && near(following) && !/^[\d.]/.test(following.text);
  if (isD) return { kind: "clubs", clubs: [club("driver")], next: at + 1 };
  const number = numberedAt(words, at);
  if (number !== null) return number;
  const choices = own(bareFamilies, text);
  return choices === null ? null : { kind: "which", choices, set: own(sets, text), next: at + 1 };
}

/** The wedge a bare loft such as `56` is called in a bag: common practice, no source. */
export function wedgeOfLoft(loftDeg: number): ClubName | null {
  if (!(loftDeg >= 46 && loftDeg <= 64)) return null;
  if (loftDeg < 50) return club("pw");
  if (loftDeg < 54) return club("gw");
  return club(loftDeg < 58 ? "sw" : "lw");
}
