import { describe, expect, it } from "vitest";
import { ok } from "../../../bot/doctor/finding.ts";
import { runChecks } from "../../../bot/doctor/runChecks.ts";
import { DatabaseRefusal } from "../../../db/databaseRefusal.ts";

describe("runChecks", () => {
  it("makes a fault of a check that throws and goes on", async () => {
    const broken = (): never => {
      throw new Error("no bindings");
    };
    expect(
      await runChecks([
        { name: "first", look: broken },
        { name: "second", look: async () => broken() },
        { name: "third", look: () => ok("there") },
      ]),
    ).toMatchObject([
      { name: "first", state: "fault", found: "no bindings" },
      { name: "second", state: "fault" },
      { name: "third", state: "ok", found: "there", remedy: null },
    ]);
  });

  it("leaves it to a refusal to say what to do", async () => {
    const look = (): never => {
      throw new DatabaseRefusal("missing", { path: "here" });
    };
    expect(await runChecks([{ name: "file", look }])).toMatchObject([{ state: "fault", found: expect.stringContaining("Restore"), remedy: null }]);
  });
});
