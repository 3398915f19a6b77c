import type { GripModel, HeadModel, ShaftModel } from "../../../core/buildSheet/parts.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import type { CalcFault, Understood } from "../../boundary/calc/fields.ts";
import { modelNamed } from "../../boundary/calc/modelNamed.ts";
import type { Context } from "../../chat/context.ts";

/** Parts of the record that a text names, and the text without their names. */
export interface NamedParts {
  readonly head: HeadModel | null;
  readonly shaft: ShaftModel | null;
  readonly grip: GripModel | null;
  readonly understood: readonly Understood[];
  readonly faults: readonly CalcFault[];
  readonly rest: string;
}

interface Models {
  readonly head: HeadModel;
  readonly shaft: ShaftModel;
  readonly grip: GripModel;
}

/** Finds heads, shafts and grips by name; unreleased ones for the lead alone. */
export function namedParts(text: string, context: Context): NamedParts {
  const seesAll = context.actor.roles.includes("lead");
  const find = <K extends keyof Models>(kind: K, from: string) => {
    const models = context.read((reader) => modelsOf<Models[K]>(reader, kind)).filter(({ restrictedCode }) => restrictedCode === null || seesAll);
    const { name, fault, rest } = modelNamed(
      from,
      kind,
      models.map((model) => model.name),
    );
    const model: Models[K] | null = models.find((known) => known.name === name) ?? null;
    const input: Understood = { name: kind, values: [{ written: name ?? "", unit: "" }], between: ",", assumed: false };
    return { model, rest, faults: fault === null ? [] : [fault], understood: model === null ? [] : [input] };
  };
  const shaft = find("shaft", text);
  const grip = find("grip", shaft.rest);
  const head = find("head", grip.rest);
  return {
    head: head.model,
    shaft: shaft.model,
    grip: grip.model,
    understood: [head, shaft, grip].flatMap((hit) => hit.understood),
    faults: [head, shaft, grip].flatMap((hit) => hit.faults),
    rest: head.rest,
  };
}
