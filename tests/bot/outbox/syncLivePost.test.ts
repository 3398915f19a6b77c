import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { findLivePost, livePostsBehind } from "../../../db/repositories/livePosts.ts";
import { outboxBench } from "./outboxBench.ts";

let bench: ReturnType<typeof outboxBench>;
beforeEach(() => {
  bench = outboxBench();
});
afterEach(() => bench.close());

const edits = () => bench.platform.calls.filter((call) => call.startsWith("edit"));

describe("syncLivePost: live posts", () => {
  it("are posted once and edited from then on", async () => {
    bench.want("order:57", "orders", "57 draft");
    await bench.run();
    bench.want("order:57", "orders", "57 confirmed");
    expect((await bench.run()).sent).toBe(1);
    expect(bench.titles("orders")).toEqual(["57 confirmed"]);
    expect(bench.platform.messages[0]?.edits).toBe(1);
  });

  it("are posted with the newest card when nothing has left yet", async () => {
    bench.want("order:57", "orders", "57 draft");
    bench.want("order:57", "orders", "57 confirmed");
    await bench.drain();
    expect(bench.titles("orders")).toEqual(["57 confirmed"]);
    expect(edits()).toEqual([]);
  });

  it("skip the versions between", async () => {
    bench.want("order:57", "orders", "57 draft");
    await bench.run();
    for (const title of ["57 confirmed", "57 building", "57 ready"]) {
      bench.want("order:57", "orders", title);
    }
    await bench.drain();
    expect(bench.titles("orders")).toEqual(["57 ready"]);
    expect(edits()).toHaveLength(1);
  });

  it("are not edited to the card they show", async () => {
    const first = bench.want("order:57", "orders", "57 draft");
    await bench.run();
    expect(bench.want("order:57", "orders", "57 draft")).toEqual(first);
    await bench.drain();
    expect(edits()).toEqual([]);
  });

  it("catch up when a newer version was wanted during the try that arrived", async () => {
    bench.want("order:57", "orders", "57 draft");
    bench.world.crash = (point) => {
      if (point === "after-send") {
        bench.world.crash = () => undefined;
        bench.want("order:57", "orders", "57 confirmed");
      }
    };
    await bench.drain();
    expect(bench.titles("orders")).toEqual(["57 confirmed"]);
    expect(bench.platform.messages).toHaveLength(1);
  });

  it("are posted anew when their message is gone, and edited there", async () => {
    bench.want("board", "bench", "one order");
    await bench.run();
    bench.platform.remove(bench.platform.messages[0]?.id ?? "");
    bench.want("board", "bench", "two orders");
    await bench.drain();
    expect(bench.titles("bench")).toEqual(["two orders"]);
    bench.want("board", "bench", "three orders");
    await bench.drain();
    expect(bench.titles("bench")).toEqual(["three orders"]);
    expect(bench.platform.messages[0]?.edits).toBe(1);
  });

  it("back off from an edit that fails, and get there", async () => {
    bench.want("board", "bench", "one order");
    await bench.run();
    const faults = ["lost" as const, "later" as const, "unanswered" as const];
    bench.platform.nextFault = () => faults.shift() ?? "none";
    bench.want("board", "bench", "two orders");
    const from = bench.platform.now;
    await bench.drain();
    expect(bench.titles("bench")).toEqual(["two orders"]);
    expect(bench.platform.now - from).toBeGreaterThanOrEqual(1000 + 2000 + 4000);
  });

  it("leave out a version that is refused, tell so, and show the next", async () => {
    bench.want("board", "bench", "one order");
    await bench.run();
    bench.want("board", "bench", "too long");
    bench.platform.answer = () => ({ kind: "refused", reason: "too long" });
    await bench.drain();
    expect(bench.dead).toMatchObject([{ channel: "bench", subject: "board", reason: "too long" }]);
    expect(findLivePost(bench.db, { subject: "board", channel: "bench" })).toMatchObject({ wanted: 2, shown: 1 });
    bench.platform.answer = null;
    bench.want("board", "bench", "two orders");
    await bench.drain();
    expect(bench.titles("bench")).toEqual(["two orders"]);
  });

  it("are posted anew when their first post was given up", async () => {
    bench.want("board", "bench", "one order");
    bench.platform.answer = () => ({ kind: "refused", reason: "no rights" });
    await bench.drain();
    bench.platform.answer = null;
    bench.want("board", "bench", "one order");
    await bench.drain();
    expect(bench.titles("bench")).toEqual(["one order"]);
    expect(livePostsBehind(bench.db, null)).toEqual([]);
  });
});
