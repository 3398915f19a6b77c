import type { CheckedQuantity } from "../bag/checkTolerances.ts";
import type { SpecClub } from "../bag/specClub.ts";
import type { Bend } from "../head/afterBend.ts";
import type { Attitude } from "../head/attitude.ts";
import type { BendAllowance } from "../head/bendAllowed.ts";
import type { Logo } from "../head/graphicsAfterTurn.ts";
import type { ClubFamily, ClubName, Hand } from "../kinds.ts";
import type { Degrees, Grams, Millimetres, SwingWeightPoints } from "../quantity/units.ts";
import type { Allowances } from "./allowances.ts";
import type { Clauses } from "./buildRequest.ts";
import type { GripModel, HeadModel, ShaftModel, SleeveModel, Stocked } from "./parts.ts";
import type { Deviation, Shortage, Target } from "./plan.ts";

export const serviceKinds = ["turn", "regrip", "bend", "grind", "stamp", "check", "repair"] as const;
/** Work on one club that exists, without another head or shaft. */
export type ServiceKind = (typeof serviceKinds)[number];

/** What such a plan is made of. */
export interface ServiceQuestion {
  readonly kind: ServiceKind;
  readonly club: ClubName;
  readonly hand: Hand;
  /** Resolved from the clauses and the club on record. */
  readonly target: Target;
  readonly clauses: Clauses;
  /** The club as last left on the gauge; null when it is not on record. */
  readonly reference: SpecClub | null;
  /** Its models, as far as they are known. */
  readonly head: HeadModel | null;
  readonly sleeve: SleeveModel | null;
  readonly shaft: ShaftModel | null;
  /** To regrip from, the player's bin first. */
  readonly grips: readonly Stocked<GripModel>[];
  /** Every bend this head has had. */
  readonly bends: readonly Bend[];
  readonly skilledTechnician: boolean;
  readonly allowances: Allowances;
  readonly note: string | null;
}

/** What the club should measure when the work is done; null is unknown before the gauge has said. */
export interface PredictedClub extends Readonly<Record<CheckedQuantity, number | null>> {
  readonly squaredLoftDeg: Degrees | null;
  readonly soledFaceDeg: Degrees | null;
  readonly seatedLieDeg: Degrees | null;
  readonly bounceDeg: Degrees | null;
  readonly lengthMm: Millimetres | null;
  readonly swingWeightPoints: SwingWeightPoints | null;
  readonly totalMassG: Grams | null;
  readonly headMassG: Grams | null;
  readonly wraps: number | null;
  readonly gripAt2InMm: Millimetres | null;
  readonly gripAt6InMm: Millimetres | null;
}

interface AnyServicePlan {
  readonly version: 1;
  readonly club: ClubName;
  /** What is asked for: written, or as on record. What only follows from the work is null here and stands in `predicted`. */
  readonly target: Target;
  readonly predicted: PredictedClub;
}

/** The readings a sleeve changes. */
export type SleeveReading = Exclude<keyof Attitude, "squaredLoftAtDesignLieDeg">;
export type SleeveReadings = Readonly<Record<SleeveReading, Degrees | null>>;

export interface TurnPlan extends AnyServicePlan {
  readonly kind: "turn";
  readonly sleeve: SleeveModel;
  /** Null when no printed mark is on record: looked at first. */
  readonly fromMark: string | null;
  readonly toMark: string;
  readonly before: SleeveReadings;
  readonly after: SleeveReadings;
  /** After less before; known without a reading of its own, as a usual lie and a square face change it little. */
  readonly change: SleeveReadings;
  /** How far the shaft turns with the sleeve, clockwise seen from the butt positive. */
  readonly shaftTurnDeg: Degrees | null;
  readonly logoBefore: Logo | null;
  readonly logoAfter: Logo | "turned" | null;
  /** A grip with a rib is wrong after every turn of the shaft; null when it is not known. */
  readonly gripTurnsWrong: boolean | null;
  /** Many players refuse a sleeve that is not at its standard mark. */
  readonly turnedFromStandard: boolean;
  /** Every wished reading the mark does not meet. */
  readonly misses: readonly Deviation[];
}

export interface RegripPlan extends AnyServicePlan {
  readonly kind: "regrip";
  readonly grip: Stocked<GripModel>;
  readonly wraps: number;
  readonly rib: boolean;
  readonly logo: Logo | null;
  /** New less old, wraps included; null when the old grip or its wraps are not known. */
  readonly massChangeG: Grams | null;
  readonly swingWeightChangePoints: SwingWeightPoints | null;
  /** How much thicker the butt is than the grip's core; null when the shaft is not known. */
  readonly buttOverCoreMm: Millimetres | null;
  /** So far apart that the grip does not come out at its own size. */
  readonly coreMismatch: boolean | null;
}

