import { describe, expect, it } from "vitest";
import { readEnvironment } from "../../../bot/config/environment.ts";
import { rolesByEnvironment } from "../../../bot/discord/rolesByEnvironment.ts";

const whole = {
  DISCORD_TOKEN: " secret ",
  DISCORD_GUILD_ID: "200000000000000001",
  DISCORD_ROLE_REP: "600000000000000001",
  DISCORD_CHANNELS: "plover-orders=300000000000000001, plover-bench = 300000000000000002",
  DISCORD_PEOPLE: "maren=500000000000000001",
};
const faults = (more: NodeJS.ProcessEnv): string => {
  const read = readEnvironment({ ...whole, ...more });
  return read.kind === "faulty" ? read.line : "";
};

describe("readEnvironment", () => {
  it("needs nothing without a token", () => {
    expect(readEnvironment({})).toEqual({ kind: "environment", token: null, discord: null, logLevel: "warn" });
    expect(readEnvironment({ DISCORD_TOKEN: " " })).toMatchObject({ token: null, discord: null });
  });

  it("reads the chat's ids, a role left out being nobody's", () => {
    expect(readEnvironment(whole)).toEqual({
      kind: "environment",
      token: "secret",
      logLevel: "warn",
      discord: {
        guildId: "200000000000000001",
        roleIds: { viewer: null, rep: "600000000000000001", technician: null, lead: null },
        channels: new Map([
          ["plover-orders", "300000000000000001"],
          ["plover-bench", "300000000000000002"],
        ]),
        people: new Map([["maren", "500000000000000001"]]),
      },
    });
  });

  it.each([
    ["DISCORD_GUILD_ID", "12"],
    ["DISCORD_ROLE_LEAD", "lead"],
    ["DISCORD_CHANNELS", "plover-orders"],
    ["DISCORD_CHANNELS", "plover-orders=12"],
    ["DISCORD_CHANNELS", "a=300000000000000001,a=300000000000000002"],
    ["DISCORD_CHANNELS", "a=300000000000000001,b=300000000000000001"],
    ["DISCORD_PEOPLE", "maren=500000000000000001,"],
    ["RANGECALL_LOG", "loud"],
  ])("names %s=%s in one line with what it takes", (variable, value) => {
    expect(faults({ [variable]: value })).toMatch(new RegExp(`^The environment variable ${variable} is not as expected: it takes [^\\n]+$`));
  });

  it("gives a line to each fault", () => {
    expect(faults({ DISCORD_ROLE_REP: "x", DISCORD_PEOPLE: "y" }).split("\n")).toHaveLength(2);
    expect(faults({ DISCORD_GUILD_ID: "", DISCORD_CHANNELS: "" }).split("\n")).toHaveLength(2);
  });

  it("never repeats the token", () => {
    expect(faults({ DISCORD_GUILD_ID: "12", RANGECALL_LOG: "secret" })).not.toContain("secret");
  });
});

describe("rolesByEnvironment", () => {
  it("gives the roles whose ids are held, and none for ids it does not know", () => {
    const rolesOf = rolesByEnvironment({ roleIds: { viewer: null, rep: "1", technician: "2", lead: null } });
    expect(rolesOf("rehearsal", ["2", "1", "9"])).toEqual(["rep", "technician"]);
    expect(rolesOf("rehearsal", ["lead", "viewer", ""])).toEqual([]);
  });
});
