import type { ClubFamily } from "../kinds.ts";
import type { Route, RouteStep, Skill, Station, StepKind, WaitFloors } from "./benchTypes.ts";

/**
 * One row of a route's table. A row with `wait` takes no technician and at least what its data sheet or practice asks;
 * `setUpShare` of a row's minutes is setting its station up, done once for a series of clubs.
 */
export interface RouteRow {
  readonly kind: StepKind;
  readonly min: number;
  readonly after: readonly StepKind[];
  readonly wait?: { readonly sheet?: keyof WaitFloors; readonly atLeastMin?: number };
  readonly setUpShare?: number;
}

const stationOf: Readonly<Record<StepKind, Station>> = {
  pullParts: "bench",
  tipPrepare: "bench",
  dryFit: "bench",
  bond: "bonding",
  bondSet: "bonding",
  gaugeHead: "loftLie",
  pullHead: "bench",
  layOutGrip: "bench",
  headOn: "bench",
  cut: "cutter",
  dryWeigh: "scale",
  grip: "gripping",
  gripSet: "gripping",
  measure: "loftLie",
  sign: "bench",
  walk: "walk",
  removeOld: "bench",
  coolDown: "bench",
  turnFerrule: "bench",
  bend: "loftLie",
  turnSleeve: "bench",
  stampText: "marking",
  paintDry: "marking",
  soleWork: "bench",
  inspect: "bench",
};

/** Every step there is. */
export const stepKinds = Object.keys(stationOf) as readonly StepKind[];

/**
 * The way out of the truck, last in every route. Whoever collects the club walks, so that no technician is taken.
 */
export const walkAfter = (...after: readonly StepKind[]): RouteRow => ({ kind: "walk", min: 0, after, wait: { sheet: "walkMin" } });

/** A route's rows without some kinds: what came after one of them comes after what that one came after. */
export function withoutKinds(rows: readonly RouteRow[], dropped: readonly StepKind[]): readonly RouteRow[] {
  const before = (kind: StepKind): readonly StepKind[] =>
    dropped.includes(kind) ? (rows.find((row) => row.kind === kind)?.after ?? []).flatMap(before) : [kind];
  return rows.filter((row) => !dropped.includes(row.kind)).map((row) => ({ ...row, after: [...new Set(row.after.flatMap(before))] }));
}

/** What a step asks of a technician; a bonded wood is bent by who has learned it. */
function skillFor(kind: StepKind, family: ClubFamily): Skill | null {
  switch (kind) {
    case "soleWork":
      return "grinding";
    case "stampText":
      return "stamping";
    case "bend":
      return family === "driver" || family === "fairway" || family === "hybrid" ? "woodBending" : null;
    default:
      return null;
  }
}

function routeStep(row: RouteRow, family: ClubFamily, floors: WaitFloors): RouteStep {
  const sheetMin = row.wait?.sheet === undefined ? 0 : floors[row.wait.sheet];
  const floorMin = Math.max(sheetMin, row.wait?.atLeastMin ?? 0);
  const { kind, after } = row;
  const unattended = row.wait !== undefined;
  const setUp = unattended || row.setUpShare === undefined ? {} : { setUpMin: row.min * row.setUpShare };
  return {
    kind,
    medianMin: Math.max(row.min, floorMin),
    unattended,
    floorMin,
    station: stationOf[kind],
    after,
    skill: skillFor(kind, family),
    ...setUp,
  };
}

/** The route of some rows under the floors in force: waits at least as long as their floor, playable floors for what is bonded and gripped. */
export function routeOf(rows: readonly RouteRow[], family: ClubFamily, floors: WaitFloors): Route {
  const steps = rows.map((row) => routeStep(row, family, floors));
  const setMin = (kind: StepKind): number | null => steps.find((step) => step.kind === kind)?.floorMin ?? null;
  const bondMin = setMin("bondSet");
  const gripMin = setMin("gripSet");
  return {
    steps,
    playableAfterBondMin: bondMin === null ? 0 : Math.max(floors.adhesivePlayMin, bondMin),
    playableAfterGripMin: gripMin === null ? 0 : Math.max(floors.gripPlayMin, gripMin),
  };
}
