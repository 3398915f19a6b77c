import { describe, expect, it } from "vitest";
import { attachFiles } from "../../../bot/discord/attachFiles.ts";
import { instant } from "../../../core/kinds.ts";
import { driverBuild } from "../prints/someSheets.ts";
import { card, cardWithButtons } from "../rehearsal/cards.ts";

const namesOf = async (given: Parameters<typeof attachFiles>[0]) => ((await attachFiles(given)).files ?? []).map(({ name }) => name);

describe("attachFiles", () => {
  it("attaches nothing to a card that fits and has no files", async () => {
    expect(await attachFiles(cardWithButtons("57", "Go"))).toEqual({});
  });

  it("attaches the whole card as text when something of it has no room", async () => {
    const lines = Array.from({ length: 500 }, (_none, index) => [`line ${index} of many`]);
    const given = {
      ...cardWithButtons("57 OXTOBY", "Go"),
      lines: [...lines, [{ at: instant(0), zone: "UTC" }, " ", { call: "lead" as const, name: "leads" }]],
      fields: [{ label: "Posted by", value: ["Maren"] }],
    };
    const { files = [] } = await attachFiles(given);
    expect(files.map(({ name }) => name)).toEqual(["57-OXTOBY.txt"]);
    const text = files[0]?.attachment.toString("utf8") ?? "";
    expect(text.split("\n").slice(0, 3)).toEqual(["57 OXTOBY", "", "line 0 of many"]);
    expect(text.endsWith("line 499 of many\nThu 1 Jan 00:00 (UTC) @leads\n\nPosted by: Maren\n\n[Go]\n")).toBe(true);
  });

  it("lists the choices in the text", async () => {
    const items = Array.from({ length: 30 }, (_none, index) => ({ label: `Head ${index}`, value: `${index}` }));
    const { files = [] } = await attachFiles(card("57", { choices: { label: "Which?", action: { command: "a", subject: "b", version: 0 }, items } }));
    expect(files[0]?.attachment.toString("utf8")).toContain("\nWhich?\n- Head 0\n");
    expect(files[0]?.attachment.toString("utf8")).toContain("\n- Head 29\n");
  });

  it("draws at most nine files, and adds the text when there are more", async () => {
    const files = Array.from({ length: 11 }, (_none, index) => ({ name: `${index}.pdf`, draw: "sheet" as const, sheet: driverBuild }));
    expect(await namesOf(card("57", { files: files.slice(0, 9) }))).toHaveLength(9);
    expect((await namesOf(card("57", { files }))).slice(-2)).toEqual(["8.pdf", "57.txt"]);
  });

  // 10 MiB a message: the platform's public documentation; 8 MiB of it are for the files.
  it("leaves out a file for which the message has no room, and says so in the text", async () => {
    const sizes = { "a.pdf": 5_000_000, "b.pdf": 4_000_000, "c.pdf": 3_000_000 };
    const drawn = Object.entries(sizes).map(([name, size]) => ({ name, type: "application/pdf" as const, bytes: new Uint8Array(size) }));
    const { files = [] } = await attachFiles(card("57"), async () => drawn);
    expect(files.map(({ name }) => name)).toEqual(["a.pdf", "c.pdf", "57.txt"]);
    expect(files[2]?.attachment.toString("utf8")).toBe("57\n\n\nToo large for the chat: b.pdf, 4 MB\n");
  });
});
