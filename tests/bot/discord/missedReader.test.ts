import { describe, expect, it } from "vitest";
import { makeMissedReader } from "../../../bot/discord/missedReader.ts";

describe("makeMissedReader", () => {
  it("is complete once all has been read, and no more when the line is lost", async () => {
    let reads = 0;
    const reader = makeMissedReader(async () => {
      reads += 1;
    });
    expect(reader.isComplete()).toBe(false);
    await reader.read();
    expect([reader.isComplete(), reads]).toEqual([true, 1]);
    reader.lose();
    expect(reader.isComplete()).toBe(false);
  });

  it("is not complete by a reading while the line is down: something may be said after it", async () => {
    const reader = makeMissedReader(async () => {});
    reader.lose();
    await reader.read();
    expect(reader.isComplete()).toBe(false);
    reader.regain();
    expect(reader.isComplete()).toBe(false);
    await reader.read();
    expect(reader.isComplete()).toBe(true);
  });

  it("is not complete when the reading under way began before the line was lost", async () => {
    const going: (() => void)[] = [];
    const reader = makeMissedReader(() => new Promise<void>((resolve) => void going.push(resolve)));
    const reading = reader.read();
    reader.lose();
    reader.regain();
    going.shift()?.();
    await reading;
    expect(reader.isComplete()).toBe(false);
  });

  it("stays incomplete when a reading fails", async () => {
    const reader = makeMissedReader(() => Promise.reject(new Error("no history")));
    await expect(reader.read()).rejects.toThrow("no history");
    expect(reader.isComplete()).toBe(false);
  });
});
