import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Activity, Project } from "../../../core/bench/plan/project.ts";

/** A published project and how soon it can end, as proven. */
export interface Instance {
  readonly name: string;
  readonly project: Project;
  readonly optimum: number;
}

const provenShops: Readonly<Record<string, number>> = { ft06: 55, ft10: 930, ft20: 1165, la01: 666, la02: 655, la03: 597, la04: 590, la05: 593 };

/** The numbers of a file, its lines of remarks left out. */
const numbersOf = (path: string): readonly number[] => (readFileSync(path, "utf8").replace(/^#.*$/gm, "").match(/-?\d+/g) ?? []).map(Number);

const optimaFile = (folder: string): string => join(folder, "rcpsp-j30", "optimum.txt");
const shopFile = (folder: string, name: string): string => join(folder, "jobshop", name);

/** The rows of the optima: parameter, instance, least makespan. */
function j30Rows(folder: string): readonly { readonly name: string; readonly path: string; readonly optimum: number }[] {
  const numbers = numbersOf(optimaFile(folder));
  return Array.from({ length: Math.floor(numbers.length / 3) }, (_, row) => {
    const [parameter = 0, instance = 0, optimum = 0] = numbers.slice(3 * row, 3 * row + 3);
    const name = `j30_${parameter}_${instance}`;
    return { name, path: join(folder, "rcpsp-j30", `${name}.rcp`), optimum };
  });
}

/** The first file a folder of published sets lacks, or null when it has all of them. */
export function missingFile(folder: string): string | null {
  const shops = Object.keys(provenShops).map((name) => shopFile(folder, name));
  const projects = existsSync(optimaFile(folder)) ? j30Rows(folder).map(({ path }) => path) : [];
  return [optimaFile(folder), ...projects, ...shops].find((path) => !existsSync(path)) ?? null;
}

const activity = (durationMs: number, demands: readonly number[], before: readonly number[], group: number): Activity => ({
  durationMs,
  demands,
  before,
  releaseMs: 0,
  due: null,
  byHand: false,
  underWay: false,
  group,
});

/** Patterson layout: counts, capacities, then per activity its duration, demands, and successors counted from 1. */
function readPatterson(path: string): Project {
  const numbers = numbersOf(path);
  let at = 0;
  const next = (): number => numbers[at++] ?? Number.NaN;
  const count = next();
  const resources = next();
  const capacities = Array.from({ length: resources }, next);
  const before: number[][] = Array.from({ length: count }, () => []);
  const activities = before.map((earlier, place) => {
    const durationMs = next();
    const demands = Array.from({ length: resources }, next);
    const followers = Array.from({ length: next() }, next);
    for (const follower of followers) before[follower - 1]?.push(place);
    return activity(durationMs, demands, earlier, place);
  });
  return { activities, capacities, open: null };
}

/** The standard layout of a job shop: jobs and machines, then per job its machines and durations in turn. */
export function readJobShop(numbers: readonly number[]): Project {
  const [jobs = 0, machines = 0, ...rest] = numbers;
  const activities = Array.from({ length: jobs * machines }, (_, place) => {
    const [machine = 0, durationMs = 0] = rest.slice(2 * place, 2 * place + 2);
    const demands = Array.from({ length: machines }, (_unused, one) => Number(one === machine));
    return activity(durationMs, demands, place % machines === 0 ? [] : [place - 1], Math.floor(place / machines));
  });
  return { activities, capacities: Array.from({ length: machines }, () => 1), open: null };
}

/** The projects of thirty activities with their proven optima. */
export const readJ30 = (folder: string): readonly Instance[] =>
  j30Rows(folder).map(({ name, path, optimum }) => ({ name, optimum, project: readPatterson(path) }));

/** Classical job shops with their proven optima (Fisher & Thompson 1963, Lawrence 1984). */
export const readJobShops = (folder: string): readonly Instance[] =>
  Object.entries(provenShops).map(([name, optimum]) => ({ name, optimum, project: readJobShop(numbersOf(shopFile(folder, name))) }));
