import type { Attitude } from "../../../core/head/attitude.ts";
import type { Line } from "../../chat/types.ts";
import { line } from "../card.ts";
import { shown } from "../shown.ts";
import { sides } from "./directedInputs.ts";
import type { SleeveFacts, SleeveRow } from "./sleeveFacts.ts";

/** How many marks are shown after the nearest. */
export const RUNNERS_UP = 2;

type Ranked = SleeveFacts["nearest"][number];
type Miss = Ranked["misses"][number];

/** Squared loft, soled face and lie of a mark in short: `8.2 true, 1.9 open, lie 57.0`. */
export const attitudeWords = ({ squaredLoftDeg, soledFaceDeg, seatedLieDeg }: Attitude): string =>
  `${shown.angle(squaredLoftDeg)} true, ${shown.face(soledFaceDeg)}, lie ${shown.angle(seatedLieDeg)}`;

const wayOff: Readonly<Record<Miss["reading"], readonly [string, string]>> = {
  squaredLoftDeg: sides.loft,
  soledFaceDeg: ["more open", "more closed"],
  seatedLieDeg: ["more upright", "flatter"],
};

function missWords({ reading, wantedDeg, gotDeg }: Miss): string {
  const [more, less] = wayOff[reading];
  return `${shown.angle(Math.abs(gotDeg - wantedDeg))} ${gotDeg > wantedDeg ? more : less}`;
}

const within = ({ misses }: Ranked): string => (misses.length === 0 ? "within tolerance" : `${misses.map(missWords).join(", ")} than wanted`);

/** The nearest mark, what it misses, what turning to it does, and the runners-up. */
export function nearestLines({ nearest, rows, fromMark }: SleeveFacts, turnWords: (row: SleeveRow) => string): readonly Line[] {
  const [best, ...others] = nearest;
  const row = rows.find(({ mark }) => mark === best?.mark);
  if (best === undefined || row === undefined) return [];
  const turn =
    best.mark === fromMark
      ? "It stands there: nothing to turn"
      : `Turned there from ${fromMark}: ${turnWords(row)}. Many players refuse a turned sleeve`;
  return [
    line({ strong: `${best.mark}: ` }, attitudeWords(best.attitude)),
    line(`That is ${within(best)}`),
    line(turn),
    ...others.slice(0, RUNNERS_UP).map((next) => line(`Then ${next.mark}: ${attitudeWords(next.attitude)}; ${within(next)}`)),
  ];
}
