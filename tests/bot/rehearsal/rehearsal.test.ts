import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import type { Incoming, Reply } from "../../../bot/chat/types.ts";
import type { Screen } from "../../../bot/rehearsal/screen.ts";
import { instant } from "../../../core/kinds.ts";
import { action, card, cardWithButtons } from "./cards.ts";
import { playedScript, START } from "./playedScript.ts";

const MINUTE_MS = 60_000;
const toAsker = (title: string, ...labels: readonly string[]): Reply => ({
  kind: "card",
  audience: "asker",
  card: cardWithButtons(title, ...labels),
});
const toChannel = (title: string, ...labels: readonly string[]): Reply => ({
  kind: "card",
  audience: "channel",
  card: cardWithButtons(title, ...labels),
});
const commandOf = (incoming: Incoming | undefined): string | null => (incoming?.kind === "press" ? incoming.action.command : null);

describe("runRehearsal: messages", () => {
  it("delivers a line as a message of the person in the channel", async () => {
    const { received, exit } = await playedScript(["hello there"]);
    expect(exit).toBe(0);
    expect(received).toEqual([
      {
        key: "message:1:0",
        channel: "range",
        sender: { platform: "rehearsal", platformId: "id-marta", roleIds: ["rep"] },
        kind: "message",
        message: "1",
        text: "hello there",
      },
    ]);
  });

  it("joins a line that ends in a backslash with the next", async () => {
    const { received } = await playedScript(["build oxtoby driver\\", "loft 9.25\\", "go", "next"]);
    expect(received.map((incoming) => incoming.kind === "message" && incoming.text)).toEqual(["build oxtoby driver\nloft 9.25\ngo", "next"]);
  });

  it("delivers what was begun when the input ends in the middle", async () => {
    const { received, exit } = await playedScript(["one\\"]);
    expect(received).toMatchObject([{ text: "one" }]);
    expect(exit).toBe(0);
  });

  it("changes person and channel", async () => {
    const { received } = await playedScript(["@joss", "#workshop", "hello"]);
    expect(received).toMatchObject([{ channel: "workshop", sender: { platformId: "id-joss" } }]);
  });

  it("delivers the text of a file that a command names", async () => {
    const path = fileURLToPath(new URL("../../../fixtures/scenario/trucks.csv", import.meta.url));
    const { received } = await playedScript([`/stock receive file="${path}"`]);
    expect(received).toMatchObject([{ command: "stock", values: { view: "receive", file: readFileSync(path, "utf8").trimEnd() } }]);
  });

  it("edits the person's own last message under its id, each edit with a time of its own", async () => {
    const { received } = await playedScript(["first", "@joss", "other", "@marta", "edit second", "edit third"]);
    expect(received.map(({ key }) => key)).toEqual(["message:1:0", "message:2:0", `message:1:${START}`, `message:1:${START + 1}`]);
    expect(received.at(-1)).toMatchObject({ message: "1", text: "third", sender: { platformId: "id-marta" } });
  });

  it("delivers the very same thing again, whoever speaks now", async () => {
    const { received } = await playedScript(["first", "@joss", "again"]);
    expect(received).toHaveLength(2);
    expect(received[1]).toEqual(received[0]);
  });

  it("skips remarks and empty lines and stops at quit", async () => {
    const { received, exit } = await playedScript(["// a remark", "", "quit", "not reached"]);
    expect(received).toEqual([]);
    expect(exit).toBe(0);
  });

  it("delivers a command with its values", async () => {
    const { received } = await playedScript(["/spec bram oxtoby club=driver"]);
    expect(received).toMatchObject([{ key: "invoke:1", kind: "invoke", command: "spec", values: { player: "bram oxtoby", club: "driver" } }]);
  });
});

