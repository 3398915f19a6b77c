import type { ClubName, Instant } from "../../core/kinds.ts";
import { inchesAsFraction } from "../../core/quantity/inchesAsFraction.ts";
import { swingWeightLabel } from "../../core/quantity/swingWeightLabel.ts";
import { millimetres, swingWeightPoints } from "../../core/quantity/units.ts";
import type { Span } from "../chat/types.ts";
import { formatInTimeZone } from "./zonedTime.ts";

/** Values as the bench can hold them: angles to 0.1°, lengths to 1/16 in or 1 mm, swing weight to a quarter point. */
export const shown = {
  angle: (deg: number): string => (Math.round(deg * 10) / 10 + 0).toFixed(1),
  face: (deg: number): string => {
    const rounded = Math.round(deg * 10) / 10;
    return rounded === 0 ? "square" : `${Math.abs(rounded).toFixed(1)} ${rounded > 0 ? "open" : "closed"}`;
  },
  length: (mm: number, unit: "in" | "mm" = "in"): string => (unit === "in" ? inchesAsFraction(millimetres(mm)) : `${Math.round(mm)} mm`),
  both: (mm: number): string => `${inchesAsFraction(millimetres(mm))} in (${Math.round(mm)} mm)`,
  swing: (points: number): string => swingWeightLabel(swingWeightPoints(points)),
  mass: (g: number): string => `${Math.round(g * 10) / 10} g`,
  clock: (at: Instant, zone: string): Span => ({ at, zone }),
  stamp: (deg: number): string => String(Math.round(deg * 10) / 10),
};

/** A club's name as people say it. */
export function clubWords(club: ClubName | string): string {
  const wedges: Readonly<Record<string, string>> = { pw: "PW", gw: "GW", sw: "SW", lw: "LW" };
  return wedges[club] ?? club;
}

const irons = ["1i", "2i", "3i", "4i", "5i", "6i", "7i", "8i", "9i", "pw"];
const MOST_NAMED = 3;

/** Several clubs in as few words as say it: `driver 3w`, `4i–PW`, `14 clubs`. */
export function clubsWords(clubs: readonly string[]): string {
  if (clubs.length <= MOST_NAMED) {
    return clubs.map(clubWords).join(" ");
  }
  const [first = "", last = ""] = [clubs[0], clubs.at(-1)];
  const at = irons.indexOf(first);
  const isRun = at >= 0 && clubs.every((club, index) => irons[at + index] === club);
  return isRun ? `${clubWords(first)}–${clubWords(last)}` : `${clubs.length} clubs`;
}

/** A club of several alike by its number: `driver 2`. */
export const sheetName = ({ club, copy }: { readonly club: ClubName; readonly copy: number }): string =>
  copy === 1 ? clubWords(club) : `${clubWords(club)} ${copy}`;

/** So many of a thing, in words. */
export const plural = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** What a colleague is called at the bench. */
export const firstName = (name: string): string => name.split(" ")[0] ?? name;

/** How long ago, to the day and below it to the minute. */
export function ago(at: Instant, now: Instant): string {
  const minutes = Math.max(0, Math.round((now - at) / 60_000));
  if (minutes < 60) {
    return `${minutes} min ago`;
  }
  return minutes < 48 * 60 ? `${Math.round(minutes / 60)} h ago` : `${Math.round(minutes / 1440)} d ago`;
}

/** `14:12`, or `Tue 14:12` on another day than now. */
export const timeText = (at: Instant, now: Instant, zone: string): string =>
  formatInTimeZone(at, zone, formatInTimeZone(at, zone, "yyyy-MM-dd") === formatInTimeZone(now, zone, "yyyy-MM-dd") ? "HH:mm" : "EEE HH:mm");
