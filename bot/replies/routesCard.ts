import type { RouteRow } from "../../core/bench/routeRows.ts";
import { type RouteName, type RouteTables, routeNames } from "../../core/bench/routes.ts";
import type { Card, Reply } from "../chat/types.ts";
import { card, line, note } from "./card.ts";

const shown = (minutes: number): string => String(Math.round(minutes * 100) / 100);
const handsOnMin = (rows: readonly RouteRow[]): number => rows.reduce((sum, { wait, min }) => sum + (wait === undefined ? min : 0), 0);

function rowText({ kind, min, after, wait, setUpShare }: RouteRow): string {
  const waits =
    wait === undefined ? "" : wait.sheet === undefined ? " wait" : ` wait, no less than the ${wait.sheet === "walkMin" ? "walk" : "sheet"} says`;
  const least = wait?.atLeastMin === undefined ? "" : `, at least ${shown(wait.atLeastMin)}`;
  const setUp = setUpShare === undefined ? "" : `, ${Math.round(setUpShare * 100)} % of it setting up`;
  return `${kind} ${shown(min)} min${waits}${least}${setUp}${after.length === 0 ? "" : `; after ${after.join(", ")}`}`;
}

/** Every route with its minutes of work. */
export function routesCard(routes: RouteTables, own: ReadonlySet<string>): Card {
  return card({
    kind: "routes",
    title: "Routes, in hands-on minutes",
    lines: [
      ...routeNames.map((name) => line(`${name}: ${shown(handsOnMin(routes[name]))}${own.has(name) ? ", your own" : ""}`)),
      line("One in full: /routes name=“build sleeve”. The lead changes a step: name, step=cut, minutes=2; step=default takes it back."),
    ],
    data: Object.fromEntries(routeNames.map((name) => [name, handsOnMin(routes[name])])),
  });
}

/** One route, row by row. */
export function routeCard(name: RouteName, rows: readonly RouteRow[], isOwn: boolean): Card {
  return card({
    kind: "route",
    title: `Route ${name}${isOwn ? ", your own" : ""}`,
    lines: rows.map((row) => line(rowText(row))),
    data: { handsOnMin: handsOnMin(rows), stepCount: rows.length },
  });
}

export const routeNotes = {
  unknown: (written: string): Reply => note("refusal", `No route ${written}`, "refusal", `There are: ${routeNames.join(", ")}. Nothing was changed.`),
  leadOnly: (): Reply => note("refusal", "The lead changes routes", "refusal", "Nothing was changed."),
  badMinutes: (written: string): Reply =>
    note("refusal", `${written === "" ? "No minutes" : written}: minutes from 0 to 600`, "refusal", "Such as: minutes=2.5. Nothing was changed."),
  noStep: (written: string, rows: readonly RouteRow[]): Reply =>
    note("refusal", `That route has no step ${written}`, "refusal", `It has: ${rows.map(({ kind }) => kind).join(", ")}. Nothing was changed.`),
  faults: (lines: readonly string[]): Reply => note("refusal", "The table cannot be taken", "refusal", ...lines.slice(0, 12), "Nothing was changed."),
};
