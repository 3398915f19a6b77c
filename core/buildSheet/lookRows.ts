import { oneOf } from "../quantity/oneOf.ts";

export const lookNames = ["head", "sleeve", "shaft", "logo", "grip", "rib", "stamp"] as const;
/** What is looked at and not read off a gauge. */
export type LookName = (typeof lookNames)[number];

/** What was looked at, in the words of the record. */
export type Looks = Readonly<Partial<Record<LookName, string>>>;

/** Something wanted to look so, and how it looked. */
export interface LookRow {
  readonly look: LookName;
  readonly wanted: string;
  readonly seen: string;
  readonly verdict: "same" | "off";
  /** A sleeve at another mark is another club; the rest is the player's to accept. */
  readonly concerns: "feel" | "conformity";
}

/** Words that read the same on a phone: capitals and spaces do not count. */
const folded = (words: string) => words.trim().toLowerCase().replace(/\s+/g, " ");

/** A row for everything wanted and looked at, and what is still to be looked at. */
export function lookRows(wanted: Looks, seen: Looks): { readonly rows: readonly LookRow[]; readonly unseen: readonly LookName[] } {
  for (const look of [...Object.keys(wanted), ...Object.keys(seen)]) {
    oneOf(look, lookNames, "look");
  }
  const rows = lookNames.flatMap((look): readonly LookRow[] => {
    const [words, found] = [wanted[look], seen[look]];
    if (words === undefined || found === undefined) {
      return [];
    }
    const verdict = folded(words) === folded(found) ? "same" : "off";
    return [{ look, wanted: words, seen: found, verdict, concerns: look === "sleeve" ? "conformity" : "feel" }];
  });
  return { rows, unseen: lookNames.filter((look) => wanted[look] !== undefined && seen[look] === undefined) };
}
