import type { StepKind } from "../../core/bench/benchTypes.ts";
import { foldText } from "./foldText.ts";

/** Steps by the words people use at the bench. */
const named: Readonly<Record<string, StepKind>> = {
  glue: "bond",
  bond: "bond",
  epoxy: "bond",
  cut: "cut",
  grip: "grip",
  tip: "tipPrepare",
  dryfit: "dryFit",
  head: "headOn",
  ferrule: "turnFerrule",
  bend: "bend",
  weigh: "dryWeigh",
  swing: "dryWeigh",
  gauge: "gaugeHead",
  sole: "soleWork",
  grind: "soleWork",
  stamp: "stampText",
  sleeve: "turnSleeve",
  measure: "measure",
  sign: "sign",
};

/** The words that name a step, for saying what would be accepted. */
export const stepNames: readonly string[] = Object.keys(named);

/** @returns the step a word names: `glue`, `re-glue`, `cut`; null when it names none */
export function readStepKind(written: string): StepKind | null {
  const word = foldText(written)
    .replace(/^re-?(?=\w)/, "")
    .replace(/[\s-]/g, "");
  return Object.hasOwn(named, word) ? (named[word] ?? null) : null;
}
