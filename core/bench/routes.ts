import { clubFamilies, type OrderKind, orderKinds } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
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

/** The routes a shop may write anew: by how the club is put together where that matters. */
export const routeNames = [
  "build sleeve",
  "build readySleeve",
  "build bondedWood",
  "build iron",
  "build putter",
  "reshaft sleeve",
  "reshaft readySleeve",
  "reshaft bondedWood",
  "reshaft iron",
  "reshaft putter",
  "swap sleeve",
  "swap bondedWood",
  "swap iron",
  "swap putter",
  "turn",
  "regrip",
  "bend",
  "grind",
  "check",
  "repair",
  "stamp",
  "broke",
] as const;
export type RouteName = (typeof routeNames)[number];
export type RouteTables = Readonly<Record<RouteName, readonly RouteRow[]>>;

/** The routes of every kind of work until a shop writes its own. Common practice and our estimates, no source, as said beside each. */
export const defaultRoutes: RouteTables = {
  "build sleeve": adjustableBuild,
  "build readySleeve": readySleevedBuild,
  "build bondedWood": bondedWoodBuild,
  "build iron": ironBuild,
  "build putter": putterBuild,
  "reshaft sleeve": adjustableReshaft,
  "reshaft readySleeve": readySleevedReshaft,
  "reshaft bondedWood": bondedWoodReshaft,
  "reshaft iron": ironReshaft,
  "reshaft putter": putterReshaft,
  "swap sleeve": adjustableSwap,
  "swap bondedWood": bondedWoodSwap,
  "swap iron": ironSwap,
  "swap putter": putterSwap,
  turn,
  regrip,
  bend,
  grind,
  check,
  repair,
  stamp,
  broke,
};

function routeName(kind: OrderKind, construction: Construction): RouteName {
  switch (kind) {
    case "build":
    case "reshaft":
      return `${kind} ${construction}`;
    case "swap":
      return `swap ${construction === "readySleeve" ? "sleeve" : construction}`;
    default:
      return kind;
  }
}

/**
 * The steps of one club's work, from the first hand on a part to the player's hand.
 *
 * Minutes are medians of one club; a set of clubs is several jobs, whose stations are set up once: 4 to pitching wedge in
 * 83 minutes of work (common practice 75 to 90). The final check is the step `measure`,
 * the last step is always `walk`. A shaft on its sleeve skips tip and bond; a tipped one half of the tip's preparation, a used one costs its old
 * grip (our estimates, no source). For `broke` the route is that of a finished club; when there is none, ask for `build`.
 *
 * @param question - `adjustable` and a sleeve on the shaft count for woods and hybrids only
 * @param floors - minutes from the data sheets in force and the venue's walk; waits are never planned shorter
 * @param routes - the shop's tables, as `checkedRoutes` took them
 * @returns the steps in minutes
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @throws {DomainError} `quantity-unreadable` when the kind of work, the family or the state of the shaft is unknown
 * @see common practice, no source
 */
export function routeFor(question: RouteQuestion, floors: WaitFloors, routes: RouteTables = defaultRoutes): Route {
  oneOf(question.kind, orderKinds, "kind");
  oneOf(question.family, clubFamilies, "family");
  for (const [name, floorMin] of Object.entries(floors)) {
    inRange(floorMin, { field: name, unit: "min", min: 0, max: 10_080 });
  }
  const shaftState = oneOf(question.shaftState ?? "raw", shaftStates, "shaftState");
  const takesShaft = question.kind === "build" || question.kind === "reshaft";
  const rows = forShaftState(routes[routeName(question.kind, constructionOf(question))], takesShaft ? shaftState : "raw");
  return routeOf(rows, question.family, floors);
}
