import { clubFamily } from "../kinds.ts";
import type { MeasuredHead } from "./parts.ts";
import type { Shortage, Target } from "./plan.ts";

const NEAREST_SHOWN = 3;

const named = (model: string, stampedLoftDeg: number | null) => (stampedLoftDeg === null ? model : `${model} ${stampedLoftDeg}`);

/** No head in the truck fits: the nearest of the same hand and family, in other trucks too, as model, stamp and serial. */
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
  return {
    part: "head",
    wanted: named(target.headModel ?? target.club, target.stampedLoftDeg),
    nearest: nearest.slice(0, NEAREST_SHOWN).map((head) => `${named(head.model.name, head.stampedLoftDeg)} ${head.serial}`),
  };
}
