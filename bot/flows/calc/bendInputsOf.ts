import type { SpecClub } from "../../../core/bag/specClub.ts";
import { USUAL_BEND_HEIGHT_MM } from "../../../core/head/usualBendHeight.ts";
import { assumed, onRecord, type Understood } from "../../boundary/calc/fields.ts";
import type { BendChanges, BendWords } from "../../boundary/calc/readBend.ts";
import type { HeadMade } from "./headMade.ts";

interface Asked {
  readonly values: BendWords;
  readonly changes: BendChanges;
  readonly club: SpecClub | null;
  readonly made: HeadMade;
  readonly inputs: readonly Understood[];
}

/** What was written, what the record has of it, and what was assumed. */
export function bendInputsOf({ values, changes, club, made, inputs }: Asked): readonly Understood[] {
  const rows = [
    ["squared loft", club?.squaredLoftDeg ?? null, "°", changes.loft.fromDeg],
    ["lie", club?.seatedLieDeg ?? null, "°", changes.lie.fromDeg],
    ["bounce", club?.bounceDeg ?? null, "°", changes.bounce.fromDeg],
    ["offset", club?.offsetMm ?? null, "mm", values.offset === undefined ? (club?.offsetMm ?? null) : null],
  ] as const;
  return [
    ...inputs,
    ...rows.flatMap(([name, recorded, unit, from]) =>
      recorded !== null && recorded === from ? [onRecord(`${name} on record`, recorded, unit)] : [],
    ),
    ...(values.height === undefined && (changes.loft.changeDeg ?? 0) !== 0
      ? [assumed("the hosel bends", USUAL_BEND_HEIGHT_MM, "mm above the leading edge")]
      : []),
    ...made.assumed,
  ];
}
