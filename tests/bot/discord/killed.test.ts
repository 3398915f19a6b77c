import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "../../../core/kinds.ts";
import { loadedFolder } from "../../drill/drillFolder.ts";
import { MONDAY_9 } from "../../support/platform/joinedWeek.ts";
import { openPlatform, type Platform } from "../../support/platform/platform.ts";
import { countIn, postIn, readPost } from "../../support/platform/readPost.ts";
import { demoWorld } from "../../support/platform/world.ts";

const program = fileURLToPath(new URL("killedChat.ts", import.meta.url));

describe("a bot in the chat that is killed with -9 while it answers a press", () => {
  const sinceMs = Date.now();
  const bots: ChildProcess[] = [];
  let platform: Platform;
  let folder: string;
  const start = async (): Promise<ChildProcess> => {
    const bot = fork(program, [folder, platform.api, String(sinceMs)], { execArgv: ["--import", "tsx"] });
    bots.push(bot);
    await once(bot, "message");
    return bot;
  };
  /** An order that waits for its Go, and the bot killed at a point of that press. */
  const killedAt = async (point: string) => {
    const bot = await start();
    platform.says("maren", "plover-orders", "build oxtoby driver like gamer, loft 9.25");
    const draft = await postIn(platform, "plover-orders", /OXTOBY RH driver · draft/);
    bot.send(point);
    await once(bot, "message");
    platform.presses("maren", draft, "Go");
    const [, signal] = await once(bot, "exit");
    expect(signal).toBe("SIGKILL");
    return draft;
  };

  beforeEach(async () => {
    folder = await loadedFolder();
    platform = await openPlatform(demoWorld(), () => instant(MONDAY_9 + Date.now() - sinceMs));
  });
  afterEach(async () => {
    for (const bot of bots.splice(0)) {
      if (bot.exitCode === null && bot.signalCode === null) {
        bot.kill("SIGTERM");
        await once(bot, "exit");
      }
    }
    await platform.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  it("before its commit says at the next start that nothing was done, and takes the press made again", async () => {
    const draft = await killedAt("before-commit");
    await start();
    expect(readPost(await postIn(platform, "plover-orders", /Not done: order confirm/)).text).toContain("Nothing was changed");
    expect(countIn(platform, "plover-orders", /OXTOBY RH driver · draft/)).toBe(1);
    const again = await platform.answered(platform.presses("maren", draft, "Go"));
    expect(readPost(again.shown ?? {}).title).toBe("6 confirmed");
  });

  it("after its commit says at the next start what the answer was, and has done it once", async () => {
    await killedAt("after-commit");
    await start();
    await postIn(platform, "plover-orders", /^6 confirmed/);
    await postIn(platform, "plover-orders", /6 OXTOBY RH driver · confirmed/);
    await postIn(platform, "plover-bench", /6 OXTOBY RH driver · sheet/);
    expect(countIn(platform, "plover-bench", /6 OXTOBY RH driver · sheet/)).toBe(1);
    expect(countIn(platform, "plover-orders", /Not done/)).toBe(0);
  });
});
