import type { ClubComparison } from "../../../core/bag/compareClubs.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { Line } from "../../chat/types.ts";
import type { NearHead } from "../../flows/match/nearestHeads.ts";
import { line } from "../card.ts";
import { ago, shown } from "../shown.ts";
import { comparedWordsOf, rowsWords } from "./deltaWords.ts";
import { listWords, type MatchedClub, type MatchReader, type RankedFinished } from "./matchTypes.ts";

/** `backup, backups Bram Oxtoby, truck Plover`, `order 57, ready in Plover`, `order 57, out on test`. */
function whereWords({ twin: { where, onTest } }: RankedFinished): string {
  switch (where.kind) {
    case "ready":
      return `order ${where.order}, ready in ${where.truck}${onTest ? ", built for a test" : ""}`;
    case "out":
      return `order ${where.order}, out with the player on test`;
    case "drawer":
      return ["backup", where.place ?? "place not on record", ...(where.truck === null ? [] : [`truck ${where.truck}`])].join(", ");
  }
}

/** When the gauge last had a club. */
function measuredWords({ measuredAt, gauge }: SpecClub, { now }: MatchReader): string {
  return measuredAt === null ? "never measured, as written" : `measured ${ago(measuredAt, now)} on ${gauge ?? "an unnamed gauge"}`;
}

/** Both were measured, and not on one gauge. */
const areGaugesApart = (gamer: SpecClub, { measuredAt, gauge }: SpecClub): boolean =>
  gamer.measuredAt !== null && measuredAt !== null && (gauge === null || gauge !== gamer.gauge);

/** `changes 3 things: head, shaft, length: …`; nothing while one thing changes, or the club is no test. */
function changesWords({ twin, changes }: RankedFinished): readonly string[] {
  if (!twin.onTest || changes.length < 2) return [];
  const start = changes.includes("shaft") ? "; start from a shaft the player has played" : "";
  return [`changes ${changes.length} things: ${changes.join(", ")}: a comparison is worth most when one thing changes${start}`];
}

/** What was noted with the club, unless it stands there as its place. */
const noteWords = ({ club: { note }, where }: RankedFinished["twin"]): string | null =>
  note === null || (where.kind === "drawer" && where.place === note) ? null : `note: ${note}`;

const nothingCompared = ({ rows, differing }: ClubComparison): boolean => rows.length === 0 && differing.length === 0;

/** A finished club held against the gamer, the worst first. */
export function finishedLine(candidate: RankedFinished, { gamer, listed }: MatchedClub, reader: MatchReader): Line {
  const { twin, comparison } = candidate;
  const words = comparedWordsOf(gamer, twin.club, comparison, reader.unit);
  const ends = [
    ...changesWords(candidate),
    listWords(listed, twin.club.headModel),
    measuredWords(twin.club, reader),
    noteWords(twin),
    areGaugesApart(gamer, twin.club) ? "not on the gamer's gauge: angles compare on one gauge only" : null,
  ].filter((text) => text !== null);
  const deltas = nothingCompared(comparison) ? ["nothing is on record of both", ...words] : words;
  return line({ strong: whereWords(candidate) }, `: ${deltas.join(", ")}; ${ends.join("; ")}`);
}

const screwWords = (addedG: number | null): readonly string[] => (addedG === null || addedG === 0 ? [] : [`with ${shown.mass(addedG)} of screws`]);

const bentBy = (deg: number, more: string, less: string): readonly string[] =>
  shown.angle(Math.abs(deg)) === "0.0" ? [] : [`${shown.angle(Math.abs(deg))}° ${deg > 0 ? more : less}`];

/** `standard`, `bonded`, `bent 0.5° weaker, 0.4° flatter`. */
function settingWords({ choice: { mark, bend, bendWarned } }: NearHead): string {
  if (mark !== null) return mark;
  const by = bend === null ? [] : [...bentBy(bend.loftChangeDeg, "weaker", "stronger"), ...bentBy(bend.lieChangeDeg, "more upright", "flatter")];
  return by.length === 0 ? "bonded" : `bent ${by.join(" and ")}${bendWarned ? " (near the limit of its bends)" : ""}`;
}

/** `0417 Cairn stamped 9, D-7, standard`. */
export const headWords = (near: NearHead): string => {
  const { head } = near.choice;
  return [`${head.serial} ${head.model.name} stamped ${shown.stamp(head.stampedLoftDeg)}`, head.place, settingWords(near)].join(", ");
};

/** What is printed or shaped otherwise than on the gamer: `stamped 10.5 (gamer 9)`. */
function otherwise({ choice: { head } }: NearHead, { stampedLoftDeg, headModel, grind }: SpecClub): readonly string[] {
  return [
    ...(stampedLoftDeg === null || stampedLoftDeg === head.stampedLoftDeg ? [] : [`gamer stamped ${shown.stamp(stampedLoftDeg)}`]),
    ...(headModel === null || headModel === head.model.name ? [] : [`gamer a ${headModel}`]),
    ...(grind === null || head.model.grind === null || grind === head.model.grind ? [] : [`gamer's grind ${grind}`]),
  ];
}

/** A bare head at a mark held against the gamer, the worst first. */
export function headLine(near: NearHead, { gamer, listed }: MatchedClub, { unit }: MatchReader): Line {
  const list = listWords(listed, near.choice.head.model.name);
  const words = [...rowsWords(near.rows, unit), ...screwWords(near.addedG), ...otherwise(near, gamer)].join(", ");
  return line({ strong: `head ${headWords(near)}` }, `: ${words}${list === null ? "" : `; ${list}`}`);
}

/** The gamer with its age: what everything is held against. */
export function gamerLine(gamer: SpecClub, { unit, now }: MatchReader): Line {
  const { squaredLoftDeg, soledFaceDeg, lengthMm, swingWeightPoints, measuredAt, gauge } = gamer;
  const said = [
    gamer.outside ? "of another maker" : gamer.headModel,
    squaredLoftDeg === null ? null : `true ${shown.angle(squaredLoftDeg)}`,
    soledFaceDeg === null ? null : `face ${shown.face(soledFaceDeg)}`,
    lengthMm === null ? null : shown.length(lengthMm, unit),
    swingWeightPoints === null ? null : shown.swing(swingWeightPoints),
    gamer.shaftModel,
  ].filter((text) => text !== null);
  const age =
    measuredAt === null
      ? "never measured: the deltas rest on what was written"
      : `measured ${ago(measuredAt, now)} on ${gauge ?? "an unnamed gauge"}`;
  return line({ strong: "Gamer" }, ` ${[...said, age].join(", ")}`);
}
