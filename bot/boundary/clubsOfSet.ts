import { type ClubName, clubFamily } from "../../core/kinds.ts";
import type { ClubSet } from "./clubAt.ts";

const belongs: Readonly<Record<ClubSet, (club: ClubName) => boolean>> = {
  bag: () => true,
  irons: (club) => clubFamily(club) === "iron" || club === "pw",
  wedges: (club) => clubFamily(club) === "wedge" && club !== "pw",
  woods: (club) => clubFamily(club) === "fairway",
  hybrids: (club) => clubFamily(club) === "hybrid",
};

/** The clubs of a bag that a set's word names; the pitching wedge is one of the irons (common practice, no source). */
export function clubsOfSet(set: ClubSet, bag: readonly ClubName[]): readonly ClubName[] {
  return bag.filter(belongs[set]);
}
