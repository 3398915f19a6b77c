import type { ClubFamily } from "../kinds.ts";
import { weightSets } from "../selection/weightSets.ts";
import { asScrews, portsAtCentre } from "./chooseWeights.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { remembered } from "./remembered.ts";

/** The masses that removable weights in stock can add to a head of a family. */
export function weightSums({ parts, allowances }: PlanQuestion): (family: ClubFamily) => readonly number[] {
  const once = remembered<readonly number[]>();
  const sums = (family: ClubFamily) => weightSets(asScrews(parts.weights), portsAtCentre(allowances.weightPorts[family])).map(({ massG }) => massG);
  return (family) => once(family, () => [...new Set(sums(family))]);
}
