import type { StepKind } from "../bench/benchTypes.ts";
import { listOf } from "../quantity/listOf.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type CautionCode, cautions, cautionsOfStep } from "./cautions.ts";
import { type Caution, type WorkMaterial, workMaterials } from "./cautionTypes.ts";

const steps = Object.keys(cautionsOfStep) as readonly StepKind[];

/** A caution with the word the replies know it under. */
export interface NamedCaution extends Caution {
  readonly code: CautionCode;
}

/**
 * What may hurt at one step with what is at hand.
 *
 *     a caution of the step when all it needs is at hand
 *
 * A reminder and no assessment of risk: the products' data sheets and local rules go first.
 *
 * @param step - the step about to be done
 * @param atHand - materials worked on or used, each once; `epoxy` when a bond is made, heated or still setting
 * @returns cautions, the gravest first, with their numbers and sources
 * @throws {DomainError} `quantity-unreadable` when the step or a material is unknown, `list-of-wrong-size` when there are more
 *   materials than there are
 * @see fixtures/published/cautions.json
 */
export function cautionsFor(step: StepKind, atHand: readonly WorkMaterial[]): readonly NamedCaution[] {
  const known: readonly WorkMaterial[] = listOf(atHand, { field: "atHand", min: 0, max: workMaterials.length });
  for (const material of known) oneOf(material, workMaterials, "atHand");
  return cautionsOfStep[oneOf(step, steps, "step")]
    .map((code): NamedCaution => ({ code, ...cautions[code] }))
    .filter(({ needs }) => needs.every((material) => known.includes(material)));
}
