import { PassThrough } from "node:stream";
import { describe, expect, it } from "vitest";
import { UndrawnFile } from "../../../bot/prints/undrawnFile.ts";
import { openScreen } from "../../../bot/rehearsal/screen.ts";
import { instant } from "../../../core/kinds.ts";
import { card, cardWithButtons } from "./cards.ts";

const open = () => openScreen({ output: new PassThrough(), json: true, zoneOf: () => "UTC", now: () => instant(0), keepFiles: async () => [] });
const mark = (ref: string) => ({ nonce: `nonce-${ref}`, ref });

describe("openScreen", () => {
  it("finds a post it has drawn by its ref, in its channel only", async () => {
    const { sender } = open();
    expect(await sender.send("range", card("57"), mark("abc"))).toEqual({ kind: "sent", message: "abc" });
    expect(await sender.find("range", "abc", instant(0))).toBe("abc");
    expect(await sender.find("workshop", "abc", instant(0))).toBeNull();
    expect(await sender.find("range", "other", instant(0))).toBeNull();
  });

  it("keeps one card a post, the newest", async () => {
    const { sender, shownPost, lastShown } = open();
    await sender.send("range", cardWithButtons("first", "Go"), mark("a"));
    await sender.send("range", cardWithButtons("second", "Go"), mark("b"));
    await sender.edit("range", "a", card("first, done"));
    expect(shownPost("a")?.card.title).toBe("first, done");
    expect(lastShown("range", "marta", ({ buttons }) => buttons.length > 0)?.id).toBe("b");
  });

  it("draws the edit of a post that an earlier run sent", async () => {
    const { sender, shownPost } = open();
    expect(await sender.edit("range", "old", card("57"))).toEqual({ kind: "sent", message: "old" });
    expect(shownPost("old")?.channel).toBe("range");
  });

  it("forgets the oldest of very many cards", async () => {
    const { sender, shownPost } = open();
    for (let count = 0; count <= 500; count += 1) await sender.send("range", card("57"), mark(`r${count}`));
    expect(shownPost("r0")).toBeNull();
    expect(shownPost("r1")).not.toBeNull();
  });

  it("lists a card's files as they were kept, as text and as JSON", async () => {
    const kept = { name: "sheet-57.pdf", bytes: 23_000, path: "/data/files/sheet-57.pdf" };
    const shownAs = async (json: boolean): Promise<string> => {
      const output = new PassThrough();
      const parts = { output, json, zoneOf: () => "UTC", now: () => instant(0), keepFiles: async () => [kept] };
      await openScreen(parts).sender.send("range", card("57"), mark("a"));
      return String(output.read());
    };
    expect(await shownAs(false)).toContain("\n  file sheet-57.pdf (23 kB) at /data/files/sheet-57.pdf\n");
    expect(JSON.parse(await shownAs(true))).toMatchObject({ id: "a", card: { title: "57", files: [kept] } });
  });

  it("refuses a post whose file cannot be drawn, so that it is given up and told", async () => {
    const keepFiles = () => Promise.reject(new UndrawnFile("the file sheet-57.pdf cannot be drawn"));
    const { sender } = openScreen({ output: new PassThrough(), json: true, zoneOf: () => "UTC", now: () => instant(0), keepFiles });
    expect(await sender.send("range", card("57"), mark("a"))).toEqual({ kind: "refused", reason: "the file sheet-57.pdf cannot be drawn" });
  });
});
