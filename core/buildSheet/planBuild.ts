import type { PlanResult } from "./plan.ts";
import { planFromParts } from "./planFromParts.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { rankHeads } from "./rankHeads.ts";

/** A new club from parts, its head the best there is here. */
export function planBuild(question: PlanQuestion): PlanResult {
  const sleeves = question.parts.sleeves.filter(({ free }) => free > 0).map(({ model }) => model);
  return planFromParts(question, { rank: (massWish) => rankHeads(question, { sleeves, massWish }), addsMass: true });
}
