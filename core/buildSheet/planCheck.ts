import type { CheckedQuantity } from "../bag/checkTolerances.ts";
import { clubFamily } from "../kinds.ts";
import { predictedClub } from "./predictedClub.ts";
import type { LookOver, ReadOnRecord, ServiceQuestion, ServiceResult } from "./servicePlan.ts";
import { stayingFaults } from "./stayingFaults.ts";
import { amountNames } from "./targetLimits.ts";

/** What a gauge, a scale or a rule can read of a club that stands: all but a trim. */
export const readableAmounts = amountNames.filter((name) => name !== "tipTrimMm");

/** What is written as an amount, to be read beside the usual. */
export const writtenAmounts = ({ clauses }: ServiceQuestion) => readableAmounts.filter((name) => clauses[name] !== undefined);

function usuallyRead({ club, head, sleeve, reference }: ServiceQuestion): readonly CheckedQuantity[] {
  const family = clubFamily(club) ?? "iron";
  const sleeved = head === null ? sleeve !== null || (reference?.sleeveMark ?? null) !== null : head.sleeveFamily !== null;
  const isWood = family === "driver" || family === "fairway" || (family === "hybrid" && sleeved);
  return ["squaredLoftDeg", isWood ? "soledFaceDeg" : "seatedLieDeg"];
}

/** Each quantity once, with what the record has of it. */
export const readsOf = ({ reference }: ServiceQuestion, quantities: readonly CheckedQuantity[]): readonly ReadOnRecord[] =>
  [...new Set(quantities)].map((quantity) => ({ quantity, onRecord: reference?.[quantity] ?? null }));

function lookOver(question: ServiceQuestion): readonly LookOver[] {
  const family = clubFamily(question.club);
  const always: readonly LookOver[] = ["crack", "rattle", "grip"];
  return family === "iron" || family === "wedge" ? [...always, "grooves"] : always;
}

/** One club of a bag check: read by its family, or as far as written, and looked over. */
export function planCheck(question: ServiceQuestion): ServiceResult {
  const { club, target, reference } = question;
  const faults = stayingFaults(question, readableAmounts);
  if (faults.length > 0) {
    return { kind: "refused", faults };
  }
  const reads = readsOf(question, [...usuallyRead(question), ...writtenAmounts(question)]);
  const predicted = predictedClub(reference);
  return { kind: "planned", plan: { kind: "check", version: 1, club, target, predicted, reads, lookOver: lookOver(question) } };
}
