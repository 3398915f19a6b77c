import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Sender } from "../../../bot/chat/types.ts";
import { makeDesk } from "../../../bot/desk/desk.ts";
import { decodeCustomId } from "../../../bot/discord/customId.ts";
import { type DiscordParts, type RunningDiscord, runDiscord } from "../../../bot/discord/discord.ts";
import { rolesByEnvironment } from "../../../bot/discord/rolesByEnvironment.ts";
import { runOutboxOnce } from "../../../bot/outbox/outboxLoop.ts";
import { commands } from "../../../bot/registry.ts";
import { instant } from "../../../core/kinds.ts";
import { setMeta } from "../../../db/repositories/meta.ts";
import { write } from "../../../db/write.ts";
import { demoWeek } from "../../support/demoWeek.ts";
import {
  BOT,
  type FakeDiscord,
  fakeDiscord,
  freshId,
  GUILD,
  member,
  message,
  ORDERS,
  PERSON,
  press,
  REP_ROLE,
  type Request,
  TOKEN,
} from "./fakeDiscord.ts";

const START = instant(Date.UTC(2027, 4, 4, 9, 0));
const settings = {
  guildId: GUILD,
  roleIds: { viewer: null, rep: REP_ROLE, technician: null, lead: null },
  channels: new Map([["plover-orders", ORDERS]]),
  people: new Map([["maren", PERSON]]),
};
const ORDER = "build oxtoby driver like gamer, loft 9.25";
const isPost = ({ method, path }: Request): boolean => method === "POST" && path === `/channels/${ORDERS}/messages`;
const isAnswer = ({ path }: Request): boolean => path.startsWith("/interactions/");
const isEditedAnswer = ({ method, path }: Request): boolean => method === "PATCH" && path.startsWith("/webhooks/");

interface Post {
  readonly embeds: readonly { readonly title: string; readonly footer: { readonly text: string } }[];
  readonly components: readonly { readonly components: readonly { readonly label: string; readonly custom_id: string }[] }[];
}
const buttonOf = ({ body }: Request, label: string): string => {
  const buttons = (body as unknown as Post).components.flatMap(({ components }) => components);
  return buttons.find((button) => button.label === label)?.custom_id ?? "";
};
const refOf = ({ body }: Request): string => (body as unknown as Post).embeds[0]?.footer.text ?? "";

