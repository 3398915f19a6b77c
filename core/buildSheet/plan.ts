import type { TrimFault } from "../club/shaftTrim.ts";
import type { Bend } from "../head/afterBend.ts";
import type { Attitude } from "../head/attitude.ts";
import type { BendReason } from "../head/bendAllowed.ts";
import type { ClubName, Hand, Id } from "../kinds.ts";
import type { Degrees, Millimetres } from "../quantity/units.ts";
import type { NearGrip } from "./nearestGrips.ts";
import type { NearShaft } from "./nearestShafts.ts";
import type { GripModel, MeasuredHead, ShaftModel, ShaftPiece, SleeveModel, WeightModel } from "./parts.ts";

export const planKinds = ["build", "swap", "reshaft"] as const;
/** Work that makes a club of parts: a new one, another head on one, another shaft in one. */
export type PlanKind = (typeof planKinds)[number];

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

export interface Deviation {
  readonly quantity: "squaredLoftDeg" | "soledFaceDeg" | "seatedLieDeg" | "bounceDeg" | "headMassG" | "swingWeightPoints";
  readonly wanted: number;
  readonly got: number;
  readonly tolerance: number;
}

/** A head with its sleeve at a printed mark, or bonded and bent, and how far it is from the wish. */
export interface HeadChoice {
  readonly head: MeasuredHead;
  readonly sleeve: SleeveModel | null;
  readonly mark: string | null;
  /** At the mark that wins among equals, or without a sleeve. */
  readonly atPreferredMark: boolean;
  /** As it will be left: set, and bent. */
  readonly attitude: Attitude;
  readonly bounceDeg: Degrees | null;
  /** Null where nothing is bent. */
  readonly bend: Bend | null;
  /** The bend is past the warning, with all that went before it, and not past the limit. */
  readonly bendWarned: boolean;
  /** Weights, and one more where lead must make up for what they leave. */
  readonly addedCount: number;
  /** Sum of squared deviations, each in units of its tolerance; lower is nearer. */
  readonly score: number;
  /** Every deviation from what is wished, where it can be read. */
  readonly deviations: readonly Deviation[];
  /** Those larger than their tolerance. */
  readonly misses: readonly Deviation[];
}

/** One thing that another head gives up against the one chosen. */
export type GivenUp =
  /** Further from the wish, in the quantity's own unit. */
  | { readonly code: "further"; readonly quantity: Deviation["quantity"]; readonly worseBy: number }
  | { readonly code: "bounce-unknown" }
  | { readonly code: "turned-sleeve"; readonly mark: string }
  | { readonly code: "more-bend"; readonly deg: Degrees }
  | { readonly code: "more-weights"; readonly count: number }
  | { readonly code: "elsewhere"; readonly place: string };

export type RunnerUp = HeadChoice & { readonly givesUp: readonly GivenUp[] };

/** A head as people find it. */
export interface FoundHead {
  readonly serial: string;
  readonly model: string;
  readonly stampedLoftDeg: Degrees;
  readonly place: string;
  readonly here: boolean;
}

/** What could be done where the head chosen misses the wish. */
export type Remedy =
  /** It lies in another truck, at home base or in another player's bin, and misses less. */
  | ({ readonly code: "head-elsewhere"; readonly missCount: number } & FoundHead)
  /** To be sent from home base: the stamp of that model nearest to the loft wished. */
  | { readonly code: "order-head"; readonly model: string; readonly stampedLoftDeg: Degrees }
  /** A head of another grind that has the bounce, bent to the loft wished. */
  | ({
      readonly code: "another-grind";
      readonly grind: string | null;
      readonly squaredLoftDeg: Degrees;
      readonly bounceDeg: Degrees;
      readonly bend: Bend | null;
    } & FoundHead)
  /** By a qualified grinder: bounce to give, or to take where it is below 0. */
  | { readonly code: "sole-work"; readonly bounceChangeDeg: Degrees }
  /** The loft to wish instead, at which the bounce comes by bending. */
  | { readonly code: "loft-for-bounce"; readonly squaredLoftDeg: Degrees; readonly bounceDeg: Degrees }
  /** Why the head cannot be bent the rest of the way. */
  | { readonly code: "no-further-bend"; readonly reason: BendReason };

/** What is needed and is not in reach, with the nearest that is. */
export interface Shortage {
  readonly part: "head" | "shaft" | "grip" | "sleeve";
  readonly wanted: string;
  readonly nearest: readonly string[];
  /** The same for a head, in parts. */
  readonly heads?: readonly FoundHead[];
  /** Of a shaft or a grip: why one of the wanted name that lies here was left there, */
  readonly unfit?: readonly string[];
  /** where it lies elsewhere, */
  readonly elsewhere?: readonly { readonly place: string; readonly free: number }[];
  /** and what is nearest to it, with how it differs: never the same. */
  readonly alike?: readonly (NearShaft | NearGrip)[];
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
  readonly kind: PlanKind;
  readonly club: ClubName;
  readonly target: Target;
  readonly choice: HeadChoice;
  /** Other heads in this truck, the nearest first. */
  readonly runnersUp: readonly RunnerUp[];
  /** Heads that do not lie here and are nearer than the choice by what a gauge can tell. */
  readonly elsewhere: readonly HeadChoice[];
  /** What could be done about the choice's misses; empty when it has none. */
  readonly remedies: readonly Remedy[];
  /** A prepared shaft taken in place of a raw one of the same model; null when none is. */
  readonly piece: ShaftPiece | null;
  /** Null when the shaft stays on its club, as in a swap. */
  readonly shaft: { readonly model: ShaftModel; readonly place: string; readonly placeId: Id<"place"> | null } | null;
  readonly grip: { readonly model: GripModel; readonly place: string; readonly placeId: Id<"place"> | null } | null;
  /** The grip's core is not the shaft's, so that it comes out off its size; null where it is, or no grip is put on. */
  readonly gripMisfit: { readonly coreMm: Millimetres; readonly buttMm: Millimetres } | null;
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
