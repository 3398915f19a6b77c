import type { LieAim } from "../../../core/head/aimOfLieError.ts";
import type { Hand } from "../../../core/kinds.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { directedInputs, sides } from "./directedInputs.ts";

export interface AimFacts {
  /** What the club is called; null for one that was typed. */
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly hand: Hand;
  readonly squaredLoftDeg: number;
  readonly lieErrorDeg: number;
  readonly aim: LieAim;
  readonly distance: { readonly mm: number; readonly unit: "yd" | "m"; readonly sidewaysLeftMm: number; readonly perDegreeMm: number };
}

const MM_PER_METRE = 1000;
const MM_PER_YARD = 914.4;
const FEET_PER_YARD = 3;

const side = (left: number): string => (left > 0 ? "left" : "right");

/** How far beside the target, in what the distance was written in. */
function beside(mm: number, unit: "yd" | "m"): string {
  const size = Math.abs(mm) / (unit === "m" ? MM_PER_METRE : MM_PER_YARD);
  return unit === "m" ? `${size.toFixed(1)} m` : `${size.toFixed(1)} yd (${Math.round(size * FEET_PER_YARD)} ft)`;
}

const along = (mm: number, unit: "yd" | "m"): string => `${Math.round(mm / (unit === "m" ? MM_PER_METRE : MM_PER_YARD))} ${unit}`;

/** What was written, its signs in words. */
export const aimInputs = (inputs: readonly Understood[]): readonly Understood[] => directedInputs(inputs, { "lie error": sides.lie });

/** Where a face looks when the club lies wrong at impact, and what that is at a distance. */
export function aimReply({ named, inputs, hand, squaredLoftDeg, lieErrorDeg, aim, distance }: AimFacts): Reply {
  const looks = shown.angle(Math.abs(aim.aimLeftDeg));
  const isStraight = looks === "0.0";
  const looksWords = isStraight ? "at the target" : `${looks}° ${side(aim.aimLeftDeg)}`;
  const loftLostDeg = squaredLoftDeg - aim.playedLoftDeg;
  return reply(
    calcCard({
      view: "aim",
      title: `${named === null ? "Face" : `${named}: face`} ${looksWords}`,
      inputs: aimInputs(inputs),
      lines: [
        line({ strong: `The face looks ${looksWords}${isStraight ? "" : " of the target"}` }),
        ...(isStraight
          ? []
          : [line(`At ${along(distance.mm, distance.unit)}: ${beside(distance.sidewaysLeftMm, distance.unit)} ${side(aim.aimLeftDeg)}`)]),
        line(`Squared loft ${shown.angle(squaredLoftDeg)}, played ${shown.angle(aim.playedLoftDeg)} in the plane it looks`),
        line(`A degree of lie is ${beside(distance.perDegreeMm, distance.unit)} there`),
      ],
      leavesOut:
        "this is where the face looks, not where the ball flies. A ball starts about 85 % of the way there with a driver, 75 % with irons, on a straight path; turf twists the head, the shaft droops at impact, a wood's face bulges.",
      data: {
        hand,
        squaredLoftDeg,
        lieErrorDeg,
        aimLeftDeg: aim.aimLeftDeg,
        playedLoftDeg: aim.playedLoftDeg,
        loftLostDeg,
        distanceMm: distance.mm,
        sidewaysLeftMm: distance.sidewaysLeftMm,
        sidewaysPerDegreeMm: distance.perDegreeMm,
      },
    }),
  );
}
