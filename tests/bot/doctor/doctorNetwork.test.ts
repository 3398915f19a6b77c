import { PermissionFlagsBits } from "discord.js";
import { describe, expect, it } from "vitest";
import { doctorNetwork } from "../../../bot/discord/doctorNetwork.ts";
import { type Answer, BOT_ROLE, doctorPlatform, GUILD, LEAD_ROLE, MAY, ORDERS, PLANTED, settings, wellAnswers } from "./doctorPlatform.ts";

const now = (): number => Date.UTC(2027, 4, 3, 7);
const dated = (at: number): Answer => ({ ...wellAnswers["/users/@me"], headers: { date: new Date(at).toUTCString() } });
const guildWith = (permissions: bigint): Answer => {
  const { body } = wellAnswers[`/guilds/${GUILD}`];
  return { body: { ...body, roles: [...body.roles.slice(0, 2), { id: BOT_ROLE, permissions: String(permissions) }] } };
};

async function look(changed: Readonly<Record<string, Answer>>, token = PLANTED, timeoutMs = 5000) {
  const platform = await doctorPlatform({ "/users/@me": dated(now()), ...changed });
  const findings = await doctorNetwork({ token, settings, now, api: platform.api, timeoutMs });
  expect(JSON.stringify(findings)).not.toContain(PLANTED);
  return { ...platform, findings, of: (name: string) => findings.find((finding) => finding.name === name) };
}

