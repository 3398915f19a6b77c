import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { printPolicySeason } from "./promise/policySeason.ts";
import { type Kept, type SeasonPromises, seasonPromises } from "./promise/seasonPromises.ts";
import { trueSeason } from "./promise/trueSeason.ts";

const { values } = parseArgs({ options: { seeds: { type: "string", default: "20" } } });
const SEEDS = Number(values.seeds);
if (!Number.isInteger(SEEDS) || SEEDS < 1) throw new Error("--seeds takes a whole number from 1 on");
/** Every fourth season drifts. */
const drifts = (seed: number): boolean => seed % 4 === 0;

const share = (rows: readonly Kept[], holds: (row: Kept) => boolean): number => rows.filter(holds).length / Math.max(1, rows.length);
const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);
const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
const promised = (rows: readonly Kept[]): number => share(rows, ({ truthMin, promiseMin }) => truthMin <= promiseMin);
const unrounded = (rows: readonly Kept[]): number => share(rows, ({ rank }) => rank <= 0.9);

/** Mean pinball loss in minutes: what a quantile forecast costs, p a minute too early and 1 − p a minute too late. */
function pinball(rows: readonly Kept[], p: number, forecast: (row: Kept) => number): number {
  return mean(rows.filter(({ sameDay }) => sameDay).map((row) => (row.truthMin - forecast(row)) * (row.truthMin < forecast(row) ? p - 1 : p)));
}
const losses = (rows: readonly Kept[]): string =>
  `${pinball(rows, 0.5, ({ likelyMin }) => likelyMin).toFixed(3)} / ${pinball(rows, 0.9, ({ promiseMin }) => promiseMin).toFixed(3)}`;

function printSeed(seed: number, { learned, plugIn, fixed, jobSpread, stagesSeen }: SeasonPromises): void {
  const columns = [
    `seed ${String(seed).padStart(2)} ${drifts(seed) ? "drift" : "     "}`,
    `kept ${percent(promised(learned))}, before rounding up ${percent(unrounded(learned))}`,
    `plug-in ${percent(promised(plugIn))}, fixed ${percent(promised(fixed))}`,
    `pinball .5/.9 ${losses(learned)}, plug-in ${losses(plugIn)}, fixed ${losses(fixed)}`,
    `job spread ${percent(jobSpread)}, ${stagesSeen} stages seen`,
  ];
  console.log(columns.join(" | "));
}

/** The forecast ranks in ten bins: each holds a tenth when forecasts keep what they say. */
function histogram(rows: readonly Kept[]): string {
  return Array.from({ length: 10 }, (_, bin) => percent(share(rows, ({ rank }) => Math.min(9, Math.floor(rank * 10)) === bin))).join("  ");
}

function printAll(title: string, seasons: readonly SeasonPromises[]): void {
  if (seasons.length === 0) return;
  const of = (key: "learned" | "plugIn" | "fixed"): readonly Kept[] => seasons.flatMap((season) => season[key]);
  const band = (from: number, to: number, key: "learned" | "plugIn" | "fixed"): string =>
    percent(unrounded(of(key).filter(({ jobsBefore }) => jobsBefore >= from && jobsBefore < to)));
  const bySeed = (key: "learned" | "plugIn" | "fixed"): string => percent(mean(seasons.map((season) => promised(season[key]))));
  console.log(`\n${title}: ${seasons.length} seasons, ${of("learned").length} promises`);
  for (const [key, name] of [
    ["learned", "learned"],
    ["plugIn", "plug-in"],
    ["fixed", "fixed spreads"],
  ] as const) {
    console.log(
      `  ${name}: kept ${bySeed(key)} (mean of the seeds), before rounding up ${percent(unrounded(of(key)))}; pinball .5/.9 ${losses(of(key))} min`,
    );
    console.log(`    before rounding up, the 20 jobs after 10 / 50 / 110: ${band(10, 30, key)} / ${band(50, 70, key)} / ${band(110, 130, key)}`);
    console.log(`    ranks in ten bins: ${histogram(of(key))}`);
  }
}

console.log("Promises on made seasons: what was promised 9 times in 10, and how often it was kept. The truth is hidden from the forecast.");
const from = performance.now();
const seasons = Array.from({ length: SEEDS }, (_, at) => {
  const seed = at + 1;
  const promises = seasonPromises(trueSeason(seed, drifts(seed)));
  printSeed(seed, promises);
  return { seed, promises };
});
printAll(
  "No drift (aim: 88 to 93 % kept)",
  seasons.filter(({ seed }) => !drifts(seed)).map(({ promises }) => promises),
);
printAll(
  "Drift of 30 %",
  seasons.filter(({ seed }) => drifts(seed)).map(({ promises }) => promises),
);
console.log(`\n${((performance.now() - from) / 1000).toFixed(0)} s`);
printPolicySeason();
