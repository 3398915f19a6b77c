import { describe, expect, it } from "vitest";
import { makeInHand } from "../../../bot/discord/inHand.ts";

function opened() {
  let wallMs = 0;
  const logged: string[] = [];
  const inHand = makeInHand(
    () => wallMs,
    (error, doing) => logged.push(`${doing}: ${String(error)}`),
  );
  let finish: () => void = () => {};
  const open = new Promise<void>((resolve) => {
    finish = resolve;
  });
  const later = (ms: number): void => {
    wallMs += ms;
  };
  return { inHand, logged, open, finish: () => finish(), later };
}

describe("makeInHand", () => {
  it("logs what goes wrong and goes on", async () => {
    const { inHand, logged } = opened();
    await inHand.run("a message", async () => {
      throw new Error("no");
    });
    await inHand.idle();
    expect(logged).toEqual(["a message: Error: no"]);
  });

  it("names what does not come to an end, as long as it does not", async () => {
    const { inHand, open, finish, later } = opened();
    const running = inHand.run("the outbox", () => open);
    later(1000);
    expect([inHand.stuckFor(1000), inHand.stuckFor(999)]).toEqual([null, "the outbox"]);
    finish();
    await running;
    expect(inHand.stuckFor(0)).toBeNull();
  });

  it("is idle only when the last piece is done, also one begun meanwhile", async () => {
    const { inHand, open, finish } = opened();
    let isIdle = false;
    void inHand.run("one", async () => {
      void inHand.run("another", () => open);
    });
    const idle = inHand.idle().then(() => {
      isIdle = true;
    });
    await Promise.resolve();
    expect(isIdle).toBe(false);
    finish();
    await idle;
    expect(isIdle).toBe(true);
  });
});
