import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { quantile, timed } from "./timings.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const RUNS = 3;

/** Opens the rehearsal with nothing to play: it ends where a person would see the first prompt. */
function startAndEnd(...args: readonly string[]): Promise<void> {
  const child = spawn("npx", ["tsx", "bot/main.ts", ...args], { cwd: root, stdio: ["ignore", "ignore", "inherit"] });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => (code === 0 ? resolve() : reject(new Error(`the start ended with ${code}`))));
  });
}

async function medianStart(...args: readonly string[]): Promise<string> {
  const times: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    times.push(await timed(() => startAndEnd(...args)));
  }
  return `${(quantile(times, 0.5) / 1000).toFixed(1)} s`;
}

/** Prints how long a start takes: with the demo week loaded anew, on a kept folder, and on the large one handed in. */
export async function printStartTimes(large: string, pastOrders: number): Promise<void> {
  const kept = mkdtempSync(join(tmpdir(), "rangecall-bench-"));
  try {
    console.log(`start, fresh database with the demo week: ${await medianStart()}`);
    await startAndEnd("--data", kept);
    console.log(`start, kept database: ${await medianStart("--data", kept)}`);
    console.log(`start, kept database with ${pastOrders} past orders: ${await medianStart("--data", large)}`);
  } finally {
    rmSync(kept, { recursive: true, force: true });
  }
}