describe("doctorNetwork", () => {
  it("finds nothing wrong where all is well", async () => {
    const { findings, tokens } = await look({});
    expect(findings.map(({ name, state }) => `${state} ${name}`)).toEqual([
      "ok token",
      "ok clock of the platform",
      "ok message content",
      "ok starts left",
      "ok guild",
      "ok role lead",
      "ok administrator",
      "ok channel plover-orders",
    ]);
    expect([...tokens]).toEqual([`Bot ${PLANTED}`]);
  });

  it("takes off a pasted prefix as the bot's own login does", async () => {
    const { tokens } = await look({}, `Bot ${PLANTED}`);
    expect([...tokens]).toEqual([`Bot ${PLANTED}`]);
  });

  it("stops after one question when the token is not taken", async () => {
    const { asked, findings } = await look({ "/users/@me": { status: 401, body: { code: 0, message: "401: Unauthorized" } } });
    expect(asked).toEqual(["/users/@me"]);
    expect(findings.map(({ state }) => state)).toEqual(["fault", "skipped"]);
    expect(findings[0]?.remedy).toContain("Developer Portal > your application > Bot > Reset Token");
  });

  it("does not wait for a limit to pass", async () => {
    const { asked, of } = await look({
      "/users/@me": { status: 429, body: { message: "slow down", retry_after: 3600, global: false }, headers: { "retry-after": "3600" } },
    });
    expect(asked).toHaveLength(1);
    expect(of("token")).toMatchObject({ state: "fault", found: expect.stringMatching(/asks to wait 36\d\d s/) });
  });

  it("says that the platform is not reached", async () => {
    const findings = await doctorNetwork({ token: PLANTED, settings, now, api: "http://127.0.0.1:1/api" });
    expect(findings[0]).toMatchObject({ name: "token", state: "fault", found: expect.stringContaining("not reached") });
  });

  it("goes on past a question that is never answered, and stops where it is the first", async () => {
    const { asked, of } = await look({ "/applications/@me": { hangs: true, body: null } }, PLANTED, 300);
    expect(of("message content")).toMatchObject({ state: "fault", found: "the platform does not answer in time" });
    expect(asked.filter((path) => path === "/applications/@me")).toHaveLength(2);
    expect(of("channel plover-orders")?.state).toBe("ok");
    const silent = await look({ "/users/@me": { hangs: true, body: null } }, PLANTED, 300);
    expect(silent.findings.map(({ state }) => state)).toEqual(["fault", "skipped"]);
  });

  it("asks twice at most where the platform is down", async () => {
    const { asked, of } = await look({ "/applications/@me": { status: 502, body: {} } });
    expect(of("message content")).toMatchObject({ state: "fault", found: "the platform answers 502" });
    expect(asked.filter((path) => path === "/applications/@me")).toHaveLength(2);
    expect(of("channel plover-orders")?.state).toBe("ok");
  });

  it.each([
    [4000, "ok"],
    [-4000, "ok"],
    [6000, "warn"],
    [-30_000, "warn"],
    [61_000, "fault"],
    [-3_600_000, "fault"],
  ])("holds a clock that is %i ms off as %s", async (offMs, state) => {
    expect((await look({ "/users/@me": dated(now() - offMs) })).of("clock of the platform")?.state).toBe(state);
  });

  it.each([
    [0, null, "fault"],
    [1 << 18, null, "ok"],
    [1 << 19, null, "ok"],
    [1 << 18, "https://example.org/", "fault"],
  ])("reads the application's flags %i with endpoint %s as %s", async (flags, endpoint, state) => {
    const { of } = await look({ "/applications/@me": { body: { flags, interactions_endpoint_url: endpoint } } });
    expect(of("message content")?.state).toBe(state);
  });

  it("says where to switch on message content", async () => {
    expect((await look({ "/applications/@me": { body: { flags: 0 } } })).of("message content")?.remedy).toContain(
      "Bot > Privileged Gateway Intents > Message Content Intent",
    );
  });

  it("says how long to wait where no start is left", async () => {
    const limit = { total: 1000, remaining: 0, reset_after: 120_000, max_concurrency: 1 };
    expect((await look({ "/gateway/bot": { body: { session_start_limit: limit } } })).of("starts left")).toMatchObject({
      state: "fault",
      remedy: expect.stringContaining("2 min"),
    });
  });

  it.each([403, 404])("says that the bot is not in the guild at a %i, and passes over what is in it", async (status) => {
    const { findings } = await look({ [`/guilds/${GUILD}`]: { status, body: { code: 50001, message: "Missing Access" } } });
    expect(findings.slice(-2)).toMatchObject([
      { name: "guild", state: "fault", found: `the bot is not in guild ${GUILD}` },
      { name: "roles and channels", state: "skipped" },
    ]);
  });

  it("names the variable of a role that the guild does not have", async () => {
    const { body } = wellAnswers[`/guilds/${GUILD}`];
    const roles = body.roles.filter(({ id }) => id !== LEAD_ROLE);
    expect((await look({ [`/guilds/${GUILD}`]: { body: { ...body, roles } } })).of("role lead")).toMatchObject({
      state: "fault",
      found: expect.stringContaining("DISCORD_ROLE_LEAD"),
    });
  });

  it.each([
    ["there is none", []],
    ["it is a voice channel", [{ id: ORDERS, type: 2, permission_overwrites: [] }]],
  ])("finds a channel at fault where %s", async (_why, body) => {
    expect((await look({ [`/guilds/${GUILD}/channels`]: { body } })).of("channel plover-orders")?.state).toBe("fault");
  });

  it.each([
    ["View Channel", PermissionFlagsBits.ViewChannel],
    ["Send Messages", PermissionFlagsBits.SendMessages],
    ["Embed Links", PermissionFlagsBits.EmbedLinks],
    ["Attach Files", PermissionFlagsBits.AttachFiles],
    ["Read Message History", PermissionFlagsBits.ReadMessageHistory],
  ])("names the permission %s where a channel denies it", async (name, bit) => {
    const permission_overwrites = [{ id: GUILD, type: 0, allow: "0", deny: String(bit) }];
    const { of } = await look({ [`/guilds/${GUILD}/channels`]: { body: [{ id: ORDERS, type: 0, permission_overwrites }] } });
    expect(of("channel plover-orders")).toMatchObject({ state: "fault", found: `the bot lacks ${name}` });
  });

  it("warns where the board cannot be pinned", async () => {
    const { of } = await look({ [`/guilds/${GUILD}`]: guildWith(MAY.all & ~PermissionFlagsBits.PinMessages) });
    expect(of("channel plover-orders")).toMatchObject({ state: "warn", remedy: expect.stringContaining("Pin Messages") });
  });

  it("warns where the bot is Administrator", async () => {
    const { of } = await look({ [`/guilds/${GUILD}`]: guildWith(PermissionFlagsBits.Administrator) });
    expect(of("administrator")?.state).toBe("warn");
    expect(of("channel plover-orders")?.state).toBe("ok");
  });
});
