import { assembledClub } from "../../../core/club/assembledClub.ts";
import { componentsOf, withoutHead } from "../../../core/club/builtClub.ts";
import type { BuiltClub } from "../../../core/club/clubParts.ts";
import type { KeptQuantity } from "../../../core/club/clubSums.ts";
import { headMassForInertia } from "../../../core/club/headMassForInertia.ts";
import { headMassForLengthChange } from "../../../core/club/headMassForLengthChange.ts";
import { headMassForSwingWeight } from "../../../core/club/headMassForSwingWeight.ts";
import { lengthChangeForHeadMass } from "../../../core/club/lengthChangeForHeadMass.ts";
import { type Grams, grams, kilogramSquareCentimetres, millimetres, swingWeightPoints } from "../../../core/quantity/units.ts";
import type { HeadmassAim } from "../../replies/calc/headmassCard.ts";

/** What the head mass is looked for: values wished, null where nobody wished; changes asked, null where none. */
export interface HeadmassWish {
  readonly swingWeightPoints: number | null;
  readonly inertiaKgCm2: number | null;
  readonly lengthChangeMm: number | null;
  readonly newHeadG: number | null;
}

/** The head masses for every value wished; without a wish for the swing weight and inertia that the club has now. */
export function headmassAims(club: BuiltClub, wish: HeadmassWish): readonly HeadmassAim[] {
  const isWished = wish.swingWeightPoints !== null || wish.inertiaKgCm2 !== null;
  const present = isWished ? null : assembledClub(componentsOf(club));
  const swing = wish.swingWeightPoints ?? present?.swingWeightPoints ?? null;
  const inertia = wish.inertiaKgCm2 ?? present?.inertiaKgCm2 ?? null;
  const pointInertia = wish.inertiaKgCm2 ?? present?.pointInertiaKgCm2 ?? null;
  return [
    ...(swing === null ? [] : [forSwingWeight(club, swing, wish)]),
    ...(inertia === null || pointInertia === null ? [] : [forInertia(club, inertia, pointInertia, wish)]),
  ];
}

function forSwingWeight(club: BuiltClub, aim: number, wish: HeadmassWish): HeadmassAim {
  const headMassG = headMassForSwingWeight(swingWeightPoints(aim), club.head.fromCapMm, withoutHead(club));
  return {
    kept: "swing-weight",
    isWished: wish.swingWeightPoints !== null,
    aim,
    headMassG,
    pointHeadMassG: null,
    pointChangedHeadMassG: null,
    ...changes(club, headMassG, "swing-weight", wish),
  };
}

/** As the parts are, and once more with all of them as points on the axis, as sums on paper have it. */
function forInertia(club: BuiltClub, aim: number, pointAim: number, wish: HeadmassWish): HeadmassAim {
  const others = withoutHead(club);
  const headMassG = headMassForInertia(kilogramSquareCentimetres(aim), club.head, others);
  const points = others.map(({ name, massG, fromCapMm }) => ({ name, massG, fromCapMm }));
  const pointHeadMassG = headMassForInertia(kilogramSquareCentimetres(pointAim), { fromCapMm: club.head.fromCapMm }, points);
  const asPoints = changes(club, pointHeadMassG, "point-inertia", wish);
  return {
    kept: "inertia",
    isWished: wish.inertiaKgCm2 !== null,
    aim,
    headMassG,
    pointHeadMassG,
    pointChangedHeadMassG: asPoints.changedHeadMassG,
    ...changes(club, headMassG, "inertia", wish),
  };
}

/** The club with the head it should have, then made longer, or given another head. No club has a head without mass. */
function changes(
  club: BuiltClub,
  headMassG: Grams,
  kept: KeptQuantity,
  { lengthChangeMm, newHeadG }: HeadmassWish,
): Pick<HeadmassAim, "changedHeadMassG" | "lengthChange"> {
  if (headMassG <= 0) return { changedHeadMassG: null, lengthChange: null };
  const aimed = { ...club, head: { ...club.head, massG: headMassG } };
  return {
    changedHeadMassG: lengthChangeMm === null ? null : headMassForLengthChange(aimed, millimetres(lengthChangeMm), kept),
    lengthChange: newHeadG === null ? null : lengthChangeForHeadMass(aimed, grams(newHeadG), kept),
  };
}
