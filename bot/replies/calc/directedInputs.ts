import type { Understood } from "../../boundary/calc/fields.ts";

/** What a number above and below 0 is called. */
type Sides = readonly [above: string, below: string];

/** The words people use in place of signs. */
export const sides = { loft: ["weaker", "stronger"], lie: ["upright", "flat"], face: ["open", "closed"] } as const satisfies Readonly<
  Record<string, Sides>
>;

/** Inputs with the word for the direction that a sign stands for: `lie error 4° upright`. */
export const directedInputs = (inputs: readonly Understood[], directions: Readonly<Record<string, Sides>>): readonly Understood[] =>
  inputs.map((input) => {
    const named = Object.hasOwn(directions, input.name) ? directions[input.name] : undefined;
    if (named === undefined) return input;
    const values = input.values.map((value) => {
      const word = value.written.startsWith("-") ? named[1] : named[0];
      return /^[+-]/.test(value.written) ? { written: value.written.slice(1), unit: `${value.unit} ${word}` } : value;
    });
    return { ...input, values };
  });
