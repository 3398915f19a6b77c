import { expect, it } from "vitest";
import { oneAtATime } from "../../../bot/discord/oneAtATime.ts";

it("runs once for all who ask meanwhile, and again for who asks after, also when it fails", async () => {
  let runs = 0;
  const ask = oneAtATime(async () => {
    runs += 1;
    await Promise.resolve();
    if (runs === 2) {
      throw new Error("no");
    }
  });
  await Promise.all([ask(), ask(), ask()]);
  expect(runs).toBe(1);
  await expect(ask()).rejects.toThrow("no");
  await ask();
  expect(runs).toBe(3);
});
