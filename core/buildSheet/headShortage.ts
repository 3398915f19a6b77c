import { clubFamily } from "../kinds.ts";
import { foundHead } from "./foundHead.ts";
import type { MeasuredHead } from "./parts.ts";
import type { FoundHead, Shortage, Target } from "./plan.ts";

const NEAREST_SHOWN = 3;

const named = (model: string, stampedLoftDeg: number | null) => (stampedLoftDeg === null ? model : `${model} ${stampedLoftDeg}`);

const inWords = ({ model, stampedLoftDeg, serial, place, here }: FoundHead) =>
  `${named(model, stampedLoftDeg)} ${serial}${here ? "" : ` (${place})`}`;

/**
 * No head in the truck fits: the nearest of the same hand and family as model, stamp and serial, those that do not lie
 * here with their place.
 */
export function headShortage(target: Target, heads: readonly MeasuredHead[]): Shortage {
  const family = clubFamily(target.club);
  const wantedLoftDeg = target.squaredLoftDeg ?? target.stampedLoftDeg;
  const offDeg = (head: MeasuredHead) => (wantedLoftDeg === null ? 0 : Math.abs(head.soledLoftDeg - wantedLoftDeg));
  const otherModel = (head: MeasuredHead) => Number(head.model.name !== target.headModel);
  const otherGrind = (head: MeasuredHead) => Number(target.grind !== null && head.model.grind !== target.grind);
  const nearest = heads
    .filter((head) => head.hand === target.hand && (family === null || head.model.family === family))
    .sort(
      (one, other) =>
        otherModel(one) - otherModel(other) ||
        otherGrind(one) - otherGrind(other) ||
        offDeg(one) - offDeg(other) ||
        Number(other.here) - Number(one.here) ||
        (one.serial < other.serial ? -1 : 1),
    );
  const found = nearest.slice(0, NEAREST_SHOWN).map(foundHead);
  return { part: "head", wanted: named(target.headModel ?? target.club, target.stampedLoftDeg), nearest: found.map(inWords), heads: found };
}
