import { clubFamily } from "../kinds.ts";
import { degrees, grams } from "../quantity/units.ts";
import { knownAs, predictedClub } from "./predictedClub.ts";
import type { GrindPlan, ServiceFault, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";
import { writtenTarget } from "./writtenTarget.ts";

const ground = ["iron", "wedge"] as const;

function faultsOf(question: ServiceQuestion): readonly ServiceFault[] {
  const { club, clauses, note } = question;
  const family = clubFamily(club) ?? "wedge";
  const nothingAsked = clauses.bounceDeg === undefined && clauses.grind === undefined && (note ?? "").trim() === "";
  return [
    ...(ground.some((known) => known === family) ? [] : [{ code: "wrong-family", kind: "grind", family, accepted: ground } as const]),
    ...(nothingAsked ? [{ code: "nothing-asked", kind: "grind" } as const] : []),
    ...stayingFaults(question, ["bounceDeg", "grind"]),
  ];
}

/** A sole ground by a qualified grinder: no mass is promised, head mass and bounce are measured after. */
export function planGrind(question: ServiceQuestion): ServiceResult {
  const { club, clauses, reference, note } = question;
  const faults = faultsOf(question);
  if (faults.length > 0) {
    return { kind: "refused", faults };
  }
  const target = writtenTarget(question.target, clauses, ["bounceDeg", "swingWeightPoints", "totalMassG", "headMassG"]);
  const unknown = { bounceDeg: knownAs(target.bounceDeg, degrees), swingWeightPoints: null, totalMassG: null, headMassG: null };
  const plan: GrindPlan = {
    kind: "grind",
    version: 1,
    club,
    target,
    predicted: predictedClub(reference, unknown),
    bounceBeforeDeg: knownAs(reference?.bounceDeg, degrees),
    bounceWantedDeg: knownAs(target.bounceDeg, degrees),
    grindBefore: reference?.grind ?? null,
    grindWanted: clauses.grind?.value ?? null,
    headMassBeforeG: knownAs(reference?.headMassG, grams),
    byQualifiedGrinder: true,
    note,
  };
  return { kind: "planned", plan };
}
