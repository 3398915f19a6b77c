import { type RouteRow, walkAfter } from "./routeRows.ts";

/** A hosel bond is not turned, cut or bent sooner, however quick the adhesive (common practice, no source). */
export const hoselSet: RouteRow = { kind: "bondSet", min: 20, after: ["bond"], wait: { sheet: "adhesiveHandleMin", atLeastMin: 20 } };

const sleeveSet: RouteRow = { kind: "bondSet", min: 6, after: ["bond"], wait: { sheet: "adhesiveHandleMin" } };
const gripSet: RouteRow = { kind: "gripSet", min: 4, after: ["grip"], wait: { sheet: "gripHandleMin" } };
const sign: RouteRow = { kind: "sign", min: 0.5, after: ["measure", "gripSet"] };

/** A wood on a loft sleeve, row by row as the bench works; common practice, no source. */
export const adjustableBuild: readonly RouteRow[] = [
  { kind: "pullParts", min: 1, after: [] },
  { kind: "tipPrepare", min: 1.5, after: ["pullParts"] },
  { kind: "dryFit", min: 0.5, after: ["tipPrepare"] },
  { kind: "bond", min: 1, after: ["dryFit"] },
  sleeveSet,
  { kind: "pullHead", min: 1.5, after: [] },
  { kind: "gaugeHead", min: 1.5, after: ["pullHead"] },
  { kind: "layOutGrip", min: 1, after: [] },
  { kind: "headOn", min: 0.5, after: ["bondSet", "gaugeHead"] },
  { kind: "cut", min: 1.5, after: ["headOn"] },
  { kind: "dryWeigh", min: 1, after: ["cut", "layOutGrip"] },
  { kind: "grip", min: 1.5, after: ["dryWeigh"] },
  gripSet,
  { kind: "measure", min: 2.5, after: ["grip"] },
  sign,
  walkAfter("sign"),
];

/** A wood bonded into its hosel: 30 to 40 minutes of work and the adhesive; common practice, no source. */
export const bondedWoodBuild: readonly RouteRow[] = [
  { kind: "pullParts", min: 2, after: [] },
  { kind: "pullHead", min: 2, after: [] },
  { kind: "gaugeHead", min: 3, after: ["pullHead"] },
  { kind: "tipPrepare", min: 4, after: ["pullParts"] },
  { kind: "dryFit", min: 3, after: ["tipPrepare", "pullHead"] },
  { kind: "dryWeigh", min: 3, after: ["dryFit", "gaugeHead"] },
  { kind: "bond", min: 3, after: ["dryWeigh"] },
  hoselSet,
  { kind: "layOutGrip", min: 1, after: [] },
  { kind: "turnFerrule", min: 4, after: ["bondSet"] },
  { kind: "cut", min: 3, after: ["turnFerrule"] },
  { kind: "grip", min: 3, after: ["cut", "layOutGrip"] },
  gripSet,
  { kind: "measure", min: 3.5, after: ["grip"] },
  sign,
  walkAfter("sign"),
];

/** Share of an iron's hands-on minutes that is setting a station up: 4 to pitching wedge in 75 to 90 minutes, one alone in 15 to 18. */
const SETTING_UP = 0.35;

/** The rows of a club that is built in sets: each station is set up once for all. */
const inSets = (rows: readonly RouteRow[]): readonly RouteRow[] =>
  rows.map((row) => (row.wait === undefined ? { ...row, setUpShare: SETTING_UP } : row));

/** One iron or wedge: 15 to 18 minutes of work and the set, bent after the cure; common practice, no source. */
export const ironBuild: readonly RouteRow[] = inSets([
  { kind: "pullParts", min: 1, after: [] },
  { kind: "pullHead", min: 1, after: [] },
  { kind: "gaugeHead", min: 1, after: ["pullHead"] },
  { kind: "tipPrepare", min: 1.5, after: ["pullParts"] },
  { kind: "dryWeigh", min: 2, after: ["tipPrepare", "gaugeHead"] },
  { kind: "bond", min: 1.5, after: ["dryWeigh"] },
  hoselSet,
  { kind: "layOutGrip", min: 0.5, after: [] },
  { kind: "turnFerrule", min: 1.5, after: ["bondSet"] },
  { kind: "cut", min: 1.5, after: ["turnFerrule"] },
  { kind: "grip", min: 1.5, after: ["cut", "layOutGrip"] },
  gripSet,
  { kind: "bend", min: 2, after: ["bondSet", "grip"] },
  { kind: "measure", min: 2, after: ["bend"] },
  sign,
  walkAfter("sign"),
]);

/** One putter: the iron's minutes, without a ferrule and with a fit to the sight line; our estimate, no source. */
export const putterBuild: readonly RouteRow[] = [
  { kind: "pullParts", min: 1, after: [] },
  { kind: "pullHead", min: 1, after: [] },
  { kind: "gaugeHead", min: 1, after: ["pullHead"] },
  { kind: "tipPrepare", min: 1.5, after: ["pullParts"] },
  { kind: "dryFit", min: 1, after: ["tipPrepare", "pullHead"] },
  { kind: "dryWeigh", min: 1.5, after: ["dryFit", "gaugeHead"] },
  { kind: "bond", min: 1.5, after: ["dryWeigh"] },
  hoselSet,
  { kind: "layOutGrip", min: 0.5, after: [] },
  { kind: "cut", min: 1.5, after: ["bondSet"] },
  { kind: "grip", min: 2, after: ["cut", "layOutGrip"] },
  gripSet,
  { kind: "bend", min: 2, after: ["bondSet", "grip"] },
  { kind: "measure", min: 2, after: ["bend"] },
  sign,
  walkAfter("sign"),
];
