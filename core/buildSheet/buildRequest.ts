import type { ClubName, Id, Instant, OrderKind } from "../kinds.ts";

/** A contract value with the words it was written in, so that "45 1/4" comes back as written. */
export interface Wish<T> {
  readonly value: T;
  readonly asWritten: string;
}

/** A wish that may lean on the club named after `like`: an exact value, a difference from it, or "stays". */
export type Amount =
  | { readonly kind: "exactly"; readonly value: number }
  | { readonly kind: "by"; readonly value: number }
  | { readonly kind: "same" };

/** The club an order leans on for everything it does not write. */
export type Like = { readonly from: "gamer" } | { readonly from: "backup" } | { readonly from: "order"; readonly number: number };

export type Destination = "range" | "locker" | "caddie" | "courier";
export type Purpose = "gamer" | "backup" | "test";

/** When the club must be in the player's hand. `tee` waits for the tee sheet: minutes are negative before it. */
export type ByWish = { readonly kind: "at"; readonly at: Instant } | { readonly kind: "tee"; readonly offsetMin: number } | { readonly kind: "now" };

/**
 * Everything an order may write about its clubs. Lengths in mm, masses in g, angles in degrees, swing weight in points
 * (D0 = 0). `squaredLoftDeg` is read with the face turned square at seated lie and the sleeve as set; `soledFaceDeg`
 * with the sole flat, open positive. A clause that was not written is absent.
 */
export interface Clauses {
  readonly headModel?: Wish<string>;
  readonly stampedLoftDeg?: Wish<number>;
  readonly squaredLoftDeg?: Wish<Amount>;
  readonly seatedLieDeg?: Wish<Amount>;
  readonly soledFaceDeg?: Wish<Amount>;
  readonly bounceDeg?: Wish<Amount>;
  readonly grind?: Wish<string>;
  readonly lengthMm?: Wish<Amount>;
  readonly swingWeightPoints?: Wish<Amount>;
  readonly totalMassG?: Wish<Amount>;
  readonly headMassG?: Wish<Amount>;
  /** The canonical shaft model name of the record, such as `Dunlin 60 X`. */
  readonly shaft?: Wish<string>;
  readonly tipTrimMm?: Wish<Amount>;
  readonly logo?: Wish<"up" | "down">;
  readonly spine?: Wish<string>;
  readonly ferrule?: Wish<string>;
  /** The printed mark the sleeve is set to, such as `standard`; or a turn by whole marks, strong negative. */
  readonly sleeve?: Wish<{ readonly kind: "mark"; readonly mark: string } | { readonly kind: "turn"; readonly marks: number }>;
  readonly screw?: Wish<string>;
  readonly melt?: Wish<string>;
  readonly lead?: Wish<string>;
  /** The canonical grip model name of the record, such as `Gorse Standard Round`. */
  readonly grip?: Wish<string>;
  readonly rib?: Wish<"none" | "rib">;
  readonly wraps?: Wish<Amount>;
  readonly neck?: Wish<string>;
  readonly line?: Wish<string>;
  readonly stamp?: Wish<string>;
}

/** Who is to bring the club an order works on, when the order is about a club that exists. */
export type BroughtBy = "player" | "caddie" | "rep" | "inTruck";

/**
 * One request for work, however it was sent (message, command, form). `clubs` names one club or a set; `count` above one
 * asks for that many alike. `out` names the clubs that leave the bag for them: a set change, in which as many as come in
 * need not go out. Kinds other than `build` and `swap` work on a club that exists.
 */
export interface BuildRequest {
  readonly kind: OrderKind;
  readonly player: Id<"player">;
  readonly clubs: readonly ClubName[];
  readonly out: readonly ClubName[];
  readonly count: number;
  readonly like: Like | null;
  readonly clauses: Clauses;
  readonly by: Wish<ByWish> | null;
  readonly to: Destination | null;
  readonly purpose: Purpose;
  readonly urgent: boolean;
  readonly broughtBy: BroughtBy | null;
  readonly note: string | null;
}

/** The kinds whose club is in a bag already: which one, and who brings it, is part of the order. */
export const kindsOnExistingClub: readonly OrderKind[] = ["turn", "reshaft", "regrip", "bend", "grind", "check", "repair", "stamp"];