describe("runRehearsal: presses", () => {
  it("presses a button of the last card that has some", async () => {
    const replies = [toChannel("one", "Go", "Drop"), toChannel("two")];
    const { received } = await playedScript(["a", "b", "press 2"], { reply: () => replies.shift() ?? null });
    expect(received[2]).toMatchObject({ key: "press:3", kind: "press", action: action("drop"), picked: [] });
  });

  it("presses what the edited post shows now", async () => {
    const reply = async (incoming: Incoming, screen: Screen) => {
      if (incoming.kind !== "message") return null;
      if (incoming.text === "post") await screen.sender.send("range", cardWithButtons("57", "Go"), { nonce: "n", ref: "k3m9x2a" });
      else await screen.sender.edit("range", "k3m9x2a", cardWithButtons("57", "Start"));
      return null;
    };
    const { received } = await playedScript(["post", "change", "press 1", "press 1 on k3m9x2a"], { reply });
    expect(received.slice(2).map(commandOf)).toEqual(["start", "start"]);
  });

  it("passes over what only another person sees and what is in another channel", async () => {
    const replies = [toChannel("shared", "Mine"), toAsker("private", "Theirs"), toChannel("elsewhere", "There")];
    const lines = ["a", "@joss", "b", "#workshop", "c", "@marta", "#range", "press 1"];
    const { received } = await playedScript(lines, { reply: () => replies.shift() ?? null });
    expect(commandOf(received[3])).toBe("mine");
  });

  it("presses a post of an earlier run by its order or its ref, in that post's channel", async () => {
    const asked: unknown[] = [];
    const earlier = (name: unknown, channel: string) => {
      asked.push([name, channel]);
      return { id: "old", channel: "workshop", card: cardWithButtons("57", "Go") };
    };
    const { received } = await playedScript(["press 1 on order 57", "press 1 on old"], { earlier });
    expect(asked).toEqual([
      [{ kind: "order", number: 57 }, "range"],
      [{ kind: "ref", ref: "old" }, "range"],
    ]);
    expect(received).toMatchObject([
      { kind: "press", channel: "workshop" },
      { kind: "press", channel: "workshop" },
    ]);
  });

  it("presses with the value chosen", async () => {
    const choices = { label: "Which?", action: action("pick", 4), items: ["driver", "3w"].map((value) => ({ label: value, value })) };
    const reply = (): Reply => ({ kind: "card", audience: "channel", card: card("57", { choices }) });
    const { received } = await playedScript(["a", "choose 2"], { reply });
    expect(received[1]).toMatchObject({ key: "press:2", kind: "press", action: action("pick", 4), picked: ["3w"] });
  });
});

describe("runRehearsal: forms", () => {
  const parts = [
    { name: "player", label: "Player", items: [], required: true, value: "" },
    { name: "hand", label: "Hand", items: ["left", "right"].map((label) => ({ label, value: label.slice(0, 1) })), required: true, value: "r" },
  ];
  const reply = (incoming: Incoming): Reply | null =>
    incoming.kind === "message" ? { kind: "form", form: { title: "New order", action: action("form", 3), parts } } : null;

  it("sends what was filled and what stood there already", async () => {
    const { received } = await playedScript(["a", "answer 1 Oxtoby, B", "send"], { reply });
    expect(received[1]).toMatchObject({ key: "submit:2", kind: "submit", action: action("form", 3), answers: { player: "Oxtoby, B", hand: "r" } });
  });

  it.each(["Left", "l", "1"])("takes an item written as %s", async (written) => {
    const { received } = await playedScript(["a", "answer 1 x", `answer 2 ${written}`, "send"], { reply });
    expect(received[1]).toMatchObject({ answers: { hand: "l" } });
  });

  it.each([
    [["a", "send"], 'line 2: "Player" is still empty'],
    [["a", "answer 2 both"], 'line 2: "Hand" takes left, right'],
    [["a", "answer 3 x"], 'line 2: no part 3 in "New order"'],
    [["a", "@joss", "answer 1 x"], "line 3: no form is open for @joss"],
    [["a", "answer 1 x", "send", "send"], "line 4: no form is open for @marta"],
  ])("misuses %j", async (lines, said) => {
    const { exit, errors } = await playedScript(lines, { reply });
    expect([exit, errors]).toEqual([2, `${said}\n`]);
  });
});

describe("runRehearsal: the clock", () => {
  const later = (minutes: number) => instant(START + minutes * MINUTE_MS);

  it("stops wherever something is due on the way, in order", async () => {
    const due = [0, 10, 20, 40].map((minutes) => [later(minutes), card(`due ${minutes}`)] as const);
    const { moved, output } = await playedScript(["+25m"], { due });
    expect(moved).toEqual([later(10), later(20), later(25)]);
    expect(output).toBe("[#range 07:00] due 0\n\n[#range 07:10] due 10\n\n[#range 07:20] due 20\n\n");
  });

  it("stands still while lines are played", async () => {
    expect((await playedScript(["a", "@joss", "b"])).moved).toEqual([]);
  });

  it.each([
    ["=2027-05-03T07:30", 30],
    ["=2027-05-03T07:00", 0],
    ["=2027-05-04T07:00", 24 * 60],
    ["+2h", 120],
    ["+1d", 24 * 60],
  ])("moves to %s of the channel", async (line, minutes) => {
    expect((await playedScript([line])).moved.at(-1)).toBe(later(minutes));
  });

  it("reads a time in the zone of the current channel", async () => {
    expect((await playedScript(["#workshop", "=2027-05-03T11:30"])).moved.at(-1)).toBe(later(30));
  });
});

