import type { SleeveModel } from "./parts.ts";
import type { PlanQuestion } from "./planQuestion.ts";

/** The sleeve stays on its shaft or head: the one on record, or when it is not on record any the team knows. */
export function sleevesOnRecord({ parts, reference }: PlanQuestion): {
  readonly sleeves: readonly SleeveModel[];
  readonly onRecord: SleeveModel | null;
} {
  const stocked = [...parts.sleeves, ...(parts.elsewhere?.sleeves ?? [])];
  const models = [...new Map(stocked.map(({ model }) => [model.id, model])).values()];
  const onRecord = models.find(({ name }) => name === reference?.sleeveModel) ?? null;
  return { sleeves: onRecord === null ? models : [onRecord], onRecord };
}
