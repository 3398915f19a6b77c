import type { ClubName } from "../../core/kinds.ts";
import { clubsOfSet } from "./clubsOfSet.ts";
import { ask, asOptions, type NamedSet, type Notepad, placeOf } from "./notepad.ts";

export const NO_BAG = "no bag on record; name the clubs";

/** Fills the sets named by a word alone from the player's bag; asks which clubs when there are none on record. */
export function fillSets(pad: Notepad): void {
  const isBareCheck = pad.kind === "check" && pad.clubs.length === 0 && !pad.clubAsked;
  if (pad.player === null || (!isBareCheck && pad.sets.length === 0)) return;
  const bag = pad.context.bagOf(pad.player.id);
  if (isBareCheck) pad.clubs.push(...bag);
  for (const named of pad.sets) {
    const isRestricted = named.set === "bag" && pad.clubs.length > 0 && pad.out.length === 0;
    if (!isRestricted) fill(pad, named, clubsOfSet(named.set, bag));
  }
}

function fill(pad: Notepad, named: NamedSet, clubs: readonly ClubName[]): void {
  pad.clubs.push(...clubs.filter((club) => ![pad.clubs, pad.except, pad.out].some((known) => known.includes(club))));
  const isBag = named.set === "bag";
  if (clubs.length === 0) {
    const accepted = isBag ? NO_BAG : named.choices.join(", ");
    ask(pad, "which-club", placeOf(pad, named.from, named.next), accepted, asOptions(named.choices));
  }
  if (isBag && (pad.kind ?? "build") === "build") pad.like ??= { from: "gamer" };
}
