import { clubFamilies, type OrderKind, orderKinds } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { floorsOf } from "../rules/floorsOf.ts";
import { type Route, type RouteQuestion, shaftStates, type WaitFloors } from "./benchTypes.ts";
import { adjustableBuild, bondedWoodBuild, ironBuild, putterBuild } from "./buildRoutes.ts";
import { forShaftState, readySleevedBuild, readySleevedReshaft } from "./preparedShaftRoutes.ts";
import { adjustableReshaft, bondedWoodReshaft, bondedWoodSwap, ironReshaft, ironSwap, putterReshaft, putterSwap } from "./pulledShaftRoutes.ts";
import { type RouteRow, routeOf } from "./routeRows.ts";
import { adjustableSwap, bend, broke, check, grind, regrip, repair, stamp, turn } from "./serviceRoutes.ts";

/**
 * The floors in force until a shop writes those of its own products' data sheets: a quick sleeve adhesive, warmed, a grip
 * blown on with air, and 2 min to the range, which each event's venue replaces. Common practice, no source.
 */
export const defaultFloors: WaitFloors = floorsOf({ adhesive: "quickEpoxy", gripMethod: "air", walkMin: 2 });

/** How a club is put together decides its route. */
type Construction = "sleeve" | "readySleeve" | "bondedWood" | "iron" | "putter";

function constructionOf(question: RouteQuestion): Construction {
  if (question.family === "iron" || question.family === "wedge") return "iron";
  if (question.family === "putter") return "putter";
  if (!question.adjustable) return "bondedWood";
  return question.shaftState === "sleeved" || (question.shaftState === "used" && question.sleeveOn === true) ? "readySleeve" : "sleeve";
}

const builds: Readonly<Record<Construction, readonly RouteRow[]>> = {
  sleeve: adjustableBuild,
  readySleeve: readySleevedBuild,
  bondedWood: bondedWoodBuild,
  iron: ironBuild,
  putter: putterBuild,
};

const reshafts: Readonly<Record<Construction, readonly RouteRow[]>> = {
  sleeve: adjustableReshaft,
  readySleeve: readySleevedReshaft,
  bondedWood: bondedWoodReshaft,
  iron: ironReshaft,
  putter: putterReshaft,
};

const swaps: Readonly<Record<Construction, readonly RouteRow[]>> = {
  sleeve: adjustableSwap,
  readySleeve: adjustableSwap,
  bondedWood: bondedWoodSwap,
  iron: ironSwap,
  putter: putterSwap,
};

const forAll = (rows: readonly RouteRow[]): Readonly<Record<Construction, readonly RouteRow[]>> => ({
  sleeve: rows,
  readySleeve: rows,
  bondedWood: rows,
  iron: rows,
  putter: rows,
});

const routes: Readonly<Record<OrderKind, Readonly<Record<Construction, readonly RouteRow[]>>>> = {
  build: builds,
  swap: swaps,
  reshaft: reshafts,
  turn: forAll(turn),
  regrip: forAll(regrip),
  bend: forAll(bend),
  grind: forAll(grind),
  check: forAll(check),
  repair: forAll(repair),
  stamp: forAll(stamp),
  broke: forAll(broke),
};

/** Share of an iron's hands-on minutes that is setting a station up. */
const SETTING_UP = 0.35;

/** One iron's share when a set goes from station to station together: 35 % of the minutes is divided by the set. */
function builtTogether(rows: readonly RouteRow[], clubs: number): readonly RouteRow[] {
  const share = 1 - SETTING_UP + SETTING_UP / clubs;
  return rows.map((row) => (row.wait === undefined ? { ...row, min: row.min * share } : row));
}

/**
 * The steps of one club's work, from the first hand on a part to the player's hand.
 *
 * Minutes are medians of one club; a set of clubs is several jobs, and one of n irons built together takes 65 % + 35 %/n of
 * a single one's minutes, which makes 4 to pitching wedge 86 (common practice 75 to 90). The final check is the step `measure`,
 * the last step is always `walk`. A shaft on its sleeve skips tip and bond; a tipped one half of the tip's preparation, a used one costs its old
 * grip (our estimates, no source). For `broke` the route is that of a finished club; when there is none, ask for `build`.
 *
 * @param question - `adjustable` and a sleeve on the shaft count for woods and hybrids only, `clubsInSet` for built irons and wedges
 * @param floors - minutes from the data sheets in force and the venue's walk; waits are never planned shorter
 * @returns the steps in minutes
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @throws {DomainError} `quantity-unreadable` when the kind of work, the family or the state of the shaft is unknown
 * @see common practice, no source
 */
export function routeFor(question: RouteQuestion, floors: WaitFloors): Route {
  oneOf(question.kind, orderKinds, "kind");
  oneOf(question.family, clubFamilies, "family");
  const clubsInSet = wholeNumber(question.clubsInSet ?? 1, { field: "clubsInSet", min: 1, max: 14 });
  for (const [name, floorMin] of Object.entries(floors)) {
    inRange(floorMin, { field: name, unit: "min", min: 0, max: 10_080 });
  }
  const shaftState = oneOf(question.shaftState ?? "raw", shaftStates, "shaftState");
  const construction = constructionOf(question);
  const takesShaft = question.kind === "build" || question.kind === "reshaft";
  const rows = forShaftState(routes[question.kind][construction], takesShaft ? shaftState : "raw");
  return routeOf(question.kind === "build" && construction === "iron" ? builtTogether(rows, clubsInSet) : rows, floors);
}
