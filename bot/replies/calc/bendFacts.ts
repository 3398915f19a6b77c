import type { BendAllowance } from "../../../core/head/bendAllowed.ts";
import type { BendForAnswer } from "../../../core/head/bendFor.ts";
import type { Understood } from "../../boundary/calc/fields.ts";

export type NoBend = Extract<BendForAnswer, { kind: "refused" }>;

export interface BendFacts {
  /** What the club is called; null for one that was typed. */
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  /** As the gauge reads it before; null where nobody told it. */
  readonly loftDeg: number | null;
  readonly lieDeg: number | null;
  readonly bounceDeg: number | null;
  readonly answer: BendForAnswer;
  readonly allowance: BendAllowance;
  /** The head sits on a sleeve, which is turned and not bent. */
  readonly onSleeve: boolean;
}

/** The bend there is to do, and the head after it; where the wish is no bend, the nearest. */
export const partsOf = ({ answer }: Pick<BendFacts, "answer">) => (answer.kind === "bend" ? answer : answer.nearest);
