import type { ClubFamily } from "../kinds.ts";
import { type AddableMass, addableMasses } from "../selection/massReached.ts";
import { weightSets } from "../selection/weightSets.ts";
import { asScrews, portsAtCentre } from "./chooseWeights.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { remembered } from "./remembered.ts";

/** The masses that removable weights in stock can add to a head of a family, each by the fewest of them. */
export function weightSums({ parts, allowances }: PlanQuestion): (family: ClubFamily) => readonly AddableMass[] {
  const once = remembered<readonly AddableMass[]>();
  return (family) => once(family, () => addableMasses(weightSets(asScrews(parts.weights), portsAtCentre(allowances.weightPorts[family]))));
}
