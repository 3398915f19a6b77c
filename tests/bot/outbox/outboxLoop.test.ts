import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { runOutboxOnce } from "../../../bot/outbox/outboxLoop.ts";
import { instant } from "../../../core/kinds.ts";
import { distrustPending, findPost, markLater } from "../../../db/repositories/outbox.ts";
import { write } from "../../../db/write.ts";
import { cardOf } from "./cardOf.ts";
import { Killed, outboxBench } from "./outboxBench.ts";

let bench: ReturnType<typeof outboxBench>;
beforeEach(() => {
  bench = outboxBench();
});
afterEach(() => bench.close());

describe("runOutboxOnce", () => {
  it("sends what waits, lowest id first in each channel, and then waits for nothing", async () => {
    bench.post("orders", "one");
    bench.post("bench", "two");
    bench.post("orders", "three");
    expect(await bench.run()).toEqual({ sent: 3, waitingUntil: null, stopped: null });
    expect(bench.titles("orders")).toEqual(["one", "three"]);
    expect(bench.titles("bench")).toEqual(["two"]);
    expect(await bench.run()).toEqual({ sent: 0, waitingUntil: null, stopped: null });
  });

  it("keeps the message's id with the post", async () => {
    const id = bench.post("orders", "one");
    await bench.run();
    expect(findPost(bench.db, id)).toMatchObject({ state: "sent", attempts: 1, messageId: bench.platform.messages[0]?.id });
  });

  it("has the try on disk before it is made", async () => {
    const id = bench.post("orders", "one");
    bench.world.crash = (point) => {
      if (point === "before-send") {
        throw new Killed();
      }
    };
    await expect(bench.run()).rejects.toThrow(Killed);
    expect(findPost(bench.db, id)).toMatchObject({ state: "pending", attempts: 1, firstTryAt: bench.platform.now });
    expect(bench.platform.messages).toEqual([]);
  });

  it.each(["before-send", "after-send", "before-mark"] as const)("sends a post once when it is killed %s", async (where) => {
    bench.post("orders", "one");
    bench.post("orders", "two");
    let kills = 0;
    bench.world.crash = (point) => {
      if (point === where && kills < 2) {
        kills += 1;
        throw new Killed();
      }
    };
    await bench.drain();
    expect(kills).toBe(2);
    expect(bench.titles("orders")).toEqual(["one", "two"]);
  });

  it("reads no history before the first try, and always before another", async () => {
    bench.post("orders", "one");
    const faults = ["lost" as const, "later" as const];
    bench.platform.nextFault = () => faults.shift() ?? "none";
    await bench.drain();
    expect(bench.platform.calls).toEqual(["send orders ref1", "find orders ref1", "send orders ref1", "find orders ref1", "send orders ref1"]);
  });

  it("sends nothing while history cannot be read", async () => {
    bench.post("orders", "one");
    const faults = ["unanswered" as const];
    bench.platform.nextFault = () => faults.shift() ?? "none";
    let failures = 3;
    bench.platform.historyFails = () => {
      failures -= 1;
      return failures >= 0;
    };
    await bench.drain();
    expect(bench.platform.calls.filter((call) => call.startsWith("send"))).toHaveLength(1);
    expect(bench.titles("orders")).toEqual(["one"]);
  });

  it("waits as long as it is told", async () => {
    bench.post("orders", "one");
    bench.platform.answer = () => ({ kind: "later", afterMs: 4321 });
    expect((await bench.run()).waitingUntil).toBe(bench.platform.now + 4321);
  });

  it("holds a channel back behind its first post, and no other channel", async () => {
    bench.post("orders", "one");
    bench.post("orders", "two");
    bench.post("bench", "three");
    bench.platform.answer = (_call, channel) => (channel === "orders" ? { kind: "later", afterMs: null } : null);
    await bench.run();
    expect(bench.platform.calls).toEqual(["send orders ref1", "send bench ref3"]);
    expect(bench.titles("bench")).toEqual(["three"]);
  });

  it.each(["gone", "refused"] as const)("gives up a post that is %s, tells so, and goes on with the next", async (kind) => {
    const id = bench.post("orders", "one");
    bench.post("orders", "two");
    const answers = [{ kind, reason: "unknown channel" }];
    bench.platform.answer = () => answers.shift() ?? null;
    expect((await bench.run()).sent).toBe(1);
    expect(bench.dead).toEqual([{ outboxId: id, channel: "orders", ref: "ref1", reason: "unknown channel", subject: null }]);
    expect(findPost(bench.db, id)).toMatchObject({ state: "dead", lastError: "unknown channel" });
    expect(bench.titles("orders")).toEqual(["two"]);
  });

  it("stops everything when the bot is not let in, loses nothing, and goes on when it is", async () => {
    bench.post("orders", "one");
    bench.post("orders", "two");
    bench.platform.answer = () => ({ kind: "stop", reason: "bad token" });
    expect(await bench.run()).toEqual({ sent: 0, waitingUntil: null, stopped: "bad token" });
    expect(bench.platform.calls).toEqual(["send orders ref1"]);
    bench.platform.answer = null;
    await bench.drain();
    expect(bench.titles("orders")).toEqual(["one", "two"]);
  });

  it("leaves what is planned meanwhile to the next call, which is due at once", async () => {
    bench.post("orders", "one");
    bench.world.crash = (point) => {
      if (point === "after-send") {
        bench.world.crash = () => undefined;
        bench.post("orders", "two");
      }
    };
    const first = await bench.run();
    expect(first.sent).toBe(1);
    expect(first.waitingUntil).toBeLessThanOrEqual(bench.platform.now);
    await bench.run();
    expect(bench.titles("orders")).toEqual(["one", "two"]);
  });

  it("joins two calls at once into one pass", async () => {
    bench.post("orders", "one");
    const now = () => bench.platform.now;
    await Promise.all([runOutboxOnce(bench.deps, now), runOutboxOnce(bench.deps, now)]);
    expect(bench.platform.calls).toEqual(["send orders ref1"]);
  });

  it("does not wait for a clock that was set back", async () => {
    const untried = bench.post("orders", "one");
    const tried = bench.post("bench", "two");
    const tomorrow = instant(bench.platform.now + 24 * 3600_000);
    write(bench.db, (tx) => markLater(tx, tried, tomorrow, "timed out"));
    write(bench.db, (tx) => distrustPending(tx));
    bench.post("week", "three");
    write(bench.db, (tx) => markLater(tx, untried, tomorrow, null));
    const { waitingUntil } = await bench.run();
    expect(bench.titles("week")).toEqual(["three"]);
    expect(waitingUntil).toBeLessThanOrEqual(bench.platform.now + 10 * 60_000);
    await bench.drain();
    expect([bench.titles("orders"), bench.titles("bench")]).toEqual([["one"], ["two"]]);
  });

  it("looks first for what a restored database says is waiting", async () => {
    bench.post("orders", "one");
    bench.platform.messages.push({
      id: "m0",
      channel: "orders",
      ref: "ref1",
      nonce: "forgotten",
      at: bench.platform.now,
      card: cardOf("one"),
      edits: 0,
    });
    bench.passMs(60 * 60_000);
    write(bench.db, (tx) => distrustPending(tx));
    await bench.drain();
    expect(bench.platform.calls).toEqual(["find orders ref1"]);
    expect(bench.platform.messages).toHaveLength(1);
  });
});
