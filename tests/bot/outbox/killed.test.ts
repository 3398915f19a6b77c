import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "../../db/openTemporary.ts";

const program = fileURLToPath(new URL("killedSender.ts", import.meta.url));
const start = (...args: readonly string[]) => spawnSync(process.execPath, ["--import", "tsx", program, ...args], { encoding: "utf8" });

describe("an outbox whose process is killed with -9", () => {
  it.each([
    ["before-send", "1"],
    ["after-send", "2"],
    ["before-mark", "3"],
  ])("%s for the %s. time has every post in the channel once, in order, after the next start", (point, times) => {
    const folder = temporaryFolder();
    const paths = [join(folder, "truck.sqlite"), join(folder, "channel.txt")];
    expect(start(...paths, point, times).signal).toBe("SIGKILL");
    const second = start(...paths);
    expect([second.status, second.stderr]).toEqual([0, ""]);
    expect(readFileSync(join(folder, "channel.txt"), "utf8")).toBe("one\ntwo\nthree\n");
  });
});
