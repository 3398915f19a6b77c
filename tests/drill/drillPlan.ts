import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { type Kill, type KillPoint, killPoints } from "./drillRound.ts";

const ways = [...killPoints, "random"] as const;

/**
 * The kills of every round: the named points and a random time in turn, each at a random occurrence; every third round
 * is killed again while it recovers.
 *
 * @param reached - how often an undisturbed run gets to each point
 * @param tookMs - how long such a run takes
 */
export function drillPlan(rounds: number, seed: number, reached: Readonly<Record<KillPoint, number>>, tookMs: number): readonly (readonly Kill[])[] {
  const random = xoroshiro128plus(seed);
  const killAt = (way: (typeof ways)[number]): Kill =>
    way === "random" ? { at: way, afterMs: uniformInt(random, 0, Math.ceil(tookMs)) } : { at: way, times: uniformInt(random, 1, reached[way]) };
  return Array.from({ length: rounds }, (_, round) => {
    const first = killAt(ways[round % ways.length] ?? "random");
    return round % 3 === 2 ? [first, killAt(ways[uniformInt(random, 0, ways.length - 1)] ?? "random")] : [first];
  });
}
