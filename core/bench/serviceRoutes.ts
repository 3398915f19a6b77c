import { hoselSet } from "./buildRoutes.ts";
import { pulling } from "./pulledShaftRoutes.ts";
import { type RouteRow, walkAfter } from "./routeRows.ts";

const signed: readonly RouteRow[] = [{ kind: "sign", min: 0.5, after: ["measure"] }, walkAfter("sign")];

/** A head on a loft sleeve changed: 4 to 6 minutes; common practice, no source. */
export const adjustableSwap: readonly RouteRow[] = [
  { kind: "pullHead", min: 1, after: [] },
  { kind: "gaugeHead", min: 1, after: ["pullHead"] },
  { kind: "removeOld", min: 0.5, after: [] },
  { kind: "headOn", min: 0.5, after: ["gaugeHead", "removeOld"] },
  { kind: "measure", min: 1.5, after: ["headOn"] },
  ...signed,
];

/** The sleeve turned in 1 minute (common practice, no source), then read at its new mark. */
export const turn: readonly RouteRow[] = [{ kind: "turnSleeve", min: 1, after: [] }, { kind: "measure", min: 1, after: ["turnSleeve"] }, ...signed];

/** One grip: 5 minutes and 10 to set; common practice, no source. */
export const regrip: readonly RouteRow[] = [
  { kind: "layOutGrip", min: 0.5, after: [] },
  { kind: "removeOld", min: 1.5, after: [] },
  { kind: "grip", min: 1.5, after: ["removeOld", "layOutGrip"] },
  { kind: "gripSet", min: 10, after: ["grip"], wait: { sheet: "gripHandleMin" } },
  { kind: "measure", min: 1, after: ["grip"] },
  { kind: "sign", min: 0.5, after: ["measure", "gripSet"] },
  walkAfter("sign"),
];

/** One club's loft and lie as found, bent, as left: about 1.5 and 2 to 3 a bend; common practice, no source. */
export const bend: readonly RouteRow[] = [
  { kind: "inspect", min: 0.75, after: [] },
  { kind: "bend", min: 2.5, after: ["inspect"] },
  { kind: "measure", min: 0.75, after: ["bend"] },
  ...signed,
];

/** A sole ground for firm turf: 10 to 20 minutes, mass and bounce measured after; common practice, no source. */
export const grind: readonly RouteRow[] = [
  { kind: "inspect", min: 1, after: [] },
  { kind: "soleWork", min: 15, after: ["inspect"] },
  { kind: "measure", min: 2, after: ["soleWork"] },
  ...signed,
];

/** One club of a bag check: nine in 12 to 15 minutes; common practice, no source. */
export const check: readonly RouteRow[] = [
  { kind: "inspect", min: 0.25, after: [] },
  { kind: "measure", min: 1, after: ["inspect"] },
  { kind: "sign", min: 0.25, after: ["measure"] },
  walkAfter("sign"),
];

/** The commonest repair, a loose head or sleeve: pulled, cleaned, bonded anew; our estimate, no source. */
export const repair: readonly RouteRow[] = [
  { kind: "inspect", min: 2, after: [] },
  ...pulling.map((row) => (row.kind === "removeOld" ? { ...row, after: ["inspect" as const] } : row)),
  { kind: "tipPrepare", min: 1.5, after: ["coolDown"] },
  { kind: "bond", min: 1.5, after: ["tipPrepare"] },
  hoselSet,
  { kind: "turnFerrule", min: 1.5, after: ["bondSet"] },
  { kind: "measure", min: 2, after: ["turnFerrule"] },
  ...signed,
];

/** Stamping 10 minutes and 20 to 30 for the paint; common practice, no source. */
export const stamp: readonly RouteRow[] = [
  { kind: "stampText", min: 10, after: [] },
  { kind: "paintDry", min: 25, after: ["stampText"], wait: { atLeastMin: 20 } },
  { kind: "measure", min: 0.5, after: ["paintDry"] },
  ...signed,
];

/** Broken in a round: the nearest finished club is taken out, looked over and read; our estimate, no source. */
export const broke: readonly RouteRow[] = [
  { kind: "pullParts", min: 1, after: [] },
  { kind: "inspect", min: 0.5, after: ["pullParts"] },
  { kind: "measure", min: 1, after: ["inspect"] },
  ...signed,
];
