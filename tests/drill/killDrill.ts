import { rmSync } from "node:fs";
import { baseOf } from "./drillFaults.ts";
import { loadedFolder } from "./drillFolder.ts";
import { drillPlan } from "./drillPlan.ts";
import { drillRound, undisturbed } from "./drillRound.ts";

/** `npm run drill -- [ROUNDS] [SEED]`: kills the bot in the middle of three orders, again and again, and counts what was lost or repeated. */
const [rounds = "200", seed = "20270503"] = process.argv.slice(2);
const REPORT_EVERY = 20;

const loaded = await loadedFolder();
try {
  const base = baseOf(loaded);
  const { reached, tookMs } = await undisturbed(loaded);
  console.log(`undisturbed: ${Math.round(tookMs)} ms, ${JSON.stringify(reached)}`);
  const tally = new Map<string, { kills: number; met: number }>();
  let faulty = 0;
  for (const [round, kills] of drillPlan(Number(rounds), Number(seed), reached, tookMs).entries()) {
    const { faults, met } = await drillRound(loaded, base, kills);
    for (const [position, { at }] of kills.entries()) {
      const count = tally.get(at) ?? { kills: 0, met: 0 };
      tally.set(at, { kills: count.kills + 1, met: count.met + (met[position] === true ? 1 : 0) });
    }
    if (faults.length > 0) {
      faulty += 1;
      console.log(`round ${round + 1} ${JSON.stringify(kills)}:\n  ${faults.join("\n  ")}`);
    }
    if ((round + 1) % REPORT_EVERY === 0) {
      console.log(`${round + 1} rounds, ${faulty} with faults`);
    }
  }
  for (const [at, { kills, met }] of tally) {
    console.log(`${at}: ${kills} kills, ${met} of them met a process at work`);
  }
  console.log(`${rounds} rounds, ${faulty} with something lost or repeated`);
  process.exitCode = faulty === 0 ? 0 : 1;
} finally {
  rmSync(loaded, { recursive: true, force: true });
}
