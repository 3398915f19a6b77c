import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { readEnvironment } from "../../../bot/config/environment.ts";
import { examine } from "../../../bot/doctor/examine.ts";
import type { Finding } from "../../../bot/doctor/finding.ts";
import { findingLine } from "../../../bot/doctor/findingLine.ts";
import { openDatabase } from "../../../db/open.ts";
import { appendAudit } from "../../../db/repositories/audit.ts";
import { addChannel } from "../../../db/repositories/people.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../../db/migrationsFolder.ts";
import { addMigration, migrationsCopy, temporaryFolder } from "../../db/openTemporary.ts";
import { doctorPlatform, GUILD, LEAD_ROLE, ORDERS, PLANTED, wellAnswers } from "./doctorPlatform.ts";

const variables = { DISCORD_TOKEN: PLANTED, DISCORD_GUILD_ID: GUILD, DISCORD_CHANNELS: `plover-orders=${ORDERS}`, DISCORD_ROLE_LEAD: LEAD_ROLE };

async function opened() {
  const folder = temporaryFolder();
  const path = join(folder, "rangecall.sqlite");
  const database = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
  write(database.db, (tx) => {
    addChannel(tx, { name: "plover-orders", purpose: "orders" });
    appendAudit(tx, { at: MONDAY, personId: null, action: "loaded", subject: "week", body: null });
  });
  return { folder, path, close: database.close };
}

async function look(folder: string, more: { readonly api?: string; readonly migrations?: string; readonly env?: NodeJS.ProcessEnv } = {}) {
  const findings = await examine({
    options: { offline: more.api === undefined, data: folder },
    reading: readEnvironment(more.env ?? {}),
    node: { version: "20.12.0", range: ">=20.12 <21" },
    migrationsFolder: more.migrations ?? migrationsFolder,
    workFolder: folder,
    now: () => MONDAY,
    ...(more.api === undefined ? {} : { api: more.api }),
  });
  return { findings, of: (name: string): Finding | undefined => findings.find((finding) => finding.name === name) };
}

describe("examine", () => {
  it("finds no fault where there is no database yet, and makes nothing", async () => {
    const folder = temporaryFolder();
    const { findings, of } = await look(folder);
    expect(findings.filter(({ state }) => state === "fault")).toEqual([]);
    expect([of("database file")?.state, of("week")?.state, of("chat")?.state]).toEqual(["warn", "skipped", "skipped"]);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("looks at everything beside a running bot, and the token is in no line", async () => {
    const { folder, close } = await opened();
    const user = { ...wellAnswers["/users/@me"], headers: { date: new Date(MONDAY).toUTCString() } };
    const { api } = await doctorPlatform({ "/users/@me": user });
    const { findings, of } = await look(folder, { api, env: variables });
    close();
    expect(findings.filter(({ state }) => state === "fault")).toEqual([]);
    expect(of("running")?.found).toBe("a bot has the database open");
    expect([of("audit")?.found, of("channels of the week")?.state, of("channel plover-orders")?.state]).toEqual(["1 entries verify", "ok", "ok"]);
    for (const json of [true, false]) {
      expect(findings.map((finding) => findingLine(finding, { json, token: PLANTED })).join("\n")).not.toContain(PLANTED);
    }
  });

  it("leaves a database at rest byte for byte as it was, and free for a bot", async () => {
    const { folder, path, close } = await opened();
    close();
    const before = readFileSync(path);
    expect((await look(folder)).of("running")?.found).toBe("no bot has the database open");
    expect(readFileSync(path).equals(before)).toBe(true);
    (await openDatabase({ path, create: false, now: MONDAY, migrationsFolder })).close();
  });

  it("warns of migrations to come, and passes over what rests on them", async () => {
    const { folder, close } = await opened();
    close();
    const migrations = migrationsCopy();
    addMigration(migrations, "9999_more", "CREATE TABLE more (id integer);");
    const { of } = await look(folder, { migrations, env: variables });
    expect(of("migrations")).toMatchObject({ state: "warn", found: "1 not applied yet: 9999_more" });
    expect([of("audit")?.state, of("week")?.state]).toEqual(["skipped", "skipped"]);
  });

  it("finds a migration edited afterwards at fault", async () => {
    const { folder, close } = await opened();
    close();
    const migrations = migrationsCopy((sql) => `${sql}\n-- edited`);
    expect((await look(folder, { migrations })).of("migrations")).toMatchObject({ state: "fault", found: expect.stringContaining("edited") });
  });

  it("finds a record at fault that was changed by hand", async () => {
    const { folder, path, close } = await opened();
    close();
    const sqlite = new Database(path);
    for (const name of sqlite.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").pluck().all()) {
      sqlite.exec(`DROP TRIGGER ${String(name)}`);
    }
    sqlite.exec("UPDATE audit SET subject = 'other'");
    sqlite.close();
    expect((await look(folder)).of("audit")).toMatchObject({ state: "fault", found: expect.stringContaining("entry 1") });
  });

  it("finds a reference that points nowhere at fault", async () => {
    const { folder, path, close } = await opened();
    close();
    const sqlite = new Database(path);
    sqlite.pragma("foreign_keys = OFF");
    sqlite.exec("UPDATE channel SET truck_id = 99");
    sqlite.close();
    expect((await look(folder)).of("database")).toMatchObject({ state: "fault", found: expect.stringContaining("missing row of truck") });
  });

  it.each([
    ["of another program", () => new Database(":memory:").exec("CREATE TABLE t (a)").serialize(), "another program"],
    ["that is no database", () => Buffer.from("x".repeat(5000)), "cannot be read as a database"],
    ["of no bytes", () => Buffer.alloc(0), "is empty"],
  ])("finds a file %s at fault, and goes on", async (_what, bytes, found) => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "rangecall.sqlite"), bytes());
    const { of } = await look(folder);
    expect(of("database file")).toMatchObject({ state: "fault", found: expect.stringContaining(found), remedy: null });
    expect(of("png")?.state).toBe("ok");
  });
});
