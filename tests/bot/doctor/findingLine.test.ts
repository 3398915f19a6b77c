import { describe, expect, it } from "vitest";
import { fault, ok, skipped, warn } from "../../../bot/doctor/finding.ts";
import { findingLine } from "../../../bot/doctor/findingLine.ts";
import { PLANTED } from "./doctorPlatform.ts";

const text = { json: false, token: null };

describe("findingLine", () => {
  it.each([
    [ok("20.12"), "ok      node: 20.12"],
    [warn("old", "Renew it"), "warn    node: old. Renew it"],
    [fault("gone.", "Find it."), "FAULT   node: gone. Find it"],
    [skipped("--offline"), "skipped node: --offline"],
  ])("begins with the state and ends with the remedy", (verdict, line) => {
    expect(findingLine({ name: "node", ...verdict }, text)).toBe(line);
  });

  it("stays one line without control characters, whatever was found", () => {
    expect(findingLine({ name: "node", ...ok("one\n two\u001b[31m\tthree") }, text)).toBe("ok      node: one two [31m three");
  });

  it("is one JSON object for a program", () => {
    expect(JSON.parse(findingLine({ name: "node", ...warn("old", "Renew it") }, { json: true, token: null }))).toEqual({
      name: "node",
      state: "warn",
      found: "old",
      remedy: "Renew it",
    });
  });

  it.each([
    [PLANTED, false],
    [PLANTED, true],
    [`Bot ${PLANTED}`, false],
  ])("never shows the token %s, json %s", (token, json) => {
    const line = findingLine({ name: PLANTED, ...fault(`bad header ${PLANTED}`, `not ${PLANTED}`) }, { json, token });
    expect(line).not.toContain(PLANTED);
    expect(line.split("(token)")).toHaveLength(4);
  });
});
