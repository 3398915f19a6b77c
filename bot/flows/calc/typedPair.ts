import type { ComparedQuantity } from "../../../core/bag/checkTolerances.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { ClubName } from "../../../core/kinds.ts";
import type { ValuesOf } from "../../boundary/calc/fields.ts";
import type { matchFields } from "../../boundary/calc/matchFields.ts";

/** The quantity each typed name is compared in. */
const quantityOf = {
  loft: "squaredLoftDeg",
  face: "soledFaceDeg",
  lie: "seatedLieDeg",
  bounce: "bounceDeg",
  length: "lengthMm",
  swing: "swingWeightPoints",
  total: "totalMassG",
  head: "headMassG",
  wraps: "wraps",
  balance: "balancePointMm",
  inertia: "inertiaKgCm2",
  frequency: "frequencyCpm",
  grip: "gripAt2InMm",
  "lower grip": "gripAt6InMm",
  offset: "offsetMm",
} as const satisfies Readonly<Record<keyof typeof matchFields, ComparedQuantity>>;

/** A club of which nothing is known but that it is frequency-tested like the other. */
const unknownClub: SpecClub = {
  club: "typed" as ClubName,
  outside: false,
  headModel: null,
  headSerial: null,
  stampedLoftDeg: null,
  squaredLoftDeg: null,
  soledFaceDeg: null,
  seatedLieDeg: null,
  bounceDeg: null,
  grind: null,
  sleeveModel: null,
  sleeveMark: null,
  lengthMm: null,
  swingWeightPoints: null,
  totalMassG: null,
  headMassG: null,
  shaftModel: null,
  tipTrimMm: null,
  logo: null,
  gripModel: null,
  rib: null,
  wraps: null,
  stamp: null,
  note: null,
  measuredAt: null,
  gauge: null,
  frequencySetUp: "one clamp",
};

/** Two clubs of which only the typed values are known. */
export function typedPair(values: ValuesOf<typeof matchFields>): readonly [SpecClub, SpecClub] {
  const names = Object.keys(quantityOf) as readonly (keyof typeof quantityOf)[];
  const side = (index: 0 | 1): SpecClub => ({
    ...unknownClub,
    ...Object.fromEntries(
      names.flatMap((name) => {
        const number = values[name]?.[index];
        return number === undefined ? [] : [[quantityOf[name], number.value]];
      }),
    ),
  });
  return [side(0), side(1)];
}
