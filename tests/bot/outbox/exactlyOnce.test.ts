import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Fault, faults } from "./fakePlatform.ts";
import { Killed, outboxBench } from "./outboxBench.ts";

const channels = ["orders", "bench", "week"] as const;

const plan = fc.record({
  posts: fc.array(fc.record({ channel: fc.constantFrom(...channels), afterMs: fc.integer({ min: 0, max: 90_000 }) }), {
    minLength: 1,
    maxLength: 25,
  }),
  faults: fc.array(fc.constantFrom(...faults), { maxLength: 60 }),
  historyFails: fc.array(fc.boolean(), { maxLength: 30 }),
  kills: fc.array(fc.boolean(), { maxLength: 60 }),
  chances: fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 1, maxLength: 10 }),
});
type Plan = typeof plan extends fc.Arbitrary<infer T> ? T : never;

/** Plays a plan to its end. A blind platform forgets nonces and shows no history, for the counter-check. */
async function play(played: Plan, isBlind = false) {
  const bench = outboxBench();
  const pending: Fault[] = [...played.faults];
  const [history, kills] = [[...played.historyFails], [...played.kills]];
  bench.platform.nextFault = () => pending.shift() ?? "none";
  bench.platform.historyFails = () => history.shift() ?? false;
  let turn = 0;
  bench.world.random = () => played.chances[turn++ % played.chances.length] ?? 0;
  bench.world.crash = () => {
    if (kills.shift() === true) {
      throw new Killed();
    }
  };
  if (isBlind) {
    bench.platform.find = async () => null;
  }
  const planned: { channel: string; title: string }[] = [];
  for (const [position, { channel, afterMs }] of played.posts.entries()) {
    const title = `post ${position}`;
    bench.post(channel, title);
    planned.push({ channel, title });
    await bench.run().catch((error: unknown) => {
      expect(error).toBeInstanceOf(Killed);
    });
    bench.passMs(afterMs);
  }
  await bench.drain();
  bench.passMs(120_000);
  const sent = channels.map((channel) => bench.titles(channel));
  const wanted = channels.map((each) => planned.filter(({ channel }) => channel === each).map(({ title }) => title));
  bench.close();
  return { sent, wanted };
}

describe("every post", () => {
  it("leaves exactly once and in the order of its channel, whatever the network and a killer do", async () => {
    await fc.assert(
      fc.asyncProperty(plan, async (played) => {
        const { sent, wanted } = await play(played);
        expect(sent).toEqual(wanted);
      }),
      { numRuns: 100, seed: 20270503 },
    );
  });

  it("would leave twice without the reading of history: the faults are real", async () => {
    const samples = fc.sample(plan, { numRuns: 20, seed: 20270503 });
    const doubled = await Promise.all(samples.map(async (played) => (await play(played, true)).sent.flat().length > played.posts.length));
    expect(doubled).toContain(true);
  });

  it("of a live kind ends with the newest card in one message", async () => {
    const wishes = fc.array(fc.record({ subject: fc.constantFrom("order:1", "order:2", "board"), afterMs: fc.integer({ min: 0, max: 20_000 }) }), {
      minLength: 1,
      maxLength: 20,
    });
    await fc.assert(
      fc.asyncProperty(wishes, plan, async (wanted, { faults: pending, kills, historyFails }) => {
        const bench = outboxBench();
        const [faultsLeft, historyLeft, killsLeft] = [[...pending], [...historyFails], [...kills]];
        bench.platform.nextFault = () => faultsLeft.shift() ?? "none";
        bench.platform.historyFails = () => historyLeft.shift() ?? false;
        bench.world.crash = () => {
          if (killsLeft.shift() === true) {
            throw new Killed();
          }
        };
        const newest = new Map<string, string>();
        for (const [version, { subject, afterMs }] of wanted.entries()) {
          newest.set(subject, `${subject} ${version}`);
          bench.want(subject, "bench", `${subject} ${version}`);
          await bench.run().catch((error: unknown) => {
            expect(error).toBeInstanceOf(Killed);
          });
          bench.passMs(afterMs);
        }
        await bench.drain();
        expect(bench.titles("bench").sort()).toEqual([...newest.values()].sort());
        bench.close();
      }),
      { numRuns: 50, seed: 20270503 },
    );
  });
});
