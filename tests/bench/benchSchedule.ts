import { existsSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { planProject } from "../../core/bench/plan/planProject.ts";
import { type Instance, missingFile, readJ30, readJobShops } from "./schedule/readSets.ts";

const SEED = 1;

/** Prints how far plans of a budget are above the proven optimum. */
function printDeviation(title: string, instances: readonly Instance[], schedules: number): void {
  const from = performance.now();
  const deviations = instances.map(({ project, optimum }) => planProject(project, { schedules, seed: SEED, goal: "makespan" }).value / optimum - 1);
  const seconds = (performance.now() - from) / 1000;
  const meanPct = (100 * deviations.reduce((sum, one) => sum + one, 0)) / deviations.length;
  const solved = deviations.filter((one) => one === 0).length;
  const below = deviations.filter((one) => one < 0).length;
  const solvedPct = (100 * solved) / instances.length;
  const alarm = below > 0 ? `, ${below} BELOW the proven optimum` : "";
  console.log(`  ${title.padEnd(28)} ${meanPct.toFixed(3)} % above, ${solvedPct.toFixed(1)} % solved${alarm} (${seconds.toFixed(1)} s)`);
}

function printShop({ name, project, optimum }: Instance): void {
  const [few, many] = [5000, 20_000].map((schedules) => planProject(project, { schedules, seed: SEED, goal: "makespan" }).value);
  console.log(`  ${name}: ${few} at 5,000 schedules, ${many} at 20,000; proven optimum ${optimum}`);
}

/** How good the plans are on published sets, which are not part of the project: the folder that has them is named. */
function main(): void {
  const { values } = parseArgs({ options: { data: { type: "string" } } });
  const folder = values.data;
  if (folder === undefined || !existsSync(folder) || missingFile(folder) !== null) {
    const missing = folder === undefined ? "no folder named" : `${existsSync(folder) ? missingFile(folder) : folder} is not there`;
    console.log(`No data (${missing}): npm run bench:schedule -- --data DIR, where DIR holds rcpsp-j30/ with optimum.txt, and jobshop/`);
    return;
  }
  const j30 = readJ30(folder);
  console.log(`${j30.length} projects of 30 activities (Kolisch & Sprecher 1996; optima Demeulemeester & Herroelen 1995), seed ${SEED}, on average:`);
  printDeviation("one pass by latest start", j30, 1);
  printDeviation("with double justification", j30, 3);
  printDeviation("1,000 schedules", j30, 1000);
  printDeviation("5,000 schedules", j30, 5000);
  console.log("  published state of the art at 5,000 schedules: about 0.1 % and below");
  console.log("  (Pellerin, Perrier & Berthaut, European Journal of Operational Research 280 (2020); from memory)");
  console.log(`job shops (Fisher & Thompson 1963, Lawrence 1984), seed ${SEED}:`);
  for (const shop of readJobShops(folder)) printShop(shop);
}

main();
