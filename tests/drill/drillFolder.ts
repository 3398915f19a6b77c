import { cpSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openWeek } from "../../bot/openWeek.ts";
import { openDatabase } from "../../db/open.ts";
import { MONDAY, migrationsFolder } from "../db/migrationsFolder.ts";

const scenarioFolder = fileURLToPath(new URL("../../fixtures/scenario", import.meta.url));

export const databaseIn = (folder: string): string => join(folder, "rangecall.sqlite");
export const platformIn = (folder: string): string => join(folder, "platform.jsonl");
/** What the rep was told in answer to presses. */
export const answersIn = (folder: string): string => join(folder, "answers.jsonl");

/** Makes a folder with the demo week's database, closed, to be copied for every round. */
export async function loadedFolder(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "rangecall-drill-"));
  const { db, close } = await openDatabase({ path: databaseIn(folder), create: true, now: MONDAY, migrationsFolder });
  try {
    const opened = await openWeek(db, { folder: scenarioFolder, at: null }, (error) => {
      throw error;
    });
    if (opened.kind === "faults") {
      throw new Error(opened.lines.join("\n"));
    }
  } finally {
    close();
  }
  return folder;
}

export function copyOf(folder: string): string {
  const copy = mkdtempSync(join(tmpdir(), "rangecall-drill-"));
  cpSync(folder, copy, { recursive: true });
  return copy;
}
