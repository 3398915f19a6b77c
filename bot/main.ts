import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { pino } from "pino";
import { instant } from "../core/kinds.ts";
import { DatabaseRefusal } from "../db/databaseRefusal.ts";
import { openDatabase } from "../db/open.ts";
import { instantIn, readLocalTime } from "./boundary/week/localTime.ts";
import { type DiscordSettings, readEnvironment } from "./config/environment.ts";
import { readStartOptions, type StartOptions } from "./config/startOptions.ts";
import { openWeek } from "./openWeek.ts";
import { keepFilesIn } from "./rehearsal/keepFiles.ts";
import { runRehearsal } from "./rehearsal/rehearsal.ts";
import { openScreen } from "./rehearsal/screen.ts";
import { rehearsalClock, rehearsalWorld } from "./rehearsalBot.ts";

const migrationsFolder = fileURLToPath(new URL("../db/migrations", import.meta.url));
const scenarioFolder = fileURLToPath(new URL("../fixtures/scenario", import.meta.url));

function fail(line: string, code = 1): number {
  process.stderr.write(`${line}\n`);
  return code;
}

async function main(): Promise<number> {
  const environment = readEnvironment(process.env);
  const options = readStartOptions(process.argv.slice(2));
  if (environment.kind === "faulty") {
    return fail(environment.line);
  }
  if ("fault" in options) {
    return fail(options.fault);
  }
  const log = pino({ level: environment.logLevel }, pino.destination(2));
  const terminal = process.stdin.isTTY === true;
  const fresh = options.data === null && !terminal && environment.token === null ? mkdtempSync(join(tmpdir(), "rangecall-")) : null;
  try {
    if (environment.token !== null && environment.discord !== null) {
      return await chat(options, environment.token, environment.discord, (error, doing) => log.error({ err: error, doing }));
    }
    return await rehearse(options, fresh, terminal, (error, reference) => log.error({ err: error, reference }));
  } catch (error) {
    return fail(error instanceof DatabaseRefusal ? error.message : `Rangecall stopped: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    if (fresh !== null) {
      rmSync(fresh, { recursive: true, force: true });
    }
  }
}

/** The real chat: discord.js is loaded only here. */
async function chat(options: StartOptions, token: string, settings: DiscordSettings, log: (error: unknown, doing: string) => void): Promise<number> {
  const asked = toldToStop();
  const now = instant(Date.now());
  const opened = await openDatabase({ path: join(options.data ?? "data", "rangecall.sqlite"), create: true, now, migrationsFolder });
  try {
    const week = await openWeek(opened.db, { folder: options.empty ? null : (options.load ?? scenarioFolder), at: () => now }, log);
    if (week.kind === "faults") {
      return fail(week.lines.join("\n"));
    }
    const { joinRealChat } = await import("./realChat.ts");
    const running = joinRealChat({ db: opened.db, token, settings, seed: now % 0x7fffffff, log });
    const { kind, why } = await Promise.race([running.ended, asked]);
    await running.stop();
    // Whatever of the client is still connecting keeps nobody here.
    setTimeout(() => process.exit(), LEAVE_WITHIN_MS).unref();
    return kind === "stopped" ? 0 : fail(`Rangecall left the chat: ${why}`, exitCodes[kind]);
  } finally {
    opened.close();
  }
}

/** As service managers know them: try again, or mend the settings first. */
const exitCodes = { lost: 75, settings: 78 } as const;
const LEAVE_WITHIN_MS = 3000;

/** The first signal asks for an orderly end; the same once more ends at once. */
function toldToStop(): Promise<{ readonly kind: "stopped"; readonly why: string }> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      process.once(signal, () => resolve({ kind: "stopped", why: signal }));
    }
  });
}

/** Made on first use; it outlives a database made for one script, as people open its files afterwards. */
function temporaryFolder(): () => string {
  let made: string | null = null;
  return () => {
    made ??= mkdtempSync(join(tmpdir(), "rangecall-files-"));
    return made;
  };
}

async function rehearse(
  options: StartOptions,
  fresh: string | null,
  terminal: boolean,
  log: (error: unknown, reference: string) => void,
): Promise<number> {
  const at = options.at === null ? null : readLocalTime(options.at);
  if (options.at !== null && at === null) {
    return fail(`--at ${options.at} is not read: such as 2027-05-03T07:00`);
  }
  const folder = fresh ?? options.data ?? "data";
  const opened = await openDatabase({ path: join(folder, "rangecall.sqlite"), create: true, now: instant(Date.now()), migrationsFolder });
  try {
    const week = await openWeek(
      opened.db,
      { folder: options.empty ? null : (options.load ?? scenarioFolder), at: at === null ? null : (zone) => instantIn(zone, at) },
      log,
    );
    if (week.kind === "faults") {
      return fail(week.lines.join("\n"));
    }
    const clock = rehearsalClock(opened.db);
    const world: ReturnType<typeof rehearsalWorld>[] = [];
    const screen = openScreen({
      output: process.stdout,
      json: options.json,
      now: clock.now,
      zoneOf: (channel) => world[0]?.zoneOf(channel) ?? "UTC",
      keepFiles: keepFilesIn(fresh === null ? () => join(folder, "files") : temporaryFolder()),
    });
    const joined = rehearsalWorld(opened.db, screen, log);
    world.push(joined);
    const parts = { input: process.stdin, output: process.stdout, errors: process.stderr, terminal, echo: options.echo && !options.json };
    return await runRehearsal(joined, screen, {
      ...parts,
      as: options.as ?? defaultPerson(joined),
      channel: options.channel ?? defaultChannel(joined),
    });
  } finally {
    opened.close();
  }
}

const defaultPerson = (world: ReturnType<typeof rehearsalWorld>): string => [...world.people.keys()][0] ?? "lead";
const defaultChannel = (world: ReturnType<typeof rehearsalWorld>): string =>
  world.channels.find((name) => name === "plover-orders") ?? world.channels.find((name) => name.endsWith("orders")) ?? world.channels[0] ?? "general";

process.exitCode = await main();
