import { predictedClub } from "./predictedClub.ts";
import type { ServiceFault, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";

/** More letters than these go on no head. Common practice, no source. */
const MOST_LETTERS = 24;

/** A text stamped on a club; whether it may be is for the rules to say. */
export function planStamp(question: ServiceQuestion): ServiceResult {
  const { club, target, clauses, reference } = question;
  const text = (clauses.stamp?.value ?? "").trim();
  const count = [...text].length;
  const faults: readonly ServiceFault[] = [
    ...(count === 0 ? [{ code: "nothing-asked", kind: "stamp" } as const] : []),
    ...(count > MOST_LETTERS ? [{ code: "stamp-too-long", count, max: MOST_LETTERS } as const] : []),
    ...stayingFaults(question, ["stamp"]),
  ];
  if (faults.length > 0) {
    return { kind: "refused", faults };
  }
  const before = reference?.stamp ?? null;
  return { kind: "planned", plan: { kind: "stamp", version: 1, club, target, predicted: predictedClub(reference), text, before } };
}