describe("runRehearsal: misuse", () => {
  it.each([
    ["@nobody", "no person @nobody"],
    ["#nowhere", "no channel #nowhere; there are #range #workshop"],
    ["=2027-05-03T06:59", "the clock moves forward only"],
    ["=2027-02-30T06:59", "no such time in America/New_York: 2027-02-30T06:59"],
    ["=2028-03-12T02:30", "no such time in America/New_York: 2028-03-12T02:30"],
    ["+9999d", "the clock moves 366 days at once at most"],
    ["press 1", "no card with buttons in #range for @marta"],
    ["choose 1", "no card with choices in #range for @marta"],
    ["press 1 on order 57", "no post with buttons for order 57"],
    ["press 1 on k3m9x2a", "no post with buttons for k3m9x2a"],
    ["attach /nowhere/week.csv", "no file /nowhere/week.csv"],
    ["/stock receive file=/nowhere/parts.csv", "no file /nowhere/parts.csv"],
    ["again", "nothing was delivered yet"],
    ["edit more", "@marta has sent no message to edit"],
    ["/unheard of", "no command /unheard"],
  ])("stops a script at %s", async (line, said) => {
    const { exit, errors, received } = await playedScript([line, "not reached"]);
    expect([exit, errors, received]).toEqual([2, `line 1: ${said}\n`, []]);
  });

  it("stops at a button the card does not have", async () => {
    const { exit, errors } = await playedScript(["a", "press 2"], { reply: () => toChannel("57", "Go") });
    expect([exit, errors]).toEqual([2, 'line 2: no button 2 on "57"\n']);
  });

  it("tells a person at a terminal and goes on", async () => {
    const { exit, errors, received } = await playedScript(["@nobody", "hello"], { terminal: true });
    expect([exit, errors, received.length]).toEqual([0, "no person @nobody\n", 1]);
  });

  it.each([
    [{ as: "nobody" }, "no person @nobody\n"],
    [{ channel: "nowhere" }, "no channel #nowhere\n"],
  ])("does not begin with %j", async (start, said) => {
    const { exit, errors, received } = await playedScript(["hello"], { ...start, terminal: true });
    expect([exit, errors, received]).toEqual([2, said, []]);
  });

  it("takes a refusal of the bot for a normal reply", async () => {
    const reply = (): Reply => ({ kind: "card", audience: "asker", card: card("Not yours", { tone: "refusal" }) });
    const { exit, errors, output } = await playedScript(["a"], { reply });
    expect([exit, errors, output]).toEqual([0, "", "[#range 07:00] Not yours (refusal) (only you)\n\n"]);
  });
});

describe("runRehearsal: output", () => {
  it("prints one object a line with who sees it, what it answers and what it replaces", async () => {
    const sent = cardWithButtons("57", "Go");
    const { output } = await playedScript(["a", "b"], {
      json: true,
      due: [[START, sent]],
      reply: async (incoming, screen) => {
        if (incoming.key === "message:2:0") await screen.sender.edit("range", `ref${START}`, card("57 ready"));
        return incoming.key === "message:1:0" ? toAsker("seen") : null;
      },
    });
    const at = "2027-05-03T11:00:00.000Z";
    expect(
      output
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line) as unknown),
    ).toEqual([
      { id: `ref${START}`, at, channel: "range", to: null, answers: null, edits: null, card: sent },
      { id: "answer:message:1:0", at, channel: "range", to: "marta", answers: "message:1:0", edits: null, card: card("seen") },
      { id: `ref${START}`, at, channel: "range", to: null, answers: null, edits: `ref${START}`, card: card("57 ready") },
    ]);
  });

  it("repeats the lines of a script with who said them", async () => {
    const { output } = await playedScript(["// the morning", "one\\", "two", "@joss", "hello"], { echo: true });
    expect(output).toBe("// the morning\nmarta> one\nmarta> two\nmarta> @joss\njoss> hello\n");
  });

  it("prompts a person with who they are, where, and the time there", async () => {
    const { output } = await playedScript(["#workshop", "+5m"], { terminal: true });
    expect(output).toContain("marta #range 07:00> ");
    expect(output).toContain("marta #workshop 11:05> ");
  });
});
