import type { Clauses } from "./buildRequest.ts";
import type { Target } from "./plan.ts";
import type { AmountName } from "./targetLimits.ts";

/** The target without those amounts that nobody wrote: the work itself changes them, the record no longer holds. */
export function writtenTarget(target: Target, clauses: Clauses, moved: readonly AmountName[]): Target {
  const unwritten = moved.filter((name) => clauses[name] === undefined);
  return { ...target, ...Object.fromEntries(unwritten.map((name) => [name, null])) };
}