describe("runDiscord", () => {
  let platform: FakeDiscord;
  let week: Awaited<ReturnType<typeof demoWeek>>;
  let sender: Sender | null;
  let running: RunningDiscord | null;
  let bugs: unknown[];

  beforeEach(async () => {
    platform = await fakeDiscord();
    week = await demoWeek();
    sender = null;
    running = null;
    bugs = [];
  });
  afterEach(async () => {
    await running?.stop();
    await platform.stop();
    week.close();
  });

  async function start(more: Partial<DiscordParts> = {}): Promise<RunningDiscord> {
    const { db } = week;
    let marks = 0;
    const newMark = () => ({ nonce: `nonce${++marks}`, ref: `ref${marks}` });
    const now = () => START;
    const log = (error: unknown) => void bugs.push(error);
    running = await runDiscord({
      token: TOKEN,
      settings,
      db,
      commands,
      now,
      log,
      desk: makeDesk({ db, commands, now, newMark, rolesOf: rolesByEnvironment(settings), seed: 5, log }),
      settle: async (given) => {
        sender = given;
        await runOutboxOnce({ db, sender: given, random: () => 0, newMark, onDead: () => {} }, now);
      },
      client: {
        waitGuildTimeout: 200,
        rest: { api: platform.api, offset: 0, timeout: 2000, retries: 1 },
        ws: { buildIdentifyThrottler: () => ({ waitForIdentify: () => Promise.resolve() }) },
      },
      ...more,
    });
    return running;
  }

  /** Says something and gives back the post that it causes. */
  async function say(text: string, id = freshId()): Promise<Request> {
    const before = platform.requests.length;
    platform.dispatch("MESSAGE_CREATE", message(id, PERSON, text, { guild_id: GUILD, member: member(PERSON) }));
    return platform.seen((request) => isPost(request) && platform.requests.indexOf(request) >= before);
  }

  it("registers its commands in the one guild", async () => {
    await start();
    const registered = await platform.seen(({ method, path }) => method === "PUT" && path === `/applications/${BOT}/guilds/${GUILD}/commands`);
    const names = (registered.body as unknown as readonly { readonly name: string }[]).map(({ name }) => name);
    expect(names).toContain("order");
    expect(new Set(names).size).toBe(names.length);
  });

  it("answers one order message with one post, and the same message again with none", async () => {
    await start();
    const id = freshId();
    const posted = await say(ORDER, id);
    expect(posted.body).toMatchObject({ enforce_nonce: true, allowed_mentions: { parse: [] } });
    expect(buttonOf(posted, "Change")).not.toBe("");
    platform.dispatch("MESSAGE_CREATE", message(id, PERSON, ORDER, { guild_id: GUILD, member: member(PERSON) }));
    await say("build quarrie driver like gamer, loft 9.5");
    const wrote = platform.requests.filter((request) => isPost(request) && JSON.stringify(request.body).includes("Wrote 9.25, like gamer"));
    expect(wrote).toEqual([posted]);
    expect(bugs).toEqual([]);
  });

  it("puts a button's answer off for the asker alone, then gives it", async () => {
    await start();
    const posted = await say(ORDER);
    platform.dispatch("INTERACTION_CREATE", press(buttonOf(posted, "Other heads")));
    expect((await platform.seen(isAnswer)).body).toMatchObject({ type: 5, data: { flags: 64 } });
    const answer = await platform.seen(isEditedAnswer);
    expect((answer.body as unknown as Post).embeds[0]?.title).not.toBe("");
    expect(bugs).toEqual([]);
  });

  it("opens a form as the first answer to its button", async () => {
    await start();
    const posted = await say(ORDER);
    const id = buttonOf(posted, "Change");
    platform.dispatch("INTERACTION_CREATE", press(id));
    const { body } = await platform.seen(isAnswer);
    expect(body).toMatchObject({ type: 9, data: { components: [{ type: 18, component: { type: 4, value: ORDER } }] } });
    expect(decodeCustomId((body.data as { readonly custom_id: string }).custom_id)).toEqual(decodeCustomId(id));
    expect(bugs).toEqual([]);
  });

  it("posts once when the platform took a post and answered 502", async () => {
    await start();
    platform.answerNext(`/channels/${ORDERS}/messages`, 502);
    const posted = await say(ORDER);
    await say("build quarrie driver like gamer, loft 9.5");
    const found = await sender?.find("plover-orders", refOf(posted), instant(Date.now() - 60_000));
    const history = platform.requests.filter(isPost).filter((request) => refOf(request) === refOf(posted));
    expect(history).toHaveLength(2);
    expect(new Set(history.map(({ body }) => body.nonce)).size).toBe(1);
    expect(found).toMatch(/^\d{17,20}$/);
  });

  it("keeps a post's reference through an edit, and tells a post that is gone from one that is there", async () => {
    await start();
    const posted = await say(ORDER);
    const ref = refOf(posted);
    const id = (await sender?.find("plover-orders", ref, instant(Date.now() - 60_000))) ?? "";
    const card = { kind: "note", title: "Later", tone: "plain", lines: [], fields: [], buttons: [], choices: null, files: [], data: {} } as const;
    expect(await sender?.edit("plover-orders", id, card)).toEqual({ kind: "sent", message: id });
    expect(refOf(await platform.seen(({ method }) => method === "PATCH"))).toBe(ref);
    expect(await sender?.edit("plover-orders", "300000000000000999", card)).toMatchObject({ kind: "gone" });
    expect(await sender?.send("no-such-channel", card, { nonce: "n", ref: "r" })).toMatchObject({ kind: "refused" });
  });

  it("reads at its start what was said while it was away", async () => {
    const seen = freshId();
    write(week.db, (tx) => setMeta(tx, "discord.seen.plover-orders", seen));
    platform.put((BigInt(seen) + 1n).toString(), ORDER);
    await start();
    expect(buttonOf(await platform.seen((request) => isPost(request) && JSON.stringify(request.body).includes("9.25")), "Drop")).not.toBe("");
  });

  it.each([
    ["a token that is not accepted", { token: "wrong" }, "the chat does not accept DISCORD_TOKEN"],
    [
      "a guild it is no member of",
      { settings: { ...settings, guildId: "200000000000000009" } },
      "the bot is no member of the guild 200000000000000009",
    ],
  ])("ends by saying why at %s", async (_case, more, reason) => {
    expect(await (await start(more)).ended).toBe(reason);
  });

  it("refuses a database that belongs to another guild", async () => {
    write(week.db, (tx) => setMeta(tx, "discord.guild", "200000000000000009"));
    expect(await (await start()).ended).toBe("this database belongs to another guild");
    expect(platform.requests).toEqual([]);
  });

  it("ends when the gateway closes for good", async () => {
    const { ended } = await start();
    platform.closeGateway(4014);
    expect(await ended).toBe("the message content switch is off in the application's settings");
  });
});
