import { describe, expect, it } from "vitest";
import { readEnvironment } from "../../../bot/config/environment.ts";
import { environmentChecks } from "../../../bot/doctor/environmentChecks.ts";
import { runChecks } from "../../../bot/doctor/runChecks.ts";
import { GUILD, LEAD_ROLE, ORDERS, PLANTED } from "./doctorPlatform.ts";

const whole = { DISCORD_TOKEN: PLANTED, DISCORD_GUILD_ID: GUILD, DISCORD_CHANNELS: `plover-orders=${ORDERS}`, DISCORD_ROLE_LEAD: LEAD_ROLE };
const every = { ...whole, DISCORD_ROLE_REP: LEAD_ROLE, DISCORD_ROLE_TECHNICIAN: LEAD_ROLE, DISCORD_ROLE_VIEWER: LEAD_ROLE };
const look = (variables: NodeJS.ProcessEnv) => runChecks(environmentChecks(readEnvironment(variables)));

describe("environmentChecks", () => {
  it("finds a whole environment in order", async () => {
    expect((await look(every)).map(({ state }) => state)).toEqual(["ok", "ok"]);
  });

  it("gives a line to each fault, and none shows the token", async () => {
    const findings = await look({ ...whole, DISCORD_GUILD_ID: "12", DISCORD_CHANNELS: "x", RANGECALL_LOG: PLANTED });
    expect(findings.map(({ state }) => state)).toEqual(["fault", "fault", "fault"]);
    expect(JSON.stringify(findings)).not.toContain(PLANTED);
  });

  it("warns without a token, as the rehearsal opens", async () => {
    expect(await look({})).toMatchObject([{ state: "warn", found: expect.stringContaining("rehearsal") }]);
  });

  it("names the variables of the roles that nobody has", async () => {
    expect(await look(whole)).toMatchObject([
      { state: "ok" },
      { name: "roles", state: "warn", found: expect.stringContaining("DISCORD_ROLE_VIEWER, DISCORD_ROLE_REP, DISCORD_ROLE_TECHNICIAN not set") },
    ]);
  });
});
