import { defaultPolicy, dispatchRules, type Policy } from "../../core/bench/policy.ts";
import type { Id } from "../../core/kinds.ts";
import { benchOf } from "../../db/repositories/benchEstimates.ts";
import type { Reader } from "../../db/write.ts";

/** How a truck's bench is run, or null before anything was simulated; what an older version kept and nobody can read counts as nothing. */
export function policyOnRecord(reader: Reader, truckId: Id<"truck">): Policy | null {
  const kept = benchOf(reader, truckId)?.policy ?? null;
  const policy = kept === null ? null : (JSON.parse(kept) as Policy);
  return policy !== null && dispatchRules.includes(policy.rule) && Array.isArray(policy.planOrder) ? policy : null;
}

export const policyInForce = (reader: Reader, truckId: Id<"truck">): Policy => policyOnRecord(reader, truckId) ?? defaultPolicy;
