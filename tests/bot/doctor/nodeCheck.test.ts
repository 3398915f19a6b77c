import { describe, expect, it } from "vitest";
import { nodeCheck } from "../../../bot/doctor/nodeCheck.ts";
import { lookAt } from "./lookAt.ts";

describe("nodeCheck", () => {
  it.each([
    ["20.12.0", "ok"],
    ["20.20.2", "ok"],
    ["20.11.1", "fault"],
    ["21.0.0", "fault"],
    ["22.3.0", "fault"],
    ["18.20.0", "fault"],
  ])("holds %s against >=20.12 <21: %s", async (version, state) => {
    expect((await lookAt([nodeCheck(version, ">=20.12 <21")], "node")).state).toBe(state);
  });

  it("does not pass over a bound that it cannot read", async () => {
    expect(await lookAt([nodeCheck("20.12.0", "^20")], "node")).toMatchObject({ state: "fault", found: expect.stringContaining("^20") });
  });
});
