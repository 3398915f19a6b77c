import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { checkedSelectionTolerances } from "../selection/checkedSelectionTolerances.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { amountNames, targetLimits } from "./targetLimits.ts";

const MOST_PORTS = 4;
const unitOf = (name: string): string => /(Deg|Mm|Points|G)$/.exec(name)?.[1]?.toLowerCase() ?? "";

/**
 * A question a plan can be made of: every number finite, the target a club, no allowance below 0.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number of it cannot be
 */
export function checkedPlanQuestion(question: PlanQuestion): PlanQuestion {
  finiteNumbers(question, "question");
  checkedSelectionTolerances(question.tolerances);
  for (const name of amountNames) {
    const value = question.target[name];
    if (value !== null) {
      inRange(value, { field: `target.${name}`, unit: unitOf(name), ...targetLimits[name] });
    }
  }
  const { weightPorts, headOwnInertiaKgCm2, headFromAxisMm, ...single } = question.allowances;
  for (const allowances of [single, headOwnInertiaKgCm2, headFromAxisMm]) {
    for (const [name, value] of Object.entries(allowances)) {
      inRange(value, { field: `allowances.${name}`, unit: "", min: 0 });
    }
  }
  for (const [family, ports] of Object.entries(weightPorts)) {
    wholeNumber(ports, { field: `weightPorts.${family}`, min: 0, max: MOST_PORTS });
  }
  return question;
}
