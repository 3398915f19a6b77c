import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "../../db/openTemporary.ts";
import { GUILD, PLANTED } from "./doctorPlatform.ts";

const program = fileURLToPath(new URL("../../../bot/doctor.ts", import.meta.url));
const chat = { DISCORD_TOKEN: PLANTED, DISCORD_GUILD_ID: GUILD };

function run(variables: Readonly<Record<string, string>>, ...args: readonly string[]) {
  const env = { PATH: process.env.PATH, ...variables };
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", program, ...args], { encoding: "utf8", env });
  expect(stdout + stderr).not.toContain(PLANTED);
  return { status, stdout, stderr };
}

describe("doctor", () => {
  it("ends with 0 where there is no fault, a line for each check", () => {
    const { status, stdout, stderr } = run({}, "--offline", "--data", temporaryFolder());
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(
      stdout
        .trim()
        .split("\n")
        .filter((line) => !/^(ok|warn|skipped) +[a-z ]+: \S/.test(line)),
    ).toEqual([]);
    expect(stdout).toContain("skipped chat: --offline");
  });

  it("ends with 1 after a fault, each line a JSON object when asked", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "rangecall.sqlite"), "");
    const { status, stdout } = run(chat, "--offline", "--json", "--data", folder);
    const states = stdout
      .trim()
      .split("\n")
      .map((line): string => JSON.parse(line).state);
    expect(states.filter((state) => state === "fault")).toHaveLength(2);
    expect(status).toBe(1);
  });

  it("ends with 2 at a wrong argument, saying what is known", () => {
    expect(run(chat, "--online")).toMatchObject({ status: 2, stdout: "", stderr: expect.stringContaining("--offline --json --data DIR") });
  });
});
