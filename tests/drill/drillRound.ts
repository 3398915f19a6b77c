import { type ChildProcess, spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type baseOf, brokenWord, drillFaults } from "./drillFaults.ts";
import { copyOf } from "./drillFolder.ts";
import { playDrill } from "./playDrill.ts";

const program = fileURLToPath(new URL("child.ts", import.meta.url));

export const killPoints = ["before-commit", "after-commit", "before-send", "after-send", "before-mark"] as const;
export type KillPoint = (typeof killPoints)[number];

/** Where a process ends: by its own hand at the nth time it gets to a point, or from outside some time after it has begun. */
export type Kill = { readonly at: KillPoint; readonly times: number } | { readonly at: "random"; readonly afterMs: number };

interface Ended {
  readonly signal: NodeJS.Signals | null;
  readonly code: number | null;
  readonly errors: string;
}

function argumentsOf(folder: string, kill: Kill, isBlind: boolean): readonly string[] {
  const point = kill.at === "random" ? [] : ["--point", kill.at, "--times", String(kill.times)];
  return ["--import", "tsx", program, "--folder", folder, ...point, ...(isBlind ? ["--blind"] : [])];
}

function ended(child: ChildProcess, kill: Kill): Promise<Ended> {
  const errors: string[] = [];
  let hasBegun = false;
  child.stderr?.on("data", (text) => errors.push(String(text)));
  child.stdout?.on("data", () => {
    if (!hasBegun) {
      hasBegun = true;
      if (kill.at === "random") {
        setTimeout(() => child.kill("SIGKILL"), kill.afterMs);
      }
    }
  });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code, signal) => resolve({ signal, code, errors: errors.join("") }));
  });
}

/** Plays the script in a process of its own. */
function playScript(folder: string, kill: Kill, isBlind: boolean): Promise<Ended> {
  return ended(spawn(process.execPath, [...argumentsOf(folder, kill, isBlind)], { stdio: ["ignore", "pipe", "pipe"] }), kill);
}

/** How often an undisturbed run gets to each point, and how long it takes. */
export async function undisturbed(loaded: string): Promise<{ readonly reached: Readonly<Record<KillPoint, number>>; readonly tookMs: number }> {
  const folder = copyOf(loaded);
  const seen: string[] = [];
  const from = performance.now();
  try {
    await playDrill(folder, false, (point) => void seen.push(point));
    const count = (point: KillPoint): number => seen.filter((each) => each === point).length;
    const reached = Object.fromEntries(killPoints.map((point) => [point, count(point)])) as Record<KillPoint, number>;
    return { reached, tookMs: performance.now() - from };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Round {
  readonly faults: readonly string[];
  /** For each kill, whether it met a process that was still at work. */
  readonly met: readonly boolean[];
}

/**
 * One round on a copy: killed once for each kill, checked right after each for words that do not hold, then opened
 * again by this process, played to its end with the same arrivals and checked for everything.
 */
export async function drillRound(loaded: string, base: ReturnType<typeof baseOf>, kills: readonly Kill[], isBlind = false): Promise<Round> {
  const folder = copyOf(loaded);
  const broken: string[] = [];
  const met: boolean[] = [];
  try {
    for (const kill of kills) {
      const run = await playScript(folder, kill, isBlind);
      if (run.signal !== "SIGKILL" && run.code !== 0) {
        throw new Error(`a run ended by itself: ${run.code}\n${run.errors}`);
      }
      met.push(run.signal === "SIGKILL");
      const asLeft = copyOf(folder);
      broken.push(...brokenWord(asLeft));
      rmSync(asLeft, { recursive: true, force: true });
    }
    await playDrill(folder, isBlind, () => undefined);
    return { faults: [...broken, ...drillFaults(folder, base)], met };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
