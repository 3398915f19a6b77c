import { type ClubFamily, clubFamilies } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import type { Degrees, KilogramSquareCentimetres, Millimetres } from "../quantity/units.ts";
import type { CubicCentimetres, Microseconds, ShoreA, ShoreD, SquareMillimetres } from "./ruleUnits.ts";

/** What a gauge can read on a club. */
export interface Measurements {
  /** Sole against the 60° plane to the end of the cap. */
  readonly lengthMm: Millimetres;
  readonly squaredLoftDeg: Degrees;
  readonly seatedLieDeg: Degrees;
  /** Along the line of play at address: forward positive, backward negative. */
  readonly shaftForwardLeanDeg: Degrees;
  /** Where the shaft ceases to be straight, above the sole along the bent part. */
  readonly shaftBendAboveSoleMm: Millimetres;
  /** Top of the neck or socket to the sole, along its axis. */
  readonly neckLengthMm: Millimetres;
  readonly gripLengthMm: Millimetres;
  readonly gripWidestMm: Millimetres;
  /** Widest less narrowest diameter of one cross-section: the rib. */
  readonly gripOutOfRoundMm: Millimetres;
  readonly twoGripGapMm: Millimetres;
  readonly twoGripUpperLengthMm: Millimetres;
  /** The three of the head at 60° lie. */
  readonly headHeelToToeMm: Millimetres;
  readonly headFaceToBackMm: Millimetres;
  readonly headSoleToCrownMm: Millimetres;
  readonly headVolumeCm3: CubicCentimetres;
  /** About the vertical axis through the head's centre of mass. */
  readonly headInertiaKgCm2: KilogramSquareCentimetres;
  readonly faceHeelToToeMm: Millimetres;
  readonly faceTimeUs: Microseconds;
  /** Out of the face positive, sunk negative. */
  readonly insertProudMm: Millimetres;
  readonly faceHardnessShoreD: ShoreD;
  readonly faceHardnessShoreA: ShoreA;
  readonly grooveWidthMm: Millimetres;
  readonly grooveDepthMm: Millimetres;
  /** Edge of one groove to the edge of the next. */
  readonly grooveSeparationMm: Millimetres;
  readonly grooveAreaMm2: SquareMillimetres;
  readonly grooveEdgeRadiusMm: Millimetres;
  readonly punchMarkAreaMm2: SquareMillimetres;
  /** Centre to centre. */
  readonly punchMarkSpacingMm: Millimetres;
  readonly punchMarkDepthMm: Millimetres;
  readonly centreDesignSideMm: Millimetres;
  /** Centre line of the face to the nearest point of a marking beside the impact area. */
  readonly sideMarkingFromCentreMm: Millimetres;
}

export type Measurement = keyof Measurements;

/** What can be seen on a club, or known of it. */
export interface Observations {
  readonly adjustable: boolean;
  readonly adjustableWithoutTool: boolean;
  readonly adjustablePartsLoose: boolean;
  readonly settingOutsideRules: boolean;
  readonly settingChangedInRound: boolean;
  /** Added or taken off on purpose; putting back what fell off is a repair. */
  readonly leadChangedInRound: boolean;
  readonly shaftBendsAlike: boolean;
  readonly shaftTwistsAlike: boolean;
  readonly attachedAtHeel: boolean;
  readonly gripRound: boolean;
  readonly gripBulgeOrWaist: boolean;
  readonly twoGrips: boolean;
  readonly twoGripsRound: boolean;
  readonly onDriverList: boolean;
  /** Grooves and punch marks to the specification of 1 January 2010. */
  readonly markings2010: boolean;
  readonly madeBefore1999: boolean;
  /** Made before 2010, and the face never cut anew since. */
  readonly madeBefore2010: boolean;
}

export type Observation = keyof Observations;

type Known<T> = { readonly [K in keyof T]?: T[K] | null };

/** A club as far as it is known: what is left out, or null, was not measured. */
export interface ClubFacts extends Known<Measurements>, Known<Observations> {
  readonly family: ClubFamily;
}

interface Bounds {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

const mm = (max: number, min = 0): Bounds => ({ unit: "mm", min, max });
const deg = (min: number, max: number): Bounds => ({ unit: "deg", min, max });

/** Past these a reading is no club's, but a slip of the hand. */
const boundsOf: Readonly<Record<Measurement, Bounds>> = {
  lengthMm: mm(3000, 100),
  squaredLoftDeg: deg(-45, 90),
  seatedLieDeg: deg(20, 100),
  shaftForwardLeanDeg: deg(-60, 60),
  shaftBendAboveSoleMm: mm(1500),
  neckLengthMm: mm(1000),
  gripLengthMm: mm(1500),
  gripWidestMm: mm(200, 5),
  gripOutOfRoundMm: mm(100),
  twoGripGapMm: mm(1500),
  twoGripUpperLengthMm: mm(1500),
  headHeelToToeMm: mm(500, 10),
  headFaceToBackMm: mm(500, 1),
  headSoleToCrownMm: mm(500, 1),
  headVolumeCm3: { unit: "cm³", min: 1, max: 2000 },
  headInertiaKgCm2: { unit: "kg·cm²", min: 0, max: 100 },
  faceHeelToToeMm: mm(500, 1),
  faceTimeUs: { unit: "µs", min: 1, max: 2000 },
  insertProudMm: mm(20, -20),
  faceHardnessShoreD: { unit: "Shore D", min: 0, max: 100 },
  faceHardnessShoreA: { unit: "Shore A", min: 0, max: 100 },
  grooveWidthMm: mm(10, 0.01),
  grooveDepthMm: mm(10),
  grooveSeparationMm: mm(50),
  grooveAreaMm2: { unit: "mm²", min: 0, max: 50 },
  grooveEdgeRadiusMm: mm(10),
  punchMarkAreaMm2: { unit: "mm²", min: 0, max: 500 },
  punchMarkSpacingMm: mm(100),
  punchMarkDepthMm: mm(20),
  centreDesignSideMm: mm(200),
  sideMarkingFromCentreMm: mm(200),
};

const measurements = Object.keys(boundsOf) as readonly Measurement[];

/** The same club, once its family and every reading on it can be a club's. */
export function checkedClubFacts(club: ClubFacts): ClubFacts {
  oneOf(club.family, clubFamilies, "family");
  for (const field of measurements) {
    const read = club[field] ?? null;
    if (read !== null) inRange(read, { field, ...boundsOf[field] });
  }
  return club;
}
