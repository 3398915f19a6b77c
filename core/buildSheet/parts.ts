import type { Bend } from "../head/afterBend.ts";
import type { HeadConstruction, HeadMaterial } from "../head/bendLimits.ts";
import type { ClubFamily, Hand, Id } from "../kinds.ts";
import type { CyclesPerMinute, Degrees, Grams, Millimetres } from "../quantity/units.ts";

/** A head's model: what every head of it shares. Lengths in mm. */
export interface HeadModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly family: ClubFamily;
  /** The sleeve family it takes, or null when the shaft is bonded into the hosel. */
  readonly sleeveFamily: string | null;
  /** Bottom of the bore, or the sleeve's internal shaft stop, to the ground line along the shaft axis. */
  readonly boreToGroundMm: Millimetres;
  /** The head's centre of mass, up the shaft from the ground line. */
  readonly centreAboveGroundMm: Millimetres;
  readonly grind: string | null;
  /** On the list for play at events that keep one; null when no list applies. */
  readonly listedForPlay: boolean | null;
  /** What decides how far it may be bent; left out or null, its kind of club decides. */
  readonly material?: HeadMaterial | null;
  readonly construction?: HeadConstruction | null;
  readonly makerBendLimitDeg?: Degrees | null;
}

/** One head in a drawer, measured bare at zero sleeve tilt: soled loft and face (open positive), design lie, in degrees. */
export interface MeasuredHead {
  readonly id: Id<"head">;
  readonly serial: string;
  readonly model: HeadModel;
  readonly hand: Hand;
  readonly stampedLoftDeg: Degrees;
  readonly soledLoftDeg: Degrees;
  readonly designLieDeg: Degrees;
  readonly soledFaceDeg: Degrees;
  readonly bounceDeg: Degrees | null;
  readonly massG: Grams;
  readonly place: string;
  /** True when the head lies in the truck that builds and is nobody else's: another player's bin is left alone. */
  readonly here: boolean;
  /** Every bend it has had; left out, none is known. */
  readonly bends?: readonly Bend[];
}

/** A loft sleeve: an adapter whose bore is tilted against its axis. */
export interface SleeveModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly family: string;
  readonly tiltDeg: Degrees;
  /** Sleeve with its screw. */
  readonly massG: Grams;
  /** Where the grip end leans in a right-handed head: 0 to the target (more loft), 90 upright, 180 less loft, 270 flat. */
  readonly marks: readonly { readonly mark: string; readonly clockDeg: Degrees }[];
  readonly standardMark: string;
}

/** A raw shaft. `balanceFromTipMm` before trimming; `parallelTipMm` is the part of the tip of one diameter. */
export interface ShaftModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly flex: string;
  readonly forFamilies: readonly ClubFamily[];
  readonly tip: "parallel" | "taper";
  readonly tipDiameterMm: Millimetres;
  readonly parallelTipMm: Millimetres;
  readonly buttDiameterMm: Millimetres;
  readonly rawLengthMm: Millimetres;
  readonly rawMassG: Grams;
  readonly balanceFromTipMm: Millimetres;
  readonly material: "graphite" | "steel";
  /** Raw, in the shop's own clamp set-up; left out or null, never read. */
  readonly frequencyCpm?: CyclesPerMinute | null;
}

/** A shaft that is no longer raw, as prepared: trimmed at the tip, bonded to a sleeve, or cut and used before. */
export interface ShaftPiece {
  readonly id: Id<"shaftPiece">;
  readonly model: ShaftModel;
  readonly state: "tipped" | "sleeved" | "used";
  readonly tipTrimMm: Millimetres;
  /** The sleeve bonded to it, and where its logo is at that sleeve's standard mark; null when unknown. */
  readonly sleeve: SleeveModel | null;
  readonly logo: "up" | "down" | null;
  /** From tip to butt as it is now; null while the butt is uncut. */
  readonly cutLengthMm: Millimetres | null;
  readonly place: string;
  readonly placeId: Id<"place">;
  readonly inPlayersBin: boolean;
}

/** A grip; `centreFromCapMm` is its centre of mass below the end of the cap, `capMm` the thickness of the cap. */
export interface GripModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly massG: Grams;
  readonly centreFromCapMm: Millimetres;
  readonly capMm: Millimetres;
  readonly coreMm: Millimetres;
  readonly rib: boolean;
}

/** A head screw or other removable weight. */
export interface WeightModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly massG: Grams;
}

/** So many of a model, where they lie. */
export interface Stocked<M> {
  readonly model: M;
  readonly place: string;
  readonly placeId: Id<"place">;
  /** Whose bin it is: taken from first. */
  readonly inPlayersBin: boolean;
  readonly free: number;
}

/** What a plan chooses from: a snapshot of the parts in reach, other orders' reservations already taken off. */
export interface PartsInReach {
  readonly heads: readonly MeasuredHead[];
  readonly sleeves: readonly Stocked<SleeveModel>[];
  readonly shafts: readonly Stocked<ShaftModel>[];
  readonly grips: readonly Stocked<GripModel>[];
  readonly weights: readonly Stocked<WeightModel>[];
  /** Prepared shafts in this truck; left out, there are none. */
  readonly pieces?: readonly ShaftPiece[];
  /** What lies in other trucks and at home base, each with its place; left out, nothing is known of it. */
  readonly elsewhere?: {
    readonly sleeves: readonly Stocked<SleeveModel>[];
    readonly shafts: readonly Stocked<ShaftModel>[];
    readonly grips: readonly Stocked<GripModel>[];
  };
  /** Every model the shop knows, in stock or not, so that the nearest can be told; left out, only what lies somewhere. */
  readonly known?: { readonly shafts: readonly ShaftModel[]; readonly grips: readonly GripModel[] };
}
