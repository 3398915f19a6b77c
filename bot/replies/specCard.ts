import type { Bag, SpecClub } from "../../core/bag/specClub.ts";
import type { ClubName, Hand, Instant } from "../../core/kinds.ts";
import type { Actor, Card, Json, Line } from "../chat/types.ts";
import { card, line } from "./card.ts";
import { ago, clubWords, shown, timeText } from "./shown.ts";

export interface SpecFacts {
  readonly player: string;
  readonly hand: Hand;
  readonly live: { readonly version: number; readonly validFrom: Instant; readonly takenAt: string; readonly bag: Bag };
  readonly by: string;
  readonly wanted: ClubName | null;
  readonly canSeeNotes: boolean;
}

const known = <T>(value: T | null, say: (value: T) => string): readonly string[] => (value === null ? [] : [say(value)]);

function shortLine(club: SpecClub, unit: "in" | "mm"): Line {
  const parts = [
    ...(club.outside ? ["outside"] : known(club.headModel, (name) => name)),
    ...known(club.stampedLoftDeg, (deg) => `stamped ${shown.stamp(deg)}`),
    ...known(club.squaredLoftDeg, (deg) => `true ${shown.angle(deg)}`),
    ...known(club.lengthMm, (mm) => shown.length(mm, unit)),
    ...known(club.swingWeightPoints, shown.swing),
  ];
  return line({ strong: clubWords(club.club) }, ` ${parts.join(", ")}`);
}

function fullLines(club: SpecClub, facts: SpecFacts, actor: Actor, now: Instant): readonly Line[] {
  const angles = [
    ...known(club.soledFaceDeg, (deg) => `face ${shown.face(deg)}`),
    ...known(club.seatedLieDeg, (deg) => `lie ${shown.angle(deg)}`),
    ...known(club.bounceDeg, (deg) => `bounce ${shown.angle(deg)}`),
    ...known(club.grind, (name) => `grind ${name}`),
    ...known(club.sleeveMark, (mark) => `sleeve ${mark}`),
  ];
  const build = [
    ...known(club.shaftModel, (name) => name),
    ...known(club.tipTrimMm, (mm) => (mm > 0 ? `tip ${shown.length(mm, actor.lengthUnit)}` : "")).filter((text) => text !== ""),
    ...known(club.logo, (side) => `logo ${side}`),
    ...known(club.gripModel, (name) => name),
    ...known(club.wraps, (count) => (count > 0 ? `+${count}` : "")).filter((text) => text !== ""),
  ];
  const masses = [...known(club.headMassG, (g) => `head ${shown.mass(g)}`), ...known(club.totalMassG, (g) => `total ${shown.mass(g)}`)];
  const measured = club.measuredAt === null ? "never measured" : `measured ${ago(club.measuredAt, now)} on ${club.gauge ?? "an unnamed gauge"}`;
  const notes = facts.canSeeNotes ? known(club.note, (text) => text) : [];
  return [angles, build, masses, [measured], notes].filter((parts) => parts.length > 0).map((parts) => line(parts.join(", ")));
}

function numbers(club: SpecClub): { readonly [key: string]: Json } {
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg, lengthMm, swingWeightPoints, totalMassG, headMassG } = club;
  return {
    club: club.club,
    squaredLoftDeg,
    soledFaceDeg,
    seatedLieDeg,
    lengthMm,
    swingWeightPoints,
    totalMassG,
    headMassG,
    measuredAt: club.measuredAt,
  };
}

/** What is in the bag now: version, when, where, by whom, on the reader's own clock and in their own units. */
export function specCard(facts: SpecFacts, actor: Actor, now: Instant): Card {
  const { bag, version, validFrom, takenAt } = facts.live;
  const clubs = facts.wanted === null ? bag.clubs : bag.clubs.filter((club) => club.club === facts.wanted);
  const from = line(`Version ${version}, ${timeText(validFrom, now, actor.ownZone)} your time (${ago(validFrom, now)}), ${takenAt}, by ${facts.by}`);
  const rows = clubs.flatMap((club) => [shortLine(club, actor.lengthUnit), ...(facts.wanted === null ? [] : fullLines(club, facts, actor, now))]);
  const none = facts.wanted !== null && clubs.length === 0 ? [line(`No ${clubWords(facts.wanted)} in the bag.`)] : [];
  return card({
    kind: "spec",
    title: `${facts.player}, ${facts.hand}-handed${facts.wanted === null ? "" : `, ${clubWords(facts.wanted)}`}`,
    lines: [from, ...rows, ...none],
    data: { versionNumber: version, validFromAt: validFrom, clubs: clubs.map(numbers) },
  });
}
