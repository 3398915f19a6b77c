import type { Degrees, Grams, KilogramSquareCentimetres, Millimetres } from "../quantity/units.ts";
import type { ClubComponent } from "./clubComponent.ts";

/** A part of the club, and when it comes on: lying ready, at bonding, or at gripping. */
export interface StagedComponent extends ClubComponent {
  readonly stage: "ready" | "bond" | "grip";
}

/** A club as it moves when its length changes: the head end goes out with the shaft, the butt end stays where it is. */
export interface BuiltClub<C extends ClubComponent = ClubComponent> {
  readonly head: C;
  /** Sleeve, ferrule, glue, tip weight, lead, and other weights of the head. */
  readonly headEnd: readonly C[];
  readonly shaft: C;
  /** Of the bare shaft as cut, tip to butt. */
  readonly shaftLengthMm: Millimetres;
  readonly grip: C;
  readonly capMm: Millimetres;
  /** Tape and butt weight. */
  readonly buttEnd: readonly C[];
}

/** Where a head's centre lies off the shaft and along it: told straight, or by its height in the soled head. */
export type HeadCentre = { readonly fromAxisMm: Millimetres } & (
  | { readonly upShaftMm: Millimetres }
  | { readonly heightMm: Millimetres; readonly soledLieDeg: Degrees }
);

/** Where a small part lies: from the end of the cap, up the shaft from the bottom of the bore, or at the head's centre. */
type PartPlace =
  | { readonly from: "cap"; readonly mm: Millimetres }
  | { readonly from: "bore"; readonly upShaftMm: Millimetres }
  | { readonly from: "head-centre" };

/** Small parts by name, with the time they come on and the end of the club they belong to. */
export const smallParts = {
  sleeve: { stage: "ready", end: "head" },
  weight: { stage: "ready", end: "head" },
  melt: { stage: "ready", end: "head" },
  "tip weight": { stage: "ready", end: "head" },
  lead: { stage: "ready", end: "head" },
  ferrule: { stage: "bond", end: "head" },
  glue: { stage: "bond", end: "head" },
  "ferrule and glue": { stage: "bond", end: "head" },
  tape: { stage: "grip", end: "butt" },
  "butt weight": { stage: "grip", end: "butt" },
} as const satisfies Readonly<Record<string, Pick<StagedComponent, "stage"> & { readonly end: "head" | "butt" }>>;

export type SmallPartName = keyof typeof smallParts;

export interface SmallPart {
  readonly name: SmallPartName;
  readonly massG: Grams;
  readonly at: PartPlace;
}

/** A shaft as cut; without an inertia of its own it is taken as a uniform rod. */
export interface CutShaft {
  readonly lengthMm: Millimetres;
  readonly massG: Grams;
  readonly balanceFromButtMm: Millimetres;
  readonly ownInertiaKgCm2?: KilogramSquareCentimetres;
}

/** The parts around a head, all but the head itself. */
export interface PartsAroundHead {
  readonly playingLengthMm: Millimetres;
  /** Bottom of the bore, or the sleeve's shaft stop, to the ground line along the shaft. */
  readonly boreToGroundMm: Millimetres;
  readonly headCentre: HeadCentre;
  readonly shaft: CutShaft;
  readonly grip: {
    readonly massG: Grams;
    readonly centreFromCapMm: Millimetres;
    readonly capMm: Millimetres;
    /** Radius of gyration about its own centre, crosswise; 3 in when left out. */
    readonly gyrationMm?: Millimetres;
  };
  readonly small: readonly SmallPart[];
}

/** A bare head, and its inertia about its own centre. */
export interface BareHeadMass {
  readonly massG: Grams;
  readonly ownInertiaKgCm2: KilogramSquareCentimetres;
}
