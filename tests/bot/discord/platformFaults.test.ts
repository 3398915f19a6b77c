import { randomBytes } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makeAnswers } from "../../../bot/desk/answers.ts";
import { makeDesk } from "../../../bot/desk/desk.ts";
import { newMark } from "../../../bot/outbox/newMark.ts";
import { commands } from "../../../bot/registry.ts";
import type { Asked, Fault } from "../../support/platform/faults.ts";
import { type JoinedWeek, joinedWeek } from "../../support/platform/joinedWeek.ts";
import { countIn, postIn, readPost } from "../../support/platform/readPost.ts";

const ORDER = "build oxtoby driver like gamer, loft 9.25";
const DRAFT = /OXTOBY RH driver · draft/;
const isPost = ({ method, path }: Asked): boolean => method === "POST" && /^\/channels\/\d+\/messages$/.test(path);
const isEdit = ({ method, path }: Asked): boolean => method === "PATCH" && path.startsWith("/channels/");
const isAcknowledgement = ({ path }: Asked): boolean => path.includes("/callback");
const isAnswer = ({ path }: Asked): boolean => path.startsWith("/webhooks/");

describe("the real chat when the platform is at fault", () => {
  let week: JoinedWeek;
  beforeEach(async () => {
    week = await joinedWeek();
  });
  afterEach(async () => {
    await week.close();
    expect(week.platform.complaints).toEqual([]);
  });

  it.each<[string, Fault, number]>([
    ["answers 502 before it took a post", { kind: "status", status: 502, when: "before" }, 1],
    ["answers 502 after it took a post", { kind: "status", status: 502, when: "after" }, 1],
    ["answers 500 to every try of the client", { kind: "status", status: 500, when: "before" }, 3],
    ["takes a post and every time loses the answer", { kind: "status", status: 503, when: "after" }, 3],
    ["never answers a post it took", { kind: "hang", when: "after" }, 1],
    ["cuts the line before it took a post", { kind: "reset", when: "before" }, 1],
    ["cuts the line after it took a post", { kind: "reset", when: "after" }, 1],
    ["asks for patience with one route", { kind: "slow down", scope: "user", afterS: 0.2 }, 2],
    ["asks for patience with everything", { kind: "slow down", scope: "global", afterS: 0.2 }, 2],
  ])("posts once when it %s", async (_case, fault, times) => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    platform.faults.next(isPost, fault, times);
    platform.says("maren", "plover-orders", ORDER);
    await platform.until(() => platform.requests.filter(isPost).length >= times, "the tries at fault");
    platform.says("maren", "plover-orders", "build quarrie driver like gamer, loft 9.5");
    week.forward(10);
    await running.tick();
    await postIn(platform, "plover-orders", DRAFT);
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);
    expect(countIn(platform, "plover-orders", DRAFT)).toBe(1);
    expect(countIn(platform, "plover-orders", /QUARRIE RH driver · draft/)).toBe(1);
  });

  it("does once what is delivered twice", async () => {
    const { platform } = week;
    await week.start().entered;
    const said = platform.says("maren", "plover-orders", ORDER);
    const draft = await postIn(platform, "plover-orders", DRAFT);
    platform.deliverAgain(said);
    const press = platform.presses("maren", draft, "Go");
    platform.again(press);
    await platform.answered(press);
    platform.says("maren", "plover-orders", "build quarrie driver like gamer, loft 9.5");
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver/)).toBe(1);
    expect(countIn(platform, "plover-orders", /QUARRIE RH driver/)).toBe(1);
    expect(platform.requests.filter(isAcknowledgement)).toHaveLength(1);
    expect(week.bugs).toEqual([]);
  });

  it("keeps to the newest text when an edit overtakes the message", async () => {
    const { platform } = week;
    await week.start().entered;
    platform.saysOutOfOrder("maren", "plover-orders", ORDER, ORDER.replace("9.25", "9.5"));
    await postIn(platform, "plover-orders", /Wrote 9.5, like gamer/);
    platform.says("maren", "plover-orders", "build quarrie driver like gamer, loft 9.5");
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);
    expect(countIn(platform, "plover-orders", /Wrote 9.25/)).toBe(0);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver/)).toBe(1);
  });

  it("hears after a cut line what was said meanwhile, by resuming", async () => {
    const { platform } = week;
    await week.start().entered;
    platform.gateway.drop("resumable");
    platform.says("maren", "plover-orders", ORDER);
    await postIn(platform, "plover-orders", DRAFT);
    await platform.until(() => platform.gateway.counts.resumed === 1, "the resumed session");
    expect(platform.gateway.counts.identified).toBe(1);
    expect(countIn(platform, "plover-orders", DRAFT)).toBe(1);
  });

  it.each<[string, (week: JoinedWeek) => void]>([
    ["the session was lost", ({ platform }) => platform.gateway.drop("lost")],
    ["the session was declared void", ({ platform }) => platform.gateway.invalidate(false)],
    [
      "reconnecting was refused twice",
      ({ platform }) => {
        platform.gateway.refuse(2);
        platform.gateway.drop("lost");
      },
    ],
  ])("reads out of history what was said while %s", async (_case, lose) => {
    const { platform } = week;
    await week.start().entered;
    lose(week);
    platform.says("maren", "plover-orders", ORDER);
    await postIn(platform, "plover-orders", DRAFT);
    await platform.until(() => platform.gateway.counts.identified === 2, "the new session");
    expect(countIn(platform, "plover-orders", DRAFT)).toBe(1);
  });

  it("does what a late press asks and answers it by a post", async () => {
    const { platform } = week;
    await week.start().entered;
    platform.says("maren", "plover-orders", ORDER);
    const draft = await postIn(platform, "plover-orders", DRAFT);
    platform.switches.isLate = true;
    platform.presses("maren", draft, "Go");
    const late = await postIn(platform, "plover-orders", /would not take the answer in time/);
    expect(readPost(late).title).toBe("6 confirmed");
    expect(late.calls).toEqual([platform.world.people.get("maren")]);
    await postIn(platform, "plover-orders", /6 OXTOBY RH driver · confirmed/);
  });

  it.each<[string, (asked: Asked) => boolean, Fault, number]>([
    ["the acknowledgement's answer was lost", isAcknowledgement, { kind: "status", status: 502, when: "after" }, 1],
    ["the acknowledgement met a fault", isAcknowledgement, { kind: "status", status: 502, when: "before" }, 1],
    ["the answer's answer was lost", isAnswer, { kind: "reset", when: "after" }, 1],
  ])("shows an answer to its asker though %s", async (_case, fits, fault, times) => {
    const { platform } = week;
    await week.start().entered;
    platform.faults.next(fits, fault, times);
    const spec = await platform.answered(platform.calls("akiko", "general", "spec", { player: "Ysolde Quarrie" }));
    expect(readPost(spec.shown ?? {}).title).toContain("Ysolde Quarrie");
    expect(platform.posts("general")).toEqual([]);
  });

  it("posts an answer that the platform would not take", async () => {
    const { platform } = week;
    await week.start().entered;
    platform.faults.next(isAnswer, { kind: "status", status: 500, when: "before" }, 3);
    platform.calls("akiko", "general", "spec", { player: "Ysolde Quarrie" });
    const late = readPost(await postIn(platform, "general", /would not take the answer/));
    expect(late.title).toContain("Ysolde Quarrie");
    expect(late.text).not.toContain("Cairn");
  });

  it("answers by a post what a process before did and could not say", async () => {
    const { platform, db } = week;
    const first = week.start();
    await first.entered;
    await first.stop();
    platform.gateway.drop("lost");
    const desk = makeDesk({ db, commands, now: week.now, newMark: () => newMark(randomBytes), rolesOf: () => ["viewer"], seed: 5, log: () => {} });
    const sender = { platform: "rehearsal", platformId: "akiko", roleIds: [] };
    const asking = { key: "invoke:123456789012345678", channel: "general", sender, command: "spec" };
    makeAnswers({ db, now: week.now, newMark: () => newMark(randomBytes) }).asked(asking);
    await desk.receive({ kind: "invoke", ...asking, values: { player: "Ysolde Quarrie" } });
    await week.start().entered;
    await postIn(platform, "general", /Ysolde Quarrie/);
    await week.start().entered;
    expect(countIn(platform, "general", /Ysolde Quarrie/)).toBe(1);
  });

  it("pins the board, makes a deleted post and one too old to be edited anew", async () => {
    const { platform } = week;
    const running = week.start();
    await running.entered;
    platform.says("maren", "plover-orders", `${ORDER} go`);
    const board = await postIn(platform, "plover-bench", /Bench: \d orders/);
    const sheet = await postIn(platform, "plover-bench", /6 OXTOBY RH driver · sheet/);
    expect(board.isPinned).toBe(true);
    expect(sheet.isPinned).toBe(false);

    sheet.isGone = true;
    platform.switches.refusesOldEdits = true;
    week.forward(90);
    await platform.answered(platform.calls("dessa", "plover-bench", "step start", { order: "6" }));
    await running.tick();
    const fresh = await postIn(platform, "plover-bench", /6 OXTOBY RH driver · sheet · building/);
    expect(fresh.id).not.toBe(sheet.id);
    await platform.until(() => board.isGone, "the old board to go");
    const boards = platform.posts("plover-bench").filter((said) => /^Bench:/.test(readPost(said).title));
    expect(boards.map(({ isPinned }) => isPinned)).toEqual([true]);
    expect(platform.requests.filter(isEdit).some(({ status }) => status === 429)).toBe(true);
  });
});
