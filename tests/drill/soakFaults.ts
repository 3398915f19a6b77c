import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { Asked, Fault } from "../support/platform/faults.ts";

export type Dice = (below: number) => number;

/** The same throws for the same seed. */
export function diceOf(seed: number): Dice {
  const random = xoroshiro128plus(seed);
  return (below) => uniformInt(random, 0, below - 1);
}

/** In how many of a thousand requests each fault happens. */
const shares: readonly (readonly [number, Fault])[] = [
  [20, { kind: "status", status: 502, when: "before" }],
  [20, { kind: "status", status: 502, when: "after" }],
  [10, { kind: "status", status: 500, when: "before" }],
  [8, { kind: "reset", when: "before" }],
  [8, { kind: "reset", when: "after" }],
  [2, { kind: "hang", when: "after" }],
  [10, { kind: "slow down", scope: "user", afterS: 0.05 }],
  [3, { kind: "slow down", scope: "global", afterS: 0.05 }],
];

/** A fault for about one request in twelve, logging in and registering left alone. */
export function someFault(dice: Dice, counts: Map<string, number>): (asked: Asked) => Fault | null {
  return ({ path }) => {
    let thrown = dice(1000);
    if (path.startsWith("/gateway") || path.startsWith("/applications")) {
      return null;
    }
    for (const [share, fault] of shares) {
      if (thrown < share) {
        const name = "when" in fault ? `${fault.kind} ${fault.when}` : `${fault.kind} ${fault.scope}`;
        counts.set(name, (counts.get(name) ?? 0) + 1);
        return fault;
      }
      thrown -= share;
    }
    return null;
  };
}
