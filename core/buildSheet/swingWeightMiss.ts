import type { HeadChoice } from "./plan.ts";

/** The choice, with the swing weight named among its deviations and misses when even weights and lead leave it past the tolerance. */
export function withSwingWeightMiss(choice: HeadChoice, wanted: number | null, got: number | null, tolerance: number): HeadChoice {
  if (wanted === null || got === null || Math.abs(got - wanted) <= tolerance + 1e-9) {
    return choice;
  }
  const miss = { quantity: "swingWeightPoints", wanted, got, tolerance } as const;
  return { ...choice, deviations: [...choice.deviations, miss], misses: [...choice.misses, miss] };
}
