import type { SpecClub } from "../../../core/bag/specClub.ts";
import type {
  GripModel,
  HeadModel,
  MeasuredHead,
  PartsInReach,
  ShaftModel,
  SleeveModel,
  Stocked,
  WeightModel,
} from "../../../core/buildSheet/parts.ts";
import type { Target } from "../../../core/buildSheet/plan.ts";
import { type ClubName, id } from "../../../core/kinds.ts";
import { degrees, grams } from "../../../core/quantity/units.ts";

const IN = 25.4;

/** A record whose quantities are plain numbers, as a test writes them. */
type Plain<T> = { readonly [K in keyof T]: T[K] extends number ? number : T[K] extends number | null ? number | null : T[K] };
const branded = <T>(plain: Plain<T>): T => plain as T;

export const someHeadModel = (given: Partial<Plain<HeadModel>>): HeadModel =>
  branded<HeadModel>({
    id: id(1),
    name: "Cairn",
    family: "driver",
    sleeveFamily: "loft",
    boreToGroundMm: 1.25 * IN,
    centreAboveGroundMm: 12.7,
    grind: null,
    listedForPlay: true,
    ...given,
  });

export const someHead = (given: Partial<Plain<MeasuredHead>>): MeasuredHead =>
  branded<MeasuredHead>({
    id: id(given.serial === undefined ? 1 : Number(given.serial)),
    serial: "0001",
    model: someHeadModel({}),
    hand: "right",
    stampedLoftDeg: 9,
    soledLoftDeg: 9,
    designLieDeg: 58,
    soledFaceDeg: 0,
    bounceDeg: null,
    massG: 198,
    place: "D-1",
    here: true,
    ...given,
  });

/** Side standard: stronger one way round, weaker the other. */
export const someSleeve = (given: Partial<Plain<SleeveModel>>): SleeveModel =>
  branded<SleeveModel>({
    id: id(11),
    name: "Loft sleeve",
    family: "loft",
    tiltDeg: 1,
    massG: 6.5,
    standardMark: "standard",
    marks: [
      { mark: "standard", clockDeg: degrees(270) },
      { mark: "strong 1", clockDeg: degrees(225) },
      { mark: "strong 2", clockDeg: degrees(180) },
      { mark: "upright", clockDeg: degrees(90) },
      { mark: "weak 2", clockDeg: degrees(0) },
      { mark: "weak 1", clockDeg: degrees(315) },
    ],
    ...given,
  });

export const someShaft = (given: Partial<Plain<ShaftModel>>): ShaftModel =>
  branded<ShaftModel>({
    id: id(21),
    name: "Dunlin 60 X",
    flex: "X",
    forFamilies: ["driver", "fairway"],
    tip: "parallel",
    tipDiameterMm: 8.5,
    parallelTipMm: 100,
    buttDiameterMm: 15.2,
    rawLengthMm: 46 * IN,
    rawMassG: 65,
    balanceFromTipMm: 24 * IN,
    material: "graphite",
    ...given,
  });

export const someGrip = (given: Partial<Plain<GripModel>>): GripModel =>
  branded<GripModel>({
    id: id(31),
    name: "Gorse Standard Round",
    massG: 50,
    centreFromCapMm: 4.25 * IN,
    capMm: 0.125 * IN,
    coreMm: 15.24,
    rib: false,
    ...given,
  });

export const someWeight = (massG: number): WeightModel => ({ id: id(40 + massG), name: `Screw ${massG} g`, massG: grams(massG) });

export const stocked = <M>(model: M, given: Partial<Stocked<M>> = {}): Stocked<M> => ({
  model,
  place: "Rack 1",
  placeId: id(1),
  inPlayersBin: false,
  free: 2,
  ...given,
});

export const someParts = (given: Partial<PartsInReach>): PartsInReach => ({
  heads: [someHead({})],
  sleeves: [stocked(someSleeve({}))],
  shafts: [stocked(someShaft({}))],
  grips: [stocked(someGrip({}))],
  weights: [],
  ...given,
});

export const someTarget = (given: Partial<Target>): Target => ({
  club: "driver" as ClubName,
  hand: "right",
  headModel: "Cairn",
  stampedLoftDeg: null,
  squaredLoftDeg: null,
  soledFaceDeg: null,
  seatedLieDeg: null,
  bounceDeg: null,
  grind: null,
  lengthMm: 45 * IN,
  swingWeightPoints: null,
  totalMassG: null,
  headMassG: null,
  shaft: "Dunlin 60 X",
  tipTrimMm: null,
  logo: null,
  sleeveMark: null,
  grip: "Gorse Standard Round",
  rib: null,
  wraps: null,
  ...given,
});

export const someClub = (given: Partial<SpecClub>): SpecClub => ({
  club: "driver" as ClubName,
  outside: false,
  headModel: "Cairn",
  headSerial: "0900",
  stampedLoftDeg: 9,
  squaredLoftDeg: 9.2,
  soledFaceDeg: 0.4,
  seatedLieDeg: 57,
  bounceDeg: null,
  grind: null,
  sleeveModel: "Loft sleeve",
  sleeveMark: "standard",
  lengthMm: 45.25 * IN,
  swingWeightPoints: 3,
  totalMassG: 321,
  headMassG: 198,
  shaftModel: "Dunlin 60 X",
  tipTrimMm: 12.7,
  logo: "down",
  gripModel: "Gorse Standard Round",
  rib: false,
  wraps: 1,
  stamp: null,
  note: null,
  measuredAt: null,
  gauge: null,
  ...given,
});
