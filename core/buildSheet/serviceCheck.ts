import type { FinalCheckQuestion } from "./finalCheck.ts";
import type { Looks } from "./lookRows.ts";
import type { ServicePlan } from "./servicePlan.ts";

type FromPlan = Pick<FinalCheckQuestion, "kind" | "target" | "planned" | "listed"> & { readonly looksWanted: Looks };

/** How the club must look when the work is done: what lies as it is set by hand. */
function looksWanted(plan: ServicePlan): Looks {
  switch (plan.kind) {
    case "turn":
      return { sleeve: plan.toMark };
    case "regrip":
      return { grip: plan.grip.model.name, rib: plan.rib ? "rib" : "none", ...(plan.logo === null ? {} : { logo: plan.logo }) };
    case "stamp":
      return { stamp: plan.text };
    default:
      return {};
  }
}

/** What a plan of work on a club that exists is held against in the final check. */
export function serviceCheck(plan: ServicePlan): FromPlan {
  const listed = plan.kind === "check" || plan.kind === "repair" ? plan.reads.map(({ quantity }) => quantity) : [];
  return { kind: plan.kind, target: plan.target, planned: plan.predicted, listed, looksWanted: looksWanted(plan) };
}
