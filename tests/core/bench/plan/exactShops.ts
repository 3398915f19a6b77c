import type { Project } from "../../../../core/bench/plan/project.ts";
import { readJobShop } from "../../../bench/schedule/readSets.ts";

/** Whole numbers below a bound, the same for a seed (Park & Miller's minimal standard generator). */
function wholeNumbers(seed: number): (below: number) => number {
  let state = seed * 7919 + 1;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

/** A job shop of 3 or 4 jobs on 2 or 3 machines: each job on every machine once, in an order of its own. */
export function smallShop(seed: number): Project {
  const below = wholeNumbers(seed);
  const jobs = 3 + below(2);
  const machines = 2 + below(2);
  const rows = Array.from({ length: jobs }, () => {
    const order = Array.from({ length: machines }, (_, machine) => ({ machine, key: below(1000) })).sort((a, b) => a.key - b.key);
    return order.flatMap(({ machine }) => [machine, 1 + below(12)]);
  });
  return readJobShop([jobs, machines, ...rows.flat()]);
}

/** A shop of 2 or 3 jobs on 2 machines, its jobs due at some time and of some weight. */
export function dueShop(seed: number): Project {
  const below = wholeNumbers(seed);
  const jobs = 2 + below(2);
  const rows = Array.from({ length: jobs }, () => {
    const first = below(2);
    return [first, 1 + below(12), 1 - first, 1 + below(12)];
  });
  const { activities, ...shop } = readJobShop([jobs, 2, ...rows.flat()]);
  const due = () => ({ dueMs: 5 + below(20), weight: 1 + below(5) });
  return { ...shop, activities: activities.map((one, at) => (at % 2 === 1 ? { ...one, due: due() } : one)) };
}

/** A shop as a mixed-integer programme in the LP format: starts, and for two activities on one machine which comes first. */
export function disjunctiveProgramme({ activities }: Project): string {
  const latest = activities.reduce((sum, { durationMs }) => sum + durationMs, 0);
  const ends = activities.map(({ durationMs }, at) => `last - s${at} >= ${durationMs}`);
  const chains = activities.flatMap(({ before }, at) => before.map((one) => `s${at} - s${one} >= ${activities[one]?.durationMs ?? 0}`));
  const pairs = activities.flatMap(({ demands }, a) =>
    activities.flatMap((other, b) => (a < b && demands.some((demand, machine) => demand + (other.demands[machine] ?? 0) > 1) ? [{ a, b }] : [])),
  );
  const eitherOr = pairs.flatMap(({ a, b }) => [
    `s${b} - s${a} - ${latest} y${a}_${b} >= ${(activities[a]?.durationMs ?? 0) - latest}`,
    `s${a} - s${b} + ${latest} y${a}_${b} >= ${activities[b]?.durationMs ?? 0}`,
  ]);
  const rules = [...ends, ...chains, ...eitherOr].map((rule, at) => ` c${at}: ${rule}`);
  const choices = pairs.map(({ a, b }) => ` y${a}_${b}`);
  return ["Minimize", " obj: last", "Subject To", ...rules, "Binary", ...choices, "End"].join("\n");
}

function orders(places: readonly number[]): readonly (readonly number[])[] {
  return places.length === 0 ? [[]] : places.flatMap((first) => orders(places.filter((one) => one !== first)).map((rest) => [first, ...rest]));
}

/** What one order of the activities costs when each starts at the first whole moment that is free; infinite when it breaks precedence. */
function tardinessOf({ activities }: Project, order: readonly number[]): number {
  const placed: { readonly at: number; readonly machine: number; readonly from: number; readonly to: number }[] = [];
  let cost = 0;
  for (const at of order) {
    const activity = activities[at];
    if (activity === undefined) continue;
    const { before, durationMs, demands, due } = activity;
    let from = Math.max(0, ...before.map((one) => placed.find((other) => other.at === one)?.to ?? Number.POSITIVE_INFINITY));
    if (from === Number.POSITIVE_INFINITY) return from;
    const machine = demands.indexOf(1);
    const isTaken = (): boolean => placed.some((other) => other.machine === machine && other.from < from + durationMs && from < other.to);
    while (isTaken()) from += 1;
    placed.push({ at, machine, from, to: from + durationMs });
    if (due !== null) cost += due.weight * (Math.max(0, from + durationMs - due.dueMs) + (from + durationMs) / 1000);
  }
  return cost;
}

/** The least weighted tardiness, with a thousandth of the weighted ends: every order of the activities is tried. */
export function leastTardiness(project: Project): number {
  return Math.min(...orders(project.activities.map((_, at) => at)).map((order) => tardinessOf(project, order)));
}
