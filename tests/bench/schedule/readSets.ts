import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Activity, Project } from "../../../core/bench/plan/project.ts";

export interface Instance {
  readonly name: string;
  readonly project: Project;
  readonly optimum: number;
}

/** The numbers of a file, its lines of remarks left out. */
const numbersOf = (path: string): readonly number[] => (readFileSync(path, "utf8").replace(/^#.*$/gm, "").match(/-?\d+/g) ?? []).map(Number);

/** Patterson layout: counts, capacities, then per activity its duration, demands, and successors counted from 1. */
function readPatterson(path: string): Project {
  const numbers = numbersOf(path);
  let at = 0;
  const next = (): number => numbers[at++] ?? Number.NaN;
  const count = next();
  const resources = next();
  const capacities = Array.from({ length: resources }, next);
  const before: number[][] = Array.from({ length: count }, () => []);
  const activities = Array.from({ length: count }, (_, place): Activity => {
    const durationMs = next();
    const demands = Array.from({ length: resources }, next);
    const followers = next();
    for (let follower = 0; follower < followers; follower++) before[next() - 1]?.push(place);
    return { durationMs, demands, before: before[place] ?? [], releaseMs: 0, due: null, byHand: false, group: place };
  });
  return { activities, capacities, open: null };
}

/** The standard layout of a job shop: jobs and machines, then per job its machines and durations in turn. */
export function readJobShop(numbers: readonly number[]): Project {
  const [jobs = 0, machines = 0, ...rest] = numbers;
  const activities = Array.from({ length: jobs * machines }, (_, place): Activity => {
    const [machine = 0, durationMs = 0] = rest.slice(2 * place, 2 * place + 2);
    const demands = Array.from({ length: machines }, (_unused, one) => Number(one === machine));
    const before = place % machines === 0 ? [] : [place - 1];
    return { durationMs, demands, before, releaseMs: 0, due: null, byHand: false, group: Math.floor(place / machines) };
  });
  return { activities, capacities: Array.from({ length: machines }, () => 1), open: null };
}

/** The 480 projects of thirty activities with their proven optima. */
export function readJ30(folder: string): readonly Instance[] {
  const proven = new Map(
    readFileSync(join(folder, "optimum.txt"), "utf8")
      .split("\n")
      .flatMap((row) => {
        const words = row.trim().split(/[\s,;]+/);
        const value = Number(words.at(-1));
        return words.length >= 2 && Number.isFinite(value) ? [[words.slice(0, -1).join("_"), value] as const] : [];
      }),
  );
  return readdirSync(folder)
    .filter((name) => name.endsWith(".rcp"))
    .sort()
    .flatMap((file) => {
      const name = file.replace(".rcp", "");
      const optimum = proven.get(name) ?? proven.get(name.replace("j30_", ""));
      return optimum === undefined ? [] : [{ name, project: readPatterson(join(folder, file)), optimum }];
    });
}

const provenShops: Readonly<Record<string, number>> = { ft06: 55, ft10: 930, ft20: 1165, la01: 666, la02: 655, la03: 597, la04: 590, la05: 593 };

/** Classical job shops with their proven optima (Fisher & Thompson 1963, Lawrence 1984). */
export const readJobShops = (folder: string): readonly Instance[] =>
  Object.entries(provenShops).map(([name, optimum]) => ({ name, optimum, project: readJobShop(numbersOf(join(folder, name))) }));
