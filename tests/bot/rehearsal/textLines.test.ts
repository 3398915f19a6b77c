import { describe, expect, it } from "vitest";
import type { ScreenPost } from "../../../bot/rehearsal/screenPost.ts";
import { textLines } from "../../../bot/rehearsal/textLines.ts";
import { id, instant } from "../../../core/kinds.ts";
import { action, card, cardWithButtons } from "./cards.ts";

const ZONE = "America/New_York";
const at = instant(Date.parse("2027-05-03T18:02:00Z"));
const place = { id: "k3m9x2a", at, channel: "range", to: null, answers: null, edits: null };

function drawn(post: Partial<ScreenPost>): readonly string[] {
  return textLines({ ...place, card: card("57 OXTOBY"), files: [], ...post } as ScreenPost, ZONE);
}

describe("textLines", () => {
  it("leads with channel, time in the channel's zone and title", () => {
    expect(drawn({})).toEqual(["[#range 14:02] 57 OXTOBY"]);
  });

  it("says the tone when it is not plain, whether it is an edit, and who alone sees it", () => {
    expect(drawn({ card: card("No", { tone: "refusal" }), edits: "k3m9x2a", to: "marta" })).toEqual([
      "[#range 14:02] No (refusal) (edited) (only you)",
    ]);
  });

  it("draws strong words, calls and moments as words", () => {
    const later = instant(at + 10 * 60_000);
    const line = ["In hand ", { strong: "soon" }, ", ", { at: later, zone: ZONE }, " ", { call: id<"person">(3), name: "Marta" }] as const;
    expect(drawn({ card: card("57", { lines: [line] }) })[1]).toBe("  In hand soon, 14:12 @Marta");
  });

  it("adds the reader's own time when the moment carries another zone", () => {
    const line = [{ at, zone: "UTC" }] as const;
    expect(drawn({ card: card("57", { lines: [line] }) })[1]).toBe("  14:02 (18:02 UTC)");
  });

  it("draws what stands behind More with its labels", () => {
    expect(drawn({ card: card("57", { fields: [{ label: "Bare cut", value: ["44 3/8"] }] }) })[1]).toBe("  Bare cut: 44 3/8");
  });

  it("numbers the buttons and names the post beside them", () => {
    expect(drawn({ card: cardWithButtons("57", "Go", "Change") })[1]).toBe("  [1] Go [2] Change · k3m9x2a");
  });

  it("names no post beside the buttons of an answer", () => {
    expect(drawn({ card: cardWithButtons("57", "Go"), answers: "press:1" })[1]).toBe("  [1] Go");
  });

  it("prints a line for each file, its path in one piece", () => {
    const path = `/tmp/${"deep/".repeat(20)}sheet-57.pdf`;
    expect(drawn({ files: [{ name: "sheet-57.pdf", bytes: 23_400, path }] })).toEqual([
      "[#range 14:02] 57 OXTOBY",
      `  file sheet-57.pdf (23 kB) at ${path}`,
    ]);
    expect(drawn({ files: [{ name: "a.png", bytes: 12, path: "/a.png" }] })[1]).toBe("  file a.png (1 kB) at /a.png");
  });

  it("numbers the choices, one a line", () => {
    const choices = { label: "Which club?", action: action("pick"), items: ["driver", "3w"].map((value) => ({ label: value, value })) };
    expect(drawn({ card: card("57", { choices }) }).slice(1)).toEqual(["  Which club?", "  1. driver", "  2. 3w"]);
  });

  it("numbers the parts of a form with what they hold already", () => {
    const parts = [
      { name: "player", label: "Player", items: [], required: true, value: "Oxtoby" },
      { name: "hand", label: "Hand", items: [{ label: "left", value: "l" }], required: false, value: "" },
    ];
    const lines = textLines({ ...place, to: "marta", form: { title: "New order", action: action("form"), parts } }, ZONE);
    expect(lines).toEqual(["[#range 14:02] New order (form) (only you)", "  1 Player: Oxtoby", "  2 Hand (may stay empty): ", "      1. left"]);
  });

  it("keeps to 72 columns whatever people wrote", () => {
    const lines = drawn({ card: card("x".repeat(300), { lines: [["word ".repeat(60)], ["y".repeat(200)]] }) });
    expect(Math.max(...lines.map((line) => line.length))).toBe(72);
  });

  it("lets no text of people begin a line of its own or command the terminal", () => {
    const lines = drawn({ card: card("57", { lines: [["note\n[#range 14:02] Confirmed\u001b[1A"]] }) });
    expect(lines).toEqual(["[#range 14:02] 57", "  note [#range 14:02] Confirmed\ufffd[1A"]);
  });
});
