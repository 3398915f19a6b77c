import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { printChecks } from "../../../bot/doctor/printChecks.ts";
import { runChecks } from "../../../bot/doctor/runChecks.ts";
import { temporaryFolder } from "../../db/openTemporary.ts";
import { lookAt } from "./lookAt.ts";

describe("printChecks", () => {
  it("reads the fonts and draws a page and a picture", async () => {
    expect((await runChecks(printChecks())).map(({ name, state }) => `${state} ${name}`)).toEqual(["ok fonts", "ok pdf", "ok png"]);
  });

  it("names the fonts that cannot be read", async () => {
    const folder = temporaryFolder();
    expect(
      await lookAt(
        printChecks((path) => join(folder, path)),
        "fonts",
      ),
    ).toMatchObject({
      state: "fault",
      found: "DejaVuSansCondensed.ttf, DejaVuSansCondensed-Bold.ttf cannot be read",
    });
  });
});
