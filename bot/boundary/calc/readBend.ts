import type { SpecClub } from "../../../core/bag/specClub.ts";
import { type bendFields, FARTHEST_BEND_DEG } from "./bendFields.ts";
import { type AngleChange, changeFaults, changeOf } from "./changeOf.ts";
import type { CalcFault } from "./fields.ts";
import type { CalcQuestion } from "./readCalc.ts";

export type BendWords = CalcQuestion<typeof bendFields>["values"];
type Recorded = Pick<SpecClub, "squaredLoftDeg" | "seatedLieDeg" | "bounceDeg">;

export interface BendChanges {
  readonly loft: AngleChange;
  readonly lie: AngleChange;
  readonly bounce: AngleChange;
  readonly faults: readonly CalcFault[];
}

const MOST_BENDS_BEFORE = 20;
const limits = {
  loft: { name: "squared loft", min: 0, max: 75, farthest: FARTHEST_BEND_DEG },
  lie: { name: "lie", min: 45, max: 80, farthest: FARTHEST_BEND_DEG },
  bounce: { name: "bounce", min: -FARTHEST_BEND_DEG, max: 30, farthest: 30 },
} as const;

const tooMany = (name: string, count: number): readonly CalcFault[] =>
  count <= MOST_BENDS_BEFORE
    ? []
    : [{ word: name, accepted: { kind: "range", name: `bends in ${name}`, min: 0, max: MOST_BENDS_BEFORE, unit: "" }, guess: null }];

/** What is to change by a bend, with the record's angles for those nobody wrote. */
export function readBend(values: BendWords, recorded: Recorded | null): BendChanges {
  const written = { loft: values["squared loft"] ?? [], lie: values.lie ?? [], bounce: values.bounce ?? [] };
  const loft = changeOf(written.loft, recorded?.squaredLoftDeg ?? null);
  const lie = changeOf(written.lie, recorded?.seatedLieDeg ?? null);
  const bounce = changeOf(written.bounce, recorded?.bounceDeg ?? null);
  return {
    loft,
    lie,
    bounce,
    faults: [
      ...changeFaults(written.loft, loft, limits.loft),
      ...changeFaults(written.lie, lie, limits.lie),
      ...changeFaults(written.bounce, bounce, limits.bounce),
      ...tooMany("bent", values.bent?.length ?? 0),
      ...tooMany("bent lie", values["bent lie"]?.length ?? 0),
    ],
  };
}
