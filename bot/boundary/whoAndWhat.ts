import { clubFamily } from "../../core/kinds.ts";
import { clubAt, wedgeOfLoft } from "./clubAt.ts";
import { ask, asOptions, follows, mend, type Notepad, placeOf, wishStamp, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { playerBeginning, playerNear, playersAt } from "./playerNames.ts";
import type { NamedPlayer } from "./reading.ts";
import { isClauseWord, isFiller } from "./vocabulary.ts";

const MOST_ALIKE = 8;

/** Whether a player is looked for here before anything else: right after the kind, nobody named yet. */
export const isHeadPlace = (pad: Notepad): boolean => pad.player === null && pad.last === "kind";

function take(pad: Notepad, player: NamedPlayer, at: number, next: number): void {
  if (pad.player === null) pad.playerStart = at;
  else if (pad.player.id !== player.id) {
    const isBeside = pad.last === "player" && pad.lastEnd === at;
    const names = [pad.player, player].map((one) => one.name);
    pad.playerAsked = true;
    const place = placeOf(pad, isBeside ? pad.playerStart : at, next);
    ask(pad, "which-player", place, `one player an order: ${names.join(" or ")}, or send one each`, asOptions(isBeside ? names : [pad.player.name]));
  }
  pad.player ??= player;
  pad.last = "player";
  pad.lastEnd = next;
}

/** A player by full name, last name, first name or alias. */
export function readPlayer(pad: Notepad, at: number): number {
  const hit = playersAt(pad.words, at, pad.context.players);
  if (hit === null) return at;
  const word = wordAt(pad, at);
  const isWordOfOrders = hit.next === at + 1 && (isFiller(word) || isClauseWord(word));
  if (isWordOfOrders && !isHeadPlace(pad)) return at;
  const [first] = hit.players;
  const known = hit.players.find((player) => player.id === pad.player?.id);
  if (hit.players.length > 1 && known === undefined) {
    pad.playerAsked = true;
    const names = hit.players.slice(0, 5).map((player) => player.name);
    ask(pad, "which-player", placeOf(pad, at, hit.next), names.join(", "), asOptions(names));
    pad.last = "player";
    pad.lastEnd = hit.next;
    return hit.next;
  }
  const player = known ?? first;
  if (player === undefined) return at;
  const both = pad.player === null ? sideBySide(pad, player, at, hit.next) : null;
  if (both !== null) return both;
  take(pad, player, at, hit.next);
  return withMisspeltFamily(pad, player, hit.next);
}

/** `oxtoby/toll`: two players with a slash between are asked together. */
function sideBySide(pad: Notepad, first: NamedPlayer, at: number, next: number): number | null {
  const second = pad.words[next]?.gap === "slash" ? playersAt(pad.words, next, pad.context.players) : null;
  const [other] = second?.players ?? [];
  if (second === null || other === undefined || other.id === first.id) return null;
  pad.player = first;
  pad.playerAsked = true;
  const names = [first.name, other.name];
  ask(pad, "which-player", placeOf(pad, at, second.next), `one player an order: ${names.join(" or ")}, or send one each`, asOptions(names));
  pad.last = "player";
  pad.lastEnd = second.next;
  return second.next;
}

/** `noor halowey`: a family name misspelt after a first name that was right. */
function withMisspeltFamily(pad: Notepad, player: NamedPlayer, next: number): number {
  const word = wordAt(pad, next);
  if (!follows(pad, next) || word.length < 4 || isClauseWord(word) || isFiller(word) || clubAt(pad.words, next) !== null) return next;
  const near = playerNear(word, [player], pad.context.steps);
  if (near.kind !== "one" || playersAt(pad.words, next, pad.context.players) !== null) return next;
  mend(pad, next, next + 1, player.name, "misspelt");
  pad.lastEnd = next + 1;
  return next + 1;
}

/** A misspelt or shortened name: mended when one player is clearly nearest, else asked. */
export function readPlayerNear(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (pad.player !== null || pad.playerAsked || !/^[\p{L}'-]{3,24}$/u.test(word)) return at;
  const near = playerNear(word, pad.context.players, pad.context.steps);
  const begun = near.kind === "none" && pad.kind !== null ? playerBeginning(word, pad.context.players) : null;
  const player = near.kind === "one" ? near.player : begun;
  if (player !== null) {
    mend(pad, at, at + 1, player.name, begun === null ? "misspelt" : "guessed");
    take(pad, player, at, at + 1);
    return at + 1;
  }
  if (near.kind !== "several" || pad.kind === null) return at;
  pad.playerAsked = true;
  const names = near.players.map((one) => one.name);
  ask(pad, "which-player", placeOf(pad, at, at + 1), names.join(", "), asOptions(names));
  return at + 1;
}

/** A club or a set, with how many alike: `driver`, `3 wood`, `irons 4-pw`, `2 drivers`. */
export function readClub(pad: Notepad, at: number): number {
  const counted = countAt(pad, at);
  const start = counted?.next ?? at;
  const hit = clubAt(pad.words, start);
  if (hit === null) return counted === null ? readWedgeByLoft(pad, at) : at;
  const joins = pad.last === "club" && pad.lastEnd >= at - 1;
  if (hit.kind === "which" && pad.clubs.length > 0 && !(hit.set !== null && joins)) return at;
  if (counted !== null) takeCount(pad, counted.count, at, start);
  if (hit.kind === "clubs") addClubs(pad, hit.clubs, start, hit.next);
  else {
    pad.clubAsked = true;
    if (hit.kind === "which" && hit.set !== null) pad.sets.push({ set: hit.set, choices: hit.choices, from: start, next: hit.next });
    else if (hit.kind === "which") ask(pad, "which-club", placeOf(pad, start, hit.next), hit.choices.join(", "), asOptions(hit.choices));
    else ask(pad, "unknown-club", placeOf(pad, start, hit.next), hit.nearest.join(", "), asOptions(hit.nearest));
  }
  pad.last = "club";
  pad.lastEnd = hit.next;
  return hit.next;
}

function addClubs(pad: Notepad, clubs: readonly (typeof pad.clubs)[number][], at: number, next: number): void {
  const added = clubs.filter((club) => !pad.clubs.includes(club));
  const joins = pad.clubs.length === 0 || (pad.last === "club" && pad.lastEnd >= at - 1);
  if (added.length > 0 && !joins) {
    const known = pad.clubs.join(", ");
    ask(pad, "which-club", placeOf(pad, at, next), `one order a club: ${known} or ${added.join(", ")}`, asOptions([known]));
    return;
  }
  pad.clubs.push(...added);
}

function countAt(pad: Notepad, at: number): { readonly count: number; readonly next: number } | null {
  const pair = wordAt(pad, at) === "pair" && wordAt(pad, at + 1) === "of";
  if (pair) return clubAt(pad.words, at + 2) === null ? null : { count: 2, next: at + 2 };
  const times = /^(\d{1,2})x$/.exec(wordAt(pad, at));
  const hit = times === null ? numberAt(pad.words, at) : null;
  const count = times === null ? (hit?.value ?? 0) : Number(times[1]);
  const next = times === null ? (hit?.next ?? at) : at + 1;
  if (!Number.isInteger(count) || count < 1 || hit?.signed === true || hit?.unit != null || !follows(pad, next)) return null;
  const start = ["x", "more", "new", "backup", "trial"].includes(wordAt(pad, next)) ? next + 1 : next;
  const club = clubAt(pad.words, start);
  if (club?.kind !== "clubs" || clubAt(pad.words, at)?.kind === "clubs") return null;
  return { count, next: start };
}

function takeCount(pad: Notepad, count: number, at: number, next: number): void {
  if (wordAt(pad, next - 1) === "backup") pad.purpose = "backup";
  if (wordAt(pad, next - 1) === "trial") pad.purpose = "test";
  if (count > MOST_ALIKE) ask(pad, "value-out-of-range", placeOf(pad, at, next), `1 to ${MOST_ALIKE} alike`);
  else pad.count = count;
}

/** `build oxtoby 56`, `60 wedge`, `56 degree wedge`: a wedge by its loft; which bag name it has is a guess, and shown. */
function readWedgeByLoft(pad: Notepad, at: number): number {
  const hit = numberAt(pad.words, at);
  if (hit === null || hit.signed || (hit.unit !== null && hit.unit !== "deg") || pad.clubs.length > 0 || pad.clubAsked) return at;
  const club = wedgeOfLoft(hit.value);
  const saysWedge = wordAt(pad, hit.next) === "wedge" && follows(pad, hit.next);
  const saysDegrees = hit.unit === "deg" && pad.last === "player";
  const inClubPlace =
    pad.kind !== null && (pad.last === "kind" || (pad.last === "player" && pad.lastEnd === at)) && !hit.fraction && follows(pad, at);
  if (club === null || clubFamily(club) !== "wedge" || !(saysWedge || saysDegrees || inClubPlace)) return at;
  const next = saysWedge ? hit.next + 1 : hit.next;
  mend(pad, at, next, `${club}, stamped ${hit.value}`, "guessed");
  pad.clubs.push(club);
  wishStamp(pad, hit.value, at, hit.next);
  pad.last = "club";
  pad.lastEnd = next;
  return next;
}
