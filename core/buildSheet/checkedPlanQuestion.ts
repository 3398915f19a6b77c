import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { checkedHeads } from "../selection/checkedHeads.ts";
import { checkedSelectionTolerances } from "../selection/checkedSelectionTolerances.ts";
import { checkedTarget } from "./checkedTarget.ts";
import { planKinds } from "./plan.ts";
import type { PlanQuestion } from "./planQuestion.ts";

const MOST_PORTS = 4;

/**
 * A question a plan can be made of: every number finite, the target a club, no allowance below 0.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number of it cannot be
 * @throws {DomainError} `quantity-unreadable` when the kind of work is none that parts are planned for
 */
export function checkedPlanQuestion(question: PlanQuestion): PlanQuestion {
  const { parts, ownHead = null } = question;
  finiteNumbers({ ...question, parts: { ...parts, heads: [] } }, "question");
  checkedHeads(ownHead === null ? parts.heads : [...parts.heads, ownHead]);
  oneOf(question.kind, planKinds, "kind");
  checkedSelectionTolerances(question.tolerances);
  checkedTarget(question.target);
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
