import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { type JoinedWeek, joinedWeek } from "../../support/platform/joinedWeek.ts";
import { countIn, postIn, readPost } from "../../support/platform/readPost.ts";

const ORDER = "build oxtoby driver like gamer, loft 9.25, face 0.5 open, length 45 1/4, d3, by 14:30";

describe("the real chat, through a platform on this machine", () => {
  let week: JoinedWeek;
  beforeEach(async () => {
    week = await joinedWeek();
  });
  afterEach(async () => {
    await week.close();
    expect(week.platform.complaints).toEqual([]);
  });

  it("takes an order by message: answers its errors, reads it anew when it is edited, confirms it by a press", async () => {
    const { platform } = week;
    await week.start().entered;
    const said = platform.says("maren", "plover-orders", "build oxtoby driver like gamer loft 19.25 by 14:70");
    const faults = readPost(await postIn(platform, "plover-orders", /2 things before this is an order/));
    expect(faults.text).toContain("19.25? driver 6–14");
    expect(faults.buttons).toContain("9.25");

    platform.edits(said, ORDER);
    const draft = await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    expect(readPost(draft)).toMatchObject({
      text: expect.stringContaining("Wrote 9.25, 0.5 open, 45 1/4, d3"),
      buttons: expect.arrayContaining(["Go", "Change"]),
    });

    const press = await platform.answered(platform.presses("maren", draft, "Go"));
    expect(press).toMatchObject({ first: 5, isEphemeral: true });
    expect(readPost(press.shown ?? {}).title).toBe("6 confirmed");
    await postIn(platform, "plover-orders", /6 OXTOBY RH driver · confirmed/);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver/)).toBe(1);
    expect(readPost(await postIn(platform, "plover-bench", /6 OXTOBY RH driver · sheet/)).text).toContain("Bare cut 43 7/8 in");
    expect(week.bugs).toEqual([]);
  });

  it("takes an order by a command with options, and by a form page after page", async () => {
    const { platform } = week;
    await week.start().entered;
    await platform.answered(
      platform.calls("maren", "plover-orders", "order new", { player: "Ysolde Quarrie", club: "driver", like: "gamer", loft: "9.5" }),
    );
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);

    const first = await platform.answered(platform.calls("maren", "plover-orders", "order form"));
    expect(first.form).toMatchObject({ title: "Order: which club (1 of 3)" });
    const kept = await platform.answered(platform.submits("maren", first, { player: "Bram Oxtoby", club: "driver", like: "gamer" }));
    expect(readPost(kept.shown ?? {}).buttons).toEqual(["Next page"]);
    const second = await platform.answered(platform.pressesAnswer("maren", kept, "Next page"));
    const keptAgain = await platform.answered(platform.submits("maren", second, { loft: "9.25" }));
    const third = await platform.answered(platform.pressesAnswer("maren", keptAgain, "Next page"));
    await platform.answered(platform.submits("maren", third, {}));
    expect(readPost(await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).text).toContain("Wrote 9.25, like gamer");
    expect(week.bugs).toEqual([]);
  });

  it("opens the form of every command that answers by one", async () => {
    const { platform } = week;
    await week.start().entered;
    const changed = await platform.answered(platform.calls("iver", "plover-orders", "order change", { order: "5" }));
    expect(changed.form).toMatchObject({ title: "Change 5" });
    const accepted = await platform.answered(platform.calls("iver", "plover-orders", "order accept", { order: "1" }));
    expect(accepted.form).toMatchObject({ title: "1: the player takes it as it is" });
    const done = await platform.answered(platform.submits("iver", accepted, { reason: "feels right to him" }));
    expect(readPost(done.shown ?? {}).text).toContain("Nothing was changed");
    expect(week.bugs).toEqual([]);
  });

  it("reads somebody's message as an order, and a table as stock", async () => {
    const { platform } = week;
    await week.start().entered;
    const said = platform.says("iver", "plover-orders", "quarrie driver, like gamer d4");
    await platform.answered(platform.callsOn("maren", said, "Read as an order"));
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);

    const table = platform.file("came.csv", "what,count\nnonsense,3\n");
    const called = await platform.answered(platform.calls("dessa", "plover-bench", "stock", { view: "receive" }, { file: table }));
    expect(readPost(called.shown ?? {}).text).toMatch(/Row \d/);
    platform.says("dessa", "plover-bench", "", [platform.file("came.csv", "what,count\nnonsense,3\n")]);
    await postIn(platform, "plover-bench", /nothing was changed/);
  });

  it("refuses a button to whom it is not for, for that person's eyes only, and changes nothing", async () => {
    const { platform } = week;
    await week.start().entered;
    platform.says("maren", "plover-orders", ORDER);
    const draft = await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    const before = platform.posts("plover-orders").length;
    for (const who of ["akiko", "dessa", "stranger"]) {
      const refused = await platform.answered(platform.presses(who, draft, "Go"));
      expect(refused).toMatchObject({ isEphemeral: true });
      expect(readPost(refused.shown ?? {}).text).toMatch(/Nothing was changed|Ask the lead to add you/);
    }
    expect(platform.posts("plover-orders")).toHaveLength(before);
    expect(readPost(draft).title).toContain("draft");
  });

  it("tells a colleague elsewhere the live spec, for that colleague alone, with the names they type completed", async () => {
    const { platform } = week;
    await week.start().entered;
    const typed = await platform.answered(platform.types("akiko", "general", "spec", "player", "quar"));
    expect(typed.choices).toEqual([{ name: "Ysolde Quarrie", value: "Ysolde Quarrie" }]);
    const spec = await platform.answered(platform.calls("akiko", "general", "spec", { player: typed.choices?.[0]?.value ?? "" }));
    expect(spec.isEphemeral).toBe(true);
    expect(readPost(spec.shown ?? {}).title).toContain("Ysolde Quarrie");
    expect(platform.posts("general")).toEqual([]);
  });

  it("posts the Monday fill once, killed between sending and marking", async () => {
    const early = await joinedWeek(instant(Date.UTC(2027, 4, 3, 5, 0)));
    try {
      let isDead = false;
      const running = early.start({
        crash: (point) => {
          isDead = isDead || (point === "after-send" && countIn(early.platform, "plover-week", /Monday fill/i) > 0);
          if (isDead) {
            throw new Error("killed");
          }
        },
      });
      await running.entered;
      expect(countIn(early.platform, "plover-week", /fill/i)).toBe(0);
      early.forward(61);
      await running.tick().catch(() => {});
      expect(isDead).toBe(true);
      await running.stop();
      await early.start().entered;
      expect(countIn(early.platform, "plover-week", /Monday fill/i)).toBe(1);
    } finally {
      await early.close();
    }
  });

  it("reads orders and edits of while it was down at its start, once", async () => {
    const { platform } = week;
    const first = week.start();
    await first.entered;
    const known = platform.says("maren", "plover-orders", ORDER);
    await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    await first.stop();
    platform.gateway.drop("lost");

    week.forward(2);
    platform.edits(known, ORDER.replace("9.25", "9.5"));
    platform.says("iver", "plover-orders", "build quarrie driver like gamer, loft 9.5");
    platform.says("akiko", "plover-orders", "build toll driver like gamer");
    await week.start().entered;
    await postIn(platform, "plover-orders", /QUARRIE RH driver · draft/);
    await postIn(platform, "plover-orders", /Wrote 9.5, 0.5 open/);
    expect(readPost(await postIn(platform, "plover-orders", /is for rep or lead/)).text).toContain("viewer");
    const posts = platform.posts("plover-orders").length;

    platform.gateway.drop("lost");
    await platform.until(() => platform.gateway.counts.identified >= 3 && platform.gateway.isConnected(), "a new session");
    platform.says("maren", "plover-orders", "where toll driver");
    await postIn(platform, "plover-orders", /driver/);
    await platform.until(() => platform.posts("plover-orders").length > posts, "an answer");
    expect(countIn(platform, "plover-orders", /QUARRIE RH driver · draft/)).toBe(1);
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).toBe(1);
    expect(platform.posts("plover-orders")).toHaveLength(posts + 1);
  });
});
