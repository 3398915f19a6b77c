import type { TrimFault } from "../club/shaftTrim.ts";
import type { Attitude } from "../head/attitude.ts";
import type { ClubName, Hand, Id } from "../kinds.ts";
import type { GripModel, MeasuredHead, ShaftModel, SleeveModel, WeightModel } from "./parts.ts";

/** What the club should measure, every value resolved: written, or taken from the club named after `like`. */
export interface Target {
  readonly club: ClubName;
  readonly hand: Hand;
  readonly headModel: string | null;
  readonly stampedLoftDeg: number | null;
  readonly squaredLoftDeg: number | null;
  readonly soledFaceDeg: number | null;
  readonly seatedLieDeg: number | null;
  readonly bounceDeg: number | null;
  readonly grind: string | null;
  readonly lengthMm: number | null;
  readonly swingWeightPoints: number | null;
  readonly totalMassG: number | null;
  readonly headMassG: number | null;
  readonly shaft: string | null;
  readonly tipTrimMm: number | null;
  readonly logo: "up" | "down" | null;
  readonly sleeveMark: string | null;
  readonly grip: string | null;
  readonly rib: boolean | null;
  readonly wraps: number | null;
}

/** A head with its sleeve at a printed mark (or bonded), and how far it is from the wish. */
export interface HeadChoice {
  readonly head: MeasuredHead;
  readonly sleeve: SleeveModel | null;
  readonly mark: string | null;
  readonly attitude: Attitude;
  /** Sum of squared deviations, each in units of its tolerance; lower is nearer. */
  readonly score: number;
  /** Every deviation named and larger than its tolerance. */
  readonly misses: readonly Deviation[];
}

export interface Deviation {
  readonly quantity: "squaredLoftDeg" | "soledFaceDeg" | "seatedLieDeg" | "bounceDeg" | "headMassG" | "swingWeightPoints";
  readonly wanted: number;
  readonly got: number;
  readonly tolerance: number;
}

/** What is needed and is not in reach, with the nearest that is. */
export interface Shortage {
  readonly part: "head" | "shaft" | "grip" | "sleeve";
  readonly wanted: string;
  readonly nearest: readonly string[];
}

/** Why no plan could be made: each names its clause, so that the order can be mended. */
export type PlanFault =
  | { readonly code: "missing"; readonly quantities: readonly ("headModel" | "loft" | "length" | "shaft" | "grip")[] }
  | { readonly code: "short"; readonly shortages: readonly Shortage[] }
  | TrimFault
  /** Wished of a swap, where shaft and grip stay as they are. */
  | { readonly code: "stays-in-swap"; readonly quantities: readonly ("length" | "shaft" | "grip" | "tipTrim" | "wraps" | "logo" | "rib")[] };

/** What the technician builds one club from, and what it should measure. */
export interface ClubPlan {
  readonly version: 1;
  readonly club: ClubName;
  readonly target: Target;
  readonly choice: HeadChoice;
  readonly runnersUp: readonly HeadChoice[];
  /** Null when the shaft stays on its club, as in a swap. */
  readonly shaft: { readonly model: ShaftModel; readonly place: string; readonly placeId: Id<"place"> | null } | null;
  readonly grip: { readonly model: GripModel; readonly place: string; readonly placeId: Id<"place"> | null } | null;
  readonly weights: readonly { readonly model: WeightModel; readonly placeId: Id<"place">; readonly count: number }[];
  readonly wraps: number;
  readonly tipTrimMm: number | null;
  readonly buttTrimMm: number | null;
  readonly bareCutMm: number | null;
  readonly trimmedShaftMassG: number | null;
  readonly trimmedShaftBalanceFromButtMm: number | null;
  readonly logo: "up" | "down" | null;
  /** What the swing-weight scale should read, shaft cut, head on, without grip and tape. */
  readonly dryTargetPoints: number | null;
  /** The same before gluing and gripping: no adhesive, ferrule, tape or grip yet. */
  readonly beforeGluePoints: number | null;
  readonly predicted: {
    readonly lengthMm: number | null;
    readonly swingWeightPoints: number | null;
    readonly totalMassG: number | null;
    readonly balancePointMm: number | null;
    readonly inertiaKgCm2: number | null;
  };
  /** Head mass that would meet the swing weight wished, beside the head's own; null without such a wish. */
  readonly headMassWantedG: number | null;
  readonly leadG: number;
  /** How many things differ from the club it is like: more than one makes a comparison worth less. */
  readonly changes: readonly string[];
}

export type PlanResult = { readonly kind: "planned"; readonly plan: ClubPlan } | { readonly kind: "refused"; readonly faults: readonly PlanFault[] };
