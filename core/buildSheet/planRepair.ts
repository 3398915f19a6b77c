import { mustBeMeasured } from "./mustBeMeasured.ts";
import { readableAmounts, readsOf, writtenAmounts } from "./planCheck.ts";
import { predictedClub } from "./predictedClub.ts";
import type { ServiceFault, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";

/** What is wrong with a club, and what is read again when it is mended: what a head bonded anew can change. */
export function planRepair(question: ServiceQuestion): ServiceResult {
  const { club, target, reference } = question;
  const complaint = (question.note ?? "").trim();
  const faults: readonly ServiceFault[] = [
    ...(complaint === "" ? [{ code: "nothing-asked", kind: "repair" } as const] : []),
    ...stayingFaults(question, readableAmounts),
  ];
  if (faults.length > 0) {
    return { kind: "refused", faults };
  }
  const known = mustBeMeasured("build", club).filter((quantity) => (reference?.[quantity] ?? null) !== null);
  const reads = readsOf(question, [...known, ...writtenAmounts(question)]);
  return { kind: "planned", plan: { kind: "repair", version: 1, club, target, predicted: predictedClub(reference), complaint, reads } };
}
