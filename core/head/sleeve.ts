import type { Degrees } from "../quantity/units.ts";

/** One turnable piece and what is printed on it: where the grip end leans at each mark in a right-handed head. */
export interface SleevePiece {
  readonly tiltDeg: Degrees;
  readonly marks: readonly { readonly mark: string; readonly clockDeg: Degrees }[];
}

/** A sleeve that tilts by itself. */
export interface OnePieceSleeve extends SleevePiece {
  readonly standardMark: string;
}

/** A sleeve in a tilted ring. The marks of both are counted in the head; a setting is named ring first: `A 2`. */
interface TwoPieceSleeve {
  readonly ring: SleevePiece;
  readonly sleeve: SleevePiece;
  readonly standardMark: string;
}

export type Sleeve = OnePieceSleeve | TwoPieceSleeve;
