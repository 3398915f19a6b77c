import { describe, expect, it } from "vitest";
import { type CommandOption, readCommandLine } from "../../../bot/rehearsal/commandLine.ts";

const named = (...names: readonly string[]): readonly CommandOption[] => names.map((name) => ({ name }));
const commands = new Map([
  ["spec", named("player", "club")],
  ["order confirm", named("order", "version")],
  ["order build", named("text")],
  ["board", named("view", "truck")],
  ["stock", [{ name: "file", takes: "file" as const }, ...named("view", "text")]],
  ["help", []],
]);
const optionsOf = (command: string): readonly CommandOption[] | null => commands.get(command) ?? null;

describe("readCommandLine", () => {
  it.each([
    ["spec oxtoby", "spec", { player: "oxtoby" }],
    ["spec bram oxtoby", "spec", { player: "bram oxtoby" }],
    ["SPEC Oxtoby", "spec", { player: "Oxtoby" }],
    ["spec oxtoby club=driver", "spec", { player: "oxtoby", club: "driver" }],
    ["spec club=driver bram oxtoby", "spec", { player: "bram oxtoby", club: "driver" }],
    ['spec player="bram oxtoby" driver', "spec", { player: "bram oxtoby", club: "driver" }],
    ["spec Player=oxtoby", "spec", { player: "oxtoby" }],
    ["spec player=", "spec", { player: "" }],
    ["spec", "spec", {}],
    ["order confirm order=57 version=2", "order confirm", { order: "57", version: "2" }],
    ["order confirm 57 version=2", "order confirm", { order: "57", version: "2" }],
    ['order build oxtoby driver 45.25" loft=9', "order build", { text: 'oxtoby driver 45.25" loft=9' }],
    ["order build oxtoby driver\nloft 9.25", "order build", { text: "oxtoby driver\nloft 9.25" }],
    ["board", "board", {}],
    ["board late", "board", { view: "late" }],
    ["board late lantern two", "board", { view: "late", truck: "lantern two" }],
    ["board view=late lantern two", "board", { view: "late", truck: "lantern two" }],
    ["board truck=lantern late", "board", { view: "late", truck: "lantern" }],
    ["help", "help", {}],
    ["stock receive", "stock", { view: "receive" }],
    ["stock file=a.csv", "stock", { file: "a.csv" }],
    ['stock receive file="my parts.csv"', "stock", { view: "receive", file: "my parts.csv" }],
    ["stock receive 4 x Cairn", "stock", { view: "receive", text: "4 x Cairn" }],
  ])("reads /%s", (text, command, values) => {
    expect(readCommandLine(text, optionsOf)).toEqual({ kind: "command", command, values });
  });

  it.each([
    ["nothing oxtoby", "no command /nothing"],
    ["order", "no command /order"],
    ["order drop 57", "no command /order"],
    ["", "no command /"],
    ["help me", "/help takes nothing more; left over: me"],
    ["board view=late truck=two more", "/board takes view, truck; left over: more"],
    ["spec club=3w club=driver", "/spec has club= twice"],
    ["stock view=receive text=lines a.csv", "/stock takes file, view, text; left over: a.csv"],
  ])("misuses /%s", (text, reason) => {
    expect(readCommandLine(text, optionsOf)).toEqual({ kind: "misused", reason });
  });

  it("tries a name of two words before its first word alone", () => {
    const both = (command: string): readonly CommandOption[] | null => (["order", "order build"].includes(command) ? named("text") : null);
    expect(readCommandLine("order build oxtoby", both)).toEqual({ kind: "command", command: "order build", values: { text: "oxtoby" } });
    expect(readCommandLine("order builds oxtoby", both)).toEqual({ kind: "command", command: "order", values: { text: "builds oxtoby" } });
  });
});
