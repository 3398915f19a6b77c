import type { ReadyEstimate } from "../../core/bench/benchTypes.ts";
import { estimateInSlices } from "../../core/bench/readyTimes.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import type { Reader } from "../../db/write.ts";
import type { BenchExtra } from "../operations/benchExtra.ts";
import { benchSnapshot } from "../operations/benchSnapshot.ts";
import { learnedPace } from "../operations/learnedPace.ts";
import { policyInForce } from "../operations/policyInForce.ts";
import { inTurns } from "./inTurns.ts";

const SAMPLES = 400;

/** One estimate of a truck's bench as it is run now, with an order more when asked, in slices. */
export async function estimateBench(
  reader: Reader,
  seed: number,
  at: { readonly truck: Id<"truck">; readonly now: Instant; readonly extra: BenchExtra | null },
): Promise<{ readonly benchVersion: number; readonly times: readonly ReadyEstimate[] }> {
  const snapshot = benchSnapshot(reader, at.truck, at.now, at.extra);
  const question = { snapshot, policy: policyInForce(reader, at.truck), pace: learnedPace(reader), seed, samples: SAMPLES };
  return { benchVersion: snapshot.version, times: await inTurns(estimateInSlices(question)) };
}