/** Loft, lie and bounce of a head that is bent. */
export interface BendReadings {
  readonly squaredLoftDeg: Degrees | null;
  readonly seatedLieDeg: Degrees | null;
  readonly bounceDeg: Degrees | null;
}

export interface BendPlan extends AnyServicePlan {
  readonly kind: "bend";
  /** As on record; as found decides where it differs. */
  readonly from: BendReadings;
  readonly to: BendReadings;
  /** Weaker and upright positive; null until the gauge has said where the head stands. */
  readonly loftChangeDeg: Degrees | null;
  readonly lieChangeDeg: Degrees | null;
  readonly offsetChangeMm: Millimetres | null;
  readonly offsetMm: Millimetres | null;
  /** Of the bend as far as it is known, with all that went before. */
  readonly allowance: BendAllowance;
}

export interface GrindPlan extends AnyServicePlan {
  readonly kind: "grind";
  readonly bounceBeforeDeg: Degrees | null;
  readonly bounceWantedDeg: Degrees | null;
  readonly grindBefore: string | null;
  readonly grindWanted: string | null;
  readonly headMassBeforeG: Grams | null;
  readonly byQualifiedGrinder: true;
  readonly note: string | null;
}

export interface StampPlan extends AnyServicePlan {
  readonly kind: "stamp";
  readonly text: string;
  /** What is stamped on it already. */
  readonly before: string | null;
}

/** A quantity to read, and what the record has of it, to print as found and as left. */
export interface ReadOnRecord {
  readonly quantity: CheckedQuantity;
  readonly onRecord: number | null;
}

/** What is looked over beside the gauge. */
export type LookOver = "crack" | "rattle" | "grip" | "grooves";

export interface CheckPlan extends AnyServicePlan {
  readonly kind: "check";
  readonly reads: readonly ReadOnRecord[];
  readonly lookOver: readonly LookOver[];
}

export interface RepairPlan extends AnyServicePlan {
  readonly kind: "repair";
  readonly complaint: string;
  /** Read again when it is mended: as on record. */
  readonly reads: readonly ReadOnRecord[];
}

/** What the technician does to a club that exists, and what it should measure then. */
export type ServicePlan = TurnPlan | RegripPlan | BendPlan | GrindPlan | StampPlan | CheckPlan | RepairPlan;

/** Why no such plan could be made: each names its clause, so that the order can be mended. */
export type ServiceFault =
  /** Nothing written says what to do; of a repair, what is wrong. */
  | { readonly code: "nothing-asked"; readonly kind: ServiceKind }
  /** Written, and this kind of work leaves it as it is. */
  | { readonly code: "stays"; readonly kind: ServiceKind; readonly quantities: readonly (keyof Clauses)[] }
  /** The record has no value to start from. */
  | { readonly code: "needs-record"; readonly kind: ServiceKind; readonly quantities: readonly (keyof Clauses)[] }
  | { readonly code: "short"; readonly shortages: readonly Shortage[] }
  /** The shaft is bonded into the hosel. */
  | { readonly code: "no-sleeve"; readonly family: ClubFamily }
  | { readonly code: "sleeve-unknown" }
  | { readonly code: "mark-unknown"; readonly mark: string; readonly known: readonly string[] }
  /** No turn brings it nearer: the sleeve stands at that mark. */
  | { readonly code: "already-there"; readonly mark: string; readonly misses: readonly Deviation[] }
  | { readonly code: "bend-blocked"; readonly plane: "loft" | "lie"; readonly totalDeg: Degrees; readonly limitDeg: Degrees }
  | { readonly code: "maker-does-not-allow"; readonly family: ClubFamily }
  | { readonly code: "needs-skill"; readonly family: ClubFamily }
  /** Only another grind, or sole work by a qualified grinder, parts them. */
  | {
      readonly code: "bounce-goes-with-loft";
      readonly wantedBounceDeg: Degrees;
      /** What the head reads after the bend that meets everything else. */
      readonly nearest: BendReadings;
      /** Wanted less what that bend leaves. */
      readonly bounceMissDeg: Degrees;
      readonly loftAtWantedBounceDeg: Degrees;
    }
  | { readonly code: "wrong-family"; readonly kind: ServiceKind; readonly family: ClubFamily; readonly accepted: readonly ClubFamily[] }
  | { readonly code: "stamp-too-long"; readonly count: number; readonly max: number };

export type ServiceResult =
  | { readonly kind: "planned"; readonly plan: ServicePlan }
  | { readonly kind: "refused"; readonly faults: readonly ServiceFault[] };
