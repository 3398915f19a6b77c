import { existsSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { planProject } from "../../core/bench/plan/planProject.ts";
import { type Instance, readJ30, readJobShops } from "./schedule/readSets.ts";

const SEED = 1;

/** Prints how far plans of a budget are from the proven optimum. */
function print(title: string, instances: readonly Instance[], schedules: number): void {
  const from = performance.now();
  const deviations = instances.map(({ project, optimum }) => planProject(project, { schedules, seed: SEED, goal: "makespan" }).value / optimum - 1);
  const mean = deviations.reduce((sum, one) => sum + one, 0) / deviations.length;
  const solved = deviations.filter((one) => one === 0).length;
  const below = deviations.filter((one) => one < 0).length;
  const seconds = (performance.now() - from) / 1000;
  console.log(
    `${title}: ${(100 * mean).toFixed(3)} % above the optimum on average, ${solved} of ${instances.length} solved${below > 0 ? `, ${below} BELOW IT` : ""} (${seconds.toFixed(1)} s)`,
  );
}

function main(): void {
  const { values } = parseArgs({ options: { data: { type: "string" } }, allowPositionals: true });
  const folder = values.data;
  if (folder === undefined || !existsSync(join(folder, "rcpsp-j30", "optimum.txt")) || !existsSync(join(folder, "jobshop"))) {
    console.log("No data: give the folder that holds rcpsp-j30/ and jobshop/, such as npm run bench:schedule -- --data FOLDER");
    return;
  }
  const j30 = readJ30(join(folder, "rcpsp-j30"));
  console.log(`j30 (Kolisch & Sprecher 1996; optima Demeulemeester & Herroelen 1995), seed ${SEED}`);
  print("one pass by latest finish", j30, 1);
  print("with double justification", j30, 3);
  print("1,000 schedules", j30, 1000);
  print("5,000 schedules", j30, 5000);
  console.log("published state of the art at 5,000 schedules: about 0.1 % and below (from memory)");
  for (const instance of readJobShops(join(folder, "jobshop"))) {
    const reached = [5000, 20_000].map((schedules) => planProject(instance.project, { schedules, seed: SEED, goal: "makespan" }).value);
    console.log(`${instance.name}: ${reached.join(" at 5,000, ")} at 20,000 schedules; proven optimum ${instance.optimum}`);
  }
}

main();
