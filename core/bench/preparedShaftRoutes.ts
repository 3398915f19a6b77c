import type { RouteQuestion, StepKind } from "./benchTypes.ts";
import { adjustableBuild } from "./buildRoutes.ts";
import { type RouteRow, withoutKinds } from "./routeRows.ts";

const sleeveBonding: readonly StepKind[] = ["tipPrepare", "dryFit", "bond", "bondSet"];

/** The shaft lies there with its sleeve on: parts, head, cut and grip. */
export const readySleevedBuild: readonly RouteRow[] = withoutKinds(adjustableBuild, sleeveBonding);

/** The same in place of the old shaft, which comes off with its screw. */
export const readySleevedReshaft: readonly RouteRow[] = [
  { kind: "removeOld", min: 0.5, after: [] },
  ...withoutKinds(readySleevedBuild, ["pullHead"]).map((row) =>
    row.kind === "headOn" || row.kind === "gaugeHead" ? { ...row, after: [...row.after, "removeOld" as const] } : row,
  ),
];

/** Share of preparing a tip that is trimming it, the rest abrading and wiping; our estimate, no source. */
const TRIMMING = 0.5;
/** The old grip off a used shaft, as long as for a regrip; its tip is cleaned in the minutes of trimming. Our estimate, no source. */
const OLD_GRIP_MIN = 1.5;

/** A used shaft loses its grip before anything else is done to it: beside the old shaft of the club, where there is one. */
function withOldGripOff(rows: readonly RouteRow[]): readonly RouteRow[] {
  if (rows.some(({ kind }) => kind === "removeOld")) {
    return rows.map((row) => (row.kind === "removeOld" ? { ...row, min: row.min + OLD_GRIP_MIN } : row));
  }
  return rows.flatMap((row): readonly RouteRow[] =>
    row.kind === "pullParts"
      ? [row, { kind: "removeOld", min: OLD_GRIP_MIN, after: ["pullParts"] }]
      : [{ ...row, after: row.after.map((kind) => (kind === "pullParts" ? "removeOld" : kind)) }],
  );
}

/** The rows of a club that gets a shaft, as its shaft was prepared before; what a sleeve saves is a route by itself. */
export function forShaftState(rows: readonly RouteRow[], state: NonNullable<RouteQuestion["shaftState"]>): readonly RouteRow[] {
  if (state === "tipped") {
    return rows.map((row) => (row.kind === "tipPrepare" ? { ...row, min: row.min * (1 - TRIMMING) } : row));
  }
  return state === "used" ? withOldGripOff(rows) : rows;
}
