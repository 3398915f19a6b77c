import type { ClubParts } from "../../../core/club/builtClub.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import set from "../../../fixtures/published/workedSet.json" with { type: "json" };

export type WorkedClub = (typeof set.rows)[number];

/** A club of the worked set, measured and weighed. */
export function partsOf(row: WorkedClub): ClubParts {
  const { around } = set;
  const family = row.family === "driver" ? "driver" : "iron";
  const { rawIn, rawMassG, balanceFromTipIn } = set.shafts[family];
  const raw = { rawLengthMm: mmFromInches(rawIn), rawMassG: grams(rawMassG), balanceFromTipMm: mmFromInches(balanceFromTipIn) };
  const sleeve = { name: "sleeve", massG: grams(around.sleeveG), at: { from: "bore", upShaftMm: mmFromInches(around.sleeveAboveBoreIn) } } as const;
  return {
    playingLengthMm: mmFromInches(row.lengthIn),
    boreToGroundMm: mmFromInches(row.boreIn),
    head: { massG: grams(row.headMassG), ownInertiaKgCm2: kilogramSquareCentimetres(around.headOwnInertiaKgCm2[family]) },
    headCentre: { upShaftMm: millimetres(row.centreAboveGroundMm), fromAxisMm: millimetres(around.headFromAxisMm[family]) },
    shaft: trimmedShaft(raw, mmFromInches(row.tipIn), mmFromInches(rawIn - row.tipIn - row.cutIn)),
    grip: { massG: grams(around.gripG), centreFromCapMm: mmFromInches(around.gripCentreIn), capMm: mmFromInches(around.capIn) },
    small: [
      ...(family === "driver" ? [sleeve] : []),
      {
        name: "ferrule and glue",
        massG: grams(around.ferruleAndGlueG[family]),
        at: { from: "bore", upShaftMm: millimetres(around.ferruleAndGlueAboveBoreMm) },
      },
      { name: "tape", massG: grams(around.tapeG), at: { from: "cap", mm: mmFromInches(around.tapeIn) } },
    ],
  };
}

export const workedClub = (club: string): ClubParts => {
  const row = set.rows.find((one) => one.club === club);
  if (row === undefined) throw new Error(`no worked club ${club}`);
  return partsOf(row);
};
