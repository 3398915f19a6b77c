import { inertiaMatch } from "../../../core/bag/inertiaMatch.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { swingWeightMatch } from "../../../core/bag/swingWeightMatch.ts";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import type { ClubName } from "../../../core/kinds.ts";
import {
  type KilogramSquareCentimetres,
  kilogramSquareCentimetres,
  type Millimetres,
  type SwingWeightPoints,
  swingWeightPoints,
} from "../../../core/quantity/units.ts";
import type { Reader } from "../../../db/write.ts";
import type { SetMatch } from "../../replies/calc/setMatch.ts";
import { recordedClub } from "./recordedClub.ts";

interface WeighedClub {
  readonly club: ClubName;
  readonly swingWeightPoints: SwingWeightPoints;
  readonly inertiaKgCm2: KilogramSquareCentimetres;
  readonly headFromCapMm: Millimetres;
}

export interface WeighedSet {
  readonly clubs: readonly WeighedClub[];
  /** Too little on record to say where the head's mass lies. */
  readonly lacking: readonly ClubName[];
  /** The inertias were swung, not added up by the parts. */
  readonly isInertiaMeasured: boolean;
}

/** The swing weights of a set as the gauge said, and inertias: as measured when all are, else by their parts. */
export function weighedSet(reader: Reader, set: readonly SpecClub[]): WeighedSet {
  const isInertiaMeasured = set.every(({ inertiaKgCm2 }) => (inertiaKgCm2 ?? null) !== null);
  const found = set.map((club) => ({ club: club.club, weighed: weighedClub(reader, club, isInertiaMeasured) }));
  return {
    clubs: found.flatMap(({ weighed }) => weighed ?? []),
    lacking: found.flatMap(({ club, weighed }) => (weighed === null ? [club] : [])),
    isInertiaMeasured,
  };
}

function weighedClub(reader: Reader, club: SpecClub, isInertiaMeasured: boolean): WeighedClub | null {
  const model = recordedClub(reader, club);
  const head = model.kind === "modelled" ? model.components.find(({ name }) => name === "head") : undefined;
  if (model.kind !== "modelled" || head === undefined) return null;
  const sums = assembledClub(model.components);
  return {
    club: club.club,
    swingWeightPoints: swingWeightPoints(club.swingWeightPoints ?? sums.swingWeightPoints),
    inertiaKgCm2: kilogramSquareCentimetres((isInertiaMeasured ? club.inertiaKgCm2 : null) ?? sums.inertiaKgCm2),
    headFromCapMm: head.fromCapMm,
  };
}

const LEAST_CLUBS = 2;

/** The set brought to one swing weight, the middle one unless another is wished; null with fewer than two clubs known. */
export function matchedSwingWeight({ clubs }: WeighedSet, wished: number | null): SetMatch | null {
  if (clubs.length < LEAST_CLUBS) return null;
  const target = wished ?? middleOf(clubs.map((club) => club.swingWeightPoints));
  const { rows, spreadBeforePoints, spreadAfterPoints } = swingWeightMatch(clubs, swingWeightPoints(target));
  return {
    quantity: "swingWeightPoints",
    target,
    isMiddle: wished === null,
    rows: rows.map(({ pointsAfter, ...row }, index) => ({ ...row, before: clubs[index]?.swingWeightPoints ?? target, after: pointsAfter })),
    spreadBefore: spreadBeforePoints,
    spreadAfter: spreadAfterPoints,
  };
}

/** The set brought to one inertia, in the same way. */
export function matchedInertia({ clubs }: WeighedSet, wished: number | null): SetMatch | null {
  if (clubs.length < LEAST_CLUBS) return null;
  const target = wished ?? middleOf(clubs.map((club) => club.inertiaKgCm2));
  const { rows, spreadBeforeKgCm2, spreadAfterKgCm2 } = inertiaMatch(clubs, kilogramSquareCentimetres(target));
  return {
    quantity: "inertiaKgCm2",
    target,
    isMiddle: wished === null,
    rows: rows.map(({ inertiaAfterKgCm2, ...row }, index) => ({ ...row, before: clubs[index]?.inertiaKgCm2 ?? target, after: inertiaAfterKgCm2 })),
    spreadBefore: spreadBeforeKgCm2,
    spreadAfter: spreadAfterKgCm2,
  };
}

/** The median; between the middle two of an even number. */
function middleOf(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = sorted.slice(Math.ceil(values.length / 2) - 1, Math.floor(values.length / 2) + 1);
  return middle.reduce((sum, value) => sum + value, 0) / middle.length;
}
