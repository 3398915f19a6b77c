import { checkedPlanQuestion } from "./checkedPlanQuestion.ts";
import type { PlanKind, PlanResult } from "./plan.ts";
import { planBuild } from "./planBuild.ts";
import type { PlanQuestion } from "./planQuestion.ts";
import { planReshaft } from "./planReshaft.ts";
import { planSwap } from "./planSwap.ts";

const plans: Readonly<Record<PlanKind, (question: PlanQuestion) => PlanResult>> = { build: planBuild, swap: planSwap, reshaft: planReshaft };

/**
 * What the technician builds one club from, and what it should measure.
 *
 * Head, sleeve mark and bend as `chooseHeads` ranks what lies here; what is nearer elsewhere is named, with what could be
 * done where the choice misses the wish. A swap keeps shaft, sleeve and grip; a reshaft keeps the club's own head as the
 * record reads it, with the weights on it, and adds none unless another swing weight or head mass is wished. Shaft and
 * grip from the player's bin first; cuts by linear density; swing weight, total, balance and inertia (with the parts'
 * own inertia) as masses on one axis; removable weights that come within half a point with the fewest parts, lead for
 * what is left over. A real bench agrees to 0.3 points, 1 mm of balance and 1.5 % of inertia. The dry targets include
 * weights and lead, and are read with the butt of the shaft against the stop.
 *
 * @param question - target, kind, the club it is like or that is worked on, its own head in a reshaft, the head allotted
 * to it, parts in reach, allowances and tolerances
 * @returns the plan; or every fault at once: what is missing, what is short with the nearest in reach, what cannot be cut
 * @throws {DomainError} `balance-outside-model` or `quantity-out-of-range` when a part was recorded with impossible values or any number is not finite
 * @throws {DomainError} `quantity-unreadable` when the kind of work is none of these three
 */
export function planClub(question: PlanQuestion): PlanResult {
  return plans[question.kind](checkedPlanQuestion(question));
}
