import { PermissionFlagsBits } from "discord.js";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makeAnswers } from "../../../bot/desk/answers.ts";
import type { RealChatParts } from "../../../bot/realChat.ts";
import { setMeta } from "../../../db/repositories/meta.ts";
import { write } from "../../../db/write.ts";
import { type JoinedWeek, joinedWeek } from "../../support/platform/joinedWeek.ts";
import { countIn, postIn, readPost } from "../../support/platform/readPost.ts";
import { settingsOf } from "../../support/platform/world.ts";

const ORDER = "build oxtoby driver like gamer, loft 9.25";

describe("the life of the bot in the chat", () => {
  let week: JoinedWeek;
  beforeEach(async () => {
    week = await joinedWeek();
  });
  afterEach(() => week.close());

  it.each<[string, (week: JoinedWeek) => Partial<RealChatParts>, RegExp]>([
    ["a token the chat does not accept", () => ({ token: "another.one" }), /does not accept DISCORD_TOKEN/],
    [
      "a guild it is no member of",
      ({ platform }) => ({ settings: { ...settingsOf(platform.world), guildId: "200000000000000009" } }),
      /no member of the guild 200000000000000009/,
    ],
    [
      "the message content switch off",
      ({ platform }) => {
        platform.switches.hasContent = false;
        return {};
      },
      /message content switch is off/,
    ],
    [
      "a channel in which it may not read what was said before",
      ({ platform }) => {
        const [id = ""] = platform.world.channels.values();
        platform.world.allowed.set(id, PermissionFlagsBits.ViewChannel | PermissionFlagsBits.SendMessages | PermissionFlagsBits.EmbedLinks);
        return {};
      },
      /#plover-orders: the bot lacks Attach Files, Read Message History/,
    ],
    [
      "a channel that is not there",
      ({ platform }) => ({
        settings: { ...settingsOf(platform.world), channels: new Map([...platform.world.channels, ["far-orders", "300000000000009999"]]) },
      }),
      /#far-orders: no channel of this guild has the id 300000000000009999/,
    ],
    [
      "a database that belongs to another guild",
      ({ db }) => {
        write(db, (tx) => setMeta(tx, "discord.guild", "200000000000000009"));
        return {};
      },
      /this database belongs to another guild/,
    ],
  ])("ends with what has to be mended at %s, having tried once", async (_case, more, why) => {
    const running = week.start(more(week));
    expect(await running.ended).toMatchObject({ kind: "settings", why: expect.stringMatching(why) });
    expect(await running.entered).toBe(false);
    const logins = week.platform.requests.filter(({ path }) => path.startsWith("/gateway"));
    expect(logins.length).toBeLessThanOrEqual(1);
    expect(week.platform.store.messages).toEqual([]);
  });

  it.each([
    [4004, "settings", /DISCORD_TOKEN/],
    [4014, "settings", /Message Content Intent/],
    [4011, "lost", /closed for good with code 4011/],
  ] as const)("ends when the gateway closes for good with code %d", async (code, kind, why) => {
    const running = week.start();
    await running.entered;
    week.platform.gateway.close(code);
    expect(await running.ended).toMatchObject({ kind, why: expect.stringMatching(why) });
  });

  it("ends when the token is taken back while it works, and keeps the post for the next one", async () => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    const unauthorized = { kind: "status", status: 401, when: "before" } as const;
    platform.faults.next(({ method, path }) => method === "POST" && path.endsWith("/messages"), unauthorized);
    platform.says("maren", "plover-orders", ORDER);
    expect(await running.ended).toMatchObject({ kind: "settings" });
    await running.stop();
    platform.gateway.drop("lost");
    await week.start().entered;
    await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).toBe(1);
  });

  it("ends when the gateway has been silent for five minutes, whatever the client believes", async () => {
    let wallMs = Date.now();
    const running = week.start({ wallMs: () => wallMs });
    await running.entered;
    wallMs += 4 * 60_000;
    await running.tick();
    wallMs += 2 * 60_000;
    await running.tick();
    expect(await running.ended).toMatchObject({ kind: "lost", why: expect.stringContaining("no sign of life") });
  });

  // fixtures/scenario/orders.csv: orders 1 to 5 of Plover are open, 5 is a draft.
  it("posts what is open when it first comes to a guild, and not again", async () => {
    const { platform } = week;
    const first = week.start();
    await first.entered;
    for (const number of [1, 2, 3, 4, 5]) {
      expect(countIn(platform, "plover-orders", new RegExp(`^${number} .* · `))).toBe(1);
      expect(countIn(platform, "plover-bench", new RegExp(`^${number} .* · sheet`))).toBe(number === 5 ? 0 : 1);
    }
    await first.stop();
    const before = platform.store.messages.length;
    await week.start().entered;
    expect(platform.store.messages).toHaveLength(before);
  });

  it("registers its commands once, and not again as long as they are the same", async () => {
    const { platform } = week;
    const first = week.start();
    await first.entered;
    await first.stop();
    await week.start().entered;
    expect(platform.commands.writes).toBe(1);
    expect(platform.commands.list.map(({ name }) => name)).toContain("Read as an order");
  });

  it("finishes what is in hand before it leaves, and takes nothing more in", async () => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    const heard = new Promise<void>((resolve) => {
      running.client.once("messageCreate", () => resolve());
    });
    platform.says("maren", "plover-orders", ORDER);
    await heard;
    await running.stop();
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).toBe(1);
    platform.says("iver", "plover-orders", "build quarrie driver like gamer");
    expect(await running.ended).toMatchObject({ kind: "stopped" });
    expect(countIn(platform, "plover-orders", /QUARRIE RH driver · draft/)).toBe(0);
    await week.start().entered;
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).toBe(1);
  });

  it("does not come back after it was stopped while its line was down", async () => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    platform.gateway.drop("lost");
    const reconnecting = new Promise<void>((resolve) => {
      running.client.once("shardReconnecting", () => resolve());
    });
    await reconnecting;
    await running.stop();
    // It had its line once more before it left, so that no try to connect is left over.
    expect(platform.gateway.counts.identified).toBe(2);
    await platform.until(() => !platform.gateway.isConnected(), "its leave");
  });

  it("tells those who ask while it leaves to ask again", async () => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    platform.says("maren", "plover-orders", ORDER);
    const draft = await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    // A post that is never answered keeps it from leaving at once.
    let isTried = false;
    const isPost: Parameters<typeof platform.faults.next>[0] = ({ method, path }) => {
      isTried = isTried || (method === "POST" && path.endsWith("/messages"));
      return isTried;
    };
    platform.faults.next(isPost, { kind: "hang", when: "before" });
    platform.says("iver", "plover-orders", "build quarrie driver like gamer");
    await platform.until(() => isTried, "the post");
    const stopping = running.stop();
    const press = await platform.answered(platform.presses("maren", draft, "Go"));
    expect(press).toMatchObject({ first: 4, isEphemeral: true });
    await stopping;
    expect(countIn(platform, "plover-orders", /^6 .*confirmed/)).toBe(0);
  });

  it("tells at the next start who waits in vain, its process having ended before it got to it", async () => {
    const { platform, db, now } = week;
    const before = makeAnswers({ db, now, newMark: () => ({ nonce: "n1", ref: "r1" }) });
    before.asked({
      ...{ key: "press:1234567890123456789", channel: "plover-orders", command: "order confirm" },
      sender: { platform: "rehearsal", platformId: "maren", roleIds: [] },
    });
    const running = week.start();
    await running.entered;
    const post = await postIn(platform, "plover-orders", /Not done: order confirm/);
    expect(readPost(post).text).toMatch(/Nothing was changed/);
    await running.stop();
    await week.start().entered;
    expect(countIn(platform, "plover-orders", /Not done: order confirm/)).toBe(1);
  });
});
