import { existsSync } from "node:fs";
import { join } from "node:path";
import { backupFolder } from "../../db/backup.ts";
import { isInUse, openReadOnly, type ReadOnlyDatabase } from "../../db/openReadOnly.ts";
import type { EnvironmentReading } from "../config/environment.ts";
import { databaseChecks, isUpToDate } from "./databaseChecks.ts";
import type { DoctorOptions } from "./doctorOptions.ts";
import { environmentChecks } from "./environmentChecks.ts";
import { type Check, type Finding, ok, skipped, type Verdict, warn } from "./finding.ts";
import { folderChecks } from "./folderChecks.ts";
import { nodeCheck } from "./nodeCheck.ts";
import { printChecks } from "./printChecks.ts";
import { runChecks } from "./runChecks.ts";
import { timeChecks } from "./timeChecks.ts";
import { weekChecks } from "./weekChecks.ts";

interface Setup {
  readonly options: Pick<DoctorOptions, "offline" | "data">;
  readonly reading: EnvironmentReading;
  readonly node: { readonly version: string; readonly range: string };
  readonly migrationsFolder: string;
  readonly workFolder: string;
  readonly now: () => number;
  /** Where the platform answers, when it is not the real one. */
  readonly api?: string;
}

/** Looks at the whole set-up, from the machine to the chat, and changes nothing. */
export async function examine(setup: Setup): Promise<readonly Finding[]> {
  const { options, reading, node, workFolder, now } = setup;
  const database = join(options.data, "rangecall.sqlite");
  const place = { folder: options.data, database, backups: backupFolder(database), workFolder, now };
  return [
    ...(await runChecks([nodeCheck(node.version, node.range), ...environmentChecks(reading), ...folderChecks(place)])),
    ...(await lookInside(database, setup)),
    ...(await runChecks(printChecks())),
    ...(await lookAtChat(setup)),
  ];
}

async function lookInside(path: string, setup: Setup): Promise<readonly Finding[]> {
  const opened: ReadOnlyDatabase[] = [];
  const open = (): Verdict => {
    if (!existsSync(path)) {
      return warn(`there is none at ${path} yet`, "npm start makes it; else name the folder with --data DIR");
    }
    opened.push(openReadOnly(path));
    return ok(`${path} opens`);
  };
  const first = await runChecks([{ name: "database file", look: open }]);
  try {
    return [...first, ...(await runChecks(insideChecks(opened[0] ?? null, path, setup)))];
  } finally {
    opened[0]?.close();
  }
}

function insideChecks(opened: ReadOnlyDatabase | null, path: string, { reading, migrationsFolder, now }: Setup): readonly Check[] {
  const current = opened !== null && isUpToDate(opened.sqlite, migrationsFolder) ? opened.db : null;
  const settings = reading.kind === "environment" ? reading.discord : null;
  const why = current === null ? "no database that is up to date" : "no settings of the chat";
  return [
    ...(opened === null ? [] : databaseChecks(opened, path, migrationsFolder, isInUse)),
    ...(current === null || settings === null ? [{ name: "week", look: () => skipped(why) }] : weekChecks(current, settings)),
    ...timeChecks(current, now),
  ];
}

async function lookAtChat({ options, reading, now, api }: Setup): Promise<readonly Finding[]> {
  const settings = reading.kind === "environment" && reading.token !== null ? reading : null;
  if (options.offline || settings?.token == null || settings.discord === null) {
    return runChecks([{ name: "chat", look: () => skipped(options.offline ? "--offline" : "no token and settings to ask with") }]);
  }
  // The chat's own library is loaded only here.
  const { doctorNetwork } = await import("../discord/doctorNetwork.ts");
  return doctorNetwork({ token: settings.token, settings: settings.discord, now, ...(api === undefined ? {} : { api }) });
}
