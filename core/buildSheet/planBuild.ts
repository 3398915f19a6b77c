import type { PlanResult } from "./plan.ts";
import { planFromParts } from "./planFromParts.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { rankHeads } from "./rankHeads.ts";

/** A new club from parts, its head the best there is here. */
export function planBuild(question: PlanQuestion): PlanResult {
  const { sleeves: stocked, pieces = [] } = question.parts;
  /** A prepared shaft brings the sleeve that is on it. */
  const onShafts = pieces.flatMap(({ model, sleeve }) => (sleeve === null || model.name !== question.target.shaft ? [] : [sleeve]));
  const free = stocked.filter((row) => row.free > 0).map(({ model }) => model);
  const sleeves = [...new Map([...free, ...onShafts].map((sleeve) => [sleeve.id, sleeve])).values()];
  return planFromParts(question, { rank: (massWish) => rankHeads(question, { sleeves, massWish }), addsMass: true });
}
