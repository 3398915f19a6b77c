import { chmodSync, mkdirSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderChecks } from "../../../bot/doctor/folderChecks.ts";
import { temporaryFolder } from "../../db/openTemporary.ts";
import { lookAt } from "./lookAt.ts";

const NOW = Date.UTC(2027, 4, 3, 7);
const DAY_MS = 86_400_000;
const MIB = 1024 * 1024;

function place(folder = temporaryFolder()) {
  const parts = {
    folder,
    database: join(folder, "rangecall.sqlite"),
    backups: join(folder, "backups"),
    workFolder: temporaryFolder(),
    now: () => NOW,
    freeBytes: () => 900 * MIB,
  };
  const look = (name: string, freeBytes = parts.freeBytes) => lookAt(folderChecks({ ...parts, freeBytes }), name);
  return { ...parts, look };
}

/** A file with the rights it is to have, whatever the host gives a new one. */
function put(path: string, mode: number): void {
  writeFileSync(path, "x");
  chmodSync(path, mode);
}

function putBackup(folder: string, daysOld: number): void {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${daysOld}.sqlite`);
  put(path, 0o600);
  utimesSync(path, new Date(NOW), new Date(NOW - daysOld * DAY_MS));
}

describe("folderChecks", () => {
  it("finds a folder that can be written, or made", async () => {
    const { folder, look } = place();
    expect((await look("database folder")).state).toBe("ok");
    expect(await place(join(folder, "new", "data")).look("database folder")).toMatchObject({
      state: "ok",
      found: expect.stringContaining("can make it"),
    });
  });

  it("finds a file in the folder's place at fault", async () => {
    const path = join(temporaryFolder(), "data");
    put(path, 0o600);
    expect(await place(path).look("database folder")).toMatchObject({ state: "fault", remedy: expect.stringContaining("--data DIR") });
    expect((await place(join(path, "deeper")).look("database folder")).state).toBe("fault");
  });

  it.each([
    [0o755, 0o600, "ok"],
    [0o755, 0o640, "warn"],
    [0o755, 0o604, "warn"],
    [0o700, 0o644, "ok"],
    [0o710, 0o604, "ok"],
  ])("holds a folder of mode %o with files of mode %o: %s", async (folderMode, fileMode, state) => {
    const { folder, database, workFolder, look } = place();
    chmodSync(folder, folderMode);
    chmodSync(workFolder, folderMode);
    put(database, fileMode);
    put(join(folder, ".env"), fileMode);
    put(join(workFolder, ".env"), fileMode);
    const finding = await look("file rights");
    expect(finding.state).toBe(state);
    expect(finding.remedy?.split(" ") ?? []).toHaveLength(state === "ok" ? 0 : 6);
  });

  it.each([
    [900, "ok"],
    [499, "warn"],
    [49, "fault"],
  ])("holds %i MiB of free space: %s", async (mib, state) => {
    expect(await place().look("disk space", () => mib * MIB)).toMatchObject({ state, found: `${mib} MiB free` });
  });

  it.each([
    [[0.5, 30], "ok", "the newest is of the last 24 hours"],
    [[1], "ok", "the newest is 1 day old"],
    [[9, 8], "warn", "the newest is 8 days old"],
    [[], "warn", expect.stringContaining("no backup in")],
  ])("reads the age of the newest of the backups of %j days: %s", async (days, state, found) => {
    const { database, backups, look } = place();
    put(database, 0o600);
    for (const daysOld of days) {
      putBackup(backups, daysOld);
    }
    expect(await look("backup")).toMatchObject({ state, found });
  });

  it("finds a backup without a database at fault, and says how to restore it", async () => {
    const { backups, look } = place();
    expect((await look("backup")).state).toBe("ok");
    putBackup(backups, 1);
    expect(await look("backup")).toMatchObject({ state: "fault", remedy: expect.stringContaining("1.sqlite") });
  });
});
