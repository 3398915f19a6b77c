import type { ClubFamily } from "../kinds.ts";
import { weightSets } from "./chooseWeights.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { remembered } from "./remembered.ts";

/** The masses that removable weights in stock can add to a head of a family. */
export function weightSums({ parts, allowances }: PlanQuestion): (family: ClubFamily) => readonly number[] {
  const once = remembered<readonly number[]>();
  return (family) => once(family, () => [...new Set(weightSets(parts.weights, allowances.weightPorts[family]).map(({ massG }) => massG))]);
}
