import { choosePolicyInSlices } from "../../core/bench/choosePolicy.ts";
import type { Policy } from "../../core/bench/policy.ts";
import { estimateInSlices } from "../../core/bench/readyTimes.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { benchOf } from "../../db/repositories/benchEstimates.ts";
import { benchStates, benchVersion, ordersIn } from "../../db/repositories/orders.ts";
import type { PostMark } from "../../db/repositories/outbox.ts";
import { allTrucks } from "../../db/repositories/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";
import type { Post } from "../chat/context.ts";
import { type Applied, applyEstimate, type BenchEstimate } from "../operations/applyEstimate.ts";
import { benchSnapshot } from "../operations/benchSnapshot.ts";
import { learnedPace } from "../operations/learnedPace.ts";
import { policyOnRecord } from "../operations/policyInForce.ts";
import { keepPosts } from "../outbox/keepPosts.ts";
import { benchPosts } from "./benchPosts.ts";
import { inTurns } from "./inTurns.ts";
import { orderPost } from "./orderPosts.ts";
import { slipPosts } from "./slipPosts.ts";

export interface ReestimateParts {
  readonly db: Db;
  readonly seed: number;
  readonly now: () => Instant;
  readonly newMark: () => PostMark;
  /** How much is simulated; left out, what promises are made with. */
  readonly effort?: Effort;
}

/** How many days are simulated for the times, how many for the choice of the policy, and how many plans are tried. */
interface Effort {
  readonly samples: number;
  readonly scenarios: number;
  readonly schedules: number;
}

const fullEffort: Effort = { samples: 500, scenarios: 30, schedules: 200 };
const MOST_TRIES = 3;
/** While orders are open their times are looked at anew at least this often. */
export const LOOK_AGAIN_MS = 5 * 60_000;

function isBehind(db: Db, truckId: Id<"truck">, now: Instant): boolean {
  const bench = benchOf(db, truckId);
  if (bench === null || ordersIn(db, truckId, benchStates).length === 0) {
    return false;
  }
  return (
    bench.estimatedVersion !== bench.benchVersion || bench.estimatedAt === null || now - bench.estimatedAt >= LOOK_AGAIN_MS || now < bench.estimatedAt
  );
}

/** Where only time has passed the policy stays, and fewer days tell whether something slips. */
const GLANCE_SAMPLES = 200;

/** The times of every open order under the policy in force, when nothing was pressed since they were made. */
async function glance({ db, seed, now, effort = fullEffort }: ReestimateParts, truckId: Id<"truck">, policy: Policy): Promise<BenchEstimate> {
  const snapshot = benchSnapshot(db, truckId, now(), null);
  const samples = Math.min(effort.samples, GLANCE_SAMPLES);
  return { snapshot, policy, times: await inTurns(estimateInSlices({ snapshot, policy, pace: learnedPace(db), seed, samples })), isOnlyLater: true };
}

/** How the bench is best run, and the times of every open order under it. */
async function estimateAll({ db, seed, now, effort = fullEffort }: ReestimateParts, truckId: Id<"truck">): Promise<BenchEstimate> {
  const snapshot = benchSnapshot(db, truckId, now(), null);
  const pace = learnedPace(db);
  const { policy } = await inTurns(
    choosePolicyInSlices({ snapshot, pace, seed, scenarios: effort.scenarios, schedules: effort.schedules, incumbent: policyOnRecord(db, truckId) }),
  );
  const times = await inTurns(estimateInSlices({ snapshot, policy, pace, seed, samples: effort.samples }));
  return { snapshot, policy, times, isOnlyLater: false };
}

/** Cards with other times, the board where a promise changed, and the calls. */
function postsOf(tx: Tx, truckId: Id<"truck">, { moved, slips }: Applied, now: Instant): readonly Post[] {
  const board = moved.length > 0 ? benchPosts(tx, truckId, now) : [];
  return [...moved.map((order) => orderPost(tx, order, now)), ...board, ...slipPosts(tx, slips, now)];
}

/**
 * New times for every open order of the trucks whose bench has changed, or which nobody has looked at for a while: its own use case.
 * Estimated in slices beside other work, put on record in one transaction, only while the bench is as it was estimated; else
 * again, and after three times it waits for the next turn.
 */
export async function reestimate(parts: ReestimateParts): Promise<void> {
  for (const { id: truckId } of allTrucks(parts.db)) {
    for (let tried = 1; tried <= MOST_TRIES && isBehind(parts.db, truckId, parts.now()); tried += 1) {
      const policy = policyOnRecord(parts.db, truckId);
      const isOnlyLater = benchOf(parts.db, truckId)?.estimatedVersion === benchVersion(parts.db, truckId);
      const estimate = policy !== null && isOnlyLater ? await glance(parts, truckId, policy) : await estimateAll(parts, truckId);
      write(parts.db, (tx) => {
        if (benchVersion(tx, truckId) === estimate.snapshot.version) {
          const applied = applyEstimate(tx, truckId, estimate);
          keepPosts(tx, postsOf(tx, truckId, applied, estimate.snapshot.now), estimate.snapshot.now, parts.newMark);
        }
      });
    }
  }
}
