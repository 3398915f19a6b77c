import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";

/**
 * One view of `/calc`: a sum people ask for by name.
 *
 * To add a view `xyz`:
 * 1. `bot/boundary/calc/xyzFields.ts`: what it takes, an object of fields by name (`fields.ts`), each with its measure and range
 *    in mm, g, °, points, kg·cm². Handing it to `readCalc` gives typed values, inputs as understood, all faults at once;
 *    with `players` a text may begin with a club of the record (`oxtoby driver backup`, `order 57`).
 * 2. `bot/replies/calc/xyzCard.ts`: facts to a card by `calcCard`, which puts the inputs as understood first.
 * 3. `bot/flows/calc/xyz.ts`: `export const xyz = defineCalcView({ name: "xyz", … answer })`. In `answer`: read; faults or something
 *    needed that is missing → `calcFaultsReply`; a club of the record → `findClub`; then the sum of core → the card.
 *    A value nobody wrote goes on the card by `assumed(name, value, unit)`.
 * 4. Its name and itself in `calcViews.ts`: one without the other does not compile.
 * 5. `tests/bot/commands/calc/xyz.test.ts`: the example of its help, its numbers against a source, its faults.
 */
export interface CalcView<N extends string = string> {
  readonly name: N;
  readonly summary: string;
  /** What it takes, a line each. */
  readonly takes: readonly string[];
  /** Texts that work as they stand. */
  readonly examples: readonly [string, ...string[]];
  /** May only read; the text is never empty. */
  readonly answer: (text: string, context: Context) => Reply;
}

export const defineCalcView = <N extends string>(view: CalcView<N>): CalcView<N> => view;
