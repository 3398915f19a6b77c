import { checkedClub } from "../bag/checkedClub.ts";
import { knownClub } from "../bag/knownClub.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { checkedTarget } from "./checkedTarget.ts";
import { planBend } from "./planBend.ts";
import { planCheck } from "./planCheck.ts";
import { planGrind } from "./planGrind.ts";
import { planRegrip } from "./planRegrip.ts";
import { planRepair } from "./planRepair.ts";
import { planStamp } from "./planStamp.ts";
import { planTurn } from "./planTurn.ts";
import { type ServiceKind, type ServiceQuestion, type ServiceResult, serviceKinds } from "./servicePlan.ts";

const plans: Readonly<Record<ServiceKind, (question: ServiceQuestion) => ServiceResult>> = {
  turn: planTurn,
  regrip: planRegrip,
  bend: planBend,
  grind: planGrind,
  stamp: planStamp,
  check: planCheck,
  repair: planRepair,
};

function checkedQuestion(question: ServiceQuestion): ServiceQuestion {
  finiteNumbers(question, "question");
  oneOf(question.kind, serviceKinds, "kind");
  oneOf(question.hand, ["left", "right"], "hand");
  knownClub(question);
  checkedTarget(question.target);
  inRange(question.allowances.wrapG, { field: "wrapG", unit: "g", min: 0, max: 100 });
  if (question.reference !== null) {
    checkedClub(question.reference);
  }
  return question;
}

/**
 * What the technician does to a club that exists, and what it should measure then.
 *
 *     turn: reading' = reading + chart(mark') − chart(mark)     bend: bounce' = bounce + change of loft
 *     regrip: Δp = Σ ± m · (x − 14 in) / 49.6117 g·in
 *
 * A turn rests on the head brought back to bare from what the record has of it, exact geometry, a real club within
 * ±0.2°; a bend on `afterBend` and `bendAllowed`, the offset for a hosel that bends 55 mm up; a regrip is good to 0.3
 * points. What the record does not have is null and measured first; sole work promises no mass. How far heads may be
 * bent and what is looked over is common practice, no source.
 *
 * @param question - the kind of work, the target and its clauses, the club on record, its models, grips in reach
 * @returns the plan; or every fault at once, each with its clause: nothing asked, what stays, what is short, blocked or unknown
 * @throws {DomainError} `quantity-out-of-range` when a number is not finite or no club's
 * @throws {DomainError} `quantity-unreadable` when the kind, the club or the hand is unknown
 * @see fixtures/published/sleeveGeometry.json, bending.json, bendLimits.json, swingWeightSensitivity.json, finalChecks.json
 */
export function planService(question: ServiceQuestion): ServiceResult {
  return plans[question.kind](checkedQuestion(question));
}
