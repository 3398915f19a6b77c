import { type ClubFamily, clubFamily } from "../../../core/kinds.ts";
import { clubAt } from "../clubAt.ts";
import type { Word } from "../wordsOf.ts";
import type { AskedClub } from "./findQuestion.ts";

/** What the clubs of a set are usually stamped, in degrees (common practice, no source). */
const usualStampDeg: Readonly<Record<string, number>> = {
  "2w": 13,
  "3w": 15,
  "4w": 16.5,
  "5w": 18,
  "7w": 21,
  "9w": 24,
  "11w": 27,
  "1h": 14,
  "2h": 17,
  "3h": 20,
  "4h": 23,
  "5h": 26,
  "6h": 29,
  "7h": 32,
  "1i": 15.5,
  "2i": 18,
  "3i": 20.5,
  "4i": 23,
  "5i": 26,
  "6i": 29.5,
  "7i": 33.5,
  "8i": 37.5,
  "9i": 42,
  pw: 47.5,
  gw: 52,
  sw: 56,
  lw: 60,
};
/** A set stamped stronger or weaker than usual is still that club, this far. */
const spreadDeg: Readonly<Record<ClubFamily, number>> = { driver: 90, fairway: 1.4, hybrid: 1.4, iron: 2.4, wedge: 2, putter: 90 };
const families: Readonly<Record<string, ClubFamily>> = {
  wood: "fairway",
  woods: "fairway",
  fairway: "fairway",
  fairways: "fairway",
  hybrid: "hybrid",
  hybrids: "hybrid",
  iron: "iron",
  irons: "iron",
  wedge: "wedge",
  wedges: "wedge",
  putter: "putter",
  putters: "putter",
  driver: "driver",
  drivers: "driver",
};

type AskedClubHit =
  | { readonly kind: "family"; readonly family: ClubFamily; readonly next: number }
  | { readonly kind: "club"; readonly club: AskedClub; readonly next: number };

/** Reads a club or a kind of club: `7i`, `sand wedge`, `driver`, `wedge`. */
export function askedClubAt(words: readonly Word[], at: number): AskedClubHit | null {
  const text = words[at]?.text ?? "";
  const hit = clubAt(words, at);
  const [name] = hit?.kind === "clubs" && hit.clubs.length === 1 ? hit.clubs : [];
  const family = name === undefined ? null : clubFamily(name);
  if (hit === null || name === undefined || family === null) {
    return Object.hasOwn(families, text) ? { kind: "family", family: families[text] ?? "iron", next: at + 1 } : null;
  }
  const usual = usualStampDeg[name];
  if (usual === undefined) return { kind: "family", family, next: hit.next };
  const spread = spreadDeg[family];
  return { kind: "club", club: { name, family, stampedMinDeg: usual - spread, stampedMaxDeg: usual + spread }, next: hit.next };
}
