import type { ClubFamily, Hand } from "../../../core/kinds.ts";
import type { KnownHeadModel, KnownPart, KnownPlace } from "./stockKnown.ts";

/** What a head may be asked by, as the gauge reads it with its sleeve at standard; angles in degrees, mass in g. */
export type AskedQuantity = "squaredLoftDeg" | "seatedLieDeg" | "soledFaceDeg" | "bounceDeg" | "massG";

/** `under 9`: max 9, not reached; `8.5 to 9`: both ends included; `9 true`: nearest to 9 first. */
export type Bound = { readonly quantity: AskedQuantity } & (
  | { readonly kind: "range"; readonly min: number | null; readonly max: number | null; readonly includesEnds: boolean }
  | { readonly kind: "near"; readonly value: number }
);

/** A club of a bag as a kind of head: `7i` is an iron stamped about so. */
export interface AskedClub {
  readonly name: string;
  readonly family: ClubFamily;
  readonly stampedMinDeg: number;
  readonly stampedMaxDeg: number;
}

/** Which heads are asked for; null rules nothing out. */
export interface HeadQuestion {
  readonly models: readonly KnownHeadModel[] | null;
  readonly family: ClubFamily | null;
  readonly club: AskedClub | null;
  readonly hand: Hand | null;
  readonly grind: string | null;
  readonly stampedLoftDeg: number | null;
  readonly serial: string | null;
  readonly place: KnownPlace | null;
  readonly bounds: readonly Bound[];
}

/** Whoever asks for a loft and names no club does not mean putters, which have the least of all. */
export const leavesOutPutters = ({ models, family, club, serial, place, bounds }: HeadQuestion): boolean =>
  models === null &&
  family === null &&
  club === null &&
  serial === null &&
  place === null &&
  bounds.some(({ quantity }) => quantity === "squaredLoftDeg");

/** Which counted parts are asked for. */
export interface PartQuestion {
  readonly models: readonly KnownPart[];
  readonly place: KnownPlace | null;
}

/** A piece of the question that was not read, with what may have been meant. */
export interface Unread {
  readonly written: string;
  readonly guess: string | null;
}

export type FindReading =
  | { readonly kind: "heads"; readonly question: HeadQuestion; readonly unread: readonly Unread[] }
  | { readonly kind: "parts"; readonly question: PartQuestion; readonly unread: readonly Unread[] }
  /** Nothing in it says what is looked for. */
  | { readonly kind: "nothing"; readonly unread: readonly Unread[] };
